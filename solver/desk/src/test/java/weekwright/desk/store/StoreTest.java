package weekwright.desk.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;

class StoreTest {
    private static final Path FOLDER = Path.of("/desk");

    private final Hands clock = new Hands("2027-03-01T08:00:00Z");
    private FrailDisk disk;

    @BeforeEach
    void folder() throws IOException {
        disk = new FrailDisk().with(FOLDER);
        disk.byHand(FOLDER.resolve("scenario.json"), Harbour.SCENARIO);
    }

    private Store open() throws DocumentException {
        return Store.open(new Store(FOLDER, disk, clock, Retention.USUAL, 0));
    }

    private String file(String name) {
        return String.valueOf(disk.everything(FOLDER).get("/" + name));
    }

    // Beginning

    @Test
    void a_folder_begins_with_the_files_that_lie_in_it() throws Exception {
        disk.byHand(FOLDER.resolve("plan.json"), Harbour.planText(3));

        Store store = open();

        assertThat(Harbour.labels(store)).containsExactly("1 The first files of the folder");
        assertThat(store.head().contents().plan()).isEqualTo(Harbour.plan(3));
        assertThat(store.news()).isEmpty();
    }

    @Test
    void a_folder_without_a_scenario_says_how_to_begin() throws Exception {
        disk.delete(FOLDER.resolve("scenario.json"));

        assertThatThrownBy(this::open)
                .isInstanceOf(StoreFault.class)
                .hasMessage("The folder /desk holds no scenario.json: put one there first, for example with: weekwright"
                        + " demo one-match -o FOLDER/scenario.json");
        assertThat(disk.isFolder(FOLDER.resolve("history"))).isFalse();
    }

    @Test
    void a_folder_does_not_begin_with_a_scenario_that_cannot_be_used() throws Exception {
        disk.byHand(FOLDER.resolve("scenario.json"), Harbour.SCENARIO.replace("\"days\": 7", "\"days\": 700"));

        assertThatThrownBy(this::open).isInstanceOf(DocumentException.class).hasMessageContaining("days");
        assertThat(disk.everything(FOLDER)).containsOnlyKeys("/scenario.json");
    }

    @Test
    void a_new_folder_is_begun_with_documents_and_an_old_one_is_not() throws Exception {
        Path fresh = Path.of("/desk/new");

        Store store = Store.begin(fresh, disk, clock, "A new season", Harbour.week(1));

        assertThat(Harbour.labels(store)).containsExactly("1 A new season");
        assertThatThrownBy(() -> Store.begin(fresh, disk, clock, "Again", Harbour.week(1)))
                .hasMessage("The folder /desk/new holds a scenario already: open it, or name another one.");
    }

    // Saving

    @Test
    void a_change_is_a_revision_and_the_files_follow() throws Exception {
        Store store = open();

        Outcome outcome = store.commit(1, "Planned", Harbour.week(1));

        assertThat(outcome).isInstanceOf(Outcome.Saved.class);
        assertThat(outcome.message()).isEqualTo("Saved as revision 2.");
        assertThat(outcome.head().contents()).isEqualTo(Harbour.week(1));
        assertThat(file("plan.json")).contains("2027-03-01T07:00");
        assertThat(file("history/000002/plan.json")).isEqualTo(file("plan.json"));
        assertThat(file("history/000002/revision.json")).contains("\"label\": \"Planned\"", "2027-03-01T08:00:00Z");
        assertThat(open().head()).isEqualTo(outcome.head());
    }

    @Test
    void what_changes_nothing_is_no_revision() throws Exception {
        Store store = open();
        store.commit(1, "Planned", Harbour.week(1));

        Outcome outcome = store.commit(1, "Planned", Harbour.week(1));

        assertThat(outcome).isInstanceOf(Outcome.Same.class);
        assertThat(outcome.message()).isEqualTo("Nothing has changed; revision 2 shows this already.");
        assertThat(store.history()).hasSize(2);
    }

    @Test
    void a_plan_that_does_not_fit_its_scenario_is_never_written() throws Exception {
        Store store = open();
        String other = Harbour.SCENARIO.replace("\"crew\"", "\"team\"");
        Contents unfit = new Contents(Documents.readScenario("s", Harbour.bytes(other)), Harbour.plan(1), null);

        assertThatThrownBy(() -> store.commit(1, "Wrong", unfit))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("no group is called \"crew\"");
        assertThat(store.history()).hasSize(1);
    }

    @Test
    void a_label_is_one_short_line() throws Exception {
        Store store = open();

        store.commit(1, "Two\nlines " + "x".repeat(300), Harbour.week(1));
        store.commit(2, " ", Harbour.week(2));

        assertThat(store.history().get(1).label()).startsWith("Two lines xxx").hasSize(200);
        assertThat(store.history().get(0).label()).isEqualTo("Change");
    }

    @Test
    void a_document_larger_than_can_be_read_is_refused() throws Exception {
        Store store = open();
        byte[] large = new byte[17 * 1024 * 1024];

        assertThatThrownBy(() -> store.take(1, "Large", Map.of("log.json", large)))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("larger than 16 MiB");
    }

    // Two tabs

    @Test
    void a_change_that_comes_late_is_refused_and_both_are_kept() throws Exception {
        Store store = open();
        store.commit(1, "First tab", Harbour.week(1));

        Outcome late = store.commit(1, "Second tab", Harbour.week(2));

        assertThat(late).isInstanceOfSatisfying(Outcome.Stale.class, stale -> {
            assertThat(stale.offered()).isEqualTo(Harbour.week(2));
            assertThat(stale.kept()).isNotNull();
        });
        assertThat(late.head().contents()).isEqualTo(Harbour.week(1));
        assertThat(late.message())
                .isEqualTo(
                        "This was made from revision 1, and the plan has moved on: revision 2 (First tab) is in force"
                                + " and stays so. Yours is kept beside as revision 3.");
        assertThat(Harbour.labels(open()))
                .containsExactly("3 Second tab (beside)", "2 First tab", "1 The first files of the folder");
        assertThat(store.read(3).contents()).isEqualTo(Harbour.week(2));
    }

    /** A search may go on for minutes, and the squad change meanwhile: its plan is kept with the squad that it is for. */
    @Test
    void a_plan_that_comes_late_for_a_squad_that_has_changed_is_kept_with_its_squad() throws Exception {
        Store store = open();
        store.take(1, "Renamed", Harbour.file("scenario.json", Harbour.SCENARIO.replace("\"crew\"", "\"team\"")));

        Outcome late = store.take(1, "Planned", Harbour.file("plan.json", Harbour.planText(1)));

        assertThat(late).isInstanceOf(Outcome.Stale.class);
        assertThat(store.read(3).contents()).isEqualTo(Harbour.week(1));
        assertThat(store.head().contents().plan()).isNull();
    }

    @Test
    void what_came_late_twice_is_kept_once_and_can_be_taken_up() throws Exception {
        Store store = open();
        store.commit(1, "First tab", Harbour.week(1));
        store.commit(1, "Second tab", Harbour.week(2));
        store.commit(1, "Second tab", Harbour.week(2));

        Outcome taken = store.restore(2, 3);

        assertThat(taken.head().number()).isEqualTo(4);
        assertThat(taken.head().contents()).isEqualTo(Harbour.week(2));
        assertThat(taken.head().revision().label()).isEqualTo("Back to revision 3: Second tab");
        assertThat(store.undo(4).head().contents()).isEqualTo(Harbour.week(1));
    }

    @Test
    void an_undo_that_comes_late_undoes_nothing() throws Exception {
        Store store = open();
        store.commit(1, "Planned", Harbour.week(1));

        assertThat(store.undo(1)).isInstanceOf(Outcome.Stale.class);
        assertThat(store.redo(1)).isInstanceOf(Outcome.Stale.class);
        assertThat(store.restore(1, 1)).isInstanceOf(Outcome.Stale.class);
        assertThat(store.head().number()).isEqualTo(2);
    }

    // Undo and redo

    @Test
    void undo_and_redo_go_back_and_forth_and_survive_opening() throws Exception {
        Store store = open();
        store.commit(1, "One", Harbour.week(1));
        store.commit(2, "Two", Harbour.week(2));
        store.commit(3, "Three", Harbour.week(3));

        assertThat(open().undo(4).head().contents()).isEqualTo(Harbour.week(2));
        assertThat(open().undo(5).head().contents()).isEqualTo(Harbour.week(1));
        assertThat(open().redo(6).head().contents()).isEqualTo(Harbour.week(2));
        assertThat(open().redo(7).head().contents()).isEqualTo(Harbour.week(3));
        assertThat(open().redo(8).message())
                .isEqualTo("There is nothing to redo: nothing was undone since the last change.");
        assertThat(Harbour.labels(store))
                .startsWith("8 Done again: Three", "7 Done again: Two", "6 Undone: Two", "5 Undone: Three");
    }

    @Test
    void the_first_state_cannot_be_undone() throws Exception {
        assertThat(open().undo(1).message())
                .isEqualTo("There is nothing to undo: this is the oldest state that is kept.");
    }

    @Test
    void after_an_undo_a_new_change_takes_the_place_of_what_was_undone() throws Exception {
        Store store = open();
        store.commit(1, "One", Harbour.week(1));
        store.undo(2);
        store.commit(3, "Other", Harbour.week(2));

        assertThat(store.redo(4)).isInstanceOf(Outcome.Same.class);
        assertThat(store.undo(4).head().contents().plan()).isNull();
        assertThat(store.redo(5).head().contents()).isEqualTo(Harbour.week(2));
    }

    @Test
    void undoing_the_first_plan_takes_its_file_away_and_redo_brings_it_back() throws Exception {
        Store store = open();
        store.commit(1, "Planned", Harbour.week(1));

        store.undo(2);
        assertThat(disk.everything(FOLDER)).doesNotContainKey("/plan.json");
        store.redo(3);
        assertThat(file("plan.json")).contains("2027-03-01T07:00");
    }

    // By hand

    @Test
    void a_file_changed_by_hand_becomes_a_revision() throws Exception {
        Store store = open();
        store.commit(1, "Planned", Harbour.week(1));
        disk.byHand(FOLDER.resolve("plan.json"), Harbour.planText(9));

        assertThat(store.head().number()).isEqualTo(3);
        assertThat(store.head().contents()).isEqualTo(Harbour.week(9));
        assertThat(Harbour.labels(store)).startsWith("3 Edited outside");
        assertThat(store.news()).containsExactly("plan.json was changed outside the program: this is revision 3 now.");
        assertThat(store.undo(3).head().contents()).isEqualTo(Harbour.week(1));
    }

    @Test
    void a_change_made_before_an_edit_by_hand_was_seen_comes_late() throws Exception {
        Store store = open();
        disk.byHand(FOLDER.resolve("plan.json"), Harbour.planText(9));

        Outcome outcome = store.commit(1, "Planned", Harbour.week(1));

        assertThat(outcome).isInstanceOf(Outcome.Stale.class);
        assertThat(Harbour.labels(store))
                .containsExactly("3 Planned (beside)", "2 Edited outside", "1 The first files of the folder");
    }

    @Test
    void what_an_editor_saves_while_a_change_is_written_is_left_for_the_next_look() throws Exception {
        WorkingCopies copies = new WorkingCopies(FOLDER, disk);
        copies.read();
        disk.byHand(FOLDER.resolve("scenario.json"), "saved at this very moment");

        copies.refresh(Texts.of(Harbour.week(1)));

        assertThat(file("scenario.json")).isEqualTo("saved at this very moment");
        assertThat(file("plan.json")).contains("2027-03-01T07:00");
    }

    @Test
    void other_spacing_is_no_change() throws Exception {
        Store store = open();
        disk.byHand(FOLDER.resolve("scenario.json"), "\n\n" + Harbour.SCENARIO);

        assertThat(store.head().number()).isEqualTo(1);
        assertThat(store.news()).isEmpty();
    }

    @Test
    void a_file_that_equals_an_older_revision_is_refreshed() throws Exception {
        Store store = open();
        store.commit(1, "One", Harbour.week(1));
        String older = file("plan.json");
        store.commit(2, "Two", Harbour.week(2));
        disk.byHand(FOLDER.resolve("plan.json"), older);

        assertThat(store.head().number()).isEqualTo(3);
        assertThat(file("plan.json")).isNotEqualTo(older).isEqualTo(file("history/000003/plan.json"));
    }

    @Test
    void a_missing_file_is_put_back() throws Exception {
        Store store = open();
        disk.delete(FOLDER.resolve("scenario.json"));

        store.head();

        assertThat(file("scenario.json")).contains("Harbour squad");
    }

    @Test
    void a_damaged_file_is_kept_aside_and_put_back() throws Exception {
        Store store = open();
        store.commit(1, "Planned", Harbour.week(1));
        disk.byHand(FOLDER.resolve("plan.json"), "{ \"weekwright\": 1, \"scen");

        assertThat(store.head().number()).isEqualTo(2);
        assertThat(file("plan.damaged-20270301T080000Z.json")).isEqualTo("{ \"weekwright\": 1, \"scen");
        assertThat(file("plan.json")).contains("2027-03-01T07:00");
        assertThat(store.news())
                .singleElement()
                .asString()
                .startsWith(
                        "plan.json could not be used and is kept as plan.damaged-20270301T080000Z.json; the one of revision 2"
                                + " takes its place. What was wrong: plan.json: ");
        disk.byHand(FOLDER.resolve("plan.json"), "");
        store.head();
        assertThat(disk.everything(FOLDER)).containsKey("/plan.damaged-20270301T080000Z-2.json");
    }

    @Test
    void a_plan_that_a_changed_scenario_has_no_place_for_stays_in_the_revision_before() throws Exception {
        Store store = open();
        store.commit(1, "Planned", Harbour.week(1));
        disk.byHand(FOLDER.resolve("scenario.json"), Harbour.SCENARIO.replace("\"crew\"", "\"team\""));

        assertThat(store.head().contents().plan()).isNull();
        assertThat(store.news())
                .containsExactly(
                        "scenario.json was changed outside the program: this is revision 3 now.",
                        "plan.json does not fit the changed scenario and is left out; revision 2 still has it.");
        assertThat(store.undo(3).head().contents()).isEqualTo(Harbour.week(1));
    }

    // Imports

    @Test
    void files_are_taken_in_all_or_none() throws Exception {
        Store store = open();

        Outcome outcome = store.take(1, "Log brought in", Harbour.file("log.json", Harbour.LOG));

        assertThat(outcome).isInstanceOf(Outcome.Saved.class);
        assertThat(outcome.head().contents().log()).isNotNull();
        assertThatThrownBy(() -> store.take(2, "Broken", Harbour.file("log.json", "{")))
                .isInstanceOf(DocumentException.class);
        assertThatThrownBy(() -> store.take(2, "Other", Harbour.file("notes.txt", "x")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(store.head().number()).isEqualTo(2);
    }

    // Damage

    @Test
    void a_damaged_revision_in_force_is_recovered_from_the_files() throws Exception {
        open().commit(1, "Planned", Harbour.week(1));
        disk.byHand(FOLDER.resolve("history/000002/plan.json"), "{}");

        Store store = open();

        assertThat(store.head().contents()).isEqualTo(Harbour.week(1));
        assertThat(store.head().number()).isEqualTo(3);
        assertThat(store.news())
                .containsExactly(
                        "Revision 2 is damaged: plan.json is not as it was written. What is left of it is kept in"
                                + " history/000002.damaged.",
                        "Revision 1 (The first files of the folder) is the newest that could be read.",
                        "plan.json still held what was saved after it: this is revision 3 now.");
        assertThat(Harbour.labels(store)).startsWith("3 Recovered from the files of the folder");
    }

    @Test
    void where_the_files_are_gone_too_the_newest_sound_revision_is_in_force() throws Exception {
        open().commit(1, "Planned", Harbour.week(1));
        disk.byHand(FOLDER.resolve("history/000002/revision.json"), "{ \"weekwright\": 1,");
        disk.delete(FOLDER.resolve("plan.json"));

        Store store = open();

        assertThat(store.head().number()).isEqualTo(1);
        assertThat(store.news())
                .containsExactly(
                        "Revision 2 is damaged: its particulars cannot be read. What is left of it is kept in"
                                + " history/000002.damaged.",
                        "Revision 1 (The first files of the folder) is the newest that could be read.");
        assertThat(store.commit(1, "Next", Harbour.week(2)).head().number()).isEqualTo(3);
    }

    @Test
    void where_no_revision_is_sound_the_files_are_all_there_is() throws Exception {
        open();
        disk.byHand(FOLDER.resolve("history/000001/scenario.json"), "");

        Store store = open();

        assertThat(Harbour.labels(store)).containsExactly("2 Recovered from the files of the folder");
        assertThat(store.news())
                .endsWith("No revision could be read; the files of the folder are sound and are in force.");
    }

    @Test
    void undo_passes_over_a_damaged_revision_and_says_so() throws Exception {
        Store store = open();
        store.commit(1, "One", Harbour.week(1));
        store.commit(2, "Two", Harbour.week(2));
        disk.delete(FOLDER.resolve("history/000002/plan.json"));

        assertThat(store.undo(3).head().contents().plan()).isNull();
        assertThat(store.news())
                .containsExactly("Revision 2 is damaged: plan.json is missing. What is left of it is kept in"
                        + " history/000002.damaged.");
        assertThatThrownBy(() -> store.read(2))
                .hasMessage(
                        "There is no revision 2 to read: it is not there. The list of revisions names those that are"
                                + " kept.");
    }

    @Test
    void what_a_newer_version_wrote_is_left_alone() throws Exception {
        open();
        Map<String, String> before = disk.everything(FOLDER);
        disk.byHand(FOLDER.resolve("scenario.json"), "{ \"weekwright\": 2, \"more\": true }");

        assertThatThrownBy(this::open)
                .hasMessage("/desk/scenario.json was written by a newer version of the program, which this one cannot"
                        + " read: use the newer one. Nothing new is saved; all that was saved before is safe.");
        assertThat(file("scenario.json")).isEqualTo("{ \"weekwright\": 2, \"more\": true }");
        disk.byHand(FOLDER.resolve("scenario.json"), String.valueOf(before.get("/scenario.json")));
        disk.byHand(
                FOLDER.resolve("history/000001/revision.json"),
                file("history/000001/revision.json").replace("\"weekwright\": 1", "\"weekwright\": 2"));
        assertThatThrownBy(this::open)
                .hasMessageContaining("history/000001/revision.json was written by a newer version");
    }

    // Surroundings

    @Test
    void a_clock_set_back_is_told_and_harms_nothing() throws Exception {
        Store store = open();
        clock.move(Duration.ofDays(-400));

        store.commit(1, "Planned", Harbour.week(1));

        assertThat(store.news())
                .containsExactly(
                        "The clock of this machine is behind the last change, saved at 2027-03-01T08:00:00Z: is"
                                + " it set right? Revisions keep their order all the same.");
        store.commit(2, "Again", Harbour.week(2));
        assertThat(store.news()).isEmpty();
        assertThat(Harbour.labels(store)).startsWith("3 Again", "2 Planned");
    }

    @Test
    void while_somebody_else_writes_the_coach_is_asked_to_wait() throws Exception {
        Store store = open();
        disk.lockedElsewhere(true);

        assertThatThrownBy(() -> store.commit(1, "Planned", Harbour.week(1)))
                .isInstanceOf(StoreFault.class)
                .hasMessage("Another window or command is writing into /desk just now: try again when it has ended."
                        + " Nothing new is saved; all that was saved before is safe.");
        disk.lockedElsewhere(false);
        assertThat(store.commit(1, "Planned", Harbour.week(1))).isInstanceOf(Outcome.Saved.class);
    }

    @Test
    void two_windows_on_one_folder_see_each_other_s_changes() throws Exception {
        Store one = open();
        Store two = open();
        one.commit(1, "One", Harbour.week(1));

        assertThat(two.head().contents()).isEqualTo(Harbour.week(1));
        assertThat(two.commit(2, "Two", Harbour.week(2))).isInstanceOf(Outcome.Saved.class);
        assertThat(one.commit(2, "Late", Harbour.week(3))).isInstanceOf(Outcome.Stale.class);
    }
}
