package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.Planned;
import weekwright.scenarios.Scenarios;

/**
 * Every page at 200 % zoom, on a phone and without colour: nothing runs out of the window to the side, and what is said by
 * colour is said by something else, too. The pictures lie in {@code target/screens} for eyes to look at.
 */
class EyesTest {
    /** Half of a window of 1440 by 900: what a browser has left at 200 %. */
    private static final Browser.NewContextOptions TWICE =
            new Browser.NewContextOptions().setViewportSize(720, 450).setDeviceScaleFactor(2);

    private static final Map<String, String> PAGES = new LinkedHashMap<>();

    static {
        PAGES.put("start", "/");
        PAGES.put("week", "/w/week");
        PAGES.put("place", "/w/week?by=place");
        PAGES.put("afar", "/w/week?week=all");
        PAGES.put("history", "/w/week/history");
        PAGES.put("knowns", "/w/week/knowns");
        PAGES.put("paper", "/w/week/paper");
        PAGES.put("sheet", "/w/week/paper/sheet?day=2027-09-14");
        PAGES.put("wall", "/w/week/paper/wall");
        PAGES.put("brief", "/w/week/paper/brief");
        PAGES.put("what-if", "/w/week/whatif");
        PAGES.put("load", "/w/week/load");
        PAGES.put("log", "/w/week/log");
        PAGES.put("rules", "/w/week/rules");
        PAGES.put("words", "/w/week/words");
        PAGES.put("next", "/w/week/next");
        PAGES.put("form", "/w/week/knowns/fixtures/new");
        PAGES.put("take", "/w/week/take?what=fixtures");
    }

    @TempDir
    private Path place;

    @BeforeEach
    void plan() {
        Planned.week(place, "week", Scenarios.read("clash"), 2_000);
    }

    @Test
    void at_twice_the_size() {
        try (Coach coach = Coach.in(place, TWICE)) {
            all(coach, "twice");
        }
    }

    @Test
    void on_a_phone() {
        try (Coach coach = Coach.in(place, 390, 800)) {
            all(coach, "phone");
        }
    }

    /** As somebody sees it who sees no colours, and as a printer without them puts it on paper. */
    @Test
    void without_colour() {
        try (Coach coach = Coach.in(place)) {
            JsonObject none = new JsonObject();
            none.addProperty("type", "achromatopsia");
            coach.page.context().newCDPSession(coach.page).send("Emulation.setEmulatedVisionDeficiency", none);
            all(coach, "grey");
            Page page = coach.page;
            PAGES.forEach((name, address) -> {
                page.navigate(coach.origin() + address);
                coach.accessible(name);
            });
            page.navigate(coach.origin() + "/w/week");
            assertThat((List<?>) page.evaluate(HATCHES))
                    .as("each class of a day has a hatching and a word of its own")
                    .hasSameSizeAs((List<?>) page.evaluate(CLASSES))
                    .doesNotHaveDuplicates();
        }
    }

    private static final String HATCHES =
            "() => [...new Set([...document.querySelectorAll('.hill')].map(one =>" + " one.getAttribute('fill')))]";
    private static final String CLASSES = "() => [...new Set([...document.querySelectorAll('.day')].filter(day =>"
            + " day.querySelector('.hill')).map(day => day.querySelector('.class-word').textContent.trim().split(' ')[0]))]";

    private static void all(Coach coach, String look) {
        Page page = coach.page;
        PAGES.forEach((name, address) -> {
            page.navigate(coach.origin() + address);
            fits(coach, look + "-" + name);
        });
        page.navigate(coach.origin() + "/w/week");
        assertThat(page.locator("#remedies")).hasCount(0);
        page.locator(".card.session").nth(2).click();
        assertThat(page.locator(".hold")).isVisible();
        fits(coach, look + "-held");
        coach.quiet();
    }

    private static void fits(Coach coach, String name) {
        coach.picture(name);
        assertThat(coach.page.evaluate("() => document.documentElement.scrollWidth <= window.innerWidth"))
                .as(name + " is no wider than the window")
                .isEqualTo(true);
        assertThat((List<?>) coach.page.evaluate(CUT))
                .as(name + ": words that are cut")
                .isEmpty();
    }

    /** Headings, buttons and links whose words do not fit inside them; cards show whole lines only and say the rest when held. */
    private static final String CUT = """
            () => [...document.querySelectorAll('h1, h2, h3, .button, a, label, .verdict, .what, dd, dt, th, td, .head, .day-name')]
                .filter(one => one.getClientRects().length > 0 && !one.matches('.unseen, .skip')
                    && getComputedStyle(one).overflowX !== 'visible' && one.scrollWidth > one.clientWidth + 1)
                .map(one => one.outerHTML.slice(0, 160))""";
}
