package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.Planned;
import weekwright.scenarios.Scenarios;

/** A plan that was given up early has something to mend: it is seen, tried and taken back. */
class HelpTest {
    @TempDir
    private Path place;

    @BeforeEach
    void plan() {
        Planned.week(place, "week", Scenarios.read("clash"), 200);
    }

    @Test
    void a_finding_lights_its_sessions_and_what_would_help_is_tried_and_taken_back() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.getByText("week", new Page.GetByTextOptions().setExact(true)).click();
            Locator finding = page.locator("button.what").first();
            finding.click();
            assertThat(finding).hasAttribute("aria-pressed", "true");
            assertThat(page.locator(".lit").first()).isVisible();
            finding.click();
            assertThat(page.locator(".lit")).hasCount(0);

            coach.picture("findings");
            coach.accessible("findings");
            String before = page.locator(".verdict").textContent();
            page.locator("button.mend").first().click();
            assertThat(page.locator("#saved")).containsText("Revision 2,");
            assertThat(page.locator("#saved")).containsText("Done what helps: ");
            assertThat(page.locator(".verdict")).not().hasText(before);

            page.getByText("History", new Page.GetByTextOptions().setExact(true))
                    .click();
            page.getByLabel("What differs from revision 1").click();
            assertThat(page.locator("h1")).containsText("Revision 1 of");
            coach.picture("difference");
            coach.accessible("difference");
            page.getByText("To the week").click();
            page.locator("#undo").click();
            assertThat(page.locator(".verdict")).hasText(before);
            coach.quiet();
        }
    }

    @Test
    void what_is_left_out_is_looked_for_from_any_view_and_put_where_it_costs_least() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.getByText("week", new Page.GetByTextOptions().setExact(true)).click();
            page.getByText("From afar", new Page.GetByTextOptions().setExact(false))
                    .click();
            page.locator(".left-out [data-hold]").first().click();
            assertThat(page.locator("#hold-says")).containsText("cannot be shown in what you look at");
            coach.accessible("held from afar");
            page.locator("#hold-says a").click();
            assertThat(page.locator(".cell").first()).isVisible();
            page.keyboard().press("Escape");

            page.locator("button.put").first().click();
            assertThat(page.locator("#saved")).containsText("held there");
            coach.quiet();
        }
    }

    @Test
    void what_could_go_is_looked_for_tried_and_taken_back() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.getByText("week", new Page.GetByTextOptions().setExact(true)).click();
            page.locator("#could-go-look").focus();
            page.keyboard().press("Enter");
            assertThat(page.locator("#could-go[aria-busy=true]")).containsText("Search ");
            assertThat(page.locator("#could-go-end")).isFocused();
            coach.picture("could-go-looking");
            coach.accessible("looking for what could go");

            assertThat(page.locator(".give").first()).isVisible();
            assertThat(page.locator("#told")).containsText("Not all that is asked for was met");
            assertThat(page.locator("#could-go .answer")).isFocused();
            coach.picture("could-go");
            coach.accessible("what could go");
            String step = page.locator("#offer-0 b").textContent();
            page.locator(".give").first().click();
            assertThat(page.locator("#saved"))
                    .containsText("Tried what could go: " + step.substring(0, 1).toLowerCase(Locale.ROOT)
                            + step.substring(1));
            page.locator("#undo").click();
            assertThat(page.locator("#offer-0 b")).hasText(step);
            page.locator("#could-go-away").click();
            assertThat(page.locator("#could-go-look")).isFocused();
            coach.quiet();
        }
    }

    @Test
    void looking_for_what_could_go_is_stopped_and_shows_what_is_known() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.getByText("week", new Page.GetByTextOptions().setExact(true)).click();
            page.locator("#could-go-look").click();
            assertThat(page.locator("#could-go[aria-busy=true]")).containsText("Search ");
            page.locator("#could-go-end").click();
            assertThat(page.locator("#could-go .answer")).containsText("It was stopped before everything was tried.");
            coach.quiet();
        }
    }

    @Test
    void a_session_is_held_where_it_is_seen_among_places_and_athletes_too() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.getByText("week", new Page.GetByTextOptions().setExact(true)).click();
            page.getByText("By place").click();
            page.locator(".card.session").first().click();
            assertThat(page.locator(".cell.here")).isVisible();
            coach.picture("held-by-place");
            coach.accessible("held by place");
            page.keyboard().press("Escape");

            page.getByText("By athlete").click();
            Locator card = page.locator(".lane").nth(1).locator(".card.session").first();
            card.click();
            assertThat(page.locator(".lane").nth(1).locator(".cell.here")).isVisible();
            page.locator(".cell:not(.here):not(.no)").first().click();
            assertThat(page.locator("#saved")).containsText("held there");
            coach.quiet();
        }
    }
}
