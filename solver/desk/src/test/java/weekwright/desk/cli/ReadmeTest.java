package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the README shows is what the program does. */
class ReadmeTest {
    private static final Path README = Path.of("../../README.md");
    private static final Pattern WEEK =
            Pattern.compile("(<!-- week: .*? -->\n```\n)(.*?)(```\n<!-- end of week -->)", Pattern.DOTALL);
    /** Set to {@code write} to put the week of today into the README. */
    private static final String WRITE = "weekwright.readme";

    private final Trial trial = new Trial();

    @Test
    void the_week_is_the_one_that_is_proposed() throws IOException {
        trial.run("propose", "demo:one-match", "--moves", "5000");
        String week = trial.out().substring(0, trial.out().indexOf("\n\nFound with ") + 1);
        String readme = Files.readString(README);
        if ("write".equals(System.getProperty(WRITE))) {
            readme = WEEK.matcher(readme).replaceFirst("$1" + Matcher.quoteReplacement(week) + "$3");
            Files.writeString(README, readme);
        }

        Matcher shown = WEEK.matcher(readme);

        assertThat(shown.find()).isTrue();
        assertThat(shown.group(2))
                .as("run with -D" + WRITE + "=write to refresh it")
                .isEqualTo(week);
    }

    @Test
    void every_command_of_its_table_is_there_with_its_options() throws IOException {
        Matcher rows =
                Pattern.compile("^\\| (`.+?) \\| (.*) \\|$", Pattern.MULTILINE).matcher(Files.readString(README));
        int commands = 0;
        while (rows.find()) {
            Matcher names = Pattern.compile("`([a-z]+)").matcher(rows.group(1));
            while (names.find()) {
                commands++;
                assertThat(trial.run(names.group(1), "--help"))
                        .as(names.group(1))
                        .isZero();
                Matcher options = Pattern.compile("`(--[a-z]+)").matcher(rows.group(2));
                while (options.find()) {
                    assertThat(trial.out()).contains(options.group(1));
                }
            }
        }
        assertThat(commands).isEqualTo(7);
    }
}
