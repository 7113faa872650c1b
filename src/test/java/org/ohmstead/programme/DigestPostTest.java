package org.ohmstead.programme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.icegreen.greenmail.junit5.GreenMailExtension;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.internet.MimeMessage;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Set;
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
import org.ohmstead.kernel.Refused;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.support.SettableClock;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** A mail server in this JVM; a crew of one area whose string was never visited; today is 10 March 2026. */
@ServiceTest
class DigestPostTest {

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
    private DigestPost post;

    @Autowired
    private DigestWishes wishes;

    @Autowired
    private ProgrammeKeeping keeping;

    @Autowired
    private FleetRegister register;

    @Autowired
    private People people;

    @Autowired
    private Access access;

    @Autowired
    private SettableClock clock;

    private StringView own;
    private StringView others;
    private Person crew;

    @BeforeEach
    void aCrewWithAnOverdueString() {
        String code = "DIG-" + ++count;
        access.asSystem("test", () -> {
            register.createJarType(Entries.jarType(code));
            own = string(code, code);
            others = string(code + "X", code);
            String name = "digest.crew." + count;
            people.open(new NewPerson(name, "Crew", Role.CREW, new Reach(false, Set.of(own.areaId()))));
            crew = people.findEnabled(name).orElseThrow();
        });
    }

    @AfterEach
    void nobodyWishesAnyMore() {
        access.as(crew, () -> {
            wishes.stop();
            return true;
        });
        clock.set(SettableClock.START);
    }

    private StringView string(String place, String jarType) {
        register.createArea(Entries.area(place));
        register.createSite(Entries.site(place, place));
        StringView string = register.createString(Entries.string(place, "A", jarType, 6, 6));
        keeping.assign(string.id(), null, LocalDate.parse("2025-01-10"));
        return string;
    }

    private void wish(String email) {
        access.as(crew, () -> {
            wishes.wish(email);
            return true;
        });
    }

    @Test
    void whoAskedGetsWhatIsOverdueInTheirReachOnceADay() throws Exception {
        wish("crew" + count + "@example.org");
        assertThat(post.sendAll()).isEqualTo(1);
        MimeMessage[] received = POST.getReceivedMessagesForDomain("crew" + count + "@example.org");
        assertThat(received).hasSize(1);
        assertThat(received[0].getSubject()).isEqualTo("Batteries: what is due, 2026-03-10");
        assertThat(String.valueOf(received[0].getContent()))
                .contains("Overdue (1)", own.title())
                .doesNotContain(others.title());
        assertThat(post.sendAll()).as("the same day").isZero();
        clock.tick(Duration.ofDays(1));
        assertThat(post.sendAll()).isEqualTo(1);
    }

    @Test
    void whoDidNotAskOrStoppedGetsNothing() {
        assertThat(post.sendAll()).isZero();
        wish("crew@example.org");
        access.as(crew, () -> {
            wishes.stop();
            return true;
        });
        assertThat(post.sendAll()).isZero();
    }

    @Test
    void whatIsNoAddressIsRefused() {
        assertThatThrownBy(() -> wish("nobody")).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> wish("a@b, c@d")).isInstanceOf(Refused.class);
    }
}
