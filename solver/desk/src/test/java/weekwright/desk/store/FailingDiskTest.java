package weekwright.desk.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import weekwright.desk.store.Journey.Held;

/** The disk is full, or fails, at every step of every kind of write. Nobody loses power: the program goes on. */
class FailingDiskTest {
    @Test
    void a_full_disk_costs_nothing_that_was_confirmed() throws Exception {
        everyStep(true);
    }

    @Test
    void a_step_that_fails_costs_nothing_that_was_confirmed() throws Exception {
        everyStep(false);
    }

    private static void everyStep(boolean full) throws Exception {
        Journey whole = new Journey();
        whole.go();
        for (int step = 1; step < whole.names().size(); step++) {
            // Forgetting writes every revision in the same way: every seventh step will do.
            int pace = whole.names().get(step).equals("forget") ? 7 : 1;
            boolean failed = true;
            for (int at = 1; failed; at += pace) {
                Journey journey = whole.upTo(step);
                if (full) {
                    journey.disk.fullAfter(at);
                } else {
                    journey.disk.failOnce(at);
                }
                int before = journey.disk.steps();
                boolean said = fails(journey, step);
                failed = journey.disk.steps() - before >= at;
                check(journey, whole, step, said, whole.names().get(step) + ", step " + at);
            }
        }
    }

    /** Whether the coach was told that it failed. */
    private static boolean fails(Journey journey, int step) throws Exception {
        try {
            journey.go(step);
            return false;
        } catch (StoreFault e) {
            assertThat(e)
                    .hasMessageMatching("The (disk is full, .*|folder /desk could not be read or written: .*)"
                            + "all that was saved before is safe\\.|The folder /desk could not be written to the end: .*"
                            + "open it again\\.");
            return true;
        }
    }

    /** What was said not to be saved is not there, what was said to be saved is; all else is as it was. */
    private static void check(Journey journey, Journey whole, int step, boolean said, String when) throws Exception {
        journey.disk.mend();
        Held before = whole.held.get(step - 1);
        Held after = whole.held.get(step);
        Held now = Held.of(Journey.open(journey.disk, journey.clock));
        // An edit outside is found again at the next opening; a forgetting that was begun goes on there.
        boolean goesOn =
                List.of("edit outside", "forget").contains(whole.names().get(step));
        assertThat(now.head())
                .as(when)
                .isIn(goesOn || !said ? after.head() : before.head(), said ? before.head() : after.head());
        Held wanted = now.head() == after.head() ? after : before;
        before.revisions().keySet().stream()
                .filter(after.revisions()::containsKey)
                .forEach(number -> assertThat(now.revisions().get(number))
                        .as(when)
                        .isIn(wanted.revisions().get(number), after.revisions().get(number)));
        assertThat(journey.disk.everything(Journey.FOLDER).keySet())
                .as(when)
                .noneMatch(file -> file.contains(".writing") || file.contains(".gone") || file.contains("history."));
    }

    @Test
    void a_full_disk_is_said() throws Exception {
        Journey journey = new Journey();
        Store store = Journey.open(journey.disk, journey.clock);
        journey.disk.fullAfter(1);

        assertThatThrownBy(() -> store.commit(1, "Planned", Harbour.week(1)))
                .hasMessage(
                        "The disk is full, so nothing can be written into /desk: make room and try again. Nothing new"
                                + " is saved; all that was saved before is safe.");
    }

    @Test
    void a_folder_that_may_not_be_written_to_is_said() throws Exception {
        Journey journey = new Journey();
        Store store = Journey.open(journey.disk, journey.clock);
        journey.disk.readOnly();

        assertThatThrownBy(() -> store.commit(1, "Planned", Harbour.week(1)))
                .hasMessage("The folder /desk may not be written to: give yourself the right to, or copy it to another"
                        + " place. Nothing new is saved; all that was saved before is safe.");
    }

    @Test
    void a_folder_that_vanishes_is_said_and_not_made_again() throws Exception {
        Journey journey = new Journey();
        Store store = Journey.open(journey.disk, journey.clock);
        journey.disk.deleteAll(Journey.FOLDER);

        assertThatThrownBy(() -> store.commit(1, "Planned", Harbour.week(1)))
                .hasMessage(
                        "The folder /desk is not as it was left: was it moved, or a drive taken out? Put it back and"
                                + " try again. Nothing new is saved; all that was saved before is safe.");
        assertThat(journey.disk.isFolder(Journey.FOLDER)).isFalse();
        journey.disk.with(Path.of("/desk"));
        assertThatThrownBy(store::head).hasMessageStartingWith("The folder /desk is not as it was left");
        assertThat(journey.disk.list(Journey.FOLDER)).isEmpty();
    }

    @Test
    void a_saved_change_whose_files_could_not_be_refreshed_is_saved_all_the_same() throws Exception {
        Journey whole = new Journey();
        whole.go();
        Journey journey = whole.upTo(1);
        Store store = Journey.open(journey.disk, journey.clock);
        // A folder, three documents and the particulars, each written and synced; the folder synced, renamed, synced.
        journey.disk.fullAfter(12);

        Outcome outcome = store.commit(1, "Planned", store.head().contents().with(Harbour.plan(1)));

        assertThat(outcome).isInstanceOf(Outcome.Saved.class);
        assertThat(store.news())
                .containsExactly(
                        "Revision 2 is saved, but the files beside history could not be brought up to date; this"
                                + " is tried again at the next change.");
        journey.disk.mend();
        store.head();
        assertThat(journey.disk.everything(Journey.FOLDER)).containsKey("/plan.json");
    }

    /** The words are the system's own, asked for without a full disk: /dev/full is always full (Linux man-pages, full(4)). */
    @Test
    @EnabledOnOs(OS.LINUX)
    void a_full_disk_is_known_by_what_the_system_says() {
        assertThatThrownBy(() -> new RealDisk().write(Path.of("/dev/full"), Harbour.bytes("x")))
                .isInstanceOfSatisfying(
                        IOException.class,
                        e -> assertThat(StoreFault.of(Journey.FOLDER, e))
                                .hasMessageStartingWith("The disk is full, so nothing can be written into /desk"));
    }
}
