package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** What would happen if: a second plan beside the first. */
class WhatIfTest {
    @TempDir
    private Path place;

    private Browser browser;

    @BeforeEach
    void open() throws Exception {
        Path folder = Files.createDirectory(place.resolve("week"));
        Files.write(folder.resolve("scenario.json"), Scenarios.bytes("one-match"));
        PatientPlanner planner = new PatientPlanner();
        planner.go();
        browser = Browser.in(place, planner);
        browser.post("/w/week/search", "revision", "1", "seconds", "2");
        browser.until("/w/week", "Plan again");
    }

    @AfterEach
    void close() {
        browser.close();
    }

    private Scenario scenario() throws Exception {
        return Documents.readScenario("scenario.json", Files.readAllBytes(place.resolve("week/scenario.json")));
    }

    private String revision() {
        return browser.get("/w/week").body().replaceFirst("(?s).*data-revision=\"([0-9]+)\".*", "$1");
    }

    private HttpResponse<String> ask(String... fields) {
        String[] all = new String[fields.length + 2];
        all[0] = "revision";
        all[1] = revision();
        System.arraycopy(fields, 0, all, 2, fields.length);
        return browser.post("/w/week/whatif", all);
    }

    @Test
    void a_fixture_that_moves_makes_a_second_plan_beside_the_first_which_is_kept() throws Exception {
        String fixture = scenario().fixtures().get(0).id();

        assertThat(ask("what", "move", "fixture", fixture, "to", "2027-02-14T15:00")
                        .statusCode())
                .isEqualTo(303);
        String page = browser.get("/w/week/whatif").body();

        assertThat(page)
                .contains("What if League round 21, home moves to Sun 14 Feb 15:00?", "As it is", "If so")
                .contains("new here", "goes", "differs", "Keep the second plan");
        assertThat(scenario().fixtures().get(0).start().date()).hasToString("2027-02-13");

        assertThat(browser.post("/w/week/whatif/keep", "revision", revision()).statusCode())
                .isEqualTo(303);
        assertThat(scenario().fixtures().get(0).start().date()).hasToString("2027-02-14");
        assertThat(browser.get("/w/week/history").body())
                .contains("What if League round 21, home moves to Sun 14 Feb 15:00");
        assertThat(browser.get("/w/week/whatif").body()).doesNotContain("Keep the second plan");
    }

    @Test
    void what_is_dropped_changes_nothing() throws Exception {
        Scenario before = scenario();
        String facility = before.facilities().get(0).id();
        ask("what", "close", "place", facility, "closed", "2027-02-09");
        assertThat(browser.get("/w/week/whatif").body()).contains("is closed on Tue 9 Feb?");

        browser.post("/w/week/whatif/drop");

        assertThat(browser.get("/w/week/whatif").body()).doesNotContain("is closed on");
        assertThat(scenario()).isEqualTo(before);
        assertThat(browser.post("/w/week/whatif/keep", "revision", revision()).statusCode())
                .isEqualTo(422);
    }

    @Test
    void a_day_and_an_athlete_can_be_lost() throws Exception {
        String athlete = scenario().athletes().get(0).id();
        assertThat(ask("what", "lose", "lost", "2027-02-10", "group", "").statusCode())
                .isEqualTo(303);
        assertThat(browser.get("/w/week/whatif").body()).contains("nobody trains on Wed 10 Feb?");
        assertThat(ask("what", "without", "athlete", athlete).statusCode()).isEqualTo(303);
        assertThat(browser.get("/w/week/whatif").body()).contains("is not there?");
    }

    @Test
    void what_cannot_happen_is_said() throws Exception {
        String fixture = scenario().fixtures().get(0).id();
        assertThat(ask("what", "move", "fixture", fixture, "to", "soon").body())
                .contains("the new start is \"soon\": give a date and a time");
        assertThat(ask("what", "move", "fixture", "none", "to", "2027-02-14T15:00")
                        .statusCode())
                .isEqualTo(422);
        assertThat(ask("what", "move", "fixture", fixture, "to", "2031-02-14T15:00")
                        .body())
                .as("it is said in its form, and all stays as it was filled in")
                .containsPattern("<h3>A fixture moves</h3>\\s*<section class=\"notice\"")
                .contains("2031-02-14 lies more than 28 days past the last day", "value=\"2031-02-14T15:00\"");
        assertThat(ask("what", "lose", "lost", "2030-01-01").body()).contains("is no day of this plan");
        assertThat(ask("what", "nothing").body()).contains("Something is missing in what was sent");
        assertThat(browser.post("/w/week/whatif", "revision", "1", "what", "nothing")
                        .statusCode())
                .isEqualTo(409);
    }
}
