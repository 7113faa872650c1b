package org.ohmstead.intake.history;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
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

/** A history is loaded on its page and followed to its end. */
@ServiceTest
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(IntakeEstate.class)
class HistoryBrowserTest {

    private static final String PASSWORD = "four plain words here";
    private static Browser browser;

    @LocalServerPort
    private int port;

    @Autowired
    private IntakeEstate estate;

    @Autowired
    private HistoryRun run;

    @BeforeAll
    static void open(@Autowired Access access, @Autowired People people) {
        browser = Browser.open();
        access.asSystem(
                "test",
                () -> people.choosePassword(
                        people.open(new NewPerson("history.browser", "Hal History", Role.ENGINEER, Reach.EVERYWHERE))
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
    void aHistoryIsSentAndItsFilesAreFollowedToTheirReceipts(int width, boolean dark) {
        StringView string = estate.stringOfSix();
        Page page = signedIn(width, dark);
        page.navigate("http://localhost:" + port + "/intake/history");
        check(page);
        page.setInputFiles(
                "#history", new FilePayload("cellar-" + width + dark + ".zip", "application/zip", files(string)));
        page.click("main button[type=submit]");
        page.waitForURL("**/intake/history/*-*");
        check(page);
        picture(page, "under-way-" + width + (dark ? "-dark" : ""));
        assertThat(page.textContent("main h1")).contains("0 of 3 files are worked through");
        run.perform(UUID.fromString(page.url().substring(page.url().lastIndexOf('/') + 1)), () -> false);
        page.waitForSelector("main h1:has-text('3 files worked through')");
        page.reload();
        check(page);
        picture(page, "done-" + width + (dark ? "-dark" : ""));
        page.click("nav .chip:has-text('Held 1')");
        page.waitForURL("**outcome=HELD");
        check(page);
        assertThat(page.textContent("main tbody")).contains("unclosed.csv").contains("closing reading");
        page.click("main tbody a");
        page.waitForSelector("main h1");
        assertThat(page.textContent("main")).contains("LAST_JAR_MISSING");
        page.navigate("http://localhost:" + port + "/intake/history");
        picture(page, "list-" + width + (dark ? "-dark" : ""));
        assertThat(browser.complaints()).isEmpty();
    }

    private static byte[] files(StringView string) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("2024/spring.csv", sheet(string, "2024-03-10T09:30", 6));
        files.put("2024/unclosed.csv", sheet(string, "2024-09-10T09:30", 5));
        files.put("2024/readme.txt", "Nothing but words".getBytes(StandardCharsets.UTF_8));
        return HistoryTest.zip(files);
    }

    private static byte[] sheet(StringView string, String takenAt, int lastJar) {
        return IntakeEstate.sheetOf(string, takenAt, lastJar).getBytes(StandardCharsets.UTF_8);
    }

    private static void picture(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of("target/pictures/history-" + name + ".png"))
                .setFullPage(true));
    }

    private Page signedIn(int width, boolean dark) {
        return browser.signedIn("http://localhost:" + port, "history.browser", PASSWORD, width, dark);
    }

    private static void check(Page page) {
        page.waitForLoadState();
        page.waitForSelector("main h1");
        page.evaluate("document.fonts.ready");
        assertThat(Browser.overflow(page)).as("overflow of " + page.url()).isZero();
        assertThat(Browser.violations(page)).as(page.url()).isEmpty();
    }
}
