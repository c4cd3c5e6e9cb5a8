package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** The next week, begun on the command line. */
class NextCommandTest {
    private final Trial trial = new Trial();

    @TempDir
    private Path place;

    private Path week;
    private Path next;

    @BeforeEach
    void a_week_lies_in_a_folder() throws IOException {
        week = Files.createDirectory(place.resolve("week"));
        next = place.resolve("week-2");
        Files.write(week.resolve("scenario.json"), Scenarios.bytes("one-match"));
    }

    private int next(String... more) {
        List<String> arguments = new ArrayList<>(List.of("next", week.toString(), "-o", next.toString()));
        arguments.addAll(List.of(more));
        return trial.run(arguments.toArray(String[]::new));
    }

    private static Scenario scenario(Path folder) throws IOException, DocumentException {
        return Documents.readScenario("scenario.json", Files.readAllBytes(folder.resolve("scenario.json")));
    }

    @Test
    void it_carries_over_what_is_known_and_asks_only_for_fixtures() throws IOException, DocumentException {
        Scenario before = scenario(week);

        assertThat(next("--fixture", "2027-02-17 19:30 Cup tie")).isZero();

        assertThat(trial.err())
                .isEqualTo("Written into " + next + ".\n"
                        + "Carried over from 8 to 14 February 2027, one fixture: 1 group with what it is to train;"
                        + " 9 athletes with marks; 3 places with their hours; 2 members of staff; what is fixed in the week,"
                        + " at the same times of the new one.\n"
                        + "Fixtures: League round 22, away, Sat 20 Feb 14:00; Cup tie, Wed 17 Feb 19:30.\n"
                        + "To plan it: propose " + next + "\n");
        Scenario after = scenario(next);
        assertThat(after.firstDay()).isEqualTo(LocalDate.of(2027, 2, 15));
        assertThat(after.title()).isEqualTo(before.title());
        assertThat(after.groups().get(0).aims())
                .isEqualTo(before.groups().get(0).aims());
        Fixture cup = after.fixtures().get(1);
        assertThat(cup.groups()).isEqualTo(before.fixtures().get(0).groups());
        assertThat(cup.minutes()).isEqualTo(before.fixtures().get(0).minutes());
        assertThat(scenario(week)).as("the week before stays as it is").isEqualTo(before);
        assertThat(trial.run("propose", next.toString(), "--moves", "200")).isZero();
    }

    @Test
    void what_was_done_becomes_history() throws IOException, DocumentException {
        next();
        assertThat(scenario(next).history())
                .as("the match of the week before was played as planned")
                .anySatisfy(one -> assertThat(one.start().date()).isEqualTo(LocalDate.of(2027, 2, 13)));

        Files.writeString(week.resolve("log.json"), """
                { "weekwright": 1, "scenario": "%s", "entries": [
                  { "group": "first-squad", "family": "tempo-run", "start": "2027-02-09T09:30", "minutes": 55 } ] }
                """.formatted(scenario(week).id()));
        next = place.resolve("week-3");
        assertThat(next("--log-only")).isZero();
        assertThat(scenario(next).history())
                .noneSatisfy(one -> assertThat(one.start().date()).isEqualTo(LocalDate.of(2027, 2, 13)))
                .anySatisfy(one -> assertThat(one.family()).isEqualTo("tempo-run"));
    }

    @Test
    void what_is_pinned_is_held_again() throws IOException, DocumentException {
        trial.run("propose", week.toString(), "--moves", "500");
        String session = "first-squad/max-velocity/2027-02-08/1";
        assertThat(trial.run("pin", week.toString(), "--session", session, "--day"))
                .isNotEqualTo(2);

        assertThat(next("--pins", "--title", "The week after")).isZero();

        assertThat(Files.readString(next.resolve("plan.json")))
                .contains("first-squad/max-velocity/2027-02-15/1", "\"day\": true");
        assertThat(scenario(next).title()).isEqualTo("The week after");
    }

    @Test
    void what_cannot_be_is_said_and_nothing_is_written() {
        assertThat(next("--first-day", "2027-02-16")).isEqualTo(2);
        assertThat(trial.err()).startsWith("the first day 2027-02-16 is not whole weeks after 2027-02-08: give ");
        assertThat(next("--fixture", "Cup tie")).isEqualTo(2);
        assertThat(trial.err()).startsWith("the fixture is \"Cup tie\": give its date, its start and its name");
        assertThat(next("--fixture", "2028-02-17 19:30 Cup tie")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo("the fixture \"Cup tie\" is on 2028-02-17, which is neither in the new week nor in the four"
                        + " weeks after it: give a date from 2027-02-15 to 2027-03-21\n");
        assertThat(next("--week", "2")).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("there is no week 2: the plan has one week, 1\n");
        assertThat(next).doesNotExist();
        assertThat(trial.run("next", week.toString())).isEqualTo(2);
        assertThat(trial.err()).contains("--output");
        assertThat(trial.run("next", week.toString(), "-o", week.toString())).isEqualTo(4);
        assertThat(trial.err()).contains("is there already");
    }
}
