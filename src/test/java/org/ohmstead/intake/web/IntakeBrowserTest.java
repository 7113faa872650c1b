package org.ohmstead.intake.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
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
import org.ohmstead.intake.IntakeEstate;
import org.ohmstead.support.Browser;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;

@ServiceTest
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(IntakeEstate.class)
class IntakeBrowserTest {

    private static final String PASSWORD = "four plain words here";
    private static Browser browser;

    @LocalServerPort
    private int port;

    @Autowired
    private IntakeEstate estate;

    @BeforeAll
    static void open(@Autowired Access access, @Autowired People people) {
        browser = Browser.open();
        access.asSystem(
                "test",
                () -> people.choosePassword(
                        people.open(new NewPerson("intake.browser", "Ilse Intake", Role.ENGINEER, Reach.EVERYWHERE))
                                .id(),
                        PASSWORD));
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @ParameterizedTest
    @CsvSource({"1440,false", "390,true"})
    void aSurveyGoesInAndItsReceiptAndReadingsAreShown(int width, boolean dark) {
        StringView string = estate.stringOfSix();
        Page page = signedIn(width, dark);
        handIn(page, "walk.csv", IntakeEstate.sheetOf(string, "2026-03-10T09:30"));
        check(page);
        page.locator("[data-progress] a").click();
        page.waitForURL("**/intake/*-*");
        check(page);
        assertThat(page.textContent("main h1")).contains("has its survey");
        page.click("a[href*='/surveys/']");
        page.waitForURL("**/surveys/*");
        check(page);
        assertThat(page.textContent("main table")).contains("0.416");
        assertThat(browser.complaints()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1440,false", "390,true"})
    void aSurveyWithoutItsLastJarIsHeldAndAnEngineerAcceptsItWithAReason(int width, boolean dark) {
        StringView string = estate.stringOfSix();
        Page page = signedIn(width, dark);
        handIn(page, "unclosed.csv", IntakeEstate.sheetOf(string, "2026-03-10T09:30", 5));
        assertThat(page.textContent("[data-progress]")).contains("held");
        page.locator("[data-progress] a").click();
        page.waitForURL("**/intake/*-*");
        check(page);
        assertThat(page.textContent("main")).contains("LAST_JAR_MISSING");
        page.fill("textarea[name=reason]", "The crew has left; jar 6 is read on the next round.");
        page.click("text=Accept as measured");
        page.waitForSelector("main h1:has-text('has its survey')");
        check(page);
        assertThat(browser.complaints()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1440,false", "390,true"})
    void theAnalysisPageShowsTheWalkThatWasAskedFor(int width, boolean dark, @Autowired JdbcClient jdbc) {
        // one that others left waiting would be joined
        jdbc.sql("delete from assessment_run").update();
        Page page = signedIn(width, dark);
        page.navigate("http://localhost:" + port + "/analysis");
        check(page);
        page.click("text=Walk the estate now");
        page.waitForSelector("#progress dl");
        check(page);
        assertThat(page.textContent("#progress")).contains("intake.browser");
    }

    private void handIn(Page page, String name, String sheet) {
        page.navigate("http://localhost:" + port + "/intake");
        page.setInputFiles(
                "input[type=file]", new FilePayload(name, "text/csv", sheet.getBytes(StandardCharsets.UTF_8)));
        page.click("form[data-hand-in] button[type=submit]");
        page.waitForSelector("[data-progress] a", new Page.WaitForSelectorOptions().setTimeout(20_000));
        Locator shown = page.locator("[data-progress] > li");
        assertThat(shown.count()).isEqualTo(1);
    }

    private Page signedIn(int width, boolean dark) {
        return browser.signedIn("http://localhost:" + port, "intake.browser", PASSWORD, width, dark);
    }

    private static void check(Page page) {
        page.waitForLoadState();
        page.waitForSelector("main h1");
        page.evaluate("document.fonts.ready");
        assertThat(Browser.overflow(page)).as("overflow of " + page.url()).isZero();
        assertThat(Browser.violations(page)).as(page.url()).isEmpty();
    }
}
