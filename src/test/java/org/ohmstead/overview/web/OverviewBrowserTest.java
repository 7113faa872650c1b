package org.ohmstead.overview.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
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
class OverviewBrowserTest {

    private static final String PASSWORD = "four plain words here";
    private static Browser browser;
    private static StringView string;

    @LocalServerPort
    private int port;

    @BeforeAll
    static void open(@Autowired Access access, @Autowired People people, @Autowired SurveyedString surveyed) {
        browser = Browser.open();
        string = surveyed.build("BRW-1");
        access.asSystem(
                "test",
                () -> people.choosePassword(
                        people.open(new NewPerson("reader", "Rita Reader", Role.ENGINEER, Reach.EVERYWHERE))
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
        return browser.signedIn("http://localhost:" + port, "reader", PASSWORD, width, dark);
    }

    @ParameterizedTest
    @CsvSource({"1440,false", "390,true"})
    void fromTheEstateToTheJarWithoutAFault(int width, boolean dark) {
        Page page = signedIn(width, dark);
        check(page);
        page.click("a.site >> nth=0");
        page.waitForURL("**/sites/*");
        check(page);
        page.navigate("http://localhost:" + port + "/strings/" + string.id());
        check(page);
        page.click((width > 768 ? ".rack-wide" : ".rack-narrow") + " a.jar >> nth=16");
        page.waitForURL("**/jars/17");
        check(page);
        page.navigate("http://localhost:" + port + "/strings/" + string.id() + "/links/9");
        check(page);
        page.navigate("http://localhost:" + port + "/line");
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

    @Test
    void theSlashGoesToTheFindBoxAndTheThemeIsRemembered() {
        Page page = signedIn(1440, false);
        page.keyboard().press("/");
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("find-wide");
        page.click("details.menu:not(.burger) > summary");
        page.click("[data-theme-toggle]");
        page.reload();
        assertThat(page.evaluate("document.documentElement.dataset.theme")).isEqualTo("dark");
    }
}
