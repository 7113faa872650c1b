package org.ohmstead.worklist.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
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
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.overview.SurveyedString;
import org.ohmstead.support.Browser;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.worklist.NewWork;
import org.ohmstead.worklist.WorkList;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkKind;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;

@ServiceTest
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(SurveyedString.class)
class WorkBrowserTest {

    private static final String PASSWORD = "four plain words here";
    private static Browser browser;
    private static StringView string;
    private static long remake;

    @LocalServerPort
    private int port;

    @BeforeAll
    static void open(
            @Autowired Access access,
            @Autowired People people,
            @Autowired SurveyedString surveyed,
            @Autowired WorkList work) {
        browser = Browser.open();
        string = surveyed.build("WKB-1");
        access.asSystem("test", () -> {
            remake = work.raise(new NewWork(
                            string.id(),
                            WorkKind.REMAKE_LINK,
                            Subject.Kind.LINK,
                            5,
                            Urgency.PLAN,
                            null,
                            "Seen with a loose nut"))
                    .id();
            people.choosePassword(
                    people.open(new NewPerson("foreman", "Finn Foreman", Role.ENGINEER, Reach.EVERYWHERE))
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

    private String at(String address) {
        return "http://localhost:" + port + address;
    }

    private Page signedIn(int width, boolean dark) {
        return browser.signedIn("http://localhost:" + port, "foreman", PASSWORD, width, dark);
    }

    @ParameterizedTest
    @CsvSource({"1440,false", "390,true"})
    void theListAndAnItemAreShownWithoutAFault(int width, boolean dark) {
        Page page = signedIn(width, dark);
        for (String address : List.of(
                "/work",
                "/work?show=dismissed",
                "/work/" + remake,
                "/work/unresolved?on=2026-03-31",
                "/strings/" + string.id() + "/work/new",
                "/sites/WKB-1",
                "/strings/" + string.id() + "/walk",
                "/strings/" + string.id())) {
            page.navigate(at(address));
            page.waitForSelector("main h1");
            page.querySelectorAll("main details").forEach(details -> details.evaluate("d => d.open = true"));
            page.evaluate("document.fonts.ready");
            assertThat(Browser.overflow(page)).as("overflow of " + address).isZero();
            assertThat(Browser.violations(page)).as(address).isEmpty();
        }
        page.waitForSelector("#work-heading ~ *, section:has(#work-heading) li");
        assertThat(page.innerText("main")).contains("Remake link 5|6");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void anItemIsPlannedReportedDoneAndTakenBack() {
        Page page = signedIn(390, false);
        page.navigate(at("/work"));
        page.check("input[aria-label^='Remake link 5|6']");
        page.click("summary:has-text('Plan them')");
        page.fill("#on", "2026-03-20");
        page.fill("#who", "Crew North");
        page.click("button:has-text('Plan the ticked')");
        assertThat(page.innerText("[role=status]")).isEqualTo("1 item is planned.");
        page.click("a:has-text('Remake link 5|6')");
        page.fill("#as-found", "61");
        page.fill("#as-left", "24.5");
        page.fill("#done-note", "Nut retightened to the maker's torque");
        page.click("button:has-text('Report it done')");
        page.waitForSelector("#waits-heading");
        assertThat(page.innerText("main")).contains("as found 61 µΩ, as left 24.5 µΩ", "for Crew North");
        page.click("summary:has-text('Take the last step back')");
        page.click("button:has-text('Take it back')");
        page.waitForSelector("#done-heading");
        assertThat(page.innerText("header.page-head")).contains("planned for 20 Mar");
        assertThat(Browser.violations(page)).isEmpty();
    }
}
