package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

class FixturesCommandTest {
    private static final String CUP = """
            date,time,event
            2027-02-17,19:30,Cup round 2
            2027-02-20,14:00,"League round 22, away"
            2027-02-27,,League round 23
            2027-08-01,15:00,Next season
            """;

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();

    private int take(String csv, String scenario, String... more) {
        String[] arguments = new String[4 + more.length];
        arguments[0] = "fixtures";
        arguments[1] = scenario;
        arguments[2] = "--from";
        arguments[3] = "-";
        System.arraycopy(more, 0, arguments, 4, more.length);
        return trial.in(csv.getBytes(StandardCharsets.UTF_8)).run(arguments);
    }

    private static Scenario read(Path file) throws IOException, DocumentException {
        return Documents.readScenario("written", Files.readAllBytes(file));
    }

    @Test
    void what_would_be_taken_is_shown_first() {
        assertThat(take(CUP, "demo:one-match")).isZero();

        assertThat(trial.out()).isEqualTo("""
                A table of 4 rows below line 1. Columns parted by commas.
                Times are read as times in Europe/Dublin (--zone says otherwise).

                1  asked        Wed 2027-02-17 19:30 · Cup round 2
                                no end
                2  as it was    Sat 2027-02-20 14:00 to 15:50 · League round 22, away
                3  asked        Sat 2027-02-27 · League round 23
                                no time
                4  passed over  Sun 2027-08-01 15:00 · Next season
                                more than 28 days after the plan

                1 as it was, 1 passed over, 2 asked.
                In the scenario and not in the file, so they stay: League round 21, home (Sat 2027-02-13 15:00).

                To be answered
                  Some rows do not say how long they last: give --minutes 110, from the start to the end, intervals
                  included.
                  Some rows have no time: say when they start with --time 15:00, or for one row --time 4=15:00, or
                  leave them out with --leave-out 4.
                  row 1 (line 2): no end
                  row 3 (line 4): no time
                  Rows that are right as they stand: --accept 3,5-9. Rows that are not wanted: --leave-out 4. All
                  that is open left out: --rest.
                """);
        assertThat(trial.err()).isEqualTo("Nothing is taken yet: give -o FILE, or --take to write it back.\n");
    }

    @Test
    void what_is_open_is_not_taken() {
        Path file = folder.resolve("week.json");

        assertThat(take(CUP, "demo:one-match", "-o", file.toString())).isEqualTo(2);

        assertThat(trial.err()).isEqualTo("""
                Nothing is taken, because something is still to be answered:
                Some rows do not say how long they last: give --minutes 110, from the start to the end, intervals included.
                Some rows have no time: say when they start with --time 15:00, or for one row --time 4=15:00, or leave them out with --leave-out 4.
                row 1 (line 2): no end
                row 3 (line 4): no time
                """);
        assertThat(file).doesNotExist();
    }

    @Test
    void what_is_answered_is_taken_and_taking_it_again_adds_nothing() throws Exception {
        Path file = folder.resolve("week.json");

        assertThat(take(CUP, "demo:one-match", "-o", file.toString(), "--minutes", "105", "--time", "3=15:00"))
                .isZero();
        assertThat(trial.err()).isEqualTo("Written into " + file + ".\n");
        Scenario taken = read(file);
        assertThat(taken.fixtures())
                .extracting(fixture -> fixture.id() + " " + fixture.start() + " " + fixture.minutes())
                .containsExactly(
                        "round-21 2027-02-13T15:00 110",
                        "round-22 2027-02-20T14:00 110",
                        "cup-round-2-2027-02-17 2027-02-17T19:30 105",
                        "league-round-23-2027-02-27 2027-02-27T15:00 105");
        assertThat(take(CUP, file.toString(), "--take")).isZero();
        assertThat(trial.out()).contains("3 as it was, 1 passed over.");
        assertThat(read(file)).isEqualTo(taken);
    }

    @Test
    void a_folder_keeps_what_was_taken_as_a_change() throws IOException {
        Path week = Files.createDirectory(folder.resolve("week"));
        trial.run("demo", "one-match", "-o", week.resolve("scenario.json").toString());

        assertThat(take(CUP, week.toString(), "--take", "--rest", "--minutes", "105"))
                .isZero();

        assertThat(trial.err()).contains("Saved in " + week + " as revision ");
        trial.run("history", week.toString());
        assertThat(trial.out()).contains("fixtures taken in: 1 new, 1 as it was, 1 passed over, 1 asked");
    }

    @Test
    void what_cannot_be_meant_is_said() {
        assertThat(take(CUP, "-")).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("only one of SCENARIO and --from can come from standard input\n");
        assertThat(take(CUP, "demo:one-match", "--take")).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("--take needs a scenario that lies in a file: give -o FILE\n");
        assertThat(take("BEGIN:VCALENDAR\r\n", "demo:one-match")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo(
                        "the calendar breaks off inside the VCALENDAR that begins in line 1: it did not arrive whole;"
                                + " fetch it again\n");
        assertThat(trial.run("fixtures", "demo:one-match", "--from", "no-such.ics"))
                .isEqualTo(4);
        assertThat(trial.err()).isEqualTo("no-such.ics does not exist.\n");
    }
}
