package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import weekwright.scenarios.Scenarios;

/** Two plans side by side on the command line. */
class CompareCommandTest {
    /** Written by hand: heavy squats on Tuesday noon, all else left out. */
    private static final String TUESDAY = """
            { "weekwright": 1, "scenario": "kilmarrow-one-match", "placements": [
              { "group": "first-squad", "family": "heavy-lower-knee", "start": "2027-02-09T12:00", "facility": "gym" } ] }
            """;

    private static final String WEDNESDAY = TUESDAY.replace("2027-02-09T12:00", "2027-02-10T09:00");

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();
    private String tuesday = "";
    private String wednesday = "";

    @BeforeEach
    void plans() throws IOException {
        tuesday = file("tuesday.json", TUESDAY);
        wednesday = file("wednesday.json", WEDNESDAY);
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @Test
    void what_moved_and_which_rules_are_kept_better_and_worse() {
        assertThat(trial.run("compare", "demo:one-match", tuesday, wednesday)).isZero();

        assertThat(trial.out()).isEqualTo("""
                        1 session moves, and the plan is worse: 22.4 points more of wishes are unmet.

                        Before:  Nothing is broken that must hold; key work falls short by 1; main work falls short by 2;
                                 59.9 points of wishes unmet.
                        After:   Nothing is broken that must hold; key work falls short by 1; main work falls short by 2;
                                 82.3 points of wishes unmet.
                        Sessions that differ
                          · Heavy lower, knee-dominant (Tue 9 Feb 12:00) moves to Wed 10 Feb 09:00.
                        Kept worse
                          +15.5  Preferred hours before a fixture: costs 15.5 points; it was met before. Now: Heavy lower,
                                 knee-dominant (Wed 10 Feb 09:00) ends 77 h before League round 21, home; 96 h are wanted,
                                 and 92 h count as enough. Concerns 19 of 22 in First squad.
                           +6.9  Load falls towards the fixture: costs 6.9 points; it was met before. Now: Load rises
                                 towards League round 21, home: 425 AU on Thu 11 Feb after 420 AU on Wed 10 Feb. Concerns 19
                                 of 22 in First squad.
                        """);
        assertThat(trial.err()).isEmpty();
    }

    @Test
    void equal_plans_are_told_in_one_line() {
        assertThat(trial.run("compare", "demo:one-match", tuesday, tuesday)).isZero();

        assertThat(trial.out()).isEqualTo("The two plans are the same.\n");
    }

    @Test
    void what_a_change_of_the_scenario_broke_by_itself() throws IOException {
        String demo = new String(Scenarios.bytes("one-match"), StandardCharsets.UTF_8);
        String earlier = file("earlier.json", demo.replace("2027-02-13T15:00", "2027-02-11T19:00"));
        assertThat(trial.run("compare", earlier, tuesday, wednesday, "--before", "demo:one-match"))
                .isEqualTo(3);

        assertThat(trial.out()).isEqualTo("""
                        By itself the change breaks 1 thing that must hold and adds 62.2 points of wishes unmet; with 1
                        session moved 1 thing is broken that must hold and 119.1 points more of wishes are unmet than
                        before.

                        Before:  Nothing is broken that must hold; key work falls short by 1; main work falls short by 2;
                                 59.9 points of wishes unmet.
                        Changed: 1 thing is broken that must hold; key work falls short by 1; main work falls short by 2;
                                 122.1 points of wishes unmet.
                        After:   1 thing is broken that must hold; key work falls short by 1; main work falls short by 2;
                                 179 points of wishes unmet.
                        What the change broke by itself
                          · Heavy lower, knee-dominant (Tue 9 Feb 12:00) ends 54 h before League round 21, home; it must end
                            at least 64 h before. Concerns 19 of 22 in First squad.
                        Sessions that differ
                          · Heavy lower, knee-dominant (Tue 9 Feb 12:00) moves to Wed 10 Feb 09:00.
                        Kept worse than before the change
                                 Hours before a fixture: broken once; it held before. Now: Heavy lower, knee-dominant (Wed
                                 10 Feb 09:00) ends 33 h before League round 21, home; it must end at least 64 h before.
                                 Concerns 19 of 22 in First squad.
                          +91.5  Preferred hours before a fixture: costs 91.5 points; it was met before. Now: Heavy lower,
                                 knee-dominant (Wed 10 Feb 09:00) ends 33 h before League round 21, home; 96 h are wanted,
                                 and 92 h count as enough. Concerns 19 of 22 in First squad.
                          +20.7  The day before is light: costs 20.7 points; it was met before. Now: Heavy lower,
                                 knee-dominant (Wed 10 Feb 09:00) lies on the day before League round 21, home: only low
                                 work, practice and a primer belong there. Concerns 19 of 22 in First squad.
                           +6.9  Load falls towards the fixture: costs 6.9 points; it was met before. Now: Wed 10 Feb, the
                                 day before League round 21, home, carries 420 AU; measured against Mon 8 Feb at most 0 AU
                                 are wanted. Concerns 19 of 22 in First squad.
                        """);
    }

    @Test
    void json_gives_all_of_it() {
        assertThat(trial.run("compare", "demo:one-match", tuesday, wednesday, "--json"))
                .isZero();

        JsonNode document = JsonMapper.shared().readTree(trial.out());
        assertThat(document.propertyNames())
                .containsExactly("before", "changed", "after", "broke", "sessions", "better", "worse", "text");
        assertThat(document.get("changed").isNull()).isTrue();
        assertThat(document.get("sessions").get(0).get("what").get(0).asString())
                .isEqualTo("moved");
        assertThat(document.get("sessions").get(0).get("after").get("start").asString())
                .isEqualTo("2027-02-10T09:00");
    }

    @Test
    void revisions_of_a_folder_by_their_numbers() throws IOException {
        Path desk = Files.createDirectory(folder.resolve("desk"));
        Files.write(desk.resolve("scenario.json"), Scenarios.bytes("one-match"));
        Files.writeString(desk.resolve("plan.json"), TUESDAY);
        trial.run(
                "pin",
                desk.toString(),
                "--session",
                "first-squad/heavy-lower-knee/2027-02-08/1",
                "--start",
                "2027-02-10T09:00");

        assertThat(trial.run("compare", desk.toString(), "1")).as(trial.err()).isZero();
        assertThat(trial.out()).startsWith("1 session moves, and the plan is worse: ");
        assertThat(trial.run("compare", desk.toString(), "2", "1")).isZero();
        assertThat(trial.out()).startsWith("1 session moves, and the plan is better: ");
        assertThat(trial.run("compare", desk.toString(), "7")).isEqualTo(4);
        assertThat(trial.run("compare", desk.toString(), "1", "--before", "demo:one-match"))
                .isEqualTo(2);
        assertThat(trial.err()).isEqualTo("--before is not needed: revision 1 brings its own scenario\n");
    }

    @Test
    void what_cannot_be_compared_is_said() throws IOException {
        assertThat(trial.run("compare", "-", "-", tuesday)).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("only one document can come from standard input\n");
        assertThat(trial.run("compare", "demo:one-match", tuesday)).isEqualTo(2);
        assertThat(trial.err()).startsWith("PLAN is missing");
        assertThat(trial.run("compare", "demo:clash", tuesday, wednesday)).isEqualTo(2);
        assertThat(trial.err()).contains("it was made for the scenario \"kilmarrow-one-match\"");
        String demo = new String(Scenarios.bytes("one-match"), StandardCharsets.UTF_8);
        String shorter = file("shorter.json", demo.replace("\"days\": 7", "\"days\": 6"));
        String sunday = file("sunday.json", TUESDAY.replace("2027-02-09T12:00", "2027-02-14T12:00"));
        assertThat(trial.run("compare", shorter, sunday, wednesday, "--before", "demo:one-match"))
                .isEqualTo(2);
        assertThat(trial.err()).contains("the plan before").contains("2027-02-14");
    }
}
