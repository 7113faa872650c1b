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
import org.ohmstead.support.Browser;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;

/** From a table that no form matches, by a map built on the spot, to a survey. */
@ServiceTest
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(IntakeEstate.class)
class MapBuilderBrowserTest {

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
                        people.open(new NewPerson("map.builder", "Mette Maps", Role.ENGINEER, Reach.EVERYWHERE))
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
    void aForeignTableBecomesASurveyByAMapBuiltFromItsReceipt(int width, boolean dark) {
        StringView string = estate.stringOfSix();
        Page page = signedIn(width, dark);
        page.navigate(address("/intake"));
        page.setInputFiles("input[type=file]", new FilePayload("log.csv", "text/csv", table(string)));
        page.click("form[data-hand-in] button[type=submit]");
        page.click("[data-progress] [data-state=refused] a");
        page.waitForSelector("main h1:has-text('is not a survey as it stands')");
        check(page, "refused", dark);
        String raw = page.getAttribute("dl.facts a[href$='/raw']", "href");
        assertThat(page.context().request().get(address(raw)).body()).isEqualTo(table(string));

        page.click("text=Build a column map from this file");
        page.waitForSelector("#preview");
        assertThat(guessed(page))
                .isEqualTo("Jar of " + string.siteCode()
                        + "=position;Impedance=jar ohmic;Volt=jar volts;Joint=link;=;=;=");
        assertThat(page.innerText("#preview")).doesNotContain(string.siteCode() + " / A");
        check(page, "builder", dark);

        sayWhatWasNotGuessed(page);
        assertThat(page.innerText("#preview")).contains("Accepted", string.siteCode() + " / A", "12.1");
        check(page, "preview", dark);
        page.fill("#name", "log of " + string.siteCode());
        page.fill("#belongsTo", "Crew 3");
        page.click("text=Save and hand the file in again");
        page.waitForSelector("main h1:has-text('has its survey')");
        assertThat(page.innerText("main")).contains(string.title(), "6 jars, 7 link readings", "READ_BY_MAP");

        page.navigate(address("/library"));
        page.click("text=see the column maps");
        page.waitForSelector("main h1:has-text('Column maps')");
        assertThat(page.innerText("main table")).contains("log of " + string.siteCode(), "Crew 3", "map.builder");
        check(page, "maps", dark);
        page.navigate(address("/library"));
        check(page, "library", dark);
        assertThat(browser.complaints()).isEmpty();
    }

    /** What the titles did not say: which row names the string, and the joints' unit. The preview follows each change. */
    private static void sayWhatWasNotGuessed(Page page) {
        page.selectOption("select[name=columnUnit] >> nth=3", "µΩ");
        page.waitForSelector("#rows-as-read td:has-text('12.1')");
        int spare = ((Number)
                        page.evaluate(
                                "[...document.querySelectorAll('select[name=factKey]')].findIndex(field => field.value === '')"))
                .intValue();
        page.selectOption("select[name=factKey] >> nth=" + spare, "string");
        page.fill("input[name=factLabel] >> nth=" + spare, "Row");
        page.keyboard().press("Tab");
        page.waitForSelector("#preview .state-accepted");
    }

    private static Object guessed(Page page) {
        return page.evaluate("""
                [...document.querySelectorAll('input[name=columnTitle]')].map((title, n) =>
                    title.value + '=' + document.querySelectorAll('select[name=columnHolds]')[n].value).join(';')""");
    }

    /** Titles of its own, so that no other test's map fits it. */
    private static byte[] table(StringView string) {
        StringBuilder table = new StringBuilder("Room;" + string.siteCode() + "\nRow;" + string.name()
                + "\nDate;10.03.2026 09:30\nAir;21 °C\n\nJar of " + string.siteCode()
                + ";Impedance;Volt;Joint\n0;;;12,1\n");
        for (int k = 1; k <= 6; k++) {
            table.append(String.format(Locale.ROOT, "%d;0,%d;2,23;%s%n", k, 410 + k, k == 6 ? "12,3" : "24,0"));
        }
        return table.toString().replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8);
    }

    private Page signedIn(int width, boolean dark) {
        Page page = browser.signedIn("http://localhost:" + port, "map.builder", PASSWORD, width, dark);
        page.setDefaultTimeout(60_000);
        return page;
    }

    private String address(String path) {
        return "http://localhost:" + port + path;
    }

    private static void check(Page page, String stage, boolean dark) {
        page.waitForLoadState();
        page.evaluate("document.fonts.ready");
        page.screenshot(new Page.ScreenshotOptions()
                .setFullPage(true)
                .setPath(Path.of("target/maps-" + stage + "-" + page.viewportSize().width + "-" + dark + ".png")));
        assertThat(Browser.overflow(page)).as("overflow of " + stage).isZero();
        assertThat(Browser.violations(page)).as(stage).isEmpty();
    }
}
