package weekwright.desk.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import weekwright.desk.app.Planner;
import weekwright.desk.app.Shelf;
import weekwright.desk.page.Desk;

/** A coach at a desk: a server in this process and a window in a real browser. All that goes wrong is noted. */
final class Coach implements AutoCloseable {
    private static final Clock NOON = Clock.fixed(Instant.parse("2027-02-08T12:00:30Z"), ZoneOffset.UTC);

    private static final String AXE = resource("/axe.min.js");

    /** Milliseconds that the busiest machine may take for a step. */
    static final int SLOW = 60_000;

    private Desk desk;
    private final int port;
    private final Supplier<Shelf> shelves;
    final BrowserContext window;
    final Page page;
    final List<String> errors = new ArrayList<>();
    final List<String> requests = new ArrayList<>();
    private final List<String> addresses = new ArrayList<>();

    private Coach(Supplier<Shelf> shelves, Browser.NewContextOptions options) {
        this.shelves = shelves;
        desk = Desk.start(shelves.get(), 0, addresses::add);
        port = desk.port();
        window = Chromium.window(options);
        page = open();
    }

    /** At a desk whose weeks lie in a place. */
    static Coach in(Path place) {
        return in(place, 1440, 1000);
    }

    /** The same with a window of another size. */
    static Coach in(Path place, int width, int height) {
        return in(place, new Browser.NewContextOptions().setViewportSize(width, height));
    }

    /** With a window that is set up otherwise. */
    static Coach in(Path place, Browser.NewContextOptions options) {
        return new Coach(() -> Shelf.in(place, NOON, Planner.ENGINE), options);
    }

    /** Stops the program, as whoever closes its window does. */
    void stop() {
        desk.close();
    }

    /** Starts it again at the same place; a page must be let in anew. */
    void start() {
        desk = Desk.start(shelves.get(), port, addresses::add);
    }

    /** Opens another tab, let in. */
    Page open() {
        Page tab = window.newPage();
        tab.setDefaultTimeout(SLOW);
        tab.setDefaultNavigationTimeout(SLOW);
        PlaywrightAssertions.setDefaultAssertionTimeout(SLOW);
        tab.onConsoleMessage(message -> {
            if (message.type().equals("error") || message.type().equals("warning")) {
                errors.add(message.text());
            }
        });
        tab.onPageError(error -> errors.add(error));
        tab.onRequest(request -> requests.add(request.url()));
        tab.navigate(addresses.get(addresses.size() - 1));
        return tab;
    }

    private static String resource(String name) {
        try (InputStream in = Coach.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String origin() {
        return "http://127.0.0.1:" + port;
    }

    /** Nothing that a screen shows is closed to somebody who cannot see it or use a mouse. */
    void accessible(String screen) {
        page.evaluate(AXE);
        Object faults = page.evaluate("async () => (await axe.run()).violations.map(v => v.id + ': ' + v.help + ' '"
                + " + v.nodes.slice(0, 3).map(n => n.html + ' ' + n.failureSummary).join(' | '))");
        assertThat((List<?>) faults).as(screen).isEmpty();
    }

    /** Nothing was complained of, and nothing was asked of any other machine. */
    void quiet() {
        assertThat(errors).isEmpty();
        assertThat(requests).isNotEmpty().allSatisfy(url -> assertThat(url).startsWith(origin() + "/"));
    }

    void picture(String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of("target/screens", name + ".png"))
                .setFullPage(true)
                .setTimeout(SLOW));
    }

    @Override
    public void close() {
        window.close();
        desk.close();
    }
}
