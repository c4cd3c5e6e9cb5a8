package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.scenarios.Scenarios;

/** The week as a page: where a coach begins, what is shown, what is undone. */
class WeekTest {
    private static final String HOSTILE = "<script>alert(1)</script>\"'& \u05e9\u05dc\u05d5\u05dd \ud83c\udfc3";

    @TempDir
    private Path place;

    private Browser browser;

    @BeforeEach
    void open() {
        browser = Browser.in(place);
    }

    @AfterEach
    void close() {
        browser.close();
    }

    @Test
    void the_first_page_offers_a_demo_a_blank_week_and_files() {
        String page = browser.get("/").body();

        assertThat(page).contains("Look at an invented week", "Begin a blank week: three questions", "Open files");
        assertThat(page).contains("Kilmarrow first squad, one league match on Saturday");
        assertThat(page).doesNotContain("Open a week");
    }

    @Test
    void a_demo_is_shown_day_by_day_with_match_days_fixtures_and_what_is_left_out() {
        HttpResponse<String> begun = browser.post("/begin/demo", "demo", "one-match", "folder", "mine");
        assertThat(begun.statusCode()).isEqualTo(303);
        assertThat(begun.headers().firstValue("Location")).contains("/w/mine");

        String page = browser.get("/w/mine").body();

        assertThat(page).contains("MD−4", "League round 21, home", "Team practice");
        assertThat(browser.until("/w/mine", "Planned. ")).contains("Maximal velocity sprinting", "How it stands");
        assertThat(browser.get("/").body()).contains("Open a week", "href=\"/w/mine\"");
        assertThat(place.resolve("mine/scenario.json")).exists();
    }

    @Test
    void a_blank_week_is_made_of_three_answers() {
        HttpResponse<String> begun = browser.post(
                "/begin/blank",
                "title",
                "Harbour seconds",
                "folder",
                "harbour",
                "firstDay",
                "2027-03-01",
                "zone",
                "Europe/Dublin",
                "day",
                "TUE",
                "from-TUE",
                "18:00",
                "to-TUE",
                "20:30",
                "fixture",
                "Cup tie",
                "fixtureDate",
                "2027-03-06",
                "fixtureTime",
                "14:30",
                "place",
                "gym",
                "place-name-gym",
                "The shed");
        assertThat(begun.statusCode()).isEqualTo(303);

        String page = browser.until("/w/harbour", "Planned. ");

        assertThat(page).contains("Harbour seconds", "Cup tie", "14:30", "Heavy lower, knee-dominant");
        assertThat(page).doesNotContain("Maximal velocity");
        assertThat(browser.get("/w/harbour?by=place").body()).contains("The shed");
    }

    @Test
    void a_blank_week_says_all_that_is_missing_and_keeps_what_was_typed() {
        HttpResponse<String> answer = browser.post(
                "/begin/blank",
                "title",
                "Harbour <b>seconds</b>",
                "folder",
                "harbour",
                "firstDay",
                "soon",
                "zone",
                "Atlantis",
                "day",
                "TUE",
                "from-TUE",
                "18:00",
                "to-TUE",
                "17:00",
                "fixture",
                "Cup tie",
                "fixtureDate",
                "2027-03-06",
                "fixtureTime",
                "",
                "fixture",
                "Friendly",
                "fixtureDate",
                "",
                "fixtureTime",
                "");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("the first day is \"soon\": give a date, such as 2027-03-01")
                .contains("the clocks are those of \"Atlantis\": give a zone, such as Europe/Dublin")
                .contains("Tuesday goes from 18:00 to 17:00: its end must come later")
                .contains("the fixture \"Cup tie\" has no start: give its start")
                .contains("the fixture \"Friendly\" has no date and no start: give both")
                .contains("value=\"Harbour &lt;b>seconds&lt;/b>\"");
        assertThat(place).isEmptyDirectory();
    }

    @Test
    void a_folder_that_is_there_is_not_begun_again() {
        browser.post("/begin/demo", "demo", "one-match", "folder", "mine");

        HttpResponse<String> again = browser.post("/begin/demo", "demo", "clash", "folder", "mine");

        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains("there is a week in mine already: open it, or give another name");
    }

    @Test
    void files_are_opened_and_slips_in_them_are_named() {
        String scenario = new String(Scenarios.bytes("one-match"), StandardCharsets.UTF_8);

        assertThat(send("files", scenario).statusCode()).isEqualTo(303);
        HttpResponse<String> slip = send("slip", scenario.replace("\"days\": 7", "\"days\": 700"));

        assertThat(slip.statusCode()).isEqualTo(422);
        assertThat(slip.body()).contains("scenario.json", "days");
        assertThat(place.resolve("slip")).doesNotExist();
    }

    @Test
    void documents_nested_without_end_are_refused() {
        String deep = "{\"a\":".repeat(100_000) + "1" + "}".repeat(100_000);

        assertThat(send("deep", deep).statusCode()).isEqualTo(422);
        assertThat(send("deep", "[".repeat(3_000_000)).statusCode()).isEqualTo(422);
    }

    private HttpResponse<String> send(String folder, String scenario) {
        String edge = "edge-of-a-part";
        String body =
                "--" + edge + "\r\nContent-Disposition: form-data; name=\"folder\"\r\n\r\n" + folder + "\r\n--" + edge
                        + "\r\nContent-Disposition: form-data; name=\"scenario\"; filename=\"../../a.json\"\r\n"
                        + "Content-Type: application/json\r\n\r\n" + scenario + "\r\n--" + edge + "--\r\n";
        return browser.send(browser.request("/begin/files")
                .header("Origin", browser.origin())
                .header("Content-Type", "multipart/form-data; boundary=" + edge)
                .POST(java.net.http.HttpRequest.BodyPublishers.ofString(body)));
    }

    @Test
    void names_are_text_and_never_more() throws Exception {
        Path folder = hostile();
        StringBuilder log = new StringBuilder();
        Handler ear = ear(log);
        try (Browser own = Browser.of(folder)) {
            for (String by : List.of("group", "place", "athlete")) {
                String page = own.get("/w/hostile?by=" + by).body();
                assertThat(page)
                        .contains("&lt;script&gt;alert(1)&lt;/script&gt;")
                        .doesNotContain("<script>alert");
                assertThat(Pattern.compile("<script").matcher(page).results()).hasSize(3);
                assertThat(page).doesNotContain(" style=").doesNotContainPattern("\\son[a-z]+=");
            }
        } finally {
            Logger.getLogger("").removeHandler(ear);
        }
        assertThat(log).as("logs hold no names").doesNotContain("alert", "Kilmarrow");
    }

    private static Handler ear(StringBuilder log) {
        Handler ear = new Handler() {
            @Override
            public void publish(LogRecord entry) {
                log.append(entry.getMessage()).append('\n');
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        Logger.getLogger("").addHandler(ear);
        return ear;
    }

    private Path hostile() throws Exception {
        Path folder = Files.createDirectory(place.resolve("hostile"));
        String name = HOSTILE.replace("\"", "\\\"");
        String scenario = new String(Scenarios.bytes("one-match"), StandardCharsets.UTF_8)
                .replace("First squad", name)
                .replace("League round 21, home", name)
                .replace("Team practice", name)
                .replace("R. Tarrow", name)
                .replace("Weights room", name)
                .replace("Kilmarrow first squad", name + "x".repeat(100));
        Files.writeString(folder.resolve("scenario.json"), scenario);
        return folder;
    }

    @Test
    void lanes_are_groups_places_or_athletes_and_weeks_are_seen_from_afar() {
        browser.post("/begin/demo", "demo", "two-groups", "folder", "two");

        assertThat(browser.get("/w/two?by=place").body()).contains("in use");
        assertThat(browser.get("/w/two?week=all").body()).contains("class=\"lane far\"");
        assertThat(browser.get("/w/two?week=99&by=nonsense").body()).contains("class=\"lane near\"");
    }

    @Test
    void going_back_and_forth_is_a_change_each() throws Exception {
        Path folder = Files.createDirectory(place.resolve("week"));
        Files.write(folder.resolve("scenario.json"), Scenarios.bytes("one-match"));
        try (Browser own = Browser.of(folder)) {
            assertThat(own.get("/").headers().firstValue("Location")).contains("/w/week");
            String scenario = new String(Scenarios.bytes("one-match"), StandardCharsets.UTF_8);
            own.get("/w/week");
            Files.writeString(folder.resolve("scenario.json"), scenario.replace("Kilmarrow", "Ardmore"));
            assertThat(own.get("/w/week").body()).contains("Ardmore first squad", "Revision 2");

            assertThat(own.post("/w/week/undo", "revision", "2").statusCode()).isEqualTo(303);
            assertThat(own.get("/w/week").body()).contains("Kilmarrow first squad", "Revision 3");
            own.post("/w/week/redo", "revision", "3");
            assertThat(own.get("/w/week").body()).contains("Ardmore first squad", "Revision 4");
            own.post("/w/week/restore", "revision", "4", "number", "1");
            assertThat(own.get("/w/week").body()).contains("Kilmarrow first squad", "Back to revision 1");

            HttpResponse<String> late = own.post("/w/week/undo", "revision", "2");
            assertThat(late.statusCode()).isEqualTo(409);
            assertThat(late.body()).contains("The week has changed meanwhile", "This was made from revision 2");
            assertThat(own.get("/w/week/history").body()).contains("Edited outside", "Take up", "in force");
        }
    }

    @Test
    void what_is_not_there_is_said_in_words() {
        HttpResponse<String> answer = browser.get("/w/nobody");

        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("There is nothing at this address", "To the beginning");
        assertThat(browser.get("/nowhere").body()).contains("There is nothing at this address");
        assertThat(browser.post("/w/nobody/undo", "revision", "1").statusCode()).isEqualTo(404);
    }
}
