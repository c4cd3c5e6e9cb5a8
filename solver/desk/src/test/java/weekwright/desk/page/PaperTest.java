package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is given out from the page. */
class PaperTest {
    @TempDir
    private static Path place;

    private static Browser browser;

    @BeforeAll
    static void open() {
        browser = Browser.in(place);
        browser.post("/begin/demo", "demo", "one-match", "folder", "w");
        browser.until("/w/w", "Planned. ");
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    private static String header(HttpResponse<?> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    @Test
    void everything_that_can_be_given_out_is_offered() {
        String page = browser.get("/w/w/paper").body();

        assertThat(page)
                .contains("Day sheets", "Week for the wall", "Message for the group", "Keep the calendar")
                .contains("R. Tarrow", "First squad", "Times in Europe/");
    }

    @Test
    void a_day_sheet_is_a_page_whose_own_style_applies_and_in_which_nothing_runs() {
        HttpResponse<String> sheet = browser.get("/w/w/paper/sheet?day=2027-02-09&for=&units=metric");

        assertThat(sheet.body()).contains("First squad", "Tue 9 Feb").doesNotContain("<script");
        assertThat(header(sheet, "Content-Security-Policy"))
                .contains("default-src 'none'", "style-src 'sha256-")
                .doesNotContain("unsafe");
        String own = browser.get("/w/w/paper/sheet?day=2027-02-09&for=athlete:" + athlete())
                .body();
        assertThat(own).contains("class=\"who\"");
    }

    @Test
    void what_is_shown_leads_back_and_what_is_given_out_leads_nowhere() {
        String back =
                "<nav class=\"back\" aria-label=\"Desk\"><a href=\"/w/w/paper\">Back to sheets and paper</a></nav>";
        for (String page : new String[] {"sheet?day=2027-02-09", "wall?week=1", "brief?week=1"}) {
            assertThat(browser.get("/w/w/paper/" + page).body()).as(page).contains(back);
        }
    }

    private String athlete() {
        return browser.get("/w/w/paper").body().replaceFirst("(?s).*?value=\"athlete:([a-z0-9-]+)\".*", "$1");
    }

    @Test
    void the_wall_and_the_brief_name_no_athlete() {
        for (String page : new String[] {"wall?week=1", "brief?week=1"}) {
            String body = browser.get("/w/w/paper/" + page).body();
            assertThat(body).as(page).contains("First squad").doesNotContain("Tarrow");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"sheet?day=2027-02-09&as=pdf", "wall?week=1&as=pdf"})
    void paper_is_kept_as_a_file(String address) throws Exception {
        HttpResponse<byte[]> answer = java.net.http.HttpClient.newHttpClient()
                .send(browser.request("/w/w/paper/" + address).build(), BodyHandlers.ofByteArray());

        assertThat(new String(answer.body(), 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
        assertThat(header(answer, "Content-Disposition")).matches("attachment; filename=\"[a-z0-9-]+\\.pdf\"");
    }

    @Test
    void calendars_and_tables_are_kept_under_safe_names() {
        HttpResponse<String> calendar = browser.get("/w/w/paper/calendar?for=athlete:" + athlete());
        HttpResponse<String> table = browser.get("/w/w/paper/table?what=plan&columns=semicolon");

        assertThat(calendar.body()).startsWith("BEGIN:VCALENDAR").contains("BEGIN:VEVENT");
        assertThat(header(calendar, "Content-Disposition")).matches("attachment; filename=\"[a-z0-9-]+\\.ics\"");
        assertThat(table.body()).contains(";");
        assertThat(header(table, "Content-Disposition")).isEqualTo("attachment; filename=\"table-plan.csv\"");
    }

    @Test
    void names_for_files_hold_nothing_that_a_header_could_trip_over() {
        browser.post(
                "/w/w/knowns/week/1",
                "revision",
                revision(),
                "title",
                "\"; filename=x.exe\u05e9 Quay/../side",
                "zone",
                "Europe/Dublin",
                "firstDay",
                "2027-02-08",
                "days",
                "7",
                "gridMinutes",
                "15",
                "do",
                "save");

        HttpResponse<String> wall = browser.get("/w/w/paper/wall?week=1&as=pdf");

        assertThat(header(wall, "Content-Disposition"))
                .isEqualTo("attachment; filename=\"filename-x-exe-quay-side-week-1.pdf\"");
    }

    private String revision() {
        String page = browser.get("/w/w").body();
        return page.replaceFirst("(?s).*data-revision=\"([0-9]+)\".*", "$1");
    }

    @Test
    void what_has_changed_since_it_was_given_out_is_told() {
        assertThat(browser.post("/w/w/publish", "revision", revision()).statusCode())
                .isEqualTo(303);
        assertThat(browser.get("/w/w/paper").body()).contains("Given out Mon 8 Feb 12:00", "Nothing.");

        String page = browser.get("/w/w").body();
        String session = page.replaceFirst("(?s).*data-hold=\"([^\"]+max-velocity[^\"]+)\".*", "$1");
        HttpResponse<String> pinned =
                browser.post("/w/w/pin", "revision", revision(), "session", session, "kind", "out", "clear", "no");
        assertThat(pinned.statusCode()).isEqualTo(303);

        assertThat(browser.get("/w/w/paper").body())
                .contains("Maximal velocity sprinting")
                .contains("class=\"points\"");
    }

    @Test
    void a_calendar_kept_again_after_a_change_changes_the_same_entries() {
        String group = "/w/w/paper/calendar?for=group:first-squad";
        String before = browser.get(group).body();
        assertThat(browser.get(group).body())
                .as("unchanged: the same to the byte")
                .isEqualTo(before);

        String session = browser.get("/w/w").body().replaceFirst("(?s).*data-id=\"([^\"]+/tempo-run/[^\"]+)\".*", "$1");
        String revision = revision();
        browser.post("/w/w/pin", "revision", revision, "session", session, "kind", "out", "clear", "no");
        assertThat(revision()).isNotEqualTo(revision);

        String after = browser.get(group).body();
        assertThat(after.split("BEGIN:VEVENT")).hasSameSizeAs(before.split("BEGIN:VEVENT"));
        assertThat(uids(after)).isEqualTo(uids(before));
        assertThat(after).contains("SEQUENCE:" + revision(), "STATUS:CANCELLED");
        assertThat(before).doesNotContain("SEQUENCE:" + revision());
    }

    private static java.util.Set<String> uids(String calendar) {
        return calendar.lines().filter(line -> line.startsWith("UID:")).collect(java.util.stream.Collectors.toSet());
    }

    @Test
    void giving_out_late_is_refused() {
        assertThat(browser.post("/w/w/publish", "revision", "1").statusCode()).isEqualTo(409);
    }

    @Test
    void what_makes_no_sense_is_said() {
        assertThat(browser.get("/w/w/paper/sheet?day=2029-01-01").statusCode()).isEqualTo(422);
        assertThat(browser.get("/w/w/paper/sheet?day=nonsense").statusCode()).isEqualTo(422);
        assertThat(browser.get("/w/w/paper/calendar?for=nobody").statusCode()).isEqualTo(422);
        assertThat(browser.get("/w/w/paper/calendar?for=group:nobody").body()).contains("no group is called");
        assertThat(browser.get("/w/w/paper/wall?week=9").statusCode()).isEqualTo(422);
        assertThat(browser.get("/w/w/paper/table?what=secrets").statusCode()).isEqualTo(422);
    }
}
