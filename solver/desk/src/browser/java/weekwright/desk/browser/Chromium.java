package weekwright.desk.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A real browser, started once for all tests. */
final class Chromium {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser");

    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            // The shared memory of a container may be too small for it.
            "--disable-dev-shm-usage",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private static final Playwright PLAYWRIGHT =
            Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    private static final Browser BROWSER = PLAYWRIGHT
            .chromium()
            .launch(new BrowserType.LaunchOptions().setExecutablePath(place()).setArgs(ARGUMENTS));

    private Chromium() {}

    /** Where the browser lies: named by the property {@code weekwright.chromium}, else found on the path of commands. */
    private static Path place() {
        String named = System.getProperty("weekwright.chromium", "");
        if (!named.isEmpty()) {
            return Path.of(named);
        }
        return Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("There is no Chromium on this machine: install the package"
                        + " chromium, or name one with -Dweekwright.chromium=FILE"));
    }

    /** A window of its own, with nothing kept of others. */
    static BrowserContext window(Browser.NewContextOptions options) {
        return BROWSER.newContext(options.setLocale("en-GB").setTimezoneId("Europe/Dublin"));
    }

    /** A page in an ordinary window. */
    static Page page() {
        return window(new Browser.NewContextOptions().setViewportSize(1440, 1000))
                .newPage();
    }
}
