package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import weekwright.desk.app.Folders;
import weekwright.desk.app.Planner;
import weekwright.desk.store.Disk;
import weekwright.desk.store.RealDisk;
import weekwright.desk.store.Store;
import weekwright.desk.view.Dates;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Progress;
import weekwright.model.document.Documents;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.scenarios.Scenarios;

/** A folder in place of a scenario: what is found is saved in it, and every change can be taken back. */
class FolderCommandsTest {
    private static final String HEAVY = "first-squad/heavy-lower-knee/2027-02-08/1";
    private static final String SPEED = "first-squad/max-velocity/2027-02-08/1";

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();

    @BeforeEach
    void scenario() throws IOException {
        Files.write(folder.resolve("scenario.json"), Scenarios.bytes("one-match"));
    }

    private int run(String command, String... more) {
        List<String> arguments = new ArrayList<>(List.of(command, folder.toString()));
        arguments.addAll(List.of(more));
        return trial.run(arguments.toArray(String[]::new));
    }

    private void propose() {
        assertThat(run("propose", "--moves", "30")).as(trial.err()).isZero();
    }

    private String said() {
        return trial.err().lines().reduce((first, last) -> last).orElse("");
    }

    private Plan plan() throws Exception {
        return Documents.readPlan(
                "plan.json", Files.readAllBytes(folder.resolve("plan.json")), Scenarios.read("one-match"));
    }

    private Placement placed(String id) throws Exception {
        return plan().placements().stream()
                .filter(placement -> id.equals(placement.id()))
                .findFirst()
                .orElseThrow();
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return files;
    }

    private void edit(String file, String from, String to) throws IOException {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(from);
        Files.writeString(path, text.replace(from, to));
    }

    @Test
    void a_plan_is_proposed_into_the_folder_and_kept() throws Exception {
        propose();

        assertThat(said()).isEqualTo("Saved in " + folder + " as revision 2.");
        assertThat(trial.out()).startsWith("Kilmarrow first squad, one league match on Saturday\n");
        assertThat(plan().placements()).isNotEmpty();
        assertThat(folder.resolve("history/000002/plan.json")).hasSameBinaryContentAs(folder.resolve("plan.json"));
    }

    @Test
    void proposing_again_starts_from_the_plan_and_holds_what_is_pinned() throws Exception {
        propose();
        assertThat(run("pin", "--session", HEAVY, "--start", "2027-02-08T14:00"))
                .isIn(0, 3);
        assertThat(said()).isEqualTo("Saved in " + folder + " as revision 3.");
        run("propose", "--moves", "30");

        assertThat(placed(HEAVY).start()).hasToString("2027-02-08T14:00");
        assertThat(run("history")).isZero();
        assertThat(trial.out().replaceAll("\\s+", " "))
                .startsWith("4 Mon 8 Feb 2027 12:00 Planned again. Nothing is broken that must hold;")
                .contains(
                        "3 Mon 8 Feb 2027 12:00 Heavy lower, knee-dominant of First squad: start changes to Mon 8 Feb 14:00");
    }

    @Test
    void planning_again_says_what_changed_against_the_plan_before() {
        propose();
        run("propose", "--moves", "30");
        assertThat(trial.err()).contains("No session changes.\n");
        run("pin", "--session", HEAVY, "--start", "2027-02-10T09:00");
        run("propose", "--moves", "3000");
        assertThat(trial.err()).containsPattern("\n[1-9] sessions? moves?[^\n]*, and the plan is better: ");
    }

    @Test
    void a_look_at_a_folder_changes_nothing_in_it() throws Exception {
        propose();
        new RealDisk().deleteAll(folder.resolve("history"));
        edit("plan.json", "\"dose\": \"full\"", "\"dose\":   \"full\"");
        Map<String, String> before = files();

        assertThat(run("check")).isZero();

        assertThat(trial.out()).startsWith("Kilmarrow first squad");
        assertThat(trial.err()).isEmpty();
        assertThat(files()).isEqualTo(before);
    }

    @Test
    void another_plan_can_be_judged_and_another_place_named() throws Exception {
        propose();
        Map<String, String> before = files();
        String elsewhere = Files.createTempDirectory(folder.getParent(), "other")
                .resolve("plan.json")
                .toString();

        assertThat(run("pin", "--session", SPEED, "--start", "-o", elsewhere)).isZero();
        assertThat(run("check", elsewhere)).isZero();

        assertThat(files()).isEqualTo(before);
    }

    @Test
    void changes_are_listed_the_newest_first() {
        propose();
        run("undo");

        assertThat(run("history")).isZero();
        String[] lines = trial.out().split("\n(?=\\d)", -1);
        assertThat(lines).hasSize(3);
        assertThat(lines[0])
                .startsWith("3  Mon  8 Feb 2027 12:00  Undone: Planned. Nothing is broken that must hold;")
                .endsWith("(in force)");
        assertThat(lines[1]).startsWith("2  Mon  8 Feb 2027 12:00  Planned. Nothing is broken that must hold;");
        assertThat(lines[2]).isEqualTo("1  Mon  8 Feb 2027 12:00  The first files of the folder\n");
    }

    @Test
    void the_list_as_json_has_the_fields_of_its_schema() {
        propose();

        assertThat(run("history", "--json")).isZero();
        JsonNode list = JsonMapper.shared().readTree(trial.out());
        JsonNode schema = JsonMapper.shared().readTree(Documents.schema("history"));
        assertThat(list.get("head").asInt()).isEqualTo(2);
        assertThat(list.propertyNames())
                .containsExactlyElementsOf(schema.get("properties").propertyNames());
        JsonNode revision = list.get("revisions").get(0);
        JsonNode wanted = schema.get("$defs").get("revision");
        assertThat(wanted.get("properties").propertyNames()).containsAll(revision.propertyNames());
        assertThat(revision.propertyNames())
                .containsAll(wanted.get("required")
                        .valueStream()
                        .map(JsonNode::asString)
                        .toList());
    }

    @Test
    void undo_and_redo_go_back_and_forth() throws Exception {
        propose();
        Plan first = plan();
        run("pin", "--session", SPEED, "--start");
        Plan pinned = plan();

        assertThat(run("undo")).isZero();
        Moment start = placed(SPEED).start();
        assertThat(said())
                .isEqualTo("Undone: Maximal velocity sprinting of First squad: start " + Dates.day(start.date()) + " "
                        + Dates.clock(start) + " is held.");
        assertThat(plan()).isEqualTo(first);
        assertThat(run("redo")).isZero();
        assertThat(plan()).isEqualTo(pinned);
        assertThat(run("undo", "--to", "2")).isZero();
        assertThat(trial.err()).startsWith("Back to revision 2: Planned. ").contains(". Saved as revision ");
        assertThat(plan()).isEqualTo(first);
        assertThat(run("undo", "--to", "77")).isEqualTo(4);
        assertThat(trial.err())
                .isEqualTo(
                        "There is no revision 77 to read: it is not there. The list of revisions names those that are"
                                + " kept.\n");
    }

    @Test
    void an_athlete_is_forgotten() throws Exception {
        propose();
        String name = Scenarios.read("one-match").athletes().get(0).name();
        assertThat(files().values()).anyMatch(text -> text.contains(name));

        assertThat(run("forget", "--athlete", "nobody")).isEqualTo(2);
        assertThat(run("forget", "--athlete", name)).isZero();

        assertThat(said()).startsWith("The athlete is forgotten in all revisions of this folder.");
        assertThat(files().values()).noneMatch(text -> text.contains(name));
        assertThat(run("check")).isZero();
    }

    @Test
    void a_slip_in_a_file_changed_by_hand_is_named_and_the_file_stays() throws Exception {
        propose();
        edit("scenario.json", "\"days\": 7", "\"days\": 700");
        Map<String, String> before = files();

        assertThat(run("propose", "--moves", "30")).isEqualTo(2);

        assertThat(trial.err())
                .startsWith("scenario.json: days, line 7:11: 700 is too large.")
                .endsWith(
                        "The files in " + folder
                                + " stay as they are: mend what was changed, or delete the file to get back what was saved last.\n");
        assertThat(files()).isEqualTo(before);
        Files.delete(folder.resolve("scenario.json"));
        assertThat(run("propose", "--moves", "30")).isZero();
        assertThat(folder.resolve("scenario.json")).content().contains("\"days\": 7,");
    }

    @Test
    void a_slip_in_the_first_file_of_a_folder_is_named_and_nothing_is_there_to_go_back_to() throws Exception {
        edit("scenario.json", "\"days\": 7", "\"days\": 700");

        assertThat(run("propose", "--moves", "30")).isEqualTo(2);

        assertThat(trial.err())
                .startsWith("scenario.json: days, line 7:11: 700 is too large.")
                .endsWith("The files in " + folder + " stay as they are: mend what was changed.\n");
    }

    @Test
    void the_list_puts_back_what_was_saved_and_keeps_what_cannot_be_used() throws Exception {
        propose();
        Plan saved = plan();
        Files.writeString(folder.resolve("plan.json"), "{ \"weekwright\": 1, \"scen");

        assertThat(run("history")).isZero();

        assertThat(trial.err())
                .startsWith("plan.json could not be used and is kept as plan.damaged-20270208T120030Z.json;"
                        + " the one of revision 2 takes its place. What was wrong: plan.json:");
        assertThat(plan()).isEqualTo(saved);
    }

    @Test
    void what_was_changed_by_hand_is_taken_in_and_told() throws Exception {
        propose();
        edit("scenario.json", "one league match", "one hard league match");

        assertThat(run("propose", "--moves", "30")).isZero();

        assertThat(trial.err()).startsWith("scenario.json was changed outside the program: this is revision 3 now.\n");
        assertThat(said()).isEqualTo("Saved in " + folder + " as revision 4.");
        assertThat(trial.out()).startsWith("Kilmarrow first squad, one hard league match");
    }

    @Test
    void a_file_named_beside_the_history_is_written_as_a_change() throws Exception {
        propose();
        String plan = folder.resolve("plan.json").toString();

        assertThat(trial.run(
                        "pin",
                        folder.resolve("scenario.json").toString(),
                        plan,
                        "--session",
                        SPEED,
                        "--start",
                        "-o",
                        plan))
                .isZero();
        assertThat(said()).isEqualTo("Saved in " + folder.toRealPath() + " as revision 3.");
        assertThat(trial.run("propose", "demo:clash", "--moves", "10", "-o", plan))
                .isEqualTo(2);
        assertThat(trial.err())
                .startsWith(folder.toRealPath().resolve("plan.json")
                        + " belongs to the scenario \"kilmarrow-one-match\", and");
        assertThat(placed(SPEED).pin()).isNotNull();
    }

    @Test
    void where_somebody_else_changed_the_plan_meanwhile_both_are_kept() throws Exception {
        propose();
        Planner slow = new Planner() {
            @Override
            public Judged judge(weekwright.model.scenario.Scenario scenario, Plan plan) {
                return ENGINE.judge(scenario, plan);
            }

            @Override
            public Judged propose(Proposal proposal, Progress progress) {
                assertThat(new Trial().run("pin", folder.toString(), "--session", HEAVY, "--out"))
                        .isIn(0, 3);
                return ENGINE.propose(proposal, progress);
            }
        };
        edit("scenario.json", "one league match", "one late league match");

        assertThat(trial.planner(slow).run("propose", folder.toString(), "--moves", "30"))
                .isEqualTo(4);

        assertThat(said())
                .isEqualTo("This was made from revision 3, and the plan has moved on: revision 4 (Heavy lower,"
                        + " knee-dominant of First squad: is held out) is in force and stays so. Yours is kept beside as"
                        + " revision 5. To take it up: undo " + folder + " --to 5.");
        assertThat(trial.out()).startsWith("Kilmarrow first squad, one late league match");
        assertThat(run("undo", "--to", "5")).isZero();
        assertThat(placed(HEAVY).pin()).isNull();
    }

    @Test
    void a_command_waits_for_its_turn() throws Exception {
        propose();
        Disk.Lock lock = new RealDisk().tryLock(folder);
        Thread other = new Thread(() -> {
            try {
                Thread.sleep(150);
                lock.close();
            } catch (InterruptedException | IOException e) {
                throw new UncheckedIOException(new IOException(e));
            }
        });
        other.start();

        assertThat(run("undo")).isZero();
        other.join();
    }

    @Test
    void a_folder_that_cannot_serve_is_said() throws Exception {
        Path empty = Files.createTempDirectory(folder.getParent(), "empty");

        assertThat(trial.run("propose", empty.toString())).isEqualTo(4);
        assertThat(trial.err()).startsWith("The folder " + empty + " holds no scenario.json: put one there first");
        assertThat(trial.run("history", empty.resolve("none").toString())).isEqualTo(4);
        assertThat(trial.err())
                .isEqualTo("There is no folder " + empty.resolve("none") + ": give one that holds a scenario.json.\n");
        assertThat(run("check")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo("PLAN is missing: name one after the scenario, or a folder that has one (propose"
                        + " FOLDER makes it)\n");
        assertThat(files()).containsOnlyKeys("scenario.json");
    }

    @Test
    void names_in_labels_cannot_steer_the_terminal() throws Exception {
        Clock clock = Clock.fixed(Instant.parse("2027-02-08T12:00:30Z"), ZoneOffset.UTC);
        Store store = Folders.open(folder, clock);
        store.take(1, "red \u001b[31m and \u202e turned", Map.of("log.json", """
                        { "weekwright": 1, "scenario": "kilmarrow-one-match", "entries": [] }
                        """.getBytes(StandardCharsets.UTF_8)));

        assertThat(run("history")).isZero();
        assertThat(trial.out()).contains("red [31m and turned");
    }

    @Test
    void a_folder_in_place_of_a_file_is_told_which_file_is_meant() {
        propose();

        assertThat(run("compare", folder.toString())).isEqualTo(4);

        assertThat(said())
                .isEqualTo(folder + " is a folder, and a file is wanted here; a folder's plan is "
                        + folder.resolve("plan.json") + ".");
    }
}
