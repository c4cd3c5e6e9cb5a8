package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.app.Planner;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** The tour of a folder in the README goes as it stands there. */
class FolderTourTest {
    private static final Path README = Path.of("../../README.md");

    @TempDir
    private Path place;

    /** Searches a little, however long it is given. */
    private static final Planner HASTY = new Planner() {
        @Override
        public Judged judge(Scenario scenario, Plan plan) {
            return ENGINE.judge(scenario, plan);
        }

        @Override
        public Judged propose(Proposal asked, Progress progress) {
            return ENGINE.propose(
                    new Proposal(
                            asked.scenario(),
                            asked.from(),
                            Budget.moves(30),
                            asked.seed(),
                            asked.threads(),
                            asked.now()),
                    progress);
        }
    };

    @Test
    void every_command_of_the_tour_does_what_it_says() throws Exception {
        List<String> tour = tour();
        assertThat(tour).hasSizeGreaterThan(5).startsWith("mkdir week");
        Files.createDirectory(place.resolve("week"));
        Trial trial = new Trial().planner(HASTY);

        for (String line : tour.subList(1, tour.size())) {
            String[] words = line.replace(" week", " " + place.resolve("week")).split(" ");
            assertThat(words[0]).isEqualTo("weekwright");
            int code = trial.run(Arrays.copyOfRange(words, 1, words.length));
            assertThat(code).as(line + "\n" + trial.err()).isZero();
        }

        trial.run("history", place.resolve("week").toString());
        assertThat(trial.out().lines())
                .anyMatch(line -> line.contains("Back to revision 2: Planned."))
                .anyMatch(line -> line.contains("Undone: "))
                .anyMatch(line -> line.contains("Done again: "))
                .anyMatch(line -> line.contains("is held"));
    }

    private static List<String> tour() throws Exception {
        String text = Files.readString(README);
        String from = text.substring(text.indexOf("<!-- tour"), text.indexOf("<!-- end of tour"));
        return from.lines()
                .filter(line -> line.startsWith("weekwright") || line.startsWith("mkdir"))
                .toList();
    }
}
