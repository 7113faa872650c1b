package org.ohmstead.capacity.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.access.Access;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.People;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.StringView;
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
class CapacityBrowserTest {

    private static final String PASSWORD = "four plain words here";
    private static Browser browser;
    private static StringView string;

    @LocalServerPort
    private int port;

    @BeforeAll
    static void open(@Autowired Access access, @Autowired People people, @Autowired SurveyedString surveyed) {
        browser = Browser.open();
        string = surveyed.build("BRC-1");
        access.asSystem(
                "test",
                () -> people.choosePassword(
                        people.open(new NewPerson("tester", "Tessa Tester", Role.ENGINEER, Reach.EVERYWHERE))
                                .id(),
                        PASSWORD));
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private Page signedIn(int width, boolean dark) {
        return browser.signedIn("http://localhost:" + port, "tester", PASSWORD, width, dark);
    }

    @ParameterizedTest
    @CsvSource({"1440,false", "390,true"})
    void aTestIsEnteredAndReadWithoutAFault(int width, boolean dark) {
        Page page = signedIn(width, dark);
        String own = "http://localhost:" + port + "/strings/" + string.id() + "/capacity-tests";
        page.navigate(own);
        check(page);
        page.fill("#testedOn", "2025-0" + (width == 390 ? 1 : 2) + "-1" + (dark ? 1 : 2));
        page.fill("#celsius", "25");
        page.fill("#amps", "37.5");
        page.fill("#minutes", "456");
        page.fill("#jarEndVolts", "1.80 ".repeat(16) + "1.52 - " + "1.80 ".repeat(6));
        page.click("text=Record the test");
        page.waitForURL("**/capacity-tests/*");
        page.waitForSelector("text=How it was worked out");
        check(page);
        page.navigate(own);
        check(page);
        page.navigate("http://localhost:" + port + "/capacity");
        check(page);
        assertThat(browser.complaints()).isEmpty();
    }

    /** A click returns before its page has come: the heading is there when it has. */
    private static void check(Page page) {
        page.waitForLoadState();
        page.waitForSelector("main h1");
        page.evaluate("document.fonts.ready");
        assertThat(Browser.overflow(page)).as("overflow of " + page.url()).isZero();
        assertThat(Browser.violations(page)).as(page.url()).isEmpty();
    }
}
