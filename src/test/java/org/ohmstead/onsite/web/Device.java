package org.ohmstead.onsite.web;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.ohmstead.support.Browser;

/** A crew's phone: its storage survives closing the browser, its network can be taken away. */
final class Device implements AutoCloseable {

    static final String PASSWORD = "four plain words here";

    private final Playwright playwright;
    private final Path storage;
    private final String address;
    private final List<String> complaints = new ArrayList<>();
    private BrowserContext context;

    Device(Path storage, int port) {
        Assumptions.assumeTrue(Browser.executable().isPresent(), "no Chromium on this machine");
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        this.storage = storage;
        address = "http://localhost:" + port;
        open();
    }

    void open() {
        context = playwright
                .chromium()
                .launchPersistentContext(
                        storage,
                        new BrowserType.LaunchPersistentContextOptions()
                                .setExecutablePath(Browser.executable().orElseThrow())
                                .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"))
                                .setViewportSize(390, 844)
                                .setHasTouch(true)
                                .setColorScheme(ColorScheme.LIGHT));
        context.setDefaultTimeout(60_000);
    }

    /** As when somebody swipes the browser away: what is in memory is gone, what is on disk stays. */
    void reopen() {
        context.close();
        open();
    }

    void offline(boolean away) {
        context.setOffline(away);
    }

    Page page() {
        Page page = context.newPage();
        page.onPageError(error -> complaints.add(page.url() + ": " + error));
        page.onConsoleMessage(message -> {
            if (message.text().contains("Content Security Policy")) {
                complaints.add(page.url() + ": " + message.text());
            }
        });
        return page;
    }

    /** Script errors and breaches of the content security policy. */
    List<String> complaints() {
        return complaints;
    }

    Page signedIn(String username) {
        Page page = page();
        page.navigate(address + "/sign-in");
        page.fill("input[name=username]", username);
        page.fill("input[name=password]", PASSWORD);
        page.click("main button[type=submit]");
        page.waitForSelector("details.menu");
        return page;
    }

    Page go(Page page, String path) {
        page.navigate(address + path);
        return page;
    }

    /** Opens the walk and waits until it would open without a network, too. */
    Page openedForOffline(Page page, long stringId) {
        go(page, "/strings/" + stringId + "/walk");
        page.waitForSelector("[data-walk-ready=yes]");
        page.waitForFunction("() => navigator.serviceWorker.controller !== null");
        go(page, "/strings/" + stringId + "/walk");
        page.waitForSelector("[data-walk-ready=yes]");
        page.waitForFunction("""
                async () => (await (await caches.open('walks')).keys())
                    .filter(request => request.url.includes('/walk')).length >= 2""");
        return page;
    }

    @Override
    public void close() {
        context.close();
        playwright.close();
    }
}
