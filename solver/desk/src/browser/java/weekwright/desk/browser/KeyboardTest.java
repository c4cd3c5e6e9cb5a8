package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Keyboard;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a blank week to a plan that is given up again without a mouse: nothing but keys is used, and the focus is never lost. */
class KeyboardTest {
    private static final int MOST_STOPS = 300;

    @TempDir
    private Path place;

    private Coach coach;
    private Page page;
    private Keyboard keys;

    @BeforeEach
    void open() {
        coach = Coach.in(place);
        page = coach.page;
        keys = page.keyboard();
    }

    @AfterEach
    void close() {
        coach.close();
    }

    /** Goes on with the tabulator until the focus is where it should be. */
    private void tabTo(String selector) {
        for (int i = 0; i < MOST_STOPS; i++) {
            keys.press("Tab");
            if ((boolean) page.evaluate("selector => document.activeElement.matches(selector)", selector)) {
                return;
            }
        }
        throw new AssertionError("the tabulator never reaches " + selector);
    }

    private void press(String selector) {
        tabTo(selector);
        keys.press("Enter");
    }

    private void type(String selector, String text) {
        tabTo(selector);
        keys.type(text);
    }

    /** A date is typed part by part, in the order of the browser's language: month first, or else day first. */
    private void date(String selector, String date) {
        String[] parts = date.split("-", -1);
        type(selector, parts[1] + parts[2] + parts[0]);
        if (!page.locator(selector).inputValue().equals(date)) {
            keys.press("ArrowLeft");
            keys.press("ArrowLeft");
            keys.type(parts[2] + parts[1] + parts[0]);
        }
        assertThat(page.locator(selector)).hasValue(date);
    }

    private String focused() {
        return (String) page.evaluate("() => document.activeElement.id || document.activeElement.textContent.trim()");
    }

    /** The name of a session that lies on its own and can be moved. */
    private static final String SQUAT = ".card[data-id*='heavy-lower-knee']";

    @Test
    void from_a_blank_week_to_a_plan_that_is_given_up_again() {
        type("#title", "Harbour seconds");
        date("#first-day", "2027-03-01");
        type("#fixture-0", "Cup tie");
        date("#fixture-date-0", "2027-03-06");
        type("#fixture-time-0", "1430");
        tabTo("form.blank button.main");
        keys.press("Enter");
        assertThat(page.locator("#saved")).containsText("Revision 2,");

        String before = page.locator(SQUAT + " .time").textContent();
        press(SQUAT);
        assertThat(page.locator(".cell.here")).isFocused();
        for (int i = 0; i < 300 && !isPossible(before); i++) {
            keys.press(i % 60 == 59 ? "ArrowRight" : i / 60 % 2 == 0 ? "ArrowDown" : "ArrowUp");
        }
        assertThat(isPossible(before)).isTrue();
        keys.press("Enter");
        assertThat(page.locator("#saved")).containsText("held there");
        assertThat(page.locator(SQUAT)).isFocused();
        String held = page.locator(SQUAT + " .time").textContent();
        assertThat(held).isNotEqualTo(before);

        keys.press("Enter");
        assertThat(page.locator(".cell.here")).isFocused();
        tabTo(".pin-day");
        keys.press("Enter");
        assertThat(page.locator("#saved")).containsText("Revision 4,");
        assertThat(page.locator(".pin-day")).isFocused();

        tabTo("#change-variant");
        keys.press("ArrowDown");
        tabTo(".pin-change-variant");
        keys.press("Enter");
        assertThat(page.locator("#saved")).containsText("lift changes to");
        assertThat(page.locator(".pin-change-variant")).isFocused();
        keys.press("Escape");
        assertThat(page.locator(".cell")).hasCount(0);

        press("#search-begin");
        assertThat(page.locator(".search .progress")).not().isEmpty();
        assertThat(page.locator("#search-begin")).isVisible();
        // What was pressed is gone; the focus goes on from what is there now.
        assertThat(page.locator("#desk :focus")).hasCount(1);
        assertThat(page.locator(SQUAT + " .time")).hasText(held);

        press(".bar a[href$='/history']");
        assertThat(page.locator("h1")).containsText("History of Harbour seconds");
        tabTo("button[aria-label='Take up revision 2']");
        keys.press("Enter");
        assertThat(page.locator(SQUAT + " .time")).hasText(before);
        coach.quiet();
    }

    /** Whether the start in the keyboard's hand is possible, at another time of day than now. */
    private boolean isPossible(String now) {
        return (boolean) page.evaluate(
                "now => !document.activeElement.matches('.no, .here')"
                        + " && !now.startsWith(document.activeElement.dataset.start.slice(11, 16))",
                now.strip());
    }

    @Test
    void the_focus_goes_from_the_top_of_the_page_to_its_foot_in_the_order_in_which_it_is_read() {
        page.locator("button.demo[value=one-match]").click();
        assertThat(page.locator("#saved")).containsText("Revision 2,");
        page.reload();

        assertThat(stops(26))
                .startsWith("To the week", "Weekwright: all weeks", "undo", "redo", "History")
                .containsSubsequence("Week 1", "From afar", "By group", "By place", "By athlete")
                .containsSubsequence("By athlete", "search-begin", "search-afresh", "seconds");
        List<?> backwards = (List<?>) page.evaluate(DISORDER);
        assertThat(backwards).as("what is reached before what stands above it").isEmpty();
    }

    /** Things to press that stand in the page's source before something that is drawn wholly above them in their part. */
    private static final String DISORDER = """
            () => [...document.querySelectorAll('.bar, .look, #search, .side, .day .hours')].flatMap(part => {
              const stops = [...part.querySelectorAll('a, button, select, summary')]
                  .filter(one => one.getClientRects().length > 0 && !one.closest('details:not([open]) > :not(summary)'));
              return stops.slice(1).filter((one, i) =>
                  one.getBoundingClientRect().bottom <= stops[i].getBoundingClientRect().top)
                  .map(one => one.textContent.trim());
            })""";

    private List<String> stops(int count) {
        return java.util.stream.IntStream.range(0, count)
                .mapToObj(i -> {
                    keys.press("Tab");
                    return focused();
                })
                .toList();
    }

    @Test
    void whoever_cannot_see_is_told_what_was_done_and_what_a_start_would_do() {
        page.locator("button.demo[value=one-match]").click();
        assertThat(page.locator("#saved")).containsText("Revision 2,");
        assertThat(page.locator("#told")).hasAttribute("role", "status");
        // It stays in the page while all round it is drawn anew: what is put in anew is not read out.
        page.evaluate("() => { document.getElementById('told').marked = true; }");

        press(SQUAT);
        assertThat(page.locator("#hold-says")).hasAttribute("role", "status");
        keys.press("ArrowDown");
        assertThat(page.locator("#hold-says"))
                .containsText(Pattern.compile("(not possible|costs|saves|Costs|Saves|Not possible)"));
        keys.press("Escape");
        press("#undo");
        assertThat(page.locator("#told")).containsText("Revision 3,");
        assertThat((boolean) page.evaluate("() => document.getElementById('told').marked === true"))
                .isTrue();
        press("#search-begin");
        assertThat(page.locator("#told")).containsText("Planned");
        coach.quiet();
    }
}
