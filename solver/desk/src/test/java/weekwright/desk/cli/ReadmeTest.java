package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what the program does. */
class ReadmeTest {
    private static final Path README = Path.of("../../README.md");
    private static final Pattern WEEK =
            Pattern.compile("(<!-- week: .*? -->\n```\n)(.*?)(```\n<!-- end of week -->)", Pattern.DOTALL);
    private static final Pattern WHY_NOT =
            Pattern.compile("(<!-- whynot: .*? -->\n```\n)(.*?)(```\n<!-- end of whynot -->)", Pattern.DOTALL);
    private static final Pattern SHEET =
            Pattern.compile("(<!-- sheet: .*? -->\n```\n)(.*?)(```\n<!-- end of sheet -->)", Pattern.DOTALL);
    /** Set to {@code write} to put the week of today into the README. */
    private static final String WRITE = "weekwright.readme";

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();

    @Test
    void the_week_is_the_one_that_is_proposed() throws IOException {
        trial.run("propose", "demo:one-match", "--moves", "5000");
        String week = trial.out().substring(0, trial.out().indexOf("\n\nFound with ") + 1);
        shows(WEEK, week);
    }

    @Test
    void the_answer_to_whynot_is_the_one_that_is_given() throws IOException {
        Path plan = folder.resolve("plan.json");
        trial.run("propose", "demo:one-match", "--moves", "5000", "-o", plan.toString());
        trial.run(
                "whynot", "demo:one-match", plan.toString(), "--session", "first-squad/heavy-lower-knee/2027-02-08/1");
        shows(WHY_NOT, trial.out());
    }

    @Test
    void the_squats_of_the_day_are_those_of_its_sheet() throws IOException {
        Path plan = folder.resolve("plan.json");
        trial.run("propose", "demo:one-match", "--moves", "5000", "-o", plan.toString());
        trial.run("sheet", "demo:one-match", plan.toString(), "--day", "2027-02-09");
        Matcher squats = Pattern.compile(
                        "^.*Heavy lower, knee-dominant .*?\n(?=\n)", Pattern.MULTILINE | Pattern.DOTALL)
                .matcher(trial.out().substring(trial.out().indexOf("12:00–")));
        assertThat(squats.find()).isTrue();
        shows(SHEET, squats.group());
    }

    @Test
    void its_test_command_is_the_one_that_runs_from_nothing() throws IOException {
        Matcher commands = Pattern.compile("## Two commands\n.*?```\n(.*?)\n(.*?)\n```", Pattern.DOTALL)
                .matcher(Files.readString(README));
        assertThat(commands.find()).isTrue();
        assertThat(Files.readAllLines(Path.of("../../.ci/run"))).contains(commands.group(2));
    }

    private static void shows(Pattern part, String text) throws IOException {
        String readme = Files.readString(README);
        if ("write".equals(System.getProperty(WRITE))) {
            readme = part.matcher(readme).replaceFirst("$1" + Matcher.quoteReplacement(text) + "$3");
            Files.writeString(README, readme);
        }

        Matcher shown = part.matcher(readme);

        assertThat(shown.find()).isTrue();
        assertThat(shown.group(2))
                .as("run with -D" + WRITE + "=write to refresh it")
                .isEqualTo(text);
    }

    @Test
    void every_command_of_its_table_is_there_with_its_options() throws IOException {
        Matcher rows =
                Pattern.compile("^\\| (`.+?) \\| (.*) \\|$", Pattern.MULTILINE).matcher(Files.readString(README));
        List<String> commands = new ArrayList<>();
        while (rows.find()) {
            Matcher names = Pattern.compile("`([a-z]+)").matcher(rows.group(1));
            while (names.find()) {
                commands.add(names.group(1));
                assertThat(trial.run(names.group(1), "--help"))
                        .as(names.group(1))
                        .isZero();
                Matcher options = Pattern.compile("`(--[a-z]+)").matcher(rows.group(2));
                while (options.find()) {
                    assertThat(trial.out()).contains(options.group(1));
                }
            }
        }
        assertThat(commands).containsExactlyInAnyOrderElementsOf(Cli.NAMES);
    }
}
