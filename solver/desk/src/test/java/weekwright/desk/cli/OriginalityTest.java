package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a coach sees is listed in DEVELOPERS.md, so that whoever adds to it asks what it would remind somebody of. */
class OriginalityTest {
    private static final Path MAIN = Path.of("src/main");

    @TempDir
    private Path place;

    private String listed;

    @BeforeEach
    void read() throws IOException {
        String all = Files.readString(Path.of("../../DEVELOPERS.md"));
        String from = all.substring(all.indexOf("### What a coach sees"));
        listed = from.substring(0, from.indexOf("\n## "));
    }

    private String part(String begin) {
        String from = listed.substring(listed.indexOf("**" + begin));
        return from.substring(0, from.indexOf("\n\n")).replaceAll("\\s+", " ");
    }

    @Test
    void every_command() {
        List<String> named = Pattern.compile("`([a-z]+)`")
                .matcher(part("Commands."))
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(named).containsExactlyInAnyOrderElementsOf(Cli.NAMES);
    }

    @Test
    void every_way_on_a_page() throws IOException {
        List<String> ways = Pattern.compile(">([A-Z][a-z ]+)</a>")
                .matcher(Files.readString(MAIN.resolve("jte/ways.jte")))
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(ways).contains("Week", "Load");
        assertThat(part("Ways on every page.")).contains(ways);
    }

    @Test
    void every_colour() throws IOException {
        String style = Files.readString(MAIN.resolve("resources/weekwright/desk/page/desk.css"));
        List<String> colours = Pattern.compile("--[a-z0-9-]+: (#[0-9a-f]{6})")
                .matcher(style)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(colours).hasSizeGreaterThan(8);
        assertThat(part("Colours.")).contains(colours);
    }

    @Test
    void every_column() {
        Trial trial = new Trial();
        Path plan = place.resolve("plan.json");
        trial.run("propose", "demo:one-match", "--moves", "30", "-o", plan.toString());
        for (String what : List.of("plan", "findings", "loads", "bookings")) {
            assertThat(trial.run("table", "demo:one-match", plan.toString(), "--what", what))
                    .as(trial.err())
                    .isZero();
            String heading = trial.out().lines().findFirst().orElseThrow().replace("\uFEFF", "");
            assertThat(part("Columns")).contains(what + ": " + heading.replace(",", ", "));
        }
    }

    /** In what pages, rules and help say: names of fields and of our own classes in a template are not said. */
    @Test
    void words_of_programs_are_not_said() throws IOException {
        String terms = part("Terms.");
        String never = terms.substring(terms.indexOf("not of a pitch: ") + "not of a pitch: ".length());
        List<String> words = List.of(never.replaceFirst("\\. *$", "").split(", ", -1));
        assertThat(words).hasSizeGreaterThan(8);
        Pattern any = Pattern.compile("(?i)\\b(" + String.join("|", words) + ")(s|es)?\\b");

        Trial trial = new Trial();
        for (String command : Cli.NAMES) {
            trial.run(command, "--help");
            assertThat(any.matcher(trial.out()).find()).as(command).isFalse();
        }
        for (String command : List.of("rules", "catalogue")) {
            trial.run(command);
            assertThat(any.matcher(trial.out()).find()).as(command).isFalse();
        }
        try (Stream<Path> templates = Files.list(MAIN.resolve("jte"))) {
            templates.forEach(template -> {
                String said = read(template).replaceAll("(?s)<[^>]*>|\\$\\{[^}]*}|(?m)^[@!].*$|@\\w+\\([^)]*\\)", " ");
                assertThat(any.matcher(said)
                                .results()
                                .map(found -> found.group())
                                .toList())
                        .as(template.toString())
                        .isEmpty();
            });
        }
    }

    /** A button says what it does in words: more than one, or a verb that the page explains beside it. */
    @Test
    void no_button_is_a_picture_or_in_capitals() throws IOException {
        try (Stream<Path> templates = Files.list(MAIN.resolve("jte"))) {
            List<String> buttons = templates
                    .flatMap(template -> Pattern.compile("<button[^>]*>(.*?)</button>")
                            .matcher(read(template))
                            .results())
                    .map(found -> found.group(1))
                    .toList();
            assertThat(buttons).hasSizeGreaterThan(15);
            assertThat(buttons)
                    .allSatisfy(button ->
                            assertThat(button).containsPattern("[a-z]|\\$\\{").doesNotContain("<svg", "<img"));
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
