package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages are loaded anew and programs are stopped in the middle of things: nothing is lost, and the page says what is on. */
class RestartTest {
    @TempDir
    private Path place;

    private static void demo(Page page, String name) {
        page.locator("button.demo[value=" + name + "]").click();
        // Its first plan is looked for as soon as it is there.
        assertThat(page.locator("#saved")).containsText("Revision 2,");
        assertThat(page.locator("#search-begin")).isVisible();
    }

    @Test
    void a_page_that_is_loaded_anew_finds_its_search_running() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            demo(page, "academy");
            page.locator("#seconds").selectOption("60");
            page.locator("#search-afresh").click();
            assertThat(page.locator("#search-end")).isVisible();

            page.reload();

            assertThat(page.locator("#search-end")).isVisible();
            assertThat(page.locator(".progress")).containsText("sessions are placed");
            page.navigate(coach.origin());
            page.getByText("demo", new Page.GetByTextOptions().setExact(true)).click();
            assertThat(page.locator("#search-end")).isVisible();
            page.locator("#search-end").click();
            assertThat(page.locator("#saved")).containsText("Planned afresh");
            assertThat(page.locator("#search-begin")).isVisible();
            coach.quiet();
        }
    }

    @Test
    void a_program_that_is_stopped_and_started_again_shows_the_week_as_it_was() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            demo(page, "one-match");
            String saved = page.locator("#saved").textContent();

            coach.stop();

            assertThat(page.locator("#lost")).isVisible();
            coach.picture("lost");
            coach.accessible("lost");
            coach.start();
            Page other = coach.open();
            other.getByText("demo", new Page.GetByTextOptions().setExact(true)).click();
            assertThat(other.locator("#saved")).hasText(saved);
            page.bringToFront();
            assertThat(page.locator("#lost")).isHidden();
            page.locator("#undo").click();
            assertThat(page.locator("#saved")).containsText("Revision 3,");
            // A program that is not there answers nothing, and one that was started anew knows nobody yet.
            coach.errors.removeIf(error -> error.contains("ERR_CONNECTION_REFUSED")
                    || error.contains("ERR_INCOMPLETE_CHUNKED_ENCODING")
                    || error.contains("403"));
            coach.quiet();
        }
    }

    @Test
    void a_search_that_is_on_when_the_program_stops_saves_its_best_plan() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            demo(page, "academy");
            page.locator("#seconds").selectOption("60");
            page.locator("#search-afresh").click();
            assertThat(page.locator(".progress")).containsText("sessions are placed");

            coach.stop();
            coach.start();

            Page other = coach.open();
            other.getByText("demo", new Page.GetByTextOptions().setExact(true)).click();
            assertThat(other.locator("#saved"))
                    .containsText("Planned afresh", new LocatorAssertions.ContainsTextOptions().setIgnoreCase(false));
            // What the page asked as the program stopped was not answered.
            assertThat(coach.errors)
                    .allMatch(error -> error.contains("ERR_")
                            || error.contains("403")
                            || error.startsWith("htmx:sendError")
                            || error.startsWith("htmx:afterRequest"));
        }
    }
}
