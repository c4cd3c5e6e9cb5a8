package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.desk.app.Planner;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

class ProposeCommandTest {
    private static final String DEMO = "demo:one-match";

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();

    @Test
    void a_plan_is_shown_on_standard_output() {
        int code = trial.run("propose", DEMO, "--moves", "200");

        assertThat(code).isZero();
        assertThat(trial.out()).startsWith("Kilmarrow first squad, one league match on Saturday\n");
        assertThat(trial.out()).contains("◆ League round 21, home").endsWith("come first.\n");
        assertThat(trial.err()).doesNotContain("Kilmarrow");
    }

    @Test
    void progress_is_told_on_standard_error() {
        Planner telling = proposing((proposal, progress) -> {
            progress.better(new Totals(0, 0, 1, 40), 8, 9, 1_000, 0.4);
            assertThat(progress.stop()).isFalse();
            return judged(proposal.scenario(), new Totals(0, 0, 0, 0));
        });

        trial.planner(telling).run("propose", DEMO);

        assertThat(trial.err()).isEqualTo("""
                        Searching; interrupt (Ctrl-C) to take the best plan so far.
                        0.4 s: 8 of at most 9 placed; 1 main short; 40.0 points of wishes unmet
                        Nothing is kept: give -o FILE, or name a folder, to keep the plan.
                        """);
    }

    @Test
    void a_plan_is_written_whole_and_shown() throws Exception {
        Path plan = folder.resolve("plan.json");

        int code = trial.run("propose", DEMO, "--moves", "200", "-o", plan.toString());

        assertThat(code).isZero();
        Plan read = Documents.readPlan("plan.json", Files.readAllBytes(plan), Scenarios.read("one-match"));
        assertThat(read.placements()).isNotEmpty();
        assertThat(trial.out()).startsWith("Kilmarrow");
        assertThat(trial.err()).endsWith("Written into " + plan.toRealPath() + ".\n");
        assertThat(names(folder)).containsExactly("plan.json");
    }

    @Test
    void json_on_standard_output_is_the_plan_and_nothing_else() throws Exception {
        trial.run("propose", DEMO, "--moves", "200", "--json");

        byte[] json = trial.out().getBytes(StandardCharsets.UTF_8);
        assertThat(Documents.readPlan("plan", json, Scenarios.read("one-match")).totals())
                .isNotNull();
    }

    @Test
    void the_same_moves_and_seed_give_the_same_plan() {
        trial.run("propose", DEMO, "--moves", "300", "--seed", "9", "--json", "--threads", "1");
        String first = trial.out();
        trial.run("propose", DEMO, "--moves", "300", "--seed", "9", "--json", "--threads", "2");

        assertThat(trial.out()).isEqualTo(first);
    }

    @Test
    void a_scenario_comes_from_a_file_or_from_standard_input() throws Exception {
        byte[] scenario = Scenarios.bytes("two-evenings");
        Path file = Files.write(folder.resolve("week.json"), scenario);

        assertThat(trial.run("propose", file.toString(), "--moves", "50")).isZero();
        String fromFile = trial.out();
        assertThat(trial.in(scenario).run("propose", "-", "--moves", "50")).isZero();

        assertThat(trial.out()).isEqualTo(fromFile);
    }

    @Test
    void a_plan_to_start_from_is_read_for_its_own_scenario_only() throws Exception {
        Path plan = folder.resolve("plan.json");
        trial.run("propose", DEMO, "--moves", "100", "-o", plan.toString());

        assertThat(trial.run("propose", DEMO, "--moves", "100", "--from", plan.toString()))
                .isZero();
        assertThat(trial.run("propose", "demo:clash", "--moves", "100", "--from", plan.toString()))
                .isEqualTo(2);
        assertThat(trial.err()).contains(plan.toString());
    }

    @Test
    void a_plan_that_breaks_what_must_hold_ends_with_3() {
        int code = trial.planner(answering(new Totals(1, 0, 0, 0))).run("propose", DEMO);

        assertThat(code).isEqualTo(3);
        assertThat(trial.out()).contains("1 thing is broken that must hold; every wish is met.");
    }

    @Test
    void five_seconds_and_seed_1_are_usual() {
        List<Proposal> asked = new ArrayList<>();

        trial.planner(listening(asked)).run("propose", DEMO);

        assertThat(asked.get(0).budget()).isEqualTo(Budget.seconds(5));
        assertThat(asked.get(0).seed()).isEqualTo(1);
        assertThat(asked.get(0).threads()).isPositive();
        assertThat(asked.get(0).from()).isNull();
        assertThat(asked.get(0).now()).isNull();
    }

    @Test
    void what_is_asked_for_reaches_the_search() {
        List<Proposal> asked = new ArrayList<>();

        trial.planner(listening(asked))
                .run(
                        "propose",
                        DEMO,
                        "--seconds",
                        "0.5",
                        "--seed",
                        "-7",
                        "--threads",
                        "3",
                        "--now",
                        "2027-02-09T08:00");

        assertThat(asked.get(0).budget()).isEqualTo(Budget.seconds(0.5));
        assertThat(asked.get(0).seed()).isEqualTo(-7);
        assertThat(asked.get(0).threads()).isEqualTo(3);
        assertThat(asked.get(0).now()).hasToString("2027-02-09T08:00");
    }

    @Test
    void only_a_published_plan_asks_the_clock_what_time_it_is() throws Exception {
        List<Proposal> asked = new ArrayList<>();
        String draft = "{ \"weekwright\": 1, \"scenario\": \"kilmarrow-one-match\", \"placements\": []%s }";
        Path plan = Files.writeString(folder.resolve("draft.json"), draft.formatted(""));
        Path published = Files.writeString(
                folder.resolve("published.json"), draft.formatted(", \"published\": \"2027-02-07T18:00\""));

        trial.planner(listening(asked)).run("propose", DEMO, "--from", plan.toString());
        trial.run("propose", DEMO, "--from", published.toString());

        assertThat(asked.get(0).now()).isNull();
        assertThat(asked.get(1).now()).hasToString("2027-02-08T12:00");
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                Arguments.of(List.of("--seconds", "0"), "--seconds is 0.0: give more than 0 and at most 86400"),
                Arguments.of(List.of("--seconds", "NaN"), "--seconds is NaN: give more than 0"),
                Arguments.of(List.of("--seconds", "-1"), "--seconds is -1.0: give more than 0"),
                Arguments.of(List.of("--moves", "0"), "--moves is 0: give a whole number from 1"),
                Arguments.of(List.of("--threads", "65"), "--threads is 65: give 1 to 64"),
                Arguments.of(List.of("--moves", "many"), "'many' is not a whole number"),
                Arguments.of(List.of("--now", "noon"), "--now is \"noon\": give a time, such as 2027-03-01T10:00."),
                Arguments.of(List.of("--seconds", "1", "--moves", "1"), "Give only one of --seconds N, --moves N."),
                Arguments.of(
                        List.of("--sed", "1"), "Unknown options: '--sed', '1'. Did you mean --seconds or --seed?"));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void a_wrong_option_is_refused_before_anything_is_read(List<String> options, String said) {
        List<String> arguments = new ArrayList<>(List.of("propose", DEMO));
        arguments.addAll(options);

        assertThat(trial.run(arguments.toArray(String[]::new))).isEqualTo(2);
        assertThat(trial.err()).contains(said);
        assertThat(trial.out()).isEmpty();
    }

    @Test
    void every_fault_of_a_scenario_is_said_and_nothing_is_written() throws Exception {
        Path plan = folder.resolve("plan.json");
        String bad = new String(Scenarios.bytes("one-match"), StandardCharsets.UTF_8)
                .replace("\"days\": 7", "\"days\": 700")
                .replace("\"upper-strength\", \"perWeek\"", "\"uper-strength\", \"perWeek\"");

        int code = trial.in(bad.getBytes(StandardCharsets.UTF_8)).run("propose", "-", "-o", plan.toString());

        assertThat(code).isEqualTo(2);
        assertThat(trial.err().lines())
                .hasSize(2)
                .allSatisfy(line -> assertThat(line).startsWith("standard input: "))
                .anySatisfy(line -> assertThat(line).contains("days").contains("84"))
                .anySatisfy(line -> assertThat(line).contains("uper-strength").contains("upper-strength"));
        assertThat(trial.out()).isEmpty();
        assertThat(plan).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({"no-such-file.json", "/dev/null/plan"})
    void a_file_that_cannot_be_read_ends_with_4(String file) {
        assertThat(trial.run("propose", file)).isEqualTo(4);
        assertThat(trial.err()).startsWith(file).hasLineCount(1);
    }

    @ParameterizedTest
    @CsvSource({"no/such/folder/plan.json", ".", "/dev/null"})
    void where_nothing_can_be_written_is_found_out_before_the_search(String output) {
        List<Proposal> asked = new ArrayList<>();

        assertThat(trial.planner(listening(asked)).run("propose", DEMO, "-o", output))
                .isEqualTo(4);

        assertThat(asked).isEmpty();
        assertThat(trial.err()).hasLineCount(1);
        assertThat(trial.out()).isEmpty();
    }

    @Test
    void a_fault_of_ours_is_one_line_and_ends_with_1() {
        Planner broken = broken(new IllegalStateException("the week\nfell\u001b[2J over"));

        assertThat(trial.planner(broken).run("propose", DEMO)).isEqualTo(1);

        assertThat(trial.err())
                .contains("\nA fault of the program, not yours: the week. ")
                .hasLineCount(2);
        assertThat(trial.out()).isEmpty();
    }

    @Test
    void a_fault_of_ours_shows_where_it_happened_when_asked() {
        assertThat(trial.debug().planner(broken(new StackOverflowError())).run("propose", DEMO))
                .isEqualTo(1);
        assertThat(trial.err())
                .contains("\nA fault of the program, not yours: StackOverflowError. ")
                .contains("\tat weekwright.desk.cli.");
    }

    @Test
    void an_unknown_demo_names_those_that_there_are() {
        assertThat(trial.run("propose", "demo:one-mach")).isEqualTo(2);
        assertThat(trial.err()).contains("one-mach").contains("one-match");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static Planner answering(Totals totals) {
        return proposing((proposal, progress) -> judged(proposal.scenario(), totals));
    }

    private static Planner listening(List<Proposal> asked) {
        return proposing((proposal, progress) -> {
            asked.add(proposal);
            return judged(proposal.scenario(), new Totals(0, 0, 0, 0));
        });
    }

    private static Planner broken(Throwable fault) {
        return proposing((proposal, progress) -> {
            if (fault instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) fault;
        });
    }

    private static Judged judged(Scenario scenario, Totals totals) {
        Plan plan = new Plan(1, scenario.id(), null, null, null, List.of(), List.of(), List.of(), totals, List.of());
        return new Judged(plan, List.of(), List.of());
    }

    private interface Search {
        Judged propose(Proposal proposal, Progress progress);
    }

    private static Planner proposing(Search search) {
        return new Planner() {
            @Override
            public Judged judge(Scenario scenario, Plan plan) {
                throw new AssertionError("nothing to judge");
            }

            @Override
            public Judged propose(Proposal proposal, Progress progress) {
                return search.propose(proposal, progress);
            }
        };
    }
}
