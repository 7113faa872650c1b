package org.ohmstead.assessment.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
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
import org.ohmstead.assessment.Instruments;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.JarsAndLinks;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.overview.SurveyedString;
import org.ohmstead.support.Browser;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;

@ServiceTest
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(SurveyedString.class)
class ForecastBrowserTest {

    private static final String PASSWORD = "four plain words here";
    private static Browser browser;
    private static StringView string;

    @LocalServerPort
    private int port;

    @BeforeAll
    static void open(
            @Autowired Access access,
            @Autowired People people,
            @Autowired SurveyedString surveyed,
            @Autowired JarsAndLinks jars,
            @Autowired SurveyLedger ledger,
            @Autowired Instruments instruments) {
        browser = Browser.open();
        string = surveyed.build("FBR-1");
        access.asSystem("test", () -> {
            for (int position = 1; position <= 6; position++) {
                jars.replaceJar(replaced(position));
            }
            ledger.accept(readWith("FBR/7"));
            instruments.lookAgain();
            people.choosePassword(
                    people.open(new NewPerson("foreseer", "Fay Foreseer", Role.ENGINEER, Reach.EVERYWHERE))
                            .id(),
                    PASSWORD);
        });
    }

    private static OccupancyEntry replaced(int position) {
        LocalDate on = Entries.COMMISSIONED.plusMonths(30 + 7L * position);
        return new OccupancyEntry("FBR-1", "A", position, "FBR-1", null, on, null, "High ohmic value", "", null, null);
    }

    private static NewSurvey readWith(String instrument) {
        double[] ohmic = new double[24];
        Arrays.fill(ohmic, .412);
        double none = Double.NaN;
        LocalDate day = LocalDate.of(2026, 1, 12);
        return NewSurvey.of(
                new SurveyFacts(
                        string.id(),
                        day.atTime(9, 0).atZone(ZoneId.of("Europe/Oslo")).toInstant(),
                        day,
                        "Crew",
                        instrument,
                        LocalDate.of(2026, 2, 1),
                        OhmicKind.IMPEDANCE,
                        60,
                        20,
                        none,
                        none,
                        none,
                        none,
                        none,
                        none,
                        true,
                        ""),
                Readings.ofOhmic(ohmic));
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private Page signedIn(int width, boolean dark) {
        return browser.signedIn("http://localhost:" + port, "foreseer", PASSWORD, width, dark);
    }

    @ParameterizedTest
    @CsvSource({"1440,false", "390,true"})
    void whatLiesAheadIsShownWithoutAFault(int width, boolean dark) {
        Page page = signedIn(width, dark);
        String of = "/strings/" + string.id();
        for (String address : List.of(
                "/forecast",
                "/forecast?area=FBR-1&quarters=12",
                "/instruments",
                "/instruments/evidence?serial=FBR/7",
                "/library/lessons",
                of + "/replay",
                of + "/jars/17",
                of + "/links/9")) {
            page.navigate("http://localhost:" + port + address);
            page.waitForSelector("main h1");
            page.querySelectorAll("main details").forEach(details -> details.evaluate("d => d.open = true"));
            page.evaluate("document.fonts.ready");
            assertThat(Browser.overflow(page)).as("overflow of " + address).isZero();
            assertThat(Browser.violations(page)).as(address).isEmpty();
        }
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void anUrgencyIsOverruledAndTheOverrulingEnded() {
        Page page = signedIn(1440, false);
        page.navigate("http://localhost:" + port + "/strings/" + string.id() + "/jars/17");
        page.click("summary:has-text('Overrule this')");
        page.selectOption("#overrule-urgency", "CLEAR");
        page.fill("#overrule-until", "2026-09-30");
        page.fill("#overrule-reason", "Tested alone, 97 % capacity");
        page.click("button:has-text('Overrule')");
        page.waitForSelector("#overruled-heading");
        assertThat(page.innerText("main")).contains("Tested alone, 97 % capacity");
        assertThat(Browser.violations(page)).isEmpty();
        page.click("button:has-text('End it now')");
        page.waitForSelector(
                "#overruled-heading",
                new Page.WaitForSelectorOptions()
                        .setState(com.microsoft.playwright.options.WaitForSelectorState.DETACHED));
    }
}
