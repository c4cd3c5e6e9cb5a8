package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No command stands in the README that is not run: its tours by {@link TourTest}, its builds by {@code .ci/run}, and all else
 * here, by the lines of {@code commands.txt}.
 */
class ReadmeCommandsTest {
    private static final Path README = Path.of("../../README.md");
    private static final Path FILES = Path.of("src/test/resources/weekwright/desk/cli/readme");

    /** What the program says is put between such marks by {@link ReadmeTest}; the figures are no commands either. */
    private static final Pattern SHOWN =
            Pattern.compile("<!-- (\\w+): written by ReadmeTest.*?<!-- end of \\1 -->", Pattern.DOTALL);

    private static final Pattern BLOCK = Pattern.compile("^```\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern SPAN = Pattern.compile("`([^`\n]+)`");
    private static final Pattern ROW = Pattern.compile("^\\| (`.+?) \\| (.*) \\|$", Pattern.MULTILINE);
    private static final Pattern OPTION = Pattern.compile("(?<![\\w-])--?[a-z][a-z-]*");

    @TempDir
    private Path place;

    private String readme;
    private List<String> lines;
    private Set<String> run;

    @BeforeEach
    void read() throws Exception {
        readme = SHOWN.matcher(Files.readString(README)).replaceAll("");
        lines = Files.readAllLines(FILES.resolve("commands.txt")).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
        run = new TreeSet<>(TourTest.tour("tour"));
        run.addAll(TourTest.tour("own week"));
        lines.forEach(line -> run.add(line.replaceFirst("^\\d: ", "").replaceFirst(" < .*", "")));
    }

    @Test
    void each_of_the_lines_goes_as_it_should() throws Exception {
        try (Stream<Path> files = Files.list(FILES)) {
            for (Path file : files.toList()) {
                Files.copy(file, place.resolve(file.getFileName()));
            }
        }
        Walk walk = new Walk(place);
        for (String line : lines) {
            boolean fails = line.matches("\\d: .*");
            int exit = walk.does(fails ? line.substring(3) : line);
            assertThat(exit)
                    .as(line + "\n" + walk.trial.out() + walk.trial.err())
                    .isEqualTo(fails ? line.charAt(0) - '0' : 0);
        }
        assertThat(Stream.of(
                        "sheet.pdf", "wall.pdf", "a05.ics", "hall.csv", "brief.html", "without-wednesday/plan.json"))
                .allSatisfy(name -> assertThat(place.resolve(name)).isNotEmptyFile());
    }

    @Test
    void every_line_of_its_blocks_is_run() throws IOException {
        List<String> blocks = BLOCK.matcher(readme)
                .results()
                .flatMap(block -> block.group(1).lines())
                .toList();
        List<String> ci = Files.readAllLines(Path.of("../../.ci/run"));

        assertThat(blocks).hasSizeGreaterThan(15);
        for (String line : blocks) {
            switch (Walk.words(line).get(0)) {
                case "mvn" -> assertThat(ci).contains(line);
                case "alias" ->
                    assertThat(line).isEqualTo("alias weekwright=\"java -jar $PWD/solver/desk/target/weekwright.jar\"");
                default -> assertThat(run).contains(line);
            }
        }
    }

    @Test
    void every_command_in_its_text_is_run() throws IOException {
        String text = ROW.matcher(BLOCK.matcher(readme).replaceAll("")).replaceAll("");
        List<String> named = SPAN.matcher(text)
                .results()
                .map(span -> span.group(1))
                .filter(span -> Stream.concat(Cli.NAMES.stream(), Stream.of("weekwright", "java", "sh", "apt-get"))
                        .anyMatch(first -> span.startsWith(first + " ")))
                .toList();

        assertThat(named).hasSizeGreaterThan(12);
        String ci = Files.readString(Path.of("../../.ci/run"));
        for (String command : named) {
            if (command.startsWith("apt-get install ")) {
                assertThat(ci).contains("(" + command.substring("apt-get install ".length()) + ")");
            } else if (!command.equals("java -jar solver/desk/target/weekwright.jar")) {
                String whole = command.startsWith("weekwright ") ? command : "weekwright " + command;
                assertThat(run).as(command).anyMatch(line -> (line + " ").startsWith(whole + " "));
            }
        }
    }

    @Test
    void every_option_that_it_names_is_used() {
        Set<String> used = options(String.join("\n", run));
        List<String> named = SPAN.matcher(ROW.matcher(readme).replaceAll(""))
                .results()
                .filter(span -> !span.group(1).startsWith("java "))
                .flatMap(span -> options(span.group(1)).stream())
                .toList();

        assertThat(named).hasSizeGreaterThan(15);
        assertThat(used).containsAll(named);
    }

    @Test
    void every_command_of_its_table_is_run_with_each_of_its_options() {
        List<String> commands = new ArrayList<>();
        ROW.matcher(readme).results().forEach(row -> {
            for (String name : names(row)) {
                commands.add(name);
                String own = String.join(
                        "\n",
                        run.stream()
                                .filter(line -> (line + " ").startsWith("weekwright " + name + " "))
                                .toList());
                assertThat(own).as(name).isNotEmpty();
                if (names(row).size() == 1) {
                    assertThat(options(own)).as(name).containsAll(options(spans(row.group(1) + row.group(2))));
                }
            }
        });
        assertThat(commands).containsExactlyInAnyOrderElementsOf(Cli.NAMES);
    }

    private static List<String> names(MatchResult row) {
        return Pattern.compile("`([a-z]+)")
                .matcher(row.group(1))
                .results()
                .map(name -> name.group(1))
                .toList();
    }

    private static String spans(String text) {
        return String.join(
                "\n", SPAN.matcher(text).results().map(span -> span.group(1)).toList());
    }

    private static Set<String> options(String text) {
        Set<String> found = new TreeSet<>();
        OPTION.matcher(text).results().forEach(option -> found.add(option.group()));
        return found;
    }
}
