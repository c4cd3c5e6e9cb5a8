package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.model.document.Documents;
import weekwright.scenarios.Scenarios;

/** The week told to the head coach and to those who train. */
class BriefCommandTest {
    /** Written by hand for the clashing demo: sprints and squats found no place. */
    private static final String CLASH = """
            { "weekwright": 1, "scenario": "dunmarsh-clash", "placements": [
              { "group": "college-squad", "family": "acceleration", "start": "2027-09-14T15:30", "facility": "grass", "lead": "c1" },
              { "group": "college-squad", "family": "upper-strength", "start": "2027-09-18T13:00", "facility": "weights-room", "lead": "c1",
                "dose": "reduced" } ] }
            """;

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();

    private int brief(String... more) {
        List<String> arguments = new ArrayList<>(List.of("brief", "demo:clash", "-"));
        arguments.addAll(List.of(more));
        return trial.in(CLASH.getBytes(StandardCharsets.UTF_8)).run(arguments.toArray(String[]::new));
    }

    @Test
    void the_week_for_the_head_coach() {
        assertThat(brief()).as(trial.err()).isZero();

        assertThat(trial.out()).isEqualTo("""
                        Dunmarsh College, two fixtures, exams and a closed weights room

                        College squad, 13 to 19 September 2027
                        Mon 13 Sep  MD+1  free
                        Tue 14 Sep  MD−3  high    15:30 Acceleration 10-40 m · 16:45 Team practice
                        Wed 15 Sep  MD−2  free
                        Thu 16 Sep  MD−1  low     17:30 Team run-through
                        Fri 17 Sep  MD    high    19:00 ◆ Conference match, home
                        Sat 18 Sep  MD−1  low     10:30 Team run-through · 13:00 Upper push and pull, reduced dose
                        Sun 19 Sep  MD    high    13:00 ◆ Conference match, away
                        Why the week looks like this
                          The high work lies on Tue 14 Sep (MD−3); the last of it ends 74 h 35 min before Conference match,
                          home.
                          Mon 13 Sep (MD+1) and Wed 15 Sep (MD−2) are free, the day before Conference match, home is low,
                          and the day before Conference match, away is low.
                          All that must hold holds; what gives way most: Upper push and pull (Sat 18 Sep 13:00) ends 23 h 25
                          min before Conference match, away; 48 h are wanted, and 44 h count as enough.
                        What was given up
                          · Heavy lower, knee-dominant (key): none this week; wherever it could lie, it is too soon before a
                            fixture, the place is closed or it would be a high day too many.
                          · Maximal velocity sprinting (key): none this week; wherever it could lie, it is too soon after a
                            fixture, it is too soon before a fixture or it would be a high day too many.
                          · Aerobic intervals: none this week; it would find a place, on Tue 14 Sep at 18:00 at best, and
                            the plan would be better for it.
                          · Primer: none this week; it would find a place, on Sat 18 Sep at 11:45 at best, and the plan
                            would be better for it.
                          · Trunk, balance, stability: none this week; it would find a place, on Sat 18 Sep at 11:45 at
                            best, and the plan would be better for it.
                          · Mobility: none this week; it would find a place, on Sat 18 Sep at 11:45 at best, and the plan
                            would be better for it.
                          · Upper push and pull: a reduced dose only, on Sat 18 Sep.

                        This is planning help, not medical advice. In return to play, pain, illness, minors, heat and
                        maximal testing, clinicians, local rules and licensed practice come first.
                        """);
        assertThat(trial.err()).isEmpty();
    }

    @Test
    void the_week_for_a_group_chat() {
        assertThat(brief("--text", "--group", "college-squad")).isZero();

        assertThat(trial.out()).isEqualTo("""
                        College squad, 13 to 19 September 2027
                        Times in America/Chicago

                        Mon 13 Sep (MD+1)
                        Free

                        Tue 14 Sep (MD−3)
                        15:30 Acceleration 10-40 m, College grass
                        16:45 Team practice, College grass

                        Wed 15 Sep (MD−2)
                        Free

                        Thu 16 Sep (MD−1)
                        17:30 Team run-through, College grass

                        Fri 17 Sep (MD)
                        19:00 Conference match, home

                        Sat 18 Sep (MD−1)
                        10:30 Team run-through, College grass
                        13:00 Upper push and pull, reduced dose, Weights room

                        Sun 19 Sep (MD)
                        13:00 Conference match, away
                        """);
    }

    /** Reasons of restrictions, and who sits out what, are nobody's business but the coach's. */
    @Test
    void nobody_is_named() {
        for (String form : List.of("", "--text")) {
            trial.run(
                    form.isEmpty()
                            ? new String[] {"brief", "demo:clash", plan()}
                            : new String[] {"brief", "demo:clash", plan(), form});
            Scenarios.read("clash")
                    .athletes()
                    .forEach(athlete -> assertThat(trial.out()).doesNotContain(athlete.name()));
            assertThat(trial.out()).isNotBlank().doesNotContain("sits out");
            // the reason itself; the cautions at the end speak of clinicians
            assertThat(trial.out()).doesNotContainPattern("\\bclinician\\b");
        }
    }

    private String plan() {
        try {
            return Files.writeString(folder.resolve("clash.json"), CLASH).toString();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void a_page_of_one_file() throws IOException {
        Path page = folder.resolve("brief.html");
        assertThat(brief("--html", page.toString())).isZero();

        assertThat(trial.err()).isEqualTo("Written into " + page.toRealPath() + ".\n");
        assertThat(trial.out()).isEmpty();
        assertThat(Files.readString(page))
                .startsWith("<!DOCTYPE html>")
                .contains("<bdi>College squad</bdi>", "MD−3", "What was given up")
                .doesNotContain("http");
    }

    @Test
    void what_has_changed_since_a_plan() throws IOException {
        String before = Files.writeString(folder.resolve("before.json"), CLASH.replace("T15:30", "T16:00"))
                .toString();
        assertThat(brief("--text", "--since", before)).isZero();

        assertThat(trial.out()).startsWith("""
                        College squad, 13 to 19 September 2027
                        Times in America/Chicago

                        Changed since it was given out:
                        - Acceleration 10-40 m: now Tue 14 Sep 15:30, College grass (was Tue 14 Sep 16:00)

                        Mon 13 Sep (MD+1)
                        Free
                        """);
        brief("--text", "--since", plan());
        assertThat(trial.out()).contains("\nNothing has changed since it was given out.\n");
    }

    @Test
    void given_out_in_a_folder_and_changed_since() throws Exception {
        Path desk = Files.createDirectory(folder.resolve("desk"));
        Files.write(desk.resolve("scenario.json"), Scenarios.bytes("clash"));
        Files.writeString(desk.resolve("plan.json"), CLASH);
        assertThat(trial.run("brief", desk.toString(), "--text", "--publish"))
                .as(trial.err())
                .isZero();
        assertThat(trial.out()).doesNotContain("Changed");
        assertThat(trial.err()).endsWith("Saved in " + desk + " as revision 2.\n");
        assertThat(Documents.readPlan("", Files.readAllBytes(desk.resolve("plan.json")), Scenarios.read("clash"))
                        .published())
                .hasToString("2027-02-08T06:00");

        trial.run("brief", desk.toString(), "--text");
        assertThat(trial.out()).contains("\nNothing has changed since Mon 8 Feb 06:00.\n");

        trial.run(
                "pin",
                desk.toString(),
                "--session",
                "college-squad/acceleration/2027-09-13/1",
                "--start",
                "2027-09-14T16:00");
        trial.run("brief", desk.toString(), "--text");
        assertThat(trial.out())
                .contains(
                        "\nChanged since Mon 8 Feb 06:00:\n- Acceleration 10-40 m: now Tue 14 Sep 16:00, College grass"
                                + " (was Tue 14 Sep 15:30)\n");

        trial.run(
                "whatif",
                desk.toString(),
                "--fixture",
                "match-fri",
                "--to",
                "2027-09-17T20:00",
                "--moves",
                "200",
                "--keep");
        trial.run("brief", desk.toString(), "--text");
        assertThat(trial.out()).contains("- Conference match, home: now Fri 17 Sep 20:00 (was Fri 17 Sep 19:00)\n");
    }

    @Test
    void what_cannot_be_told_is_said() {
        assertThat(brief("--week", "2")).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("there is no week 2: the plan has one week, 1\n");
        assertThat(brief("--group", "colege-squad")).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("no group is called \"colege-squad\": did you mean college-squad?\n");
        assertThat(brief("--publish")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo("--publish needs a folder in place of SCENARIO: without one there is nowhere to note it\n");
        assertThat(trial.run("brief", "demo:clash")).isEqualTo(2);
        assertThat(trial.err()).startsWith("PLAN is missing");
        assertThat(trial.run("brief", "demo:twelve-weeks", "-", "--week", "13")).isEqualTo(2);
        assertThat(trial.out()).isEmpty();
    }
}
