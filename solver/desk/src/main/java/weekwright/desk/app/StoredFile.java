package weekwright.desk.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weekwright.desk.store.Outcome;
import weekwright.desk.store.RealDisk;
import weekwright.desk.store.Store;
import weekwright.desk.store.StoreFault;
import weekwright.desk.store.Version;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Problem;
import weekwright.model.scenario.Scenario;

/** A document of a folder that keeps its revisions: what is written becomes one. */
final class StoredFile implements Target {
    private static final Set<String> DOCUMENTS = Set.of("scenario.json", "plan.json", "log.json");

    private final Path path;
    private final String label;
    private final Store store;
    private final Version seen;

    private StoredFile(Path path, String label, Store store) {
        this.path = path;
        this.label = label;
        this.store = store;
        this.seen = store.head();
    }

    /** Whether a path is one of the three documents of such a folder. */
    static boolean isOne(Path path) {
        Path folder = path.getParent();
        Path name = path.getFileName();
        return folder != null
                && name != null
                && DOCUMENTS.contains(name.toString())
                && Store.isStore(folder, new RealDisk());
    }

    static StoredFile of(Path path, String label, Clock clock) {
        Path folder = path.getParent();
        return new StoredFile(path, label, Folders.open(folder == null ? path : folder, clock));
    }

    @Override
    public void suits(Scenario scenario) {
        String here = seen.contents().scenario().id();
        if (!here.equals(scenario.id())) {
            throw new InputFault(path + " belongs to the scenario \"" + here + "\", and this is \"" + scenario.id()
                    + "\": write into another folder");
        }
    }

    @Override
    public void write(byte[] bytes) {
        try {
            Outcome outcome = store.take(seen.number(), label, Map.of(String.valueOf(path.getFileName()), bytes));
            if (outcome instanceof Outcome.Stale) {
                throw new FileFault(outcome.message());
            }
        } catch (DocumentException e) {
            throw new InputFault(e.problems().stream().map(Problem::toString).toList());
        } catch (StoreFault e) {
            throw new FileFault(String.valueOf(e.getMessage()), e);
        }
    }

    @Override
    public List<String> news() {
        return store.news();
    }

    /** The file's path. */
    @Override
    public String toString() {
        return path.toString();
    }
}
