package org.ohmstead.reports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.ByteArrayOutputStream;
import java.time.Duration;
import java.util.HexFormat;
import java.util.UUID;
import java.util.function.Supplier;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.People;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Sha256;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.support.SettableClock;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A manager who asks for files; the job that makes them is run by hand. */
@ServiceTest
class ReportExportsTest {

    private static int count;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ReportExports exports;

    @Autowired
    private ExportWork work;

    @Autowired
    private EvidencePack evidence;

    @Autowired
    private Compliance compliance;

    @Autowired
    private FleetRegister register;

    @Autowired
    private People people;

    @Autowired
    private Access access;

    @Autowired
    private SettableClock clock;

    private String area;
    private Person manager;

    @BeforeEach
    void aManager() {
        area = "EXP-" + ++count;
        access.asSystem("test", () -> {
            register.createArea(Entries.area(area));
            register.createJarType(Entries.jarType(area));
            register.createSite(Entries.site(area, area));
            register.createString(Entries.string(area, "A", area, 6, 6));
            people.open(new NewPerson("export." + count, "Manager", Role.MANAGER, Reach.EVERYWHERE));
            manager = people.findEnabled("export." + count).orElseThrow();
        });
    }

    @AfterEach
    void theClockStandsAgain() {
        clock.set(SettableClock.START);
    }

    private RequestPostProcessor manager() {
        return authentication(new PersonAuthentication(manager));
    }

    private <T> T asManager(Supplier<T> what) {
        return access.as(manager, what);
    }

    private UUID ask(ReportWish wish, ReportForm form) {
        return asManager(() -> exports.ask(wish, form));
    }

    private ExportView export(UUID id) {
        return asManager(() -> exports.export(id));
    }

    @Test
    void thePackMadeInTheBackgroundIsThePackItself() throws Exception {
        UUID id = ask(new ReportWish(ReportKind.COMPLIANCE, area, null, "2025-Q4"), ReportForm.ZIP);
        assertThat(export(id).state()).isEqualTo(ExportView.State.ASKED);
        work.perform(id);
        ExportView done = export(id);
        assertThat(done.state()).isEqualTo(ExportView.State.DONE);
        ByteArrayOutputStream directly = new ByteArrayOutputStream();
        ComplianceSummary summary = asManager(() -> compliance.summary(Quarter.parse("2025-Q4"), area));
        evidence.write(summary, directly);
        assertThat(asManager(() -> exports.file(id)).content()).isEqualTo(directly.toByteArray());
        assertThat(done.sha256()).isEqualTo(HexFormat.of().formatHex(Sha256.of(directly.toByteArray())));
    }

    @Test
    void aNodeThatTakesItUpAfterAnotherDiedMakesItAnewAndAFinishedOneStays() {
        UUID id = ask(ReportWish.ofEstate(ReportKind.ESTATE, area), ReportForm.CSV);
        work.perform(id);
        byte[] first = asManager(() -> exports.file(id)).content();
        clock.tick(Duration.ofDays(2));
        work.perform(id);
        assertThat(asManager(() -> exports.file(id)).content()).isEqualTo(first);
    }

    @Test
    void whatGoesWrongIsToldToWhoAsked() {
        UUID id = ask(ReportWish.ofEstate(ReportKind.ESTATE, "NOWHERE"), ReportForm.PDF);
        work.perform(id);
        assertThat(export(id).state()).isEqualTo(ExportView.State.FAILED);
        assertThat(export(id).problem()).contains("NOWHERE");
        assertThatThrownBy(() -> asManager(() -> exports.file(id))).isInstanceOf(NotFound.class);
    }

    @Test
    void onlyWhoAskedSeesItAndOnlyForAWeek() {
        UUID id = ask(ReportWish.ofEstate(ReportKind.ESTATE, area), ReportForm.CSV);
        work.perform(id);
        Person other = new Person(99, "somebody.else", "Other", Role.MANAGER, Reach.EVERYWHERE);
        assertThatThrownBy(() -> access.as(other, () -> exports.export(id))).isInstanceOf(NotFound.class);
        clock.tick(Duration.ofDays(8));
        work.tidy();
        assertThatThrownBy(() -> export(id)).isInstanceOf(NotFound.class);
    }

    @Test
    void nobodyKeepsTheServiceBusyWithMoreThanThree() {
        for (int i = 0; i < 3; i++) {
            ask(ReportWish.ofEstate(ReportKind.ESTATE, area), ReportForm.CSV);
        }
        assertThatThrownBy(() -> ask(ReportWish.ofEstate(ReportKind.ESTATE, area), ReportForm.CSV))
                .isInstanceOf(Conflict.class);
        assertThatThrownBy(() -> ask(ReportWish.ofEstate(ReportKind.ESTATE, area), ReportForm.ZIP))
                .isInstanceOf(Refused.class);
    }

    @Test
    void pagesAndResourcesLeadFromTheWishToTheFile() throws Exception {
        mvc.perform(get("/reports").with(manager())).andExpect(status().isOk());
        mvc.perform(post("/reports/exports")
                        .with(manager())
                        .with(csrf())
                        .param("report", "estate-status")
                        .param("form", "csv")
                        .param("area", area))
                .andExpect(redirectedUrlPattern("/reports/exports/*"));
        UUID id = asManager(exports::recent).get(0).id();
        mvc.perform(get("/reports/exports/" + id).with(manager()))
                .andExpect(content().string(Matchers.containsString("Look again")));
        mvc.perform(get("/api/exports/" + id + "/file").with(manager())).andExpect(status().isNotFound());
        work.perform(id);
        mvc.perform(get("/reports/exports/" + id).with(manager()))
                .andExpect(content().string(Matchers.containsString("Fetch the file")));
        mvc.perform(get("/api/exports/" + id + "/file").with(manager()))
                .andExpect(header().string("Content-Disposition", Matchers.containsString("estate-status-" + area)))
                .andExpect(content().string(Matchers.containsString(area + " / A")));
        mvc.perform(post("/api/exports")
                        .with(manager())
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"report\":\"warranty\",\"form\":\"xlsx\"}"))
                .andExpect(status().isAccepted())
                .andExpect(header().exists("Location"))
                .andExpect(jsonPath("$.state").value("ASKED"));
        mvc.perform(get("/api/reports/nothing/file.pdf").with(manager())).andExpect(status().isUnprocessableContent());
        mvc.perform(post("/library/prices")
                        .with(authentication(new PersonAuthentication(
                                new Person(7, "engineer", "E", Role.ENGINEER, Reach.EVERYWHERE))))
                        .with(csrf())
                        .param("jarType", area)
                        .param("validFrom", "2026-01-01")
                        .param("amount", "twelve")
                        .param("currency", "EUR"))
                .andExpect(flash().attribute("problem", Matchers.containsString("Write it as 412.50")));
    }
}
