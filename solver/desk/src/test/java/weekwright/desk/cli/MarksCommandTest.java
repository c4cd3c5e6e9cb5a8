package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.model.document.Documents;
import weekwright.scenarios.Scenarios;

/** Marks that a log betters, asked on the command line. */
class MarksCommandTest {
    private static final String LOG = """
            { "weekwright": 1, "scenario": "kilmarrow-one-match", "entries": [
              { "group": "first-squad", "family": "acceleration", "start": "2027-02-09T09:30", "minutes": 55, "people": [
                { "athlete": "a01", "results": [ { "measure": "sprint", "metres": 30, "seconds": [4.21, 4.08] } ] },
                { "athlete": "a02", "results": [ { "measure": "sprint", "metres": 30, "seconds": [1.2] } ] } ] },
              { "group": "first-squad", "family": "heavy-lower-knee", "start": "2027-02-09T12:00", "minutes": 60, "people": [
                { "athlete": "a03", "results": [ { "measure": "lift", "lift": "back-squat", "kg": 95, "repetitions": 5 } ] },
                { "athlete": "a04", "results": [ { "measure": "lift", "lift": "front-squat", "kg": 100, "repetitions": 1 } ] }
              ] } ] }
            """;

    private final Trial trial = new Trial();

    @TempDir
    private Path folder;

    private Path scenario;
    private Path log;

    @BeforeEach
    void write() throws IOException {
        scenario = folder.resolve("scenario.json");
        log = folder.resolve("log.json");
        Files.write(scenario, Scenarios.bytes("one-match"));
        Files.writeString(log, LOG);
    }

    /** Epley 1985: 95 × 5 is 110.8 kg, 90 × 5 was 105.0. */
    @Test
    void they_are_shown_and_nothing_is_changed() throws IOException {
        assertThat(trial.run("marks", scenario.toString(), "--log", log.toString(), "--timing", "electronic"))
                .isZero();

        assertThat(trial.out()).isEqualTo("""
                Marks that the log betters
                  R. Tarrow: 30 m 4.08 s, electronic on Tue 9 Feb; so far 4.12 s on Mon 11 Jan
                  S. Fennimar: back-squat 95 kg × 5 (maximum 110.8 kg) on Tue 9 Feb; so far 90 kg × 5 (maximum 105.0
                  kg) on Wed 13 Jan
                  J. Ostrey: front-squat 100 kg × 1 on Tue 9 Feb; no mark of the kind that holds so far
                Not used
                  D. Quillane: 30 m in 1.2 s is faster than anybody has run: not used, check it
                """);
        assertThat(trial.err()).isEqualTo("Nothing is changed; -o FILE writes the scenario with these marks.\n");
        assertThat(scenario).hasBinaryContent(Scenarios.bytes("one-match"));
    }

    @Test
    void asked_to_it_writes_them_into_the_scenario() throws Exception {
        Path with = folder.resolve("with.json");

        assertThat(trial.run(
                        "marks",
                        scenario.toString(),
                        "--log",
                        log.toString(),
                        "--timing",
                        "electronic",
                        "-o",
                        with.toString()))
                .isZero();

        assertThat(trial.out()).startsWith("Marks that the log betters\n");
        var athletes =
                Documents.readScenario("with.json", Files.readAllBytes(with)).athletes();
        assertThat(athletes.get(0).marks())
                .anyMatch(mark -> Double.valueOf(4.08).equals(mark.seconds()));
        assertThat(trial.run("marks", with.toString(), "--log", log.toString(), "--timing", "electronic"))
                .isZero();
        assertThat(trial.out()).as("a second time").startsWith("The log betters no mark.\n");
    }

    @Test
    void without_a_word_on_timing_no_run_is_used() {
        trial.run("marks", scenario.toString(), "--log", log.toString());

        assertThat(trial.out())
                .contains("R. Tarrow: 30 m in 4.08 s is not used: say how runs were timed with --timing")
                .contains("S. Fennimar: back-squat");
    }

    @Test
    void a_folder_brings_its_log_and_keeps_the_change() {
        assertThat(trial.run("marks", folder.toString())).isZero();
        trial.run("propose", folder.toString(), "--moves", "300");

        assertThat(trial.run("marks", folder.toString(), "-o", scenario.toString()))
                .isZero();

        assertThat(trial.err()).contains("as revision");
        trial.run("history", folder.toString());
        assertThat(trial.out()).contains("Marks from the log");
    }

    @Test
    void a_log_must_be_there() {
        assertThat(trial.run("marks", scenario.toString())).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("--log is missing: name the log, or a folder that has one\n");
        assertThat(trial.run("marks", scenario.toString(), "--log", log.toString(), "--timing", "hnad"))
                .isEqualTo(2);
        assertThat(trial.err()).isEqualTo("--timing is \"hnad\": did you mean hand?\n");
    }
}
