package org.ohmstead.intake.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
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
import org.ohmstead.intake.PatternedWalk;
import org.ohmstead.support.Browser;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;

@ServiceTest
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(IntakeEstate.class)
class RepairBrowserTest {

    private static final String PASSWORD = "four plain words here";
    private static final String WALK = "2026-03-01T10:00";
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
                        people.open(new NewPerson("repair.browser", "Rena Repair", Role.ENGINEER, Reach.EVERYWHERE))
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
    void aReversedSurveyIsTurnedRoundTriedTakenBackAndStored(int width, boolean dark) {
        StringView string = estate.twoWithHistory().get(0);
        Page page = onTheBench(
                width, dark, PatternedWalk.of(string, WALK).fromTheOtherEnd().sheet());
        assertThat(page.textContent("main")).contains("ORDER_REVERSED", "Turn the walk round");
        look(page, "reversed", width, dark);

        page.click(".offer-first button");
        page.waitForSelector("main h1:has-text('Nothing holds')");
        look(page, "turned", width, dark);
        page.click("text=Take the last step back");
        page.waitForSelector("main h1:has-text('is held by one thing')");
        page.click(".offer-first button");
        page.click("text=Store the survey");
        page.waitForSelector("main h1:has-text('has its survey')");
        check(page);
        page.click("dd a[href*='/surveys/']");
        page.waitForURL("**/surveys/*");
        check(page);
        assertThat(page.textContent("main")).contains("As repaired", "Turn the walk round");
        assertThat(firstOhmic(page)).isEqualTo(firstOhmic(string));
        assertThat(browser.complaints()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1440,false", "390,true"})
    void aShiftedSurveyGetsItsGapAndTheMissingJarIsFilledIn(int width, boolean dark) {
        StringView string = estate.twoWithHistory().get(0);
        Page page = onTheBench(
                width, dark, PatternedWalk.of(string, WALK).skipping(12).sheet());
        look(page, "shifted", width, dark);

        page.click("button[aria-label*='a gap at jar 12,']");
        page.waitForSelector("strong:text-is('jar 12')");
        look(page, "gap", width, dark);
        page.click("text=Put a single value right");
        page.fill("#to", "0.411");
        page.fill("#reason", "read again before leaving the site");
        page.click("#single button");
        page.waitForSelector("main h1:has-text('Nothing holds')");
        check(page);
        page.click("text=Store the survey");
        page.waitForSelector("main h1:has-text('has its survey')");
        assertThat(page.textContent("main")).contains("Leave a gap at jar 12", "read again before leaving the site");
        check(page);
        assertThat(browser.complaints()).isEmpty();
    }

    private Page onTheBench(int width, boolean dark, String sheet) {
        Page page = browser.page(width, 900, dark);
        page.navigate("http://localhost:" + port + "/");
        page.fill("input[name=username]", "repair.browser");
        page.fill("input[name=password]", PASSWORD);
        page.click("main button[type=submit]");
        page.waitForSelector("details.menu");
        page.navigate("http://localhost:" + port + "/intake");
        page.setInputFiles(
                "input[type=file]", new FilePayload("walk.csv", "text/csv", sheet.getBytes(StandardCharsets.UTF_8)));
        page.click("form[data-hand-in] button[type=submit]");
        page.waitForSelector("[data-progress] a", new Page.WaitForSelectorOptions().setTimeout(20_000));
        page.click("[data-progress] a");
        page.waitForSelector("text=Repair it");
        look(page, "receipt", width, dark);
        page.click("text=Repair it");
        page.waitForURL("**/repair");
        return page;
    }

    private static String firstOhmic(Page page) {
        return page.textContent("main table tbody tr:nth-child(2) td.number").strip();
    }

    private static String firstOhmic(StringView string) {
        String row = PatternedWalk.of(string, WALK)
                .sheet()
                .lines()
                .filter(line -> line.startsWith("1,"))
                .findFirst()
                .orElseThrow();
        return String.format(Locale.ROOT, "%.3f", Double.parseDouble(row.split(",")[1]));
    }

    private static void look(Page page, String name, int width, boolean dark) {
        check(page);
        String folder = System.getProperty("ohmstead.screenshots");
        if (folder != null) {
            page.screenshot(new Page.ScreenshotOptions()
                    .setFullPage(true)
                    .setPath(Path.of(folder, name + "-" + width + (dark ? "-dark" : "") + ".png")));
        }
    }

    private static void check(Page page) {
        page.waitForLoadState();
        page.waitForSelector("main h1");
        page.evaluate("document.fonts.ready");
        assertThat(Browser.overflow(page)).as("overflow of " + page.url()).isZero();
        assertThat(Browser.violations(page)).as(page.url()).isEmpty();
    }
}
