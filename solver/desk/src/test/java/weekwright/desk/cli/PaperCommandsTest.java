package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;

/** Tables, wall pages and first weeks from the command line. */
class PaperCommandsTest {
    private static final byte[] PLAN = """
            { "weekwright": 1, "scenario": "kilmarrow-one-match", "placements": [
              { "group": "first-squad", "family": "heavy-lower-knee", "start": "2027-02-09T12:00", "facility": "gym" } ] }
            """.getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();

    @Test
    void a_table_is_printed_or_written() throws IOException {
        Path file = folder.resolve("plan.csv");

        assertThat(trial.in(PLAN).run("table", "demo:one-match", "-")).isZero();
        String printed = trial.out();
        assertThat(trial.in(PLAN).run("table", "demo:one-match", "-", "-o", file.toString()))
                .isZero();

        assertThat(printed).startsWith("\uFEFFdate,start,end,");
        assertThat(trial.err()).isEqualTo("Written into " + file + ".\n");
        assertThat(Files.readString(file)).isEqualTo(printed);
        assertThat(trial.in(PLAN).run("table", "demo:one-match", "-", "--what", "booking"))
                .isEqualTo(2);
        assertThat(trial.err()).isEqualTo("there is no table of \"booking\": did you mean bookings?\n");
    }

    @Test
    void a_week_for_the_wall_is_written_as_a_page_or_for_paper() throws IOException {
        Path html = folder.resolve("wall.html");
        Path pdf = folder.resolve("wall.pdf");

        assertThat(trial.in(PLAN).run("wall", "demo:one-match", "-", "--html", html.toString()))
                .isZero();
        assertThat(trial.in(PLAN).run("wall", "demo:one-match", "-", "--pdf", pdf.toString()))
                .isZero();

        assertThat(Files.readString(html)).startsWith("<!DOCTYPE html>").contains("League round 21, home");
        assertThat(Files.readAllBytes(pdf)).startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
        assertThat(trial.in(PLAN).run("wall", "demo:one-match", "-", "--week", "2", "--html", html.toString()))
                .isEqualTo(2);
        assertThat(trial.err()).isEqualTo("there is no week 2: the plan has one week, 1\n");
        assertThat(trial.in(PLAN).run("wall", "demo:one-match", "-")).isEqualTo(2);
    }

    private Scenario read(Path file) throws Exception {
        return Documents.readScenario("new", Files.readAllBytes(file));
    }

    @Test
    void a_first_week_is_written_from_options_and_can_be_planned() throws Exception {
        Path file = folder.resolve("mine.json");

        assertThat(trial.run(
                        "new",
                        file.toString(),
                        "--zone",
                        "Europe/Dublin",
                        "--first-day",
                        "2027-03-01",
                        "--title",
                        "Harbour women",
                        "--free",
                        "Mon-Thu 17:30-20:00",
                        "--free",
                        "Sun 9:00-12:00",
                        "--fixture",
                        "2027-03-06 14:30 League round 18",
                        "--place",
                        "field=Pitch 2",
                        "--place",
                        "gym",
                        "--place",
                        "gym=Small gym"))
                .isZero();

        Scenario week = read(file);
        assertThat(week.title()).isEqualTo("Harbour women");
        assertThat(week.groups().get(0).windows()).hasSize(2);
        assertThat(week.groups().get(0).windows().get(0).days()).hasSize(4);
        assertThat(week.fixtures()).extracting(Fixture::label).containsExactly("League round 18");
        assertThat(week.facilities()).extracting(Facility::id).containsExactly("field", "gym", "small-gym");
        assertThat(trial.err()).startsWith("Written into " + file + ".\nWhat is in it: ");
        assertThat(trial.run("propose", file.toString(), "--moves", "2000")).isZero();
        assertThat(trial.out()).startsWith("Harbour women\n1 to 7 March 2027");
    }

    @Test
    void what_is_not_given_is_asked_until_it_can_be_understood() throws Exception {
        Path file = folder.resolve("asked.json");
        String answers = """

                Dublin
                Europe/Dublin
                next monday
                2027-03-01
                Mon-Fry 17:00-19:00
                Tue,Thu 17:00-19:00

                2027-03-06 14:30

                gym=Weights room

                """;

        assertThat(trial.in(answers.getBytes(StandardCharsets.UTF_8)).run("new", file.toString(), "--ask"))
                .isZero();

        assertThat(trial.err()).startsWith("""
                What is the week called? [My week]
                Which zone are its times in? [Europe/Dublin]
                "Dublin" is no zone: name a region and a town, such as Europe/Dublin
                Which zone are its times in? [Europe/Dublin]
                Which is its first day?
                the first day is "next monday": give a date, such as 2027-03-01
                Which is its first day?
                Which hours has the squad? One a line, an empty line ends. [Mon-Fri 09:00-17:00]
                the free hours are "Mon-Fry 17:00-19:00": "Fry" is no weekday: write Mon, Tue or Mon-Fri
                Which fixtures are known? E.g. 2027-03-06 14:30 League round 18 One a line, an empty line ends. [none]
                Which places are there? E.g. gym=Weights room One a line, an empty line ends. [field and gym]
                """);
        Scenario week = read(file);
        assertThat(week.fixtures()).extracting(Fixture::label).containsExactly("Fixture 1");
        assertThat(week.facilities()).extracting(Facility::label).containsExactly("Weights room");
    }

    @Test
    void a_first_week_that_cannot_be_is_not_written() {
        Path file = folder.resolve("no.json");

        assertThat(trial.run("new", file.toString(), "--zone", "Europe/Dublin")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo("--first-day is missing: give one, such as 2027-03-01, or --ask to be asked\n");
        assertThat(trial.run(
                        "new",
                        file.toString(),
                        "--zone",
                        "Europe/Dublin",
                        "--first-day",
                        "2027-03-01",
                        "--fixture",
                        "2027-06-06 14:30 Cup"))
                .isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo(
                        "2027-06-06 lies more than 28 days past the last day, 2027-03-07. Give a day up to 2027-04-04, or"
                                + " leave it out.\n");
        assertThat(trial.in(new byte[0]).run("new", file.toString(), "--ask")).isEqualTo(2);
        assertThat(trial.err()).endsWith("the answers end too early: nothing is written\n");
        assertThat(file).doesNotExist();
        trial.run("new", file.toString(), "--zone", "Europe/Dublin", "--first-day", "2027-03-01");
        assertThat(trial.run("new", file.toString(), "--zone", "Europe/Dublin", "--first-day", "2027-03-01"))
                .isEqualTo(2);
        assertThat(trial.err()).isEqualTo(file + " is there already: give the name of a new file\n");
    }
}
