package weekwright.desk.app;

import java.nio.file.Path;
import java.time.Clock;
import weekwright.desk.store.RealDisk;
import weekwright.desk.store.Store;
import weekwright.desk.store.StoreFault;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Problem;

/** Folders that keep every change of a plan. */
public final class Folders {
    private Folders() {}

    /**
     * Opens a folder; one that keeps no revisions yet begins with the files that lie in it.
     *
     * @throws FileFault when it cannot be read or written, or holds no scenario
     * @throws InputFault when the files that it would begin with cannot be used
     */
    public static Store open(Path folder, Clock clock) {
        try {
            return Store.open(folder, new RealDisk(), clock);
        } catch (DocumentException e) {
            throw new InputFault(e.problems().stream().map(Problem::toString).toList());
        } catch (StoreFault e) {
            throw new FileFault(String.valueOf(e.getMessage()), e);
        }
    }
}
