package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything besides the week itself, in a real browser: forms, paste, paper, what if, rules, load, log. */
class KnownsTest {
    @TempDir
    private Path place;

    private static void demo(Coach coach) {
        coach.page.locator("button.demo").first().click();
        assertThat(coach.page.locator("#saved")).containsText("Planned");
    }

    private static void way(Page page, String name) {
        page.locator(".ways-on")
                .getByText(name, new com.microsoft.playwright.Locator.GetByTextOptions().setExact(true))
                .click();
    }

    @Test
    void a_form_checks_as_one_types_and_gains_rows_without_losing_the_focus() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            demo(coach);
            way(page, "What you know and want");
            coach.accessible("knowns");
            coach.picture("knowns");
            page.getByText("Add a fixture").click();
            page.locator("#f-label").fill("Cup tie");
            page.locator("#f-minutes").fill("long");
            assertThat(page.locator("#f-minutes-fault")).containsText("is text, not a whole number");
            assertThat(page.locator("#f-minutes")).hasAttribute("aria-invalid", "true");
            assertThat(page.locator("#f-minutes")).isFocused();
            page.locator("#f-minutes").fill("105");
            assertThat(page.locator("#f-minutes-fault")).isEmpty();
            page.locator("#f-start").fill("2027-02-17T19:30");
            page.locator("#f-expected-add").click();
            assertThat(page.locator("#f-expected-0-minutes")).isVisible();
            assertThat(page.locator("#f-label")).hasValue("Cup tie");
            page.getByLabel("Take out Minutes expected 1").click();
            assertThat(page.locator("#f-expected-0-minutes")).hasCount(0);
            page.locator("#save").click();
            assertThat(page.locator("#fixtures")).containsText("Cup tie");
            page.getByText("Add a fixture").click();
            page.locator("#f-minutes").fill("long");
            assertThat(page.locator("#f-minutes-fault")).containsText("is text, not a whole number");
            // Last of all: what looks for faults leaves marks of its own on the page.
            coach.accessible("a form with a fault");
            coach.picture("form-fault");
            coach.quiet();
        }
    }

    @Test
    void a_mark_shows_only_the_fields_of_what_was_measured() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            demo(coach);
            way(page, "What you know and want");
            page.locator("#athletes .things a").first().click();
            page.locator("#f-marks-add").click();
            int last = page.locator("#f-marks .row-of").count() - 1;
            page.locator("#f-marks-" + last + "-measure").selectOption("lift");
            assertThat(page.locator("#f-marks-" + last + "-kg")).isVisible();
            assertThat(page.locator("#f-marks-" + last + "-seconds")).isHidden();
            coach.accessible("an athlete");
            coach.picture("athlete-form");
            coach.quiet();
        }
    }

    @Test
    void rows_are_pasted_seen_and_taken() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            demo(coach);
            way(page, "What you know and want");
            page.getByText("Paste fixtures, or open a calendar").click();
            page.locator("#pasted").fill("Date\tTime\tMatch\tMinutes\n2027-02-17\t19:30\tCup tie\t105\n");
            page.locator("#preview").click();
            assertThat(page.locator("#understood")).containsText("1 new");
            coach.accessible("preview");
            coach.picture("preview");
            page.locator("#take-it").click();
            assertThat(page.locator("#fixtures")).containsText("Cup tie");
            coach.quiet();
        }
    }

    @Test
    void what_would_happen_stands_beside_what_is() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            demo(coach);
            way(page, "What if");
            page.locator("#w-closed").selectOption("2027-02-09");
            page.evaluate(
                    "() => document.querySelector('form.ask').dispatchEvent(new Event('submit', { bubbles: true }))");
            assertThat(page.locator("form.ask [data-busy]").first()).hasText("Working it out: it takes some seconds.");
            page.locator("#ask-close").click();
            assertThat(page.locator("#twins")).containsText("is closed on Tue 9 Feb?");
            coach.accessible("what if");
            coach.picture("what-if");
            page.locator("#drop").click();
            assertThat(page.locator("#twins")).hasCount(0);
            coach.quiet();
        }
    }

    @Test
    void rules_load_log_and_paper_can_be_used_by_all() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            demo(coach);
            for (String name : new String[] {"Rules", "Load", "Log", "Sheets and paper", "Words"}) {
                way(page, name);
                assertThat(page.locator("h1")).isVisible();
                coach.accessible(name);
                coach.picture(name.replace(' ', '-'));
            }
            coach.quiet();
        }
    }

    @Test
    void a_phone_shows_every_page_without_scrolling_sideways() {
        try (Coach coach = Coach.in(place, 375, 800)) {
            Page page = coach.page;
            demo(coach);
            String week = page.url();
            for (String at : new String[] {
                "",
                "/knowns",
                "/knowns/fixtures/new",
                "/paper",
                "/whatif",
                "/rules",
                "/load",
                "/log",
                "/take?what=fixtures",
                "/paper/sheet?day=2027-02-09"
            }) {
                page.navigate(week + at);
                assertThat((Boolean) page.evaluate("() => document.documentElement.scrollWidth <= window.innerWidth"))
                        .as(at)
                        .isTrue();
            }
            coach.quiet();
        }
    }
}
