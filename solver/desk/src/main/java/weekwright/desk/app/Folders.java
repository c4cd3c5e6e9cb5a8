package weekwright.desk.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import weekwright.desk.store.RealDisk;
import weekwright.desk.store.Store;
import weekwright.desk.store.StoreFault;
import weekwright.model.document.DocumentException;

/** Folders that keep every change of a plan. */
public final class Folders {
    /** Name of the working copy of the scenario in a folder. */
    public static final String SCENARIO = "scenario.json";
    /** Name of the working copy of the plan in a folder. */
    public static final String PLAN = "plan.json";

    private Folders() {}

    /**
     * Opens a folder; one that keeps no revisions yet begins with the files that lie in it. Files that cannot be used are
     * kept aside, and what was saved last takes their place.
     *
     * @throws FileFault when it cannot be read or written, or holds no scenario
     * @throws InputFault when the files that it would begin with cannot be used
     */
    public static Store open(Path folder, Clock clock) {
        there(folder);
        try {
            return Store.open(folder, new RealDisk(), clock);
        } catch (DocumentException e) {
            throw InputFault.of(e);
        } catch (StoreFault e) {
            throw FileFault.of(e);
        }
    }

    private static void there(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new FileFault("There is no folder " + folder + ": give one that holds a scenario.json");
        }
    }

    /**
     * Opens a folder as {@link #open} does, but for a slip in a file that a coach has changed by hand: it is named, and the
     * file stays for it to be mended.
     *
     * @throws FileFault when it cannot be read or written, or holds no scenario
     * @throws InputFault when a file cannot be used
     */
    static Store openSound(Path folder, Clock clock) {
        there(folder);
        try {
            return Store.openSound(folder, new RealDisk(), clock);
        } catch (DocumentException e) {
            List<String> problems = new ArrayList<>(InputFault.of(e).problems());
            problems.add("The files in " + folder + " stay as they are: mend what was changed"
                    + (Store.isStore(folder, new RealDisk())
                            ? ", or delete the file to get back what was saved last."
                            : "."));
            throw new InputFault(problems);
        } catch (StoreFault e) {
            throw FileFault.of(e);
        }
    }
}
