package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a coach does from the first start to a plan that was changed, planned again and undone. */
class LoopTest {
    @TempDir
    private Path place;

    private static void blankWeek(Page page) {
        page.getByLabel("What is it for?").fill("Harbour seconds");
        page.getByLabel("First day").fill("2027-03-01");
        page.getByLabel("Fixture 1", new Page.GetByLabelOptions().setExact(true))
                .fill("Cup tie");
        page.getByLabel("Date of fixture 1").fill("2027-03-06");
        page.getByLabel("Start of fixture 1").fill("14:30");
        page.getByText("Begin this week").click();
        assertThat(page.locator("#saved")).containsText("Revision 2,");
    }

    private static Locator card(Page page, String label) {
        return page.locator(".card.session", new Page.LocatorOptions().setHasText(label))
                .first();
    }

    @Test
    void from_a_blank_week_to_a_plan_that_was_changed_planned_again_and_undone() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            blankWeek(page);
            assertThat(page.locator(".card.fixture")).containsText("Cup tie");

            Locator squat = card(page, "Heavy lower");
            String before = squat.locator(".time").textContent();
            squat.click();
            assertThat(page.locator("#hold-name")).containsText("Heavy lower, knee-dominant of Squad");
            coach.picture("held");
            coach.accessible("held");
            Locator other = page.locator(".cell:not(.here):not(.no)").first();
            String start = other.getAttribute("data-start").substring(11, 16);
            other.hover();
            assertThat(page.locator("#hold-says")).containsText(start);
            other.click();

            assertThat(page.locator("#saved")).containsText("held there");
            assertThat(card(page, "Heavy lower").locator(".time")).containsText(start);
            assertThat(card(page, "Heavy lower")).containsText("pinned: time");
            page.locator("#search-begin").click();
            assertThat(page.locator(".search .progress")).not().isEmpty();
            assertThat(page.locator("#search-begin")).isVisible();
            assertThat(card(page, "Heavy lower").locator(".time")).containsText(start);

            page.locator("#undo").click();
            page.getByText("History", new Page.GetByTextOptions().setExact(true))
                    .click();
            page.getByLabel("Take up revision 2").click();
            assertThat(card(page, "Heavy lower").locator(".time")).hasText(before);
            coach.quiet();
        }
    }

    @Test
    void a_card_is_dragged_with_a_mouse() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            blankWeek(page);
            Locator squat = card(page, "Heavy lower");
            BoundingBox from = squat.boundingBox();
            page.mouse().move(from.x + 20, from.y + 10);
            page.mouse().down();
            page.mouse().move(from.x + 40, from.y + 30);
            Locator target = page.locator(".cell:not(.here):not(.no)").last();
            assertThat(target).isVisible();
            String start = target.getAttribute("data-start").substring(11, 16);
            target.scrollIntoViewIfNeeded();
            BoundingBox to = target.boundingBox();
            page.mouse().move(to.x + 30, to.y + to.height / 2);
            assertThat(page.locator(".ghost")).containsText(start);
            page.mouse().up();

            assertThat(card(page, "Heavy lower").locator(".time")).containsText(start);
            assertThat(page.locator(".ghost")).hasCount(0);
            coach.quiet();
        }
    }

    @Test
    void an_illegal_drop_happens_only_after_a_plain_warning() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            blankWeek(page);
            card(page, "Heavy lower").click();
            Locator illegal = page.locator(".cell.no").last();
            illegal.click();
            assertThat(page.locator("#warn")).isVisible();
            assertThat(page.locator("#warn-says")).containsText("Not possible. ");
            coach.picture("warned");
            coach.accessible("warned");
            page.locator("#warn-no").click();
            assertThat(page.locator("#saved")).containsText("Revision 2,");

            illegal.click();
            page.locator("#warn-yes").click();

            assertThat(page.locator(".level.must")).containsText("What must hold and does not");
            coach.picture("broken");
            coach.accessible("broken");
            page.locator(".level.must button.what").first().click();
            assertThat(page.locator(".card.lit").first()).isVisible();
            coach.quiet();
        }
    }

    @Test
    void the_keyboard_alone_is_enough_from_start_to_end() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.locator("button.demo").first().focus();
            page.keyboard().press("Enter");
            assertThat(page.locator("#saved")).containsText("Revision 2,");
            tabTo(page, ".card.session");
            String session = (String) page.evaluate("() => document.activeElement.dataset.id");
            page.keyboard().press("Enter");
            assertThat(page.locator(".cell.here")).isFocused();
            page.keyboard().press("ArrowDown");
            assertThat(page.locator("#hold-says")).containsText("Mon 8 Feb");
            page.keyboard().press("Escape");
            assertThat(page.locator(".cell")).hasCount(0);
            assertThat((String) page.evaluate("() => document.activeElement.dataset.id"))
                    .isEqualTo(session);

            page.keyboard().press("Enter");
            assertThat(page.locator(".cell.here")).isFocused();
            for (int i = 0; i < 40 && !isPossible(page); i++) {
                page.keyboard().press("ArrowDown");
            }
            page.keyboard().press("Enter");
            assertThat(page.locator("#saved")).containsText("Revision 3,");
            assertThat(page.locator(".card[data-id='" + session + "']")).isFocused();

            tabTo(page, "#undo");
            page.keyboard().press("Enter");
            assertThat(page.locator("#saved")).containsText("Revision 4,");
            assertThat(page.locator("#undo")).isFocused();
            coach.quiet();
        }
    }

    private static boolean isPossible(Page page) {
        return (boolean) page.evaluate("() => !document.activeElement.matches('.no, .here')");
    }

    /** Presses the tabulator until the focus is where it should be; every stop on the way must be seen. */
    private static void tabTo(Page page, String selector) {
        page.evaluate("() => document.activeElement.blur()");
        for (int i = 0; i < 200; i++) {
            page.keyboard().press("Tab");
            if ((boolean) page.evaluate("selector => document.activeElement.matches(selector)", selector)) {
                return;
            }
        }
        throw new AssertionError("the tabulator never reaches " + selector);
    }

    @Test
    void pins_are_set_while_the_session_stays_in_the_hand() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            blankWeek(page);
            card(page, "Heavy lower").click();
            page.locator(".pin-day").click();
            assertThat(page.locator(".pin-day")).hasAttribute("aria-pressed", "true");
            assertThat(page.locator("#saved")).containsText("Revision 3,");
            page.locator(".pin-out").click();
            assertThat(page.locator(".level.left-out")).containsText("Heavy lower");
            assertThat(page.locator("#hold-name")).containsText("Heavy lower");
            page.locator("#put-back").click();
            page.locator(".level.left-out button", new Page.LocatorOptions().setHasText("Look for a place"))
                    .first()
                    .click();
            assertThat(page.locator(".cell.better").first()).isVisible();
            coach.picture("left-out");
            coach.accessible("left out");
            coach.quiet();
        }
    }

    @Test
    void two_tabs_never_overwrite_each_other() {
        try (Coach coach = Coach.in(place)) {
            Page one = coach.page;
            blankWeek(one);
            Page two = coach.open();
            two.navigate(one.url());
            assertThat(two.locator("#saved")).containsText("Revision 2,");
            // The second tab keeps a session in the hand while the first changes the week.
            card(two, "Heavy lower").click();
            assertThat(two.locator(".cell").first()).isVisible();
            one.bringToFront();
            card(one, "Acceleration").click();
            one.locator(".pin-day").click();
            assertThat(one.locator("#saved")).containsText("Revision 3,");

            two.bringToFront();
            two.locator(".cell:not(.here):not(.no)").first().click();

            assertThat(two.locator("#notice")).containsText("The week has changed meanwhile");
            assertThat(two.locator("#saved")).containsText("Revision 3,");
            // A refusal is an answer of its own, which the browser notes; nothing else is.
            coach.errors.removeIf(error -> error.contains("409"));
            coach.quiet();
        }
    }
}
