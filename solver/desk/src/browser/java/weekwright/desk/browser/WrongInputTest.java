package weekwright.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.browser.WrongInputs.Asked;
import weekwright.desk.browser.WrongInputs.Case;
import weekwright.desk.browser.WrongInputs.Put;

/**
 * Wrong input of every form: it is said beside its field or in its form, and nothing that was typed is lost. A form that is
 * new on a page and has no case here fails.
 */
class WrongInputTest {
    @TempDir
    private Path place;

    /** What can be filled in on a page, with the address that it goes to. */
    private static final String FORMS = """
            () => [...document.forms]
                .filter((form) => [...form.elements].some((field) =>
                    field.matches('input:not([type=hidden]), select, textarea:not([readonly])')))
                .map((form) => form.action + (form.action.endsWith('/whatif') ? ' ' + form.elements.what.value : ''))""";

    @Test
    void every_form_of_the_page_has_its_case() {
        try (Coach coach = Coach.in(place)) {
            week(coach);
            Set<String> forms = new TreeSet<>();
            EveryPage.from(
                    coach.page,
                    () -> ((List<?>) coach.page.evaluate(FORMS))
                            .forEach(form -> forms.add(EveryPage.kind((String) form))));
            assertThat(forms).containsExactlyInAnyOrderElementsOf(WrongInputs.forms());
            coach.quiet();
        }
    }

    /** Sends each form that changes something as if the page had been open since before the last change. */
    private static final String LATE = """
            async () => Promise.all([...document.forms]
                .filter((form) => form.method === 'post' && form.elements.revision)
                .map(async (form) => {
                    const sent = new FormData(form);
                    sent.set('revision', '9999');
                    const plain = form.enctype.startsWith('multipart') ? sent : new URLSearchParams(sent);
                    const answer = await fetch(form.action, { method: 'POST', body: plain });
                    const said = (await answer.text()).includes('The week has changed meanwhile');
                    return form.action + ' ' + answer.status + ' ' + said;
                }))""";

    @Test
    void a_form_from_a_page_that_is_out_of_date_changes_nothing() {
        try (Coach coach = Coach.in(place)) {
            week(coach);
            Set<String> answers = new TreeSet<>();
            EveryPage.from(
                    coach.page,
                    () -> ((List<?>) coach.page.evaluate(LATE))
                            .forEach(answer -> answers.add(answered((String) answer))));
            assertThat(answers)
                    .contains("/publish 409 true", "/restore 409 true")
                    .hasSizeGreaterThan(10);
            assertThat(answers).allSatisfy(answer -> assertThat(answer).endsWith(" 409 true"));
            coach.errors.removeIf(error -> error.contains("409"));
            coach.quiet();
        }
    }

    private static String answered(String answer) {
        int space = answer.indexOf(' ');
        return EveryPage.kind(answer.substring(0, space)) + answer.substring(space);
    }

    @Test
    void it_is_said_in_the_form_and_nothing_is_lost() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            week(coach);
            String week = page.url();
            for (Asked one : WrongInputs.ASKED) {
                page.navigate(one.at().equals(WrongInputs.BEGIN) ? coach.origin() : week + one.at());
                one.puts().forEach(put -> put(page, put));
                page.locator(one.button()).click();
                assertThat(page.locator(".notice:visible")).containsText(one.says());
                if (one.stays()) {
                    one.puts().forEach(put -> stays(page.locator(put.field()), put.value()));
                    coach.accessible(one.form());
                }
            }
            coach.picture("what-if-fault");
            coach.errors.removeIf(error -> error.contains("422") || error.contains("400"));
            coach.quiet();
        }
    }

    /** What a list does not offer cannot stay chosen in it. */
    private static void stays(Locator field, String value) {
        boolean offered = (Boolean) field.evaluate(
                "(field, value) => !field.matches('select')"
                        + " || [...field.options].some((one) => one.value === value)",
                value);
        if (offered) {
            assertThat(field).hasValue(value);
        }
    }

    /** Lists offer only what is right: what is not comes from a page that somebody has changed, or has left open for long. */
    private static void put(Page page, Put put) {
        Locator field = page.locator(put.field());
        String kind = (String) field.evaluate("(field) => field.localName");
        if (kind.equals("select")) {
            // At once: a part that is drawn anew between the two would not have the option.
            field.evaluate("(field, value) => field.add(new Option(value, value, true, true))", put.value());
        } else if (kind.equals("button")) {
            field.evaluate("(field, value) => { field.value = value; }", put.value());
        } else {
            field.fill(put.value());
        }
    }

    @Test
    void files_that_are_none_are_refused_with_the_place_of_the_fault() {
        try (Coach coach = Coach.in(place)) {
            Page page = coach.page;
            page.locator("#files-folder").fill("from-home");
            page.locator("#scenario-file").setInputFiles(file("{ \"weekwright\": 1, \"title\": 7 }"));
            page.locator("#files button").click();
            assertThat(page.locator("#files .notice")).containsText("7 is not a text");
            assertThat(page.locator("#files .notice")).isFocused();
            assertThat(page.locator("#files-folder")).hasValue("from-home");
            page.locator("#scenario-file").setInputFiles(file("Dear coach,"));
            page.locator("#files button").click();
            assertThat(page.locator("#files .notice")).containsText("line 1:1");
            coach.accessible("files that are none");
            coach.errors.removeIf(error -> error.contains("422"));
            coach.quiet();
        }
    }

    private static FilePayload file(String text) {
        return new FilePayload("scenario.json", "application/json", text.getBytes(StandardCharsets.UTF_8));
    }

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
            for (Case one : WrongInputs.CASES) {
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
            assertThat(page.locator("#f-marks .fault:has(span)")).hasCount(1);
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
            assertThat(page.locator(".notice")).containsText("the week has no name: say what it is for");
            assertThat(page.locator(".notice"))
                    .containsText("the fixture \"Cup tie\" has no date and no start: give both");
            assertThat(page.locator("#fixture-0")).hasValue("Cup tie");
            page.locator("#title").fill("The week after");
            page.locator("#fixture-0").fill("");
            page.locator("#begin").click();
            assertThat(page.locator(".notice")).containsText("give small letters, digits and hyphens");
            assertThat(page.locator("#folder")).hasValue("No Such Name");
            coach.accessible("the next week with faults");
            coach.errors.removeIf(error -> error.contains("422"));
            coach.quiet();
        }
    }
}
