package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScreensTest {
    @TempDir
    private Path place;

    @Test
    void every_screen_can_be_used_by_all() {
        try (Coach coach = Coach.in(place)) {
            coach.accessible("first start");
            coach.picture("start");
            coach.page.locator("button.demo").first().click();
            assertThat(coach.page.locator("#saved")).containsText("Planned");
            coach.picture("week");
            coach.accessible("week");
            coach.page.getByText("By place").click();
            coach.picture("place");
            coach.accessible("place");
            coach.page.getByText("By athlete").click();
            coach.accessible("athlete");
            coach.picture("athlete");
            coach.page.getByText("From afar").click();
            coach.accessible("afar");
            coach.picture("afar");
            coach.page.getByText("History").click();
            coach.accessible("history");
            coach.picture("history");
            coach.quiet();
        }
    }

    @Test
    void a_search_can_be_watched_by_all() {
        try (Coach coach = Coach.in(place)) {
            coach.page.locator("button.demo[value=academy]").click();
            assertThat(coach.page.locator("#saved")).containsText("Revision 2,");
            coach.page.locator("#seconds").selectOption("60");
            coach.page.locator("#search-afresh").click();
            assertThat(coach.page.locator("#search-end")).isVisible();
            assertThat(coach.page.locator(".progress")).containsText("sessions are placed");
            coach.picture("searching");
            coach.accessible("searching");
            coach.page.locator("#search-end").click();
            assertThat(coach.page.locator("#search-begin")).isVisible();
            coach.picture("searched");
            coach.accessible("searched");
            coach.quiet();
        }
    }
}
