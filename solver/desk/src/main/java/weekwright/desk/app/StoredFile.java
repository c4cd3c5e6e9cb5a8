package weekwright.desk.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.desk.store.Contents;
import weekwright.desk.store.Outcome;
import weekwright.desk.store.RealDisk;
import weekwright.desk.store.Revision;
import weekwright.desk.store.Store;
import weekwright.desk.store.StoreFault;
import weekwright.desk.store.Version;
import weekwright.model.document.DocumentException;
import weekwright.model.scenario.Scenario;

/** A document of a folder that keeps its revisions: what is written becomes one. */
final class StoredFile implements Target {
    private final Path folder;
    private final String document;
    private final Store store;
    private final Version seen;

    private StoredFile(Path folder, String document, Store store) {
        this.folder = folder;
        this.document = document;
        this.store = store;
        this.seen = store.head();
    }

    /** Whether a path is a document of such a folder. */
    static boolean isOne(Path path) {
        Path folder = path.getParent();
        Path name = path.getFileName();
        return folder != null
                && name != null
                && Store.DOCUMENTS.contains(name.toString())
                && Store.isStore(folder, new RealDisk());
    }

    /** The document at a path. */
    static StoredFile of(Path path, Clock clock) {
        Path folder = path.getParent();
        if (folder == null) {
            throw new FileFault(path + " is no file of a folder");
        }
        return in(folder, String.valueOf(path.getFileName()), clock);
    }

    /** A document of a folder. */
    static StoredFile in(Path folder, String document, Clock clock) {
        return new StoredFile(folder, document, Folders.openSound(folder, clock));
    }

    /** What was in force when it was opened: what is written later is made from this. */
    Contents seen() {
        return seen.contents();
    }

    @Override
    public void suits(Scenario scenario) {
        String here = seen.contents().scenario().id();
        if (!here.equals(scenario.id())) {
            throw new InputFault(folder.resolve(document) + " belongs to the scenario \"" + here + "\", and this is \""
                    + scenario.id() + "\": write into another folder");
        }
    }

    @Override
    public String write(byte[] bytes, String label) {
        return write(Map.of(document, bytes), label);
    }

    /** Writes several documents of the folder as one change. */
    String write(Map<String, byte[]> documents, String label) {
        try {
            Outcome outcome = store.take(seen.number(), label, documents);
            if (outcome instanceof Outcome.Stale stale) {
                throw new FileFault(stale.message() + takeUp(stale.kept()));
            }
            return outcome instanceof Outcome.Saved
                    ? "Saved in " + folder + " as revision " + outcome.head().number() + "."
                    : outcome.message();
        } catch (DocumentException e) {
            throw InputFault.of(e);
        } catch (StoreFault e) {
            throw FileFault.of(e);
        }
    }

    private String takeUp(@Nullable Revision kept) {
        return kept == null ? "" : " To take it up: undo " + folder + " --to " + kept.number();
    }

    @Override
    public List<String> news() {
        return store.news();
    }
}
