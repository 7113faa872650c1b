package org.ohmstead.onsite.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.LoadState;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.access.Access;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.People;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.UploadState;
import org.ohmstead.ledger.SurveyRecord;
import org.ohmstead.onsite.WalkedEstate;
import org.ohmstead.support.Browser;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;

/** A walk typed into a phone, with and without a network. */
@ServiceTest
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(WalkedEstate.class)
class WalkBrowserTest {

    @LocalServerPort
    private int port;

    @Autowired
    private WalkedEstate estate;

    @Autowired
    private Intake intake;

    @Autowired
    private Access access;

    @TempDir
    private Path storage;

    private Device device;
    private StringView string;

    @BeforeAll
    static void people(@Autowired Access access, @Autowired People people) {
        access.asSystem(
                "test",
                () -> Map.of("walker", Role.CREW, "follower", Role.CREW, "looker", Role.MANAGER)
                        .forEach((name, role) -> people.choosePassword(
                                people.open(new NewPerson(name, "Crew 3", role, Reach.EVERYWHERE))
                                        .id(),
                                Device.PASSWORD)));
    }

    @BeforeEach
    void aDevice() {
        string = estate.stringOfSix();
        device = new Device(storage, port);
    }

    @AfterEach
    void close() {
        device.close();
    }

    @Test
    void aWalkTypedWithoutNetworkIsExactlyOneSurveyAfterTheBrowserWasClosed() throws IOException {
        Page page = device.openedForOffline(device.signedIn("walker"), string.id());
        device.offline(true);
        page.reload();
        page.waitForSelector("[data-walk-ready=yes]");
        assertThat(page.innerText("[data-walk-net]")).contains("No network");

        Walking.wholeWalk(page);
        page.click("main [type=submit]");
        page.waitForSelector(".outbox-entry[data-state=waiting]");
        assertThat(page.innerText("[data-outbox-badge]")).isEqualTo("1 waiting");
        assertThat(estate.surveysOf(string)).hasSize(2);

        device.reopen();
        page = device.page();
        device.go(page, "/sign-in");
        page.waitForSelector("[data-outbox-badge]:not([hidden])", attached());
        page = device.signedIn("walker");
        device.go(page, "/on-site");
        page.waitForSelector(".outbox-entry[data-state=handed]");

        assertThat(page.innerText(".outbox-entry")).contains(string.title(), "handed in", "6 jars and 7 link readings");
        assertThat(estate.surveysOf(string)).hasSize(3);
        assertThat(rawOfTheOneUpload()).isEqualTo(WalkedEstate.sheetOfRecord(string.siteCode()));
        assertThat(device.complaints()).isEmpty();
    }

    @Test
    void twoWindowsThatComeOnlineTogetherDoNotDoubleIt() {
        Page first = device.openedForOffline(device.signedIn("walker"), string.id());
        Page second = device.page();
        device.go(second, "/on-site");
        second.waitForLoadState(LoadState.LOAD);
        device.offline(true);
        Walking.wholeWalk(first);
        first.click("main [type=submit]");
        first.waitForSelector(".outbox-entry[data-state=waiting]");
        second.waitForSelector(".outbox-entry[data-state=waiting]");

        device.offline(false);
        List.of(first, second).forEach(page -> page.evaluate("() => { Outbox.drain(true); Outbox.drain(true); }"));
        first.waitForSelector(".outbox-entry[data-state=handed]");
        second.waitForSelector(".outbox-entry[data-state=handed]");

        assertThat(estate.surveysOf(string)).hasSize(3);
        assertThat(uploadsOfTheString()).hasSize(1);
    }

    @Test
    void windowsWithoutLocksLeaveItToTheServiceToKnowTheUploadAgain() {
        Page page = device.openedForOffline(device.signedIn("walker"), string.id());
        page.evaluate("() => Object.defineProperty(navigator, 'locks', {value: undefined})");
        Walking.wholeWalk(page);
        page.evaluate("() => document.querySelector('[data-walk-form]').requestSubmit()");
        page.evaluate("() => Promise.all([Outbox.drain(true), Outbox.drain(true), Outbox.drain(true)])");
        page.waitForSelector(".outbox-entry[data-state=handed]");

        assertThat(estate.surveysOf(string)).hasSize(3);
        assertThat(uploadsOfTheString()).hasSize(1);
    }

    @Test
    void aHalfTypedWalkIsOfferedAgainAndASecondWindowMayNotWriteOverIt() {
        Page page = device.openedForOffline(device.signedIn("walker"), string.id());
        Walking.begin(page);
        Walking.whole(page);
        Walking.type(page, "12.2");
        Walking.type(page, "0.4");
        assertThat(page.innerText("[data-step-title]")).isEqualTo("Jar 1");

        Page other = device.page();
        device.go(other, "/strings/" + string.id() + "/walk");
        other.waitForSelector("[data-walk-elsewhere]:not([hidden])");
        device.reopen();
        page = device.signedIn("walker");
        device.go(page, "/strings/" + string.id() + "/walk");
        page.waitForSelector("[data-walk-draft]:not([hidden])");
        page.click("[data-walk-resume]");

        assertThat(page.innerText("[data-step-title]")).isEqualTo("Jar 1");
        assertThat(page.inputValue("[data-step-input='0']")).isEqualTo("0.4");
        assertThat(page.innerText("[data-step-done]")).contains("positive terminal link", "12.2");
    }

    @Test
    void aSignInThatRanOutIsSaidAndTheSurveyKept() {
        Page page = device.openedForOffline(device.signedIn("walker"), string.id());
        Walking.begin(page);
        Walking.walk(page);
        page.context().clearCookies();
        page.click("main [type=submit]");

        page.waitForSelector(".outbox-entry[data-state=signed-out]");
        assertThat(page.innerText(".outbox-entry")).contains("Your sign-in has expired", "Sign in");
        assertThat(estate.surveysOf(string)).hasSize(2);

        Page follower = device.signedIn("follower");
        device.go(follower, "/on-site");
        follower.waitForSelector(".outbox-entry[data-state=signed-out] >> text=It is sent when walker signs in here");
        follower.context().clearCookies();

        Page again = device.signedIn("walker");
        device.go(again, "/on-site");
        again.waitForSelector(".outbox-entry[data-state=handed]");
        assertThat(estate.surveysOf(string)).hasSize(3);
    }

    @Test
    void signingOutTakesTheWalksOffTheDevice() {
        Page page = device.openedForOffline(device.signedIn("walker"), string.id());
        page.click("details.menu:not(.burger) > summary");
        page.click("[data-sign-out] button");
        page.waitForURL("**/sign-in?out");

        assertThat(page.evaluate("() => caches.has('walks')")).isEqualTo(false);
        device.offline(true);
        assertThat(org.assertj.core.api.Assertions.catchThrowable(
                        () -> device.go(page, "/strings/" + string.id() + "/walk")))
                .hasMessageContaining("net::ERR_");
    }

    @Test
    void whoMayOnlyLookIsToldSo() {
        Page page = device.signedIn("looker");
        device.go(page, "/strings/" + string.id() + "/walk");
        page.waitForSelector("[data-walk-ready=yes]");
        assertThat(page.locator("main form[data-walk] [type=submit], main form [type=submit]:text('Hand in')")
                        .count())
                .isZero();
        assertThat(device.complaints()).isEmpty();
    }

    @Test
    void aRoundTakenAlongOpensWithoutANetwork() {
        Page page = device.signedIn("walker");
        device.go(page, "/on-site?site=" + string.siteCode());
        page.waitForFunction("() => navigator.serviceWorker.controller !== null");
        page.click("[data-take-all]");
        page.waitForSelector("text=All 1 are on this device");
        assertThat(page.innerText("[data-device-walks]")).contains(string.title());

        device.offline(true);
        device.go(page, "/strings/" + string.id() + "/walk");
        page.waitForSelector("[data-walk-ready=yes]");
        Walking.begin(page);
        assertThat(page.innerText("[data-step-count]")).contains("Step 1 of 15");
    }

    @ParameterizedTest
    @CsvSource({"1440,LIGHT", "1440,DARK", "390,LIGHT", "390,DARK"})
    void everyStageIsWithoutAFault(int width, ColorScheme scheme) {
        Page page = device.signedIn("walker");
        page.setViewportSize(width, 844);
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
        device.go(page, "/strings/" + string.id() + "/walk");
        page.waitForSelector("[data-walk-ready=yes]");
        check(page, "start");
        Walking.begin(page);
        check(page, "stepper");
        page.click("[data-step-end]");
        page.click("[data-step-not]");
        check(page, "skip");
        page.click("[data-step-skip] button >> nth=0");
        check(page, "finish");
        page.click("main [type=submit]");
        page.waitForSelector(".outbox-entry[data-state=held]");
        check(page, "handed");
        device.go(page, "/on-site?site=" + string.siteCode());
        page.waitForSelector(".outbox-entry");
        check(page, "device");
        assertThat(device.complaints()).isEmpty();
    }

    private static void check(Page page, String stage) {
        page.evaluate("document.fonts.ready");
        page.screenshot(new Page.ScreenshotOptions()
                .setFullPage(true)
                .setPath(Path.of("target/onsite-" + stage + "-" + page.viewportSize().width + "-"
                        + page.evaluate("matchMedia('(prefers-color-scheme: dark)').matches") + ".png")));
        assertThat(Browser.overflow(page)).as("overflow of " + stage).isZero();
        assertThat(Browser.violations(page)).as(stage).isEmpty();
    }

    private static Page.WaitForSelectorOptions attached() {
        return new Page.WaitForSelectorOptions()
                .setState(com.microsoft.playwright.options.WaitForSelectorState.ATTACHED);
    }

    private List<UUID> uploadsOfTheString() {
        return access.asSystem(
                "test",
                () -> intake.recent(UploadState.ACCEPTED, 200).stream()
                        .filter(upload -> Long.valueOf(string.id()).equals(upload.stringId()))
                        .filter(upload -> upload.receivedBy().equals("walker"))
                        .map(upload -> upload.id())
                        .toList());
    }

    private String rawOfTheOneUpload() {
        List<UUID> uploads = uploadsOfTheString();
        assertThat(uploads).hasSize(1);
        SurveyRecord survey = estate.lastSurveyOf(string);
        assertThat(survey.uploadId()).isEqualTo(uploads.get(0));
        return access.asSystem("test", () -> new String(intake.raw(uploads.get(0)), StandardCharsets.UTF_8));
    }

    /** What a person does at each stop, by the big keys. */
    private static final class Walking {

        private static final Map<String, String> TYPED = WalkedEstate.typed();

        static void wholeWalk(Page page) {
            begin(page);
            walk(page);
        }

        static void begin(Page page) {
            page.fill("#takenAt", TYPED.get("takenAt"));
            page.click("[data-walk-begin]");
        }

        /** Whatever is named in the walk of record; link 3|4 is over its limit at first and remade. */
        static void walk(Page page) {
            whole(page);
            type(page, TYPED.get("link-0-1"));
            for (int k = 1; k <= 6; k++) {
                type(page, TYPED.get("jar-" + k + "-ohmic"));
                type(page, TYPED.get("jar-" + k + "-volts"));
                if (k == 3) {
                    remake(page);
                }
                type(page, TYPED.get("link-" + k + "-1"));
            }
            assertThat(page.innerText("[data-step-title]")).isEqualTo("Close the test");
            page.click("[data-step-next]");
            assertThat(page.innerText("[data-step-says]")).contains("Something is not typed yet");
            type(page, TYPED.get("closing"));
            page.fill("#note", "Posts of jar 2 cleaned,\n vents clear");
        }

        static void whole(Page page) {
            for (String name : List.of(
                    "ambientCelsius", "stringVolts", "floatAmps", "rippleAmps", "injectedAmps", "clampedAmps")) {
                type(page, TYPED.getOrDefault(name, "").replace(',', '.'));
            }
        }

        private static void remake(Page page) {
            press(page, "40.1");
            assertThat(page.innerText("[data-step-says]"))
                    .contains("last time 24 µΩ, +67 %", "limit of 28.8 µΩ: clean, remake, re-measure");
            page.click("[data-step-remade-now]");
        }

        static void type(Page page, String number) {
            press(page, number);
            page.evaluate("() => document.querySelector('[data-step-next]').click()");
        }

        private static void press(Page page, String number) {
            page.evaluate(
                    "keys => [...keys].forEach(key => document.querySelector(`[data-key='${key}']`).click())", number);
        }
    }
}
