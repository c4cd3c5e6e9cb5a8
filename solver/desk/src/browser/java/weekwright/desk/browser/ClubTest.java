package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.Planned;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.SquadGenerator;

/** A club of eight squads and four weeks: each step is done, a week is never more than it shows, and a search goes on beside. */
class ClubTest {
    private static final int SQUADS = 8;
    private static final int WEEKS = 4;

    @TempDir
    private Path place;

    private int sessions() {
        Scenario scenario = SquadGenerator.squad(5, SQUADS, 28 * SQUADS, WEEKS);
        return Planned.week(place, "club", scenario, 3_000).placements().size();
    }

    @Test
    void eight_squads_and_four_weeks_can_be_worked_with() throws Exception {
        int sessions = sessions();
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.getByText("club", new Page.GetByTextOptions().setExact(true)).click();
            assertThat(page.locator(".lane")).hasCount(SQUADS);
            int first = page.locator(".card.session").count();
            assertThat(first).as("one week of four").isBetween(sessions / (2 * WEEKS), sessions / 2);

            page.getByText("Week 3").click();
            assertThat(page.locator(".look [aria-current=page]").first()).hasText("Week 3");
            coach.picture("club");
            coach.accessible("club");
            page.locator(".lane").nth(2).locator(".card.session").first().click();
            assertThat(page.locator(".cell.here")).isVisible();
            coach.picture("club-held");
            page.locator(".cell:not(.here):not(.no)").first().click();
            assertThat(page.locator("#saved")).containsText("held there");
            assertThat(page.locator(".look [aria-current=page]").first()).hasText("Week 3");

            page.getByText("All weeks from afar").click();
            assertThat(page.locator(".week")).hasCount(WEEKS);
            assertThat(page.locator(".mark.session").nth(sessions - 1)).isAttached();
            coach.picture("club-afar");
            coach.accessible("club from afar");

            page.locator("#seconds").selectOption("60");
            page.locator("#search-begin").click();
            assertThat(page.locator(".progress")).containsText("sessions are placed");
            page.getByText("Week 2").click();
            assertThat(page.locator("#search-end")).isVisible();
            page.locator("#search-drop").click();
            assertThat(page.locator(".progress")).containsText("the plan stays as it was");
            page.locator("#undo").click();
            assertThat(page.locator("#saved")).containsText("Revision 3,");
            coach.quiet();
        }
    }
}
