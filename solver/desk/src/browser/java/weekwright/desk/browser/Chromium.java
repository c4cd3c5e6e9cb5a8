package weekwright.desk.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A real browser, started once for all tests. */
final class Chromium {
    /** Where the browser lies; another place is named by this property. */
    private static final String PLACE = System.getProperty("weekwright.chromium", "/usr/bin/chromium");

    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private static final Playwright PLAYWRIGHT =
            Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    private static final Browser BROWSER = PLAYWRIGHT
            .chromium()
            .launch(new BrowserType.LaunchOptions()
                    .setExecutablePath(Path.of(PLACE))
                    .setArgs(ARGUMENTS));

    private Chromium() {}

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
