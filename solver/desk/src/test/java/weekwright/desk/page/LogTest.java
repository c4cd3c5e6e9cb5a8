package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.model.document.Documents;
import weekwright.model.plan.Log;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.PersonEntry;

/** What was done, written down in a minute, and the load that comes of it. */
class LogTest extends OneWeek {
    private static final String MATCH = "/w/w/log/entry?of=fixture%3A";

    LogTest() {
        super("one-match", "");
    }

    private List<LogEntry> log() throws Exception {
        Log log = Documents.readLog("log.json", file("log.json"), scenario());
        return log.entries();
    }

    private String match() throws Exception {
        return MATCH + scenario().fixtures().get(0).id() + "%3A"
                + scenario().groups().get(0).id();
    }

    @Test
    void a_day_lists_what_was_to_be_done() {
        assertThat(browser.get("/w/w/log?day=2027-02-13").body())
                .contains(
                        "League round 21, home, First squad",
                        "not written down yet",
                        "Choose one to write down how it went.");
        assertThat(browser.get("/w/w/log").body()).contains("What was done on Mon 8 Feb");
        assertThat(browser.get("/w/w/log?day=nonsense").statusCode()).isEqualTo(404);
    }

    @Test
    void a_match_is_written_down_with_lines_for_athletes() throws Exception {
        String lines = "R. Tarrow; 8; 90; 4,21; 4.18\n";

        HttpResponse<String> answer = send(
                match(),
                "done",
                "yes",
                "start",
                "2027-02-13T15:00",
                "minutes",
                "110",
                "rpe",
                "7",
                "quick",
                lines,
                "metres-of-quick",
                "30",
                "do",
                "save");

        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        LogEntry entry = log().get(0);
        assertThat(entry.fixture()).isEqualTo(scenario().fixtures().get(0).id());
        assertThat(entry.rpe()).isEqualTo(7);
        PersonEntry person = entry.people().get(0);
        assertThat(person.rpe()).isEqualTo(8);
        assertThat(person.minutes()).isEqualTo(90);
        assertThat(person.results().get(0).seconds()).containsExactly(4.21, 4.18);
        assertThat(browser.get("/w/w/log?day=2027-02-13").body()).contains("done, 110 min, RPE 7, 1 athlete reported");
        assertThat(browser.get("/w/w/load").body()).contains("Reported up to Sat 13 Feb.");

        send(match(), "do", "delete");
        assertThat(browser.get("/w/w/log?day=2027-02-13").body()).contains("not written down yet");
    }

    @Test
    void what_is_wrong_is_said_and_the_lines_stay() throws Exception {
        HttpResponse<String> answer = send(
                match(),
                "done",
                "yes",
                "start",
                "2027-02-13T15:00",
                "minutes",
                "110",
                "rpe",
                "70",
                "quick",
                "Nobody <b>; 8; 90\nR. Tarrow; 8; 90; 4.2",
                "do",
                "save");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("70 is too large. Give a number from 0 to 10.")
                .contains("line 1: nobody is called \"Nobody &lt;b&gt;\"")
                .contains("line 2 has times: say over how many metres")
                .contains("Nobody &lt;b&gt;; 8; 90");
        assertThat(folder().resolve("log.json")).doesNotExist();
    }

    @Test
    void rows_inside_rows_are_added_and_taken_out() throws Exception {
        String page = send(match(), "people[0]", "row", "people[0].athlete", "a01", "do", "add:people[0].results")
                .body();

        assertThat(page).contains("name=\"people[0].results[0].metres\"");
        String less = send(
                        match(), "people[0]", "row", "people[0].results[0]", "row", "do", "remove:people[0].results[0]")
                .body();
        assertThat(less).doesNotContain("people[0].results[0].metres");
    }

    @Test
    void load_stands_in_pictures_and_tables_with_what_is_held_against_it() throws Exception {
        String page = browser.get("/w/w/load").body();
        String athlete = browser.get(
                        "/w/w/load?athlete=" + scenario().athletes().get(0).id())
                .body();

        assertThat(page)
                .contains(
                        "<svg class=\"loads\"", "Monotony", "Strain", "High days planned", "Age at the end of the plan")
                .contains("Done is what was reported", "planned is what coaches intend");
        assertThat(page).contains("<th scope=\"col\">Mon</th><th scope=\"col\">Tue</th>");
        assertThat(athlete).contains(scenario().athletes().get(0).name());
        assertThat(browser.get("/w/w/load?athlete=nobody").statusCode()).isEqualTo(422);
    }
}
