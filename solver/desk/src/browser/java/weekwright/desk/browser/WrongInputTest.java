package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Wrong input of every form: it is said beside its field, in the field's words, and nothing that was typed is lost. */
class WrongInputTest {
    @TempDir
    private Path place;

    /**
     * A form with something wrong in it.
     *
     * @param at address of the form in its week
     * @param good a field that is filled in rightly, and so must stay; empty where there is none
     * @param wrong the field that is not
     * @param says a part of what is said beside it
     */
    private record Case(String at, String good, String wrong, String typed, String says) {}

    private static final List<Case> CASES = List.of(
            new Case("/knowns/fixtures/new", "label", "minutes", "long", "is text, not a whole number"),
            new Case("/knowns/commitments/new", "label", "minutes", "0", "Give a whole number from 1"),
            new Case("/knowns/groups/new", "label", "headcount", "many", "is text, not a whole number"),
            new Case("/knowns/facilities/new", "label", "straightMetres", "-5", "Give a whole number from"),
            new Case("/knowns/transfers/new", "", "minutes", "soon", "is text, not a whole number"),
            new Case("/knowns/staff/new", "name", "atOnce", "99", "Give a whole number from 1 to 20"),
            new Case("/knowns/week/1", "title", "days", "100", "Give a whole number from 1 to 84"),
            new Case("/rules/all/three-high-days", "", "weight", "much", "is text, not a number"));

    private static void week(Coach coach) {
        coach.page.locator("button.demo[value=one-match]").click();
        assertThat(coach.page.locator("#saved")).containsText("Planned");
    }

    @Test
    void it_is_said_beside_its_field_and_nothing_is_lost() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            week(coach);
            String week = page.url();
            for (Case one : CASES) {
                page.navigate(week + one.at());
                wrong(page, one);
            }
            // A refusal is an answer of its own, which the browser notes; nothing else is.
            coach.errors.removeIf(error -> error.contains("422"));
            coach.quiet();
        }
    }

    private static void wrong(Page page, Case one) {
        if (!one.good().isEmpty()) {
            page.locator("#f-" + one.good()).fill("Harbour <seconds>");
        }
        page.evaluate("() => document.querySelectorAll('details').forEach((one) => { one.open = true; })");
        page.locator("#f-" + one.wrong()).fill(one.typed());
        assertThat(page.locator("#f-" + one.wrong() + "-fault")).containsText(one.says());
        page.locator("#save").click();
        assertThat(page.locator("#f-" + one.wrong())).hasValue(one.typed());
        assertThat(page.locator("#f-" + one.wrong() + "-fault")).containsText(one.says());
        assertThat(page.locator("#f-" + one.wrong())).hasAttribute("aria-invalid", "true");
        if (!one.good().isEmpty()) {
            assertThat(page.locator("#f-" + one.good())).hasValue("Harbour <seconds>");
        }
    }

    @Test
    void a_weight_may_be_typed_in_pounds_and_nonsense_is_refused() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            week(coach);
            page.navigate(page.url() + "/knowns/athletes/new");
            page.locator("#f-name").fill("R. Harrow");
            page.locator("#f-marks-add").click();
            page.locator("#f-marks-0-measure").selectOption("lift");
            page.locator("#f-marks-0-kg").fill("heavy");
            assertThat(page.locator("#f-marks-0-kg-fault")).containsText("is text, not a number");
            page.locator("#f-marks-0-kg").fill("265 lb");
            assertThat(page.locator("#f-marks-0-kg-fault")).isEmpty();
            page.locator("#f-marks-add").click();
            assertThat(page.locator("#f-marks-0-kg")).hasValue("120.2");
            assertThat(page.locator("#f-marks-0-kg-help")).containsText("These are 265 lb.");
            assertThat(page.locator("#f-name")).hasValue("R. Harrow");
            coach.quiet();
        }
    }

    @Test
    void the_log_says_what_it_cannot_read_and_keeps_it() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            week(coach);
            page.navigate(page.url() + "/log?day=2027-02-09");
            page.locator(".things a").first().click();
            page.locator("#quick").fill("Nobody; 7; 60");
            page.locator("#f-minutes").fill("long");
            page.locator("#save").click();
            assertThat(page.locator("#form-elsewhere")).containsText("Nobody");
            assertThat(page.locator("#quick")).hasValue("Nobody; 7; 60");
            assertThat(page.locator("#f-minutes")).hasValue("long");
            coach.accessible("a log entry with faults");
            coach.picture("log-fault");
            coach.errors.removeIf(error -> error.contains("422"));
            coach.quiet();
        }
    }

    @Test
    void what_is_pasted_and_cannot_be_read_stays_to_be_mended() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            week(coach);
            page.navigate(page.url() + "/take?what=fixtures");
            String rows = "Day\tMatch\n32 Feb\tCup tie";
            page.locator("#pasted").fill(rows);
            page.locator("#preview").click();
            assertThat(page.locator("#pasted")).hasValue(rows);
            assertThat(page.locator("main")).containsText("32 Feb");
            coach.errors.removeIf(error -> error.contains("422"));
            coach.quiet();
        }
    }

    @Test
    void the_next_week_says_all_that_is_missing_and_keeps_what_was_typed() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            week(coach);
            page.locator(".ways-on a:has-text('Next week')").click();
            page.locator("#title").fill("");
            page.locator("#folder").fill("No Such Name");
            page.locator("#fixture-0").fill("Cup tie");
            page.locator("#begin").click();
            assertThat(page.locator("#notice")).containsText("the week has no name: say what it is for");
            assertThat(page.locator("#notice")).containsText("the fixture \"Cup tie\" is on \"\" at \"\"");
            assertThat(page.locator("#fixture-0")).hasValue("Cup tie");
            page.locator("#title").fill("The week after");
            page.locator("#fixture-0").fill("");
            page.locator("#begin").click();
            assertThat(page.locator("#notice")).containsText("give small letters, digits and hyphens");
            assertThat(page.locator("#folder")).hasValue("No Such Name");
            coach.accessible("the next week with faults");
            coach.errors.removeIf(error -> error.contains("422"));
            coach.quiet();
        }
    }
}
