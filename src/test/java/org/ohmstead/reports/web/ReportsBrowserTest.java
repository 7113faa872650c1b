package org.ohmstead.reports.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.access.Access;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.People;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.overview.SurveyedString;
import org.ohmstead.programme.NewVisit;
import org.ohmstead.programme.ProgrammeKeeping;
import org.ohmstead.programme.RoundPlan;
import org.ohmstead.programme.Rounds;
import org.ohmstead.programme.VisitBook;
import org.ohmstead.programme.rules.EvidenceKind;
import org.ohmstead.support.Browser;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;

/** Programme, rounds, visits, compliance and reports, as an engineer sees them wide and narrow, by day and by night. */
@ServiceTest
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(SurveyedString.class)
class ReportsBrowserTest {

    private static final String PASSWORD = "four plain words here";
    private static Browser browser;
    private static StringView string;
    private static long round;
    private static long visit;

    @LocalServerPort
    private int port;

    @BeforeAll
    static void aPlannedRoundAndAVisit(
            @Autowired Access access,
            @Autowired People people,
            @Autowired SurveyedString surveyed,
            @Autowired FleetRegister register,
            @Autowired ProgrammeKeeping keeping,
            @Autowired VisitBook visits,
            @Autowired Rounds rounds) {
        browser = Browser.open();
        string = surveyed.build("BRR-1");
        access.asSystem("test", () -> {
            keeping.assign(string.id(), null, LocalDate.parse("2025-01-10"));
            visit = visits.record(new NewVisit(
                    string.id(),
                    LocalDate.parse("2026-01-12"),
                    "A. Crew",
                    "",
                    List.of(NewVisit.Item.sound(EvidenceKind.CHECK_GROUNDS))));
            String area = register.site(string.siteCode()).areaCode();
            LocalDate first = rounds.today(area);
            RoundPlan plan = rounds.suggest(first, first.plusMonths(3), 2, area);
            round = rounds.adopt(
                            first,
                            first.plusMonths(3),
                            2,
                            area,
                            List.of(plan.rounds().get(0).key()))
                    .get(0);
            people.choosePassword(
                    people.open(new NewPerson("planner", "Petra Planner", Role.ENGINEER, Reach.EVERYWHERE))
                            .id(),
                    PASSWORD);
        });
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private Page signedIn(int width, boolean dark) {
        return browser.signedIn("http://localhost:" + port, "planner", PASSWORD, width, dark);
    }

    @ParameterizedTest
    @CsvSource({"1440,false", "390,true"})
    void noPageHasAFault(int width, boolean dark) {
        Page page = signedIn(width, dark);
        for (String path : List.of(
                "/strings/" + string.id() + "/programme",
                "/library/packs",
                "/rounds",
                "/rounds/plan",
                "/sites/" + string.siteCode() + "/visit",
                "/visits/" + visit,
                "/account/calendar",
                "/compliance/2025-Q4",
                "/reports",
                "/library/prices")) {
            page.navigate("http://localhost:" + port + path);
            check(page);
        }
        assertThat(browser.complaints()).isEmpty();
        page.navigate("http://localhost:" + port + "/rounds/" + round);
        check(page);
    }

    private static void check(Page page) {
        page.waitForLoadState();
        page.waitForSelector("main h1");
        page.evaluate("document.fonts.ready");
        assertThat(Browser.overflow(page)).as("overflow of " + page.url()).isZero();
        assertThat(Browser.violations(page)).as(page.url()).isEmpty();
    }

    @Test
    void aReportIsFetchedFromTheIndexAndAFileIsAskedForWithoutAScript() throws Exception {
        Page page = signedIn(1440, false);
        page.navigate("http://localhost:" + port + "/reports");
        Download report = page.waitForDownload(() -> page.click("a[href*='estate-status/file.pdf']"));
        assertThat(report.suggestedFilename()).startsWith("estate-status-").endsWith(".pdf");
        assertThat(new String(Files.readAllBytes(report.path()), 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
        page.selectOption("#report", "warranty");
        page.click("button:has-text('Make it in the background')");
        page.waitForURL("**/reports/exports/*");
        check(page);
        assertThat(page.title()).startsWith("Warranty list, waiting for its turn");
    }
}
