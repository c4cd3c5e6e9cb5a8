package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the page asks for by itself and what a coach presses cross on the way: what was pressed is shown, and nothing older. */
class NewsTest {
    @TempDir
    private Path place;

    private static void search(Page page) {
        page.locator("button.demo[value=academy]").click();
        assertThat(page.locator("#saved")).containsText("Revision 2,");
        page.locator("#seconds").selectOption("60");
        page.locator("#search-afresh").click();
        assertThat(page.locator(".progress")).containsText("sessions are placed");
    }

    /** Has the program answer what is asked at an address and keeps the answers back. */
    private static List<Runnable> keptBack(Page page, String address) {
        List<Runnable> kept = new ArrayList<>();
        page.route(address, route -> {
            APIResponse answer = route.fetch();
            kept.add(() -> route.fulfill(new Route.FulfillOptions().setResponse(answer)));
        });
        return kept;
    }

    private static void letGo(Page page, String address, List<Runnable> kept) {
        kept.forEach(Runnable::run);
        page.unroute(address);
    }

    @Test
    void news_that_come_after_what_was_pressed_are_not_shown() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            search(page);
            List<Runnable> news = keptBack(page, "**/search?*");
            page.waitForCondition(() -> !news.isEmpty());

            page.waitForResponse(
                    "**/search/drop", () -> page.locator("#search-drop").click());
            letGo(page, "**/search?*", news);

            assertThat(page.locator(".progress")).containsText("the plan stays as it was");
            assertThat(page.locator("#search-begin")).isVisible();
            coach.quiet();
        }
    }

    @Test
    void news_that_come_before_the_answer_to_what_was_pressed_do_not_take_its_place() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            search(page);
            List<Runnable> pressed = keptBack(page, "**/search/end");
            page.locator("#search-end").click();
            page.waitForCondition(() -> !pressed.isEmpty());
            // Long enough for news that the search has ended.
            page.waitForTimeout(1500);
            assertThat(page.locator("#search-end")).isVisible();

            letGo(page, "**/search/end", pressed);

            assertThat(page.locator("#search-begin")).isVisible();
            assertThat(page.locator("#saved")).containsText("Planned afresh");
            coach.quiet();
        }
    }

    @Test
    void news_of_a_pin_do_not_take_the_keyboard_away_from_it_while_the_week_is_drawn_anew() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.locator("button.demo[value=one-match]").click();
            assertThat(page.locator("#saved")).containsText("Revision 2,");
            page.locator(".card").first().press("Enter");
            assertThat(page.locator(".cell.here")).isFocused();
            // Long enough for an answer to come between what is drawn and what is said to be drawn.
            page.evaluate("() => { htmx.config.defaultSettleDelay = 800; }");
            List<Runnable> pressed = keptBack(page, "**/pin");
            page.locator(".pin-day").press("Enter");
            page.waitForCondition(() -> !pressed.isEmpty());
            // Long enough for the news of the revision that was saved.
            page.waitForTimeout(500);

            letGo(page, "**/pin", pressed);

            assertThat(page.locator("#saved")).containsText("Revision 3,");
            page.waitForTimeout(1500);
            assertThat(page.locator(".pin-day")).isFocused();
            coach.quiet();
        }
    }

    @Test
    void what_is_chosen_for_the_next_search_stays_when_the_page_hears_of_the_last() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.locator("button.demo[value=one-match]").click();
            assertThat(page.locator("#search-away")).isVisible();
            page.reload();

            page.locator("#seconds").selectOption("60");
            // A second listener hears of it no sooner than the page's own.
            page.evaluate("() => new Promise((heard) => new EventSource(document.getElementById('desk').dataset.base"
                    + " + '/events').addEventListener('search', heard))");
            page.waitForTimeout(500);

            assertThat(page.locator("#seconds")).hasValue("60");
            coach.quiet();
        }
    }
}
