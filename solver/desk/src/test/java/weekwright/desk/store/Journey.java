package weekwright.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.model.document.DocumentException;

/** Everything that can happen to a folder, one step after the other, with a note of what was confirmed after each. */
final class Journey {
    static final Path FOLDER = Path.of("/desk");

    /** What a folder holds: digests by revision, and which is in force. */
    record Held(Map<Integer, Map<String, String>> revisions, int head) {
        static Held of(Store store) {
            Map<Integer, Map<String, String>> revisions = new LinkedHashMap<>();
            store.history().forEach(revision -> revisions.put(revision.number(), revision.files()));
            return new Held(revisions, store.head().number());
        }
    }

    private interface Step {
        void go() throws DocumentException, IOException;
    }

    /** The disk, the time and what was confirmed before a step. */
    private record Stage(FrailDisk disk, Instant now) {}

    final FrailDisk disk;
    final Hands clock;
    final List<Held> held = new ArrayList<>();
    private final List<Stage> stages = new ArrayList<>();
    private Store store;

    Journey() throws IOException {
        disk = new FrailDisk().with(FOLDER);
        disk.byHand(FOLDER.resolve("scenario.json"), Harbour.SCENARIO);
        disk.byHand(FOLDER.resolve("log.json"), Harbour.LOG);
        clock = new Hands("2027-03-01T08:00:00Z");
    }

    private Journey(Stage stage) {
        disk = stage.disk().copy();
        clock = new Hands(stage.now());
    }

    /** A journey that was made, up to one of its steps. */
    Journey upTo(int step) throws DocumentException {
        Journey again = new Journey(stages.get(step));
        if (step > 0) {
            again.store = open(again.disk, again.clock);
        }
        return again;
    }

    /** Steps by name, in order. */
    private Map<String, Step> steps() {
        Map<String, Step> steps = new LinkedHashMap<>();
        steps.put("open", () -> store = open(disk, clock));
        steps.put("save", () -> saved(store.commit(head(), "Planned", with(1))));
        steps.put("save again", () -> saved(store.commit(head(), "Moved", with(2))));
        steps.put("undo", () -> saved(store.undo(head())));
        steps.put("redo", () -> saved(store.redo(head())));
        steps.put(
                "import",
                () -> saved(store.take(
                        head(),
                        "Log brought in",
                        Harbour.file("log.json", Harbour.LOG.replace("\"rpe\": 5", "\"rpe\": 8")))));
        steps.put("edit outside", () -> {
            disk.byHand(FOLDER.resolve("plan.json"), Harbour.planText(20));
            disk.byHand(FOLDER.resolve("scenario.json"), Harbour.SCENARIO.replace("\"Crew\"", "\"First crew\""));
            store.head();
        });
        steps.put("re-solve", () -> saved(store.commit(head(), "Planned anew", with(30))));
        steps.put(
                "come late", () -> assertThat(store.commit(2, "Late", with(40))).isInstanceOf(Outcome.Stale.class));
        steps.put("forget", () -> saved(store.forget("a1")));
        steps.put("save in spring", () -> {
            clock.move(Duration.ofDays(40));
            saved(store.commit(head(), "In spring", with(50)));
        });
        steps.put("restore", () -> saved(store.restore(head(), 10)));
        return steps;
    }

    static Store open(FrailDisk disk, Hands clock) throws DocumentException {
        return Store.open(new Store(FOLDER, disk, clock, new Retention(30, 0), 0));
    }

    private int head() {
        return store.head().number();
    }

    private Contents with(int hour) {
        return store.head().contents().with(Harbour.plan(hour));
    }

    private static void saved(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Saved.class);
    }

    /** Goes all the way. */
    void go() throws DocumentException, IOException {
        for (Step step : steps().values()) {
            stages.add(new Stage(disk.copy(), clock.instant()));
            step.go();
            held.add(Held.of(store));
        }
    }

    /** Goes one step, or until the power goes. */
    void go(int step) throws DocumentException, IOException {
        List.copyOf(steps().values()).get(step).go();
    }

    List<String> names() {
        return List.copyOf(steps().keySet());
    }
}
