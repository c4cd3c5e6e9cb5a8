package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.app.Planner;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** The tours of the README go as they stand there. */
class TourTest {
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
    void the_tour_of_a_folder_does_what_it_says() throws Exception {
        Trial trial = walked("tour");

        trial.run("history", place.resolve("week").toString());
        assertThat(trial.out().lines())
                .anyMatch(line -> line.contains("Back to revision 2: Planned."))
                .anyMatch(line -> line.contains("Undone: "))
                .anyMatch(line -> line.contains("Done again: "))
                .anyMatch(line -> line.contains("is held"));
    }

    @Test
    void the_tour_with_ones_own_week_does_what_it_says() throws Exception {
        Trial trial = walked("own week");

        assertThat(trial.err()).contains("Fixtures: League round 19, Sat 13 Mar 14:30.");
        trial.run("brief", place.resolve("mine").toString(), "--text");
        assertThat(trial.out()).contains("Sun 7 Mar (MD)\n14:30 League round 18");
        trial.run("check", place.resolve("mine").toString());
        assertThat(trial.out()).contains("pinned");
    }

    /** Does what stands between two marks of the README, line by line. */
    private Trial walked(String name) throws Exception {
        List<String> lines = tour(name);
        assertThat(lines).hasSizeGreaterThan(5);
        Trial trial = new Trial().planner(HASTY);
        for (String line : lines) {
            List<String> words = words(line);
            if (words.get(0).equals("mkdir")) {
                Files.createDirectory(place.resolve(words.get(1)));
            } else {
                String[] asked = words.stream().skip(1).map(this::inPlace).toArray(String[]::new);
                assertThat(trial.run(asked)).as(line + "\n" + trial.err()).isZero();
            }
        }
        return trial;
    }

    private static List<String> tour(String name) throws Exception {
        String text = Files.readString(README);
        String from = text.substring(text.indexOf("<!-- " + name + ":"), text.indexOf("<!-- end of " + name));
        return from.lines()
                .filter(line -> line.startsWith("weekwright") || line.startsWith("mkdir"))
                .toList();
    }

    /** As a shell takes a line apart: at spaces, but not within quotation marks. */
    private static List<String> words(String line) {
        return Pattern.compile("\"([^\"]*)\"|\\S+")
                .matcher(line)
                .results()
                .map(word -> word.group(1) != null ? word.group(1) : word.group())
                .toList();
    }

    private String inPlace(String word) {
        return word.matches("(week|mine)(-2|/.*)?") ? place.resolve(word).toString() : word;
    }
}
