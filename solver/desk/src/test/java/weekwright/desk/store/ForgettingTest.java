package weekwright.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

class ForgettingTest {
    private static final Path FOLDER = Path.of("/desk");

    /** An athlete in every place that a document has for one; all names are invented. */
    private static final String SCENARIO = """
            {
              "weekwright": 1, "id": "harbour", "title": "Harbour squad, Isla Larkmoor back on Tuesday", "zone": "Europe/Dublin",
              "firstDay": "2027-03-01", "days": 7,
              "groups": [ { "id": "crew", "label": "Crew of ISLA LARKMOOR",
                "away": [ { "from": "2027-03-03T16:00", "to": "2027-03-03T18:30", "why": "wedding of Isla Larkmoor" } ],
                "aims": [ { "family": "tempo-run", "perWeek": { "least": 1, "target": 1, "most": 2 }, "priority": "main" } ] } ],
              "athletes": [
                { "id": "a1", "name": "Isla Larkmoor", "groups": ["crew"], "born": "2004-05-09",
                  "restrictions": [ { "pathways": ["aerobic"], "upTo": "light", "from": "2027-03-01", "to": "2027-03-02", "why": "clinician" } ] },
                { "id": "a11", "name": "Isla Larkmoore", "groups": ["crew"] } ],
              "fixtures": [ { "id": "r1", "label": "Round 1", "groups": ["crew"], "start": "2027-03-06T14:30", "minutes": 100,
                "expected": [ { "athlete": "a1", "minutes": 0 }, { "athlete": "a11", "minutes": 60 } ], "played": [ { "athlete": "a1", "minutes": 5 } ] } ],
              "commitments": [ { "id": "job", "label": "Shift", "athletes": ["a1"], "start": "2027-03-02T08:00", "minutes": 480 },
                { "id": "exam", "label": "Exam", "athletes": ["a1", "a11"], "start": "2027-03-04T08:00", "minutes": 120 } ],
              "history": [ { "group": "crew", "family": "tempo-run", "start": "2027-02-26T16:00", "minutes": 40, "done": true,
                "except": ["a1"], "people": [ { "athlete": "a1", "rpe": 7, "note": "sore" } ], "note": "a1 went home; a11 stayed" } ]
            }
            """;

    private static final String PLAN = """
            { "weekwright": 1, "scenario": "harbour", "scenarioDigest": "%s", "placements": [
                { "id": "crew/tempo-run/2027-03-01/1", "group": "crew", "family": "tempo-run", "start": "2027-03-02T16:00", "minutes": 40 } ],
              "totals": { "must": 1, "key": 0, "main": 0, "want": 0 },
              "findings": [ { "rule": "one-place-at-a-time", "title": "One place at a time", "level": "must", "cost": 1, "heads": 1,
                "groups": ["crew"], "athletes": ["a1", "a11"], "placements": ["crew/tempo-run/2027-03-01/1"], "fixtures": [],
                "commitments": ["job", "exam"], "history": [], "facility": null, "staff": null, "week": null, "day": null,
                "measured": 2, "limit": 1, "unit": "things", "text": "Isla Larkmoor and Isla Larkmoore are in two places.",
                "remedy": { "do": ["Excuse Isla Larkmoor"], "change": { "must": -1, "key": 0, "main": 0, "want": 0 }, "adds": [], "free": false,
                  "text": "Excuse Isla Larkmoor." }, "noRemedy": null } ] }
            """;

    private final Hands clock = new Hands("2027-03-01T08:00:00Z");
    private FrailDisk disk;
    private Store store;

    @BeforeEach
    void folder() throws Exception {
        disk = new FrailDisk().with(FOLDER);
        disk.byHand(FOLDER.resolve("scenario.json"), SCENARIO);
        Scenario scenario = Documents.readScenario("scenario.json", Harbour.bytes(SCENARIO));
        disk.byHand(FOLDER.resolve("plan.json"), PLAN.formatted(Documents.digest(scenario)));
        disk.byHand(FOLDER.resolve("log.json"), Harbour.LOG.replace("\"a2\"", "\"a11\""));
        store = Store.open(FOLDER, disk, clock);
    }

    private Contents head() {
        return store.head().contents();
    }

    @Test
    void nothing_of_the_athlete_is_left_in_any_file() throws Exception {
        store.commit(1, "Isla Larkmoor rested", new Contents(renamed(), head().plan(), head().log()));
        store.commit(1, "For Isla Larkmoor", new Contents(renamed(), null, null));

        Outcome outcome = store.forget("a1");

        assertThat(outcome.message())
                .isEqualTo("The athlete is forgotten in all revisions of this folder. Files that were copied or sent"
                        + " elsewhere, and nicknames in notes, are not found by this.");
        Map<String, String> files = disk.everything(FOLDER);
        assertThat(files).hasSize(3 * 4 + 2 + 3);
        assertThat(files.values())
                .allSatisfy(text -> assertThat(text)
                        .doesNotContain(
                                "Larkmoor ", "Larkmoor\"", "Larkmoor.", "Larkmoor'", "LARKMOOR", "Isla Lark-Moor")
                        .doesNotContain("\"a1\"", "2004-05-09", "sore", "job", "clinician"));
        assertThat(Harbour.labels(store))
                .containsExactly(
                        "4 An athlete was forgotten",
                        "3 For someone (beside)",
                        "2 someone rested",
                        "1 The first files of the folder");
    }

    /** The name as it once was, in one revision only. */
    private static Scenario renamed() throws Exception {
        return Documents.readScenario(
                "scenario.json",
                Harbour.bytes(SCENARIO.replace("\"name\": \"Isla Larkmoor\"", "\"name\": \"Isla Lark-Moor\"")));
    }

    @Test
    void what_others_did_and_said_stays() throws Exception {
        store.forget("a1");

        Contents now = head();
        assertThat(now.scenario().title()).isEqualTo("Harbour squad, someone back on Tuesday");
        assertThat(now.scenario().athletes()).singleElement().satisfies(athlete -> {
            assertThat(athlete.id()).isEqualTo("a11");
            assertThat(athlete.name()).isEqualTo("Isla Larkmoore");
        });
        assertThat(now.scenario().commitments())
                .singleElement()
                .satisfies(exam -> assertThat(exam.athletes()).containsExactly("a11"));
        assertThat(now.scenario().fixtures().get(0).expected()).hasSize(1);
        assertThat(now.scenario().history().get(0).note()).isEqualTo("someone went home; a11 stayed");
        Plan plan = now.plan();
        assertThat(plan).isNotNull();
        assertThat(plan.findings().get(0).text()).isEqualTo("someone and Isla Larkmoore are in two places.");
        assertThat(plan.findings().get(0).athletes()).containsExactly("a11");
        assertThat(plan.findings().get(0).commitments()).containsExactly("exam");
        assertThat(plan.totals()).hasFieldOrPropertyWithValue("must", 1.0);
        assertThat(now.log()).isNotNull();
        assertThat(now.log().entries().get(0).people().get(0).note()).isEqualTo("ran with someone's group");
    }

    @Test
    void a_plan_stays_the_plan_of_its_scenario() {
        store.forget("a1");

        assertThat(head().plan()).isNotNull();
        assertThat(head().plan().scenarioDigest()).isEqualTo(Documents.digest(head().scenario()));
    }

    @Test
    void it_cannot_be_undone_by_undo_or_by_another_window() throws Exception {
        Contents before = head();
        store.commit(1, "Earlier", new Contents(before.scenario(), null, before.log()));
        store.forget("a1");

        assertThat(store.undo(3).head().contents().scenario().athletes()).hasSize(1);
        assertThat(store.commit(2, "Other window", before)).isInstanceOf(Outcome.Stale.class);
        assertThat(store.head().contents().scenario().athletes()).hasSize(1);
    }

    @Test
    void what_is_damaged_or_kept_aside_goes_too() throws Exception {
        store.commit(1, "Next", new Contents(head().scenario(), null, null));
        disk.byHand(FOLDER.resolve("history/000001/scenario.json"), "half of Isla Larkmoor");
        disk.byHand(FOLDER.resolve("log.json"), "half of Isla Larkmoor");
        store.head();
        assertThat(disk.everything(FOLDER)).containsKey("/log.damaged-20270301T080000Z.json");

        store.forget("a1");

        assertThat(disk.everything(FOLDER).values()).noneMatch(text -> text.contains("Isla Larkmoor "));
        assertThat(disk.everything(FOLDER).values()).noneMatch(text -> text.contains("half of"));
    }

    @Test
    void somebody_unknown_changes_nothing() {
        Map<String, String> before = disk.everything(FOLDER);

        assertThat(store.forget("a7").message())
                .isEqualTo("No revision knows an athlete with this id: nothing was changed.");
        assertThat(disk.everything(FOLDER)).isEqualTo(before);
    }

    @Test
    void an_athlete_of_an_older_revision_only_is_forgotten_there() throws Exception {
        Scenario without = Documents.readScenario("s", Harbour.bytes(Harbour.SCENARIO.replace("\"a1\"", "\"b1\"")));
        store.commit(1, "Left the squad", new Contents(without, null, null));

        assertThat(store.forget("a1")).isInstanceOf(Outcome.Saved.class);
        assertThat(store.read(1).contents().scenario().athletes()).hasSize(1);
    }

    @Test
    void names_are_words_of_their_own() {
        Scrub scrub = new Scrub("a1", Set.of("Al", "Bo Ek"));

        assertThat(List.of("Also Al, bo ek's day", "A1 a1 a1-x Alpine", "BO EKS").stream()
                        .map(scrub::text)
                        .toList())
                .containsExactly("Also someone, someone's day", "A1 someone a1-x Alpine", "BO EKS");
    }

    @Test
    void a_name_is_found_however_its_marks_are_written() {
        Scrub scrub = new Scrub("a1", Set.of("Zo\u00eb Nandu"));

        assertThat(scrub.text("Zoe\u0308 Nandu ran")).isEqualTo("someone ran");
    }
}
