package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import weekwright.desk.app.Planner;
import weekwright.desk.view.terminal.Ink;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.document.Documents;
import weekwright.model.rulebook.Rulebook;
import weekwright.scenarios.Demo;
import weekwright.scenarios.Scenarios;

class CliTest {
    @TempDir
    private Path folder;

    private final Trial trial = new Trial();

    @Test
    void rules_are_listed_with_level_sentence_and_source() {
        assertThat(trial.run("rules")).isZero();

        assertThat(trial.out()).startsWith("""
                        What must hold (must)
                          one-place-at-a-time  One place at a time
                            Nobody is in two things at once; travel, the way from place to place and a fixture's warm-up
                            count.
                            Costs: one must for each pair
                        """);
        Rulebook.builtIn()
                .rules()
                .forEach(rule -> assertThat(trial.out()).contains("  " + rule.id() + "  " + rule.title()));
        assertThat(trial.out()).contains("  quorum  Enough of the group\n").doesNotContain("not judged yet");
        assertThat(trial.err()).isEmpty();
    }

    @Test
    void rules_as_json_are_the_rulebook() {
        assertThat(trial.run("rules", "--json")).isZero();

        assertThat(JsonMapper.shared().readTree(trial.out()).size())
                .isEqualTo(Rulebook.builtIn().rules().size());
    }

    @Test
    void families_are_listed_with_their_figures() {
        assertThat(trial.run("catalogue")).isZero();

        assertThat(trial.out()).startsWith("""
                        max-velocity  Maximal velocity sprinting
                            high; 25 min warm-up and 40 min of work; RPE 5; neural 9, metabolic 3, tissue 8; track or field
                            Qualities: max-velocity-sprint; lightly acceleration, hip-dominant, jump-landing
                            Hours: the like again 40, wanted 72; the next high day 16; before a fixture 40, wanted 72; a
                                   micro dose before a fixture 36, wanted 48
                        """);
        assertThat(trial.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void families_as_json_are_the_catalogue() {
        assertThat(trial.run("catalogue", "--json")).isZero();

        JsonNode families = JsonMapper.shared().readTree(trial.out());
        assertThat(families.size()).isEqualTo(Catalogue.builtIn().families().size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "scenario",
                "plan",
                "log",
                "catalogue",
                "rules",
                "check",
                "whynot",
                "tradeoffs",
                "compare",
                "sheet",
                "history"
            })
    void each_document_has_a_schema(String name) {
        assertThat(trial.run("schema", name)).isZero();

        JsonNode schema = JsonMapper.shared().readTree(trial.out());
        assertThat(schema.get("$schema").asString()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
    }

    @Test
    void an_unknown_schema_names_the_nearest() {
        assertThat(trial.run("schema", "plam")).isEqualTo(2);
        assertThat(trial.err()).contains("plam").contains("plan").hasLineCount(1);
    }

    @Test
    void demos_are_listed_with_what_to_expect() {
        assertThat(trial.run("demo")).isZero();
        for (Demo demo : Scenarios.all()) {
            assertThat(trial.out()).contains("demo:" + demo.name() + "  " + demo.title());
        }
    }

    @Test
    void a_demo_is_given_out_as_it_is() throws Exception {
        Path file = folder.resolve("mine.json");

        assertThat(trial.run("demo", "clash")).isZero();
        assertThat(trial.out()).isEqualTo(new String(Scenarios.bytes("clash"), StandardCharsets.UTF_8));
        assertThat(trial.run("demo", "clash", "-o", file.toString())).isZero();

        assertThat(file).hasBinaryContent(Scenarios.bytes("clash"));
        assertThat(trial.out()).isEmpty();
        Documents.readScenario("mine.json", Files.readAllBytes(file));
    }

    @Test
    void a_list_of_demos_is_not_written_into_a_file() {
        assertThat(trial.run("demo", "-o", "x.json")).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("-o needs the NAME of a demo scenario\n");
    }

    @Test
    void without_a_command_the_way_to_help_is_shown() {
        assertThat(trial.run()).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("a command is missing: weekwright --help lists them\n");
    }

    @Test
    void help_lists_every_command_and_every_exit_code() {
        assertThat(trial.run("--help")).isZero();
        assertThat(trial.out())
                .contains(
                        "propose ",
                        "check ",
                        "tradeoffs ",
                        "compare ",
                        "whatif ",
                        "pin ",
                        "sheet ",
                        "load ",
                        "marks ",
                        "rules ",
                        "catalogue ",
                        "schema ",
                        "new ",
                        "next ",
                        "demo ")
                .contains("history ", "undo ", "redo ", "forget ")
                .contains("0 done", "1 a fault", "2 bad", "3 done", "4 a file", "130 ");
        assertThat(trial.run("propose", "--help")).isZero();
        assertThat(trial.out()).startsWith("Usage: weekwright propose ").contains("--seconds", "--moves", "--from");
    }

    @Test
    void a_misspelt_command_is_set_right() {
        assertThat(trial.run("chek", "a", "b")).isEqualTo(2);
        assertThat(trial.err())
                .contains("\"chek\"")
                .contains("Did you mean check")
                .contains("weekwright --help");
    }

    @Test
    void what_is_wrong_with_a_call_is_said_in_plain_words() {
        assertThat(said("propos", "week")).isEqualTo("No command is called \"propos\". Did you mean propose?");
        assertThat(said("check", "a", "b", "c")).isEqualTo("\"c\" is more than this command takes.");
        assertThat(said("whynot", "week")).isEqualTo("--session ID is missing.");
        assertThat(said("compare", "week")).isEqualTo("PLAN_A is missing.");
        assertThat(said("whatif", "week", "--fixture", "f1")).isEqualTo("--to TIME is missing.");
        assertThat(said("propose", "week", "--seconds", "abc"))
                .isEqualTo("Invalid value for option '--seconds': 'abc' is not a number.");
        assertThat(said("propose", "week", "--moves", "1.5"))
                .isEqualTo("Invalid value for option '--moves': '1.5' is not a whole number.");
        assertThat(said("propose", "week", "--moves", "1", "--seconds", "1"))
                .isEqualTo("Give only one of --seconds N, --moves N.");
        assertThat(said("wall", "week")).isEqualTo("Give --html FILE or --pdf FILE.");
        assertThat(said("calendar", "demo:clash", "--group", "x")).contains("college-squad");
    }

    @Test
    void dates_and_times_of_a_call_that_are_none_are_said_with_what_would_be_right() {
        assertThat(said("whatif", "week", "--fixture", "f1", "--to", "6.3. 15:00"))
                .isEqualTo("--to is \"6.3. 15:00\": give a time, such as 2027-03-01T10:00.");
        assertThat(said("whatif", "week", "--close", "gym", "--day", "Tuesday"))
                .isEqualTo("--day is \"Tuesday\": give a date, such as 2027-03-01.");
        assertThat(said("next", "week", "-o", "x", "--first-day", "8.3."))
                .isEqualTo("--first-day is \"8.3.\": give a date, such as 2027-03-01.");
    }

    private String said(String... arguments) {
        assertThat(trial.run(arguments)).isEqualTo(2);
        return trial.err().lines().findFirst().orElseThrow();
    }

    @Test
    void the_version_is_said_in_one_line() {
        assertThat(trial.run("--version")).isZero();
        assertThat(trial.out()).startsWith("weekwright ").hasLineCount(1);
    }

    @Test
    void names_in_messages_cannot_steer_the_terminal() {
        assertThat(trial.run("propose", "no\u001b[2Jfile\u202e")).isEqualTo(4);
        assertThat(trial.run("\u001b[31mred")).isEqualTo(2);
        assertThat(trial.err()).doesNotContain("\u001b").contains("<U+001B>[31mred");
    }

    @Test
    void a_full_disk_behind_standard_output_is_said() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        var err = new java.io.ByteArrayOutputStream();
        Surroundings around = new Surroundings(
                InputStream.nullInputStream(),
                full,
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Ink.PLAIN,
                false,
                false,
                Clock.systemUTC(),
                Planner.ENGINE);

        assertThat(new Cli(around).run("rules")).isEqualTo(4);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .isEqualTo("standard output could not be written: No space left on device.\n");
    }
}
