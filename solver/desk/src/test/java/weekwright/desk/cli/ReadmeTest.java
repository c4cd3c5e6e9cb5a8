package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.Rulebook;

/** What the README shows is what the program does. */
class ReadmeTest {
    private static final Path README = Path.of("../../README.md");
    private static final Pattern WEEK =
            Pattern.compile("(<!-- week: .*? -->\n```\n)(.*?)(```\n<!-- end of week -->)", Pattern.DOTALL);
    private static final Pattern WHY_NOT =
            Pattern.compile("(<!-- whynot: .*? -->\n```\n)(.*?)(```\n<!-- end of whynot -->)", Pattern.DOTALL);
    private static final Pattern SHEET =
            Pattern.compile("(<!-- sheet: .*? -->\n```\n)(.*?)(```\n<!-- end of sheet -->)", Pattern.DOTALL);
    private static final Pattern FIGURES_SHOWN =
            Pattern.compile("(<!-- figures: .*? -->\n)(.*?)(<!-- end of figures -->)", Pattern.DOTALL);

    /** How the rows of its tables begin in the report, which may hold older ones of the same kind before them. */
    private static final List<List<String>> FIGURES = List.of(
            List.of(
                    "| problem | rules | budget |",
                    "| --- | --- | ---: | ---: | ---: | ---: | ---: |",
                    "| one squad, one week | yardstick | 1.0 s |",
                    "| one squad, one week | yardstick | 5.0 s |",
                    "| one squad, one week | all | 1.0 s |",
                    "| one squad, one week | all | 5.0 s |",
                    "| one squad, four weeks | all | 10.0 s |",
                    "| eight squads, one week | yardstick | 20.0 s |"),
            List.of(
                    "| way | clicks | keys |",
                    "| --- | ---: | ---: |",
                    "| from a blank week ",
                    "| from a week to the next one"));

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
    void its_figures_are_the_latest_of_the_report() throws IOException {
        List<String> report = Files.readAllLines(Path.of("../../benchmarks/report.md"));
        StringBuilder tables = new StringBuilder();
        for (List<String> table : FIGURES) {
            tables.append('\n');
            for (String row : table) {
                tables.append(latest(report, row)).append('\n');
            }
        }
        shows(FIGURES_SHOWN, tables + "\n");
    }

    private static String latest(List<String> report, String row) {
        return report.stream()
                .filter(line -> line.startsWith(row))
                .reduce((earlier, later) -> later)
                .orElseThrow(() -> new AssertionError("the report has no row that begins with " + row));
    }

    @Test
    void it_counts_the_sources_of_rules_and_sessions_as_they_are() throws IOException {
        String text = Files.readString(README).replaceAll("\\s+", " ");
        List<String> rules =
                Rulebook.builtIn().rules().stream().map(Rule::source).toList();
        List<String> families =
                Catalogue.builtIn().families().stream().map(Family::source).toList();

        assertThat(text)
                .contains(
                        "Of %d rules %d state a published figure, %d are proposals of experts grounded in published findings, %d are proposals that say no more, and %d are common practice without a source;"
                                .formatted(
                                        rules.size(),
                                        rules.stream()
                                                .filter(ReadmeTest::isPublished)
                                                .count(),
                                        rules.stream()
                                                .filter(ReadmeTest::isGrounded)
                                                .count(),
                                        rules.stream()
                                                .filter(ReadmeTest::isProposed)
                                                .count(),
                                        rules.stream()
                                                .filter(ReadmeTest::isCommon)
                                                .count()))
                .contains("of %d kinds of session %d are grounded, %d proposals and %d common practice."
                        .formatted(
                                families.size(),
                                families.stream().filter(ReadmeTest::isGrounded).count(),
                                families.stream().filter(ReadmeTest::isProposed).count(),
                                families.stream().filter(ReadmeTest::isCommon).count()));
    }

    private static boolean isGrounded(String source) {
        return source.startsWith("expert proposal, grounded in ");
    }

    private static boolean isProposed(String source) {
        return source.startsWith("expert proposal") && !isGrounded(source);
    }

    private static boolean isCommon(String source) {
        return source.startsWith("common practice");
    }

    private static boolean isPublished(String source) {
        return !source.startsWith("expert proposal") && !isCommon(source);
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
}
