package weekwright.desk.cli;

import java.util.function.Function;
import weekwright.desk.app.Folders;
import weekwright.desk.app.Inputs;
import weekwright.desk.store.Outcome;
import weekwright.desk.store.Store;
import weekwright.desk.view.terminal.Plain;

/** A change of a folder from the command line, and what is said of it. */
final class FolderChange {
    private FolderChange() {}

    static Outcome of(Surroundings around, String folder, Function<Store, Outcome> change) {
        Store store = Folders.open(Inputs.path(folder), around.clock());
        Outcome outcome = change.apply(store);
        around.tell(store.news());
        around.err().println(Plain.text(outcome.message()));
        return outcome;
    }
}
