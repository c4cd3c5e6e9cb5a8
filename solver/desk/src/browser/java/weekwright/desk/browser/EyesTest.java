package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every screen at 200 %, in print and without colour; the pictures are there to be looked at. */
class EyesTest {
    @TempDir
    private Path place;

    private static final Map<String, String> SCREENS = new LinkedHashMap<>();

    static {
        SCREENS.put("week", "");
        SCREENS.put("knowns", "/knowns");
        SCREENS.put("fixture", "/knowns/fixtures/new");
        SCREENS.put("paper", "/paper");
        SCREENS.put("what-if", "/whatif");
        SCREENS.put("load", "/load");
        SCREENS.put("log", "/log");
        SCREENS.put("rules", "/rules");
        SCREENS.put("words", "/words");
        SCREENS.put("take", "/take?what=fixtures");
        SCREENS.put("next", "/next");
        SCREENS.put("history", "/history");
    }

    private static String week(Page page) {
        page.locator("button.demo[value=one-match]").click();
        assertThat(page.locator("#saved")).containsText("Planned");
        return page.url();
    }

    /** A window of 1440 dots in which all is twice as large has room for 720. */
    @Test
    void at_200_percent_nothing_is_scrolled_sideways() {
        try (Coach coach = Coach.in(
                place, new Browser.NewContextOptions().setViewportSize(720, 500).setDeviceScaleFactor(2))) {
            Page page = coach.page;
            String week = week(page);
            SCREENS.forEach((name, at) -> {
                page.navigate(week + at);
                assertThat((Boolean) page.evaluate("() => document.documentElement.scrollWidth <= window.innerWidth"))
                        .as(name)
                        .isTrue();
                coach.accessible(name + " at 200 %");
                page.screenshot(new Page.ScreenshotOptions()
                        .setPath(Path.of("target/screens", name + "-200.png"))
                        .setTimeout(Coach.SLOW));
            });
            coach.quiet();
        }
    }

    /** What tells high from low, done from planned and better from worse is told without colour, too. */
    @Test
    void in_print_and_without_colour_the_ways_to_elsewhere_are_left_out_and_the_inks_stay() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            String week = week(page);
            SCREENS.forEach((name, at) -> {
                page.navigate(week + at);
                grey(page);
                coach.picture(name + "-grey");
            });
            page.navigate(week + "/load");
            paper(page);
            assertThat(page.locator(".ways-on")).isHidden();
            assertThat(page.locator(".loads").first()).isVisible();
            assertThat((String)
                            page.locator(".loads").first().evaluate("one => getComputedStyle(one).printColorAdjust"))
                    .isEqualTo("exact");
            grey(page);
            coach.picture("load-print");
            page.navigate(week);
            paper(page);
            grey(page);
            coach.picture("week-print");
            coach.quiet();
        }
    }

    /** Asked of the browser itself: its driver spells the name of the medium by the letters of the machine's language. */
    private static void paper(Page page) {
        JsonObject print = new JsonObject();
        print.addProperty("media", "print");
        page.context().newCDPSession(page).send("Emulation.setEmulatedMedia", print);
    }

    private static void grey(Page page) {
        page.evaluate("() => document.documentElement.animate({ filter: ['grayscale(1)', 'grayscale(1)'] },"
                + " { duration: 1, fill: 'forwards' })");
    }
}
