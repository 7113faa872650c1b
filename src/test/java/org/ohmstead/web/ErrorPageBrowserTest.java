package org.ohmstead.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.People;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.support.Browser;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Only a real server shows its error pages. */
@ServiceTest
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class ErrorPageBrowserTest {

    private static final String PASSWORD = "four plain words here";
    private static Browser browser;

    @LocalServerPort
    private int port;

    @BeforeAll
    static void open(@Autowired Access access, @Autowired People people) {
        browser = Browser.open();
        access.asSystem(
                "test",
                () -> people.choosePassword(
                        people.open(new NewPerson("lost", "Lou Lost", Role.ENGINEER, Reach.EVERYWHERE))
                                .id(),
                        PASSWORD));
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void aMistypedAddressIsAnsweredWithASentence() {
        String service = "http://localhost:" + port;
        Page page = browser.signedIn(service, "lost", PASSWORD, 390, false);
        page.navigate(service + "/strings/abc");
        assertThat(page.locator("h1").innerText()).isEqualTo("That was not understood");
        assertThat(page.locator("main").innerText()).contains("“abc” cannot stand for “stringId” in this address.");
        page.navigate(service + "/strings/987654321");
        assertThat(page.locator("h1").innerText()).isEqualTo("Nothing is here");
        assertThat(page.locator("main").innerText()).contains("987654321");
        page.navigate(service + "/compliance/2026-Q9");
        assertThat(page.locator("h1").innerText()).isEqualTo("This cannot be taken as it stands");
        assertThat(page.locator("main").innerText()).contains("2026-Q9");
    }
}
