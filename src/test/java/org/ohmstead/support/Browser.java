package org.ohmstead.support;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** The Chromium of this machine, driven like a person would. Without one the test is reported as skipped. */
public final class Browser implements AutoCloseable {

    private static final String AXE = "/META-INF/resources/webjars/axe-core/4.6.3/axe.min.js";

    private final Playwright playwright;
    private final com.microsoft.playwright.Browser chromium;
    private final List<String> complaints = new ArrayList<>();

    private Browser(Path executable) {
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        chromium = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(executable)
                        .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage")));
    }

    /**
     * Skips the calling test, and says so on the console, when there is no Chromium; fails it instead where the system
     * property {@code ohmstead.browser.required} is true.
     */
    public static Browser open() {
        Optional<Path> executable = executable();
        if (executable.isEmpty()) {
            System.err.println(
                    "SKIPPED: no Chromium on this machine; install one or set CHROMIUM to run browser tests");
        }
        if (executable.isEmpty() && Boolean.getBoolean("ohmstead.browser.required")) {
            throw new IllegalStateException("no Chromium on this machine, but browser tests are required");
        }
        Assumptions.assumeTrue(executable.isPresent(), "no Chromium on this machine");
        return new Browser(executable.get());
    }

    /** Where Chromium is, if it is on this machine; the environment variable {@code CHROMIUM} comes first. */
    public static Optional<Path> executable() {
        return Stream.of(
                        System.getenv("CHROMIUM"),
                        "/usr/bin/chromium",
                        "/usr/bin/chromium-browser",
                        "/usr/bin/google-chrome")
                .filter(path -> path != null && Files.isExecutable(Path.of(path)))
                .map(Path::of)
                .findFirst();
    }

    /** Such a page after signing in, with the estate in view. */
    public Page signedIn(String service, String username, String password, int width, boolean dark) {
        Page page = page(width, 900, dark);
        page.navigate(service + "/");
        page.fill("input[name=username]", username);
        page.fill("input[name=password]", password);
        page.click("main button[type=submit]");
        page.waitForSelector("details.menu");
        page.waitForLoadState();
        return page;
    }

    /** A fresh profile with a window of that width. Whatever the console complains of is kept. */
    public Page page(int width, int height, boolean dark) {
        BrowserContext context = chromium.newContext(new NewContextOptions()
                .setViewportSize(width, height)
                .setColorScheme(dark ? ColorScheme.DARK : ColorScheme.LIGHT));
        Page page = context.newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")) {
                complaints.add(page.url() + ": " + message.text());
            }
        });
        page.onPageError(error -> complaints.add(page.url() + ": " + error));
        return page;
    }

    /** Errors of scripts, refused resources, breaches of the content security policy. */
    public List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** How far the page is wider than its window, in pixels. */
    public static int overflow(Page page) {
        return ((Number) page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .intValue();
    }

    /** Breaches of WCAG 2.2 AA that axe finds: rule and the first elements concerned. */
    @SuppressWarnings("unchecked")
    public static List<String> violations(Page page) {
        page.evaluate(axe());
        return (List<String>) page.evaluate("""
                async () => {
                  const found = await axe.run(document, {
                    runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
                    rules: {'target-size': {enabled: false}}
                  });
                  return found.violations.map(v => v.id + ': '
                      + v.nodes.slice(0, 4).map(n => n.target.join(' ') + ' (' + n.failureSummary + ')').join(' | '));
                }""");
    }

    private static String axe() {
        try (InputStream script = Browser.class.getResourceAsStream(AXE)) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        chromium.close();
        playwright.close();
    }
}
