package org.ohmstead.onsite.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmstead.access.Access;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.People;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.UploadView;
import org.ohmstead.onsite.WalkedEstate;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;

/** Files that are handed in through the device's outbox. */
@ServiceTest
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@Import(WalkedEstate.class)
class FilesBrowserTest {

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
    private String sheet;

    @BeforeAll
    static void people(@Autowired Access access, @Autowired People people) {
        access.asSystem(
                "test",
                () -> people.choosePassword(
                        people.open(new NewPerson("filer", "Crew 4", Role.CREW, Reach.EVERYWHERE))
                                .id(),
                        Device.PASSWORD));
    }

    @BeforeEach
    void aDevice() throws IOException {
        string = estate.stringOfSix();
        sheet = WalkedEstate.sheetOfRecord(string.siteCode());
        device = new Device(storage, port);
    }

    @AfterEach
    void close() {
        device.close();
    }

    @Test
    void aFileChosenWithoutNetworkIsExactlyOneSurveyAfterTheBrowserWasClosed() {
        Page page = device.signedIn("filer");
        device.go(page, "/on-site");
        page.waitForFunction("() => navigator.serviceWorker.controller !== null");
        device.go(page, "/on-site");
        page.waitForFunction("async () => !!(await caches.match(location.href, {ignoreVary: true}))");
        device.offline(true);
        page.reload();
        handIn(page, file("walk.csv", sheet));
        page.waitForSelector(".outbox-entry[data-state=waiting]");
        assertThat(page.innerText(".outbox-entry")).contains("walk.csv", "waiting");
        assertThat(estate.surveysOf(string)).hasSize(2);

        device.reopen();
        page = device.signedIn("filer");
        device.go(page, "/on-site");
        page.waitForSelector(".outbox-entry[data-state=handed]");
        assertThat(page.innerText(".outbox-entry")).contains(string.title(), "handed in", "6 jars and 7 link readings");
        assertThat(estate.surveysOf(string)).hasSize(3);
        assertThat(uploads()).hasSize(1);
        assertThat(raw(uploads().get(0))).isEqualTo(sheet);
        assertThat(device.complaints()).isEmpty();
    }

    @Test
    void aReceiptLostOnTheWayIsFetchedAgainByItselfAndMakesNoSecondSurvey() {
        Page page = device.signedIn("filer");
        device.go(page, "/intake");
        List<Integer> answers = new ArrayList<>();
        page.route("**/api/uploads/**", route -> {
            APIResponse answer = route.fetch();
            answers.add(answer.status());
            if (answers.size() == 1) {
                route.abort();
            } else {
                route.fulfill(new Route.FulfillOptions().setResponse(answer));
            }
        });
        handIn(page, file("walk.csv", sheet));
        page.waitForSelector("[data-progress] [data-state=handed]");

        assertThat(answers).startsWith(201).isSubsetOf(201, 200);
        assertThat(estate.surveysOf(string)).hasSize(3);
        assertThat(uploads()).hasSize(1);
    }

    @Test
    void eachFileShowsItsProgressAndCountsAsHandedInOnlyWithItsReceipt() {
        Page page = device.signedIn("filer");
        device.go(page, "/intake");
        List<Route> onTheWay = new ArrayList<>();
        page.route("**/api/uploads/**", onTheWay::add);
        handIn(page, file("walk.csv", sheet), file("notes.txt", "no survey at all\n"));

        page.waitForSelector("[data-progress] [data-state=sending] progress");
        page.waitForCondition(() -> onTheWay.size() == 1);
        assertThat(page.innerText("[data-progress]")).contains("notes.txt", "on its way", "walk.csv", "waiting");
        onTheWay.get(0).resume();
        page.waitForCondition(() -> onTheWay.size() == 2);
        assertThat(page.locator("[data-progress] [data-state=sending]").count()).isEqualTo(1);
        onTheWay.get(1).resume();

        page.waitForSelector("[data-progress] [data-state=handed]");
        page.waitForSelector("[data-progress] [data-state=refused]");
        assertThat(page.isVisible("[data-outbox-badge]")).isFalse();
        assertThat(estate.surveysOf(string)).hasSize(3);
    }

    private static void handIn(Page page, FilePayload... files) {
        page.setInputFiles("[data-hand-in] input[type=file]", files);
        page.click("[data-hand-in] button[type=submit]");
    }

    private static FilePayload file(String name, String content) {
        return new FilePayload(name, "text/csv", content.getBytes(StandardCharsets.UTF_8));
    }

    private List<UploadView> uploads() {
        return access.asSystem(
                "test",
                () -> intake.recent(null, 200).stream()
                        .filter(upload -> Long.valueOf(string.id()).equals(upload.stringId()))
                        .filter(upload -> upload.receivedBy().equals("filer"))
                        .toList());
    }

    private String raw(UploadView upload) {
        return access.asSystem("test", () -> new String(intake.raw(upload.id()), StandardCharsets.UTF_8));
    }
}
