package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** What would come of a fixture that moves, a place that is closed, a day or an athlete lost. */
class WhatIfCommandTest {
    private static final String DEMO = "demo:one-match";

    /** Written by hand: heavy squats on Tuesday noon, held there; sprints on Wednesday; all else left out. */
    private static final String PLAN = """
            { "weekwright": 1, "scenario": "kilmarrow-one-match", "placements": [
              { "group": "first-squad", "family": "heavy-lower-knee", "start": "2027-02-09T12:00", "facility": "gym",
                "pin": { "start": true } },
              { "group": "first-squad", "family": "max-velocity", "start": "2027-02-10T09:00", "facility": "track" },
              { "group": "first-squad", "family": "upper-strength", "start": "2027-02-11T12:00", "facility": "gym" } ] }
            """;

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();
    private String plan = "";

    @BeforeEach
    void plan() throws IOException {
        plan = Files.writeString(folder.resolve("plan.json"), PLAN).toString();
    }

    private int asked(String... more) {
        List<String> arguments = new ArrayList<>(List.of("whatif", DEMO, plan, "--moves", "2000"));
        arguments.addAll(List.of(more));
        return trial.run(arguments.toArray(String[]::new));
    }

    @Test
    void a_fixture_that_moves() {
        assertThat(asked("--fixture", "round-21", "--to", "2027-02-12T19:00"))
                .as(trial.err())
                .isZero();

        assertThat(trial.out()).isEqualTo("""
                        What if League round 21, home moves to Fri 12 Feb 19:00?
                        By itself the change adds 36.8 points of wishes unmet; with 1 session moved and 6 added nothing is
                        broken that must hold, no main work falls short any more and 10.1 points fewer of wishes are unmet
                        than before.

                        Before:  Nothing is broken that must hold; main work falls short by 1; 35.4 points of wishes unmet.
                        Changed: Nothing is broken that must hold; main work falls short by 1; 72.2 points of wishes unmet.
                        After:   Nothing is broken that must hold; 25.3 points of wishes unmet.
                        What the change broke by itself
                          · Heavy lower, knee-dominant (Tue 9 Feb 12:00) ends 78 h before League round 21, home; 96 h are
                            wanted, and 92 h count as enough. Concerns 19 of 22 in First squad.
                          · Upper push and pull (Thu 11 Feb 12:00) ends 30 h 15 min before League round 21, home; 48 h are
                            wanted, and 44 h count as enough. Concerns 19 of 22 in First squad.
                          · Maximal velocity sprinting (Wed 10 Feb 09:00) ends 56 h 55 min before League round 21, home; 72
                            h are wanted, and 68 h count as enough. Concerns 19 of 22 in First squad.
                        Sessions that differ
                          · Trunk, balance, stability is added on Tue 9 Feb 09:00.
                          · Acceleration 10-40 m is added on Tue 9 Feb 09:30, Training pitch.
                          · Tempo run is added on Tue 9 Feb 13:45, Training pitch.
                          · Upper push and pull (Thu 11 Feb 12:00) moves to Wed 10 Feb 10:30.
                          · Trunk, balance, stability is added on Fri 12 Feb 09:30.
                          · Primer is added on Fri 12 Feb 10:00, Training pitch.
                          · Mobility is added on Sun 14 Feb 11:00.
                        Kept better
                                 The least of an aim: no main work falls short any more; it did by 1. Before: Acceleration
                                 10-40 m: none in the week from Mon 8 Feb; at least 1 is owed.
                            −20  The number wanted of an aim: met now; it cost 20 points. Before: Trunk, balance, stability:
                                 none in the week from Mon 8 Feb; 2 are wanted.
                          −13.8  Load falls towards the fixture: met now; it cost 13.8 points. Before: Load rises towards
                                 League round 21, home: 695 AU on Thu 11 Feb after 325 AU on Wed 10 Feb. Concerns 19 of 22
                                 in First squad.
                           −0.5  No quality forgotten: met now; it cost 0.5 points. Before: First squad goes 12 days without
                                 acceleration at high intensity, from Tue 2 Feb to Sun 14 Feb; it is wanted every 10 days.
                                 Concerns S. Fennimar, J. Ostrey and M. Pellor.
                        Kept worse than before the change
                          +23.4  Preferred hours before a fixture: costs 23.4 points; it was met before. Now: Heavy lower,
                                 knee-dominant (Tue 9 Feb 12:00) ends 78 h before League round 21, home; 96 h are wanted,
                                 and 92 h count as enough. Concerns 19 of 22 in First squad.
                           +0.8  No idle hours: costs 0.8 points; it was met before. Now: First squad waits 1 h 50 min
                                 between visits on Tue 9 Feb.
                        """);
        assertThat(trial.err()).endsWith("Nothing is kept: give --keep or -o FOLDER to keep it.\n");
    }

    @Test
    void a_place_that_is_closed() {
        assertThat(asked("--close", "track", "--day", "2027-02-10"))
                .as(trial.err())
                .isZero();

        assertThat(trial.out()).startsWith("""
                        What if Town track is closed on Wed 10 Feb?
                        By itself the change breaks 1 thing that must hold; with\
                        """);
        assertThat(trial.out()).contains("Maximal velocity sprinting (Wed 10 Feb 09:00) ");
    }

    @Test
    void a_day_that_is_lost_takes_its_practices_and_leaves_its_fixtures() {
        asked("--lose-day", "2027-02-11");
        assertThat(trial.out()).startsWith("""
                        What if nobody trains on Thu 11 Feb?
                        Team practice (Thu 11 Feb 10:30) falls away.
                        By itself the change breaks 1 thing that must hold\
                        """);
        asked("--lose-day", "2027-02-13", "--group", "first-squad");
        assertThat(trial.out()).startsWith("""
                        What if First squad does not train on Sat 13 Feb?
                        League round 21, home stays where it is.
                        By itself the change breaks nothing; \
                        """);
    }

    @Test
    void an_athlete_who_is_not_there() {
        assertThat(asked("--lose", Scenarios.read("one-match").athletes().get(0).id()))
                .isZero();

        assertThat(trial.out()).startsWith("What if ").contains(" is not there?\nBy itself the change ");
    }

    @Test
    void several_things_at_once() {
        asked(
                "--close",
                "track",
                "--day",
                "2027-02-10",
                "--close",
                "gym",
                "--day",
                "2027-02-11",
                "--lose-day",
                "2027-02-08");

        assertThat(trial.out().lines().limit(2))
                .containsExactly(
                        "What if Town track is closed on Wed 10 Feb and Weights room is closed on Thu 11 Feb and nobody",
                        "trains on Mon 8 Feb?");
    }

    @Test
    void what_is_pinned_stays_and_all_of_it_is_told_as_json() {
        assertThat(asked("--lose-day", "2027-02-09", "--json")).isEqualTo(3);

        JsonNode answer = JsonMapper.shared().readTree(trial.out());
        assertThat(answer.get("broke").get(0).asString())
                .isEqualTo(
                        "Heavy lower, knee-dominant (Tue 9 Feb 12:00) has 60 min outside the hours in which First squad"
                                + " can train.");
        assertThat(answer.get("after").get("must").asInt()).isEqualTo(1);
        assertThat(answer.get("sessions").valueStream())
                .noneMatch(session -> session.get("session").asString().contains("heavy-lower-knee"));
        assertThat(trial.err()).doesNotContain("Nothing is kept");
    }

    @Test
    void kept_in_a_new_folder() throws Exception {
        Path next = folder.resolve("next");
        assertThat(asked("--close", "track", "--day", "2027-02-10", "-o", next.toString()))
                .isZero();

        assertThat(trial.err()).endsWith("Written into " + next + ".\n");
        Scenario changed = Documents.readScenario("", Files.readAllBytes(next.resolve("scenario.json")));
        assertThat(changed.facilities())
                .anySatisfy(place -> assertThat(place.closed()).hasSize(1));
        Plan found = Documents.readPlan("", Files.readAllBytes(next.resolve("plan.json")), changed);
        assertThat(found.scenarioDigest()).isEqualTo(Documents.digest(changed));
        trial.run("history", next.toString());
        assertThat(trial.out()).contains("  What if Town track is closed on Wed 10 Feb (in force)\n");
        assertThat(asked("--close", "track", "--day", "2027-02-10", "-o", next.toString()))
                .isEqualTo(4);
        assertThat(trial.err()).isEqualTo(next + " is there already: name a new or an empty folder.\n");
    }

    @Test
    void kept_as_a_change_of_the_folder_and_taken_back() throws Exception {
        Path desk = Files.createDirectory(folder.resolve("desk"));
        Files.write(desk.resolve("scenario.json"), Scenarios.bytes("one-match"));
        Files.writeString(desk.resolve("plan.json"), PLAN);
        String[] asked = {"whatif", desk.toString(), "--close", "track", "--day", "2027-02-10", "--moves", "500"};
        trial.run(asked);
        assertThat(Files.exists(desk.resolve("history"))).isFalse();
        List<String> keeping = new ArrayList<>(List.of(asked));
        keeping.add("--keep");
        assertThat(trial.run(keeping.toArray(String[]::new))).isZero();

        assertThat(trial.err()).endsWith("Saved in " + desk + " as revision 2.\n");
        assertThat(Files.readString(desk.resolve("scenario.json"))).contains("\"from\": \"2027-02-10T00:00\"");
        trial.run("compare", desk.toString(), "1");
        assertThat(trial.out()).startsWith("By itself the change breaks 1 thing that must hold; with ");
        trial.run("undo", desk.toString());
        assertThat(Files.readString(desk.resolve("scenario.json"))).doesNotContain("\"from\": \"2027-02-10T00:00\"");
    }

    @Test
    void what_cannot_be_asked_is_said_with_what_would_be_right() {
        assertThat(asked()).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo("nothing is said of what happens: give --fixture ID --to TIME, --close FACILITY --day DATE,"
                        + " --lose-day DATE or --lose ATHLETE\n");
        assertThat(asked("--fixture", "round-12", "--to", "2027-02-12T19:00")).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("no fixture is called \"round-12\": did you mean round-21?\n");
        assertThat(asked("--lose", "R Tarow")).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("no athlete is called \"R Tarow\": did you mean R. Tarrow?\n");
        assertThat(asked("--close", "swimming hall", "--day", "2027-02-09")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo(
                        "no facility is called \"swimming hall\": known are pitch (Training pitch), gym (Weights room),"
                                + " track (Town track)\n");
        assertThat(asked("--close", "track", "--day", "2027-02-15")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo("2027-02-15 is no day of this plan: give one from 2027-02-08 to 2027-02-14\n");
        assertThat(asked("--fixture", "round-21", "--to", "2027-02-01T19:00")).isEqualTo(2);
        assertThat(trial.err()).startsWith("2027-02-01").doesNotContain("the changed scenario");
        assertThat(asked("--close", "track")).isEqualTo(2);
        assertThat(trial.err()).contains("--day");
        assertThat(asked("--lose", "a01", "--keep")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo("--keep needs a folder in place of SCENARIO: give -o FOLDER to write into a new one\n");
        assertThat(trial.out()).isEmpty();
    }
}
