package org.ohmstead.reports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.icegreen.greenmail.junit5.GreenMailExtension;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.Multipart;
import jakarta.mail.internet.MimeMessage;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.ohmstead.access.Access;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.People;
import org.ohmstead.access.Person;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.support.SettableClock;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** A mail server in this JVM; a manager of one area with one string; today is Tuesday, 10 March 2026. */
@ServiceTest
class ReportPostTest {

    @RegisterExtension
    static final GreenMailExtension POST = new GreenMailExtension(
                    new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP))
            .withPerMethodLifecycle(false);

    private static int count;

    @DynamicPropertySource
    static void mailServer(DynamicPropertyRegistry registry) {
        registry.add("spring.mail.host", () -> "127.0.0.1");
        registry.add("spring.mail.port", () -> POST.getSmtp().getPort());
    }

    @Autowired
    private ReportPost post;

    @Autowired
    private ReportSubscriptions subscriptions;

    @Autowired
    private FleetRegister register;

    @Autowired
    private People people;

    @Autowired
    private Access access;

    @Autowired
    private SettableClock clock;

    private String area;
    private StringView own;
    private StringView others;
    private Person manager;
    private String address;

    @BeforeEach
    void aManagerOfOneArea() {
        area = "RPM-" + ++count;
        address = "manager@" + area.toLowerCase(java.util.Locale.ROOT) + ".example.org";
        access.asSystem("test", () -> {
            register.createJarType(Entries.jarType(area));
            own = string(area);
            others = string(area + "X");
            String name = "report.manager." + count;
            people.open(new NewPerson(name, "Manager", Role.MANAGER, new Reach(false, Set.of(own.areaId()))));
            manager = people.findEnabled(name).orElseThrow();
        });
    }

    @AfterEach
    void nobodyIsSubscribedAnyMore() {
        access.as(manager, () -> {
            subscriptions.own().forEach(one -> subscriptions.stop(one.id()));
            return true;
        });
        clock.set(SettableClock.START);
    }

    private StringView string(String code) {
        register.createArea(Entries.area(code));
        register.createSite(Entries.site(code, code));
        return register.createString(Entries.string(code, "A", area, 6, 6));
    }

    private void subscribe(String email, ReportKind kind, ReportForm form, Rhythm rhythm) {
        access.as(manager, () -> {
            subscriptions.add(email, kind, form, null, rhythm);
            return true;
        });
    }

    private MimeMessage[] received() throws Exception {
        return POST.getReceivedMessagesForDomain(address.substring(address.indexOf('@') + 1));
    }

    @Test
    void aSubscribedReportGoesOutOnceInItsWeekWithWhatIsInReach() throws Exception {
        subscribe(address, ReportKind.ESTATE, ReportForm.PDF, Rhythm.WEEKLY);
        assertThat(post.sendAll()).isEqualTo(1);
        MimeMessage message = received()[0];
        assertThat(message.getSubject()).isEqualTo("Batteries: Estate status, 2026-03-10");
        Multipart parts = (Multipart) message.getContent();
        assertThat(parts.getBodyPart(1).getFileName()).isEqualTo("estate-status-2026-03-10-Europe-Oslo.pdf");
        byte[] file = parts.getBodyPart(1).getInputStream().readAllBytes();
        try (PDDocument document = Loader.loadPDF(file)) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains(own.title())
                    .doesNotContain(others.title());
        }
        assertThat(GreenMailUtil.getWholeMessage(message)).contains("stop it there");

        clock.set(Instant.parse("2026-03-15T23:00:00Z"));
        assertThat(post.sendAll()).as("Sunday of the same week").isZero();
        clock.set(Instant.parse("2026-03-16T05:30:00Z"));
        assertThat(post.sendAll()).as("Monday").isEqualTo(1);
    }

    @Test
    void aQuarterlyOneIsAboutTheQuarterThatIsOver() throws Exception {
        subscribe(address, ReportKind.COMPLIANCE, ReportForm.CSV, Rhythm.QUARTERLY);
        assertThat(post.sendAll()).isEqualTo(1);
        clock.set(Instant.parse("2026-03-31T05:30:00Z"));
        assertThat(post.sendAll()).isZero();
        clock.set(Instant.parse("2026-04-01T05:30:00Z"));
        assertThat(post.sendAll()).isEqualTo(1);
        assertThat(List.of(received()))
                .extracting(message ->
                        ((Multipart) message.getContent()).getBodyPart(1).getFileName())
                .containsExactly("compliance-2025-Q4-site-time.csv", "compliance-2026-Q1-site-time.csv");
    }

    @Test
    void aClosedAccountGetsNothing() {
        subscribe(address, ReportKind.ESTATE, ReportForm.CSV, Rhythm.MONTHLY);
        access.asSystem("test", () -> people.close(manager.userId()));
        assertThat(post.sendAll()).isZero();
        access.asSystem("test", () -> people.reopen(manager.userId()));
    }

    @Test
    void whatCannotBeSentIsRefusedAndTheSameTwiceIsAConflict() {
        assertThatThrownBy(() -> subscribe("a b", ReportKind.ESTATE, ReportForm.PDF, Rhythm.WEEKLY))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> subscribe(address, ReportKind.STRING, ReportForm.PDF, Rhythm.WEEKLY))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> subscribe(address, ReportKind.ESTATE, ReportForm.ZIP, Rhythm.WEEKLY))
                .isInstanceOf(Refused.class);
        subscribe(address, ReportKind.ESTATE, ReportForm.PDF, Rhythm.WEEKLY);
        assertThatThrownBy(() -> subscribe(address, ReportKind.ESTATE, ReportForm.PDF, Rhythm.WEEKLY))
                .isInstanceOf(Conflict.class);
    }
}
