package weekwright.desk.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import weekwright.model.scenario.Scenario;

/** Where a document is to be written: an ordinary file, or a folder that keeps every change. */
public interface Target {
    /**
     * A place to write to, looked at before any work is done for it. The scenario, the plan and the log of a folder that
     * keeps its revisions are written as a revision.
     *
     * @throws FileFault when nothing can be written there
     * @throws InputFault when the folder holds files that cannot be used
     */
    static Target at(Path given, Clock clock) {
        try {
            Path path = Files.exists(given) ? given.toRealPath() : given.toAbsolutePath();
            return StoredFile.isOne(path) ? StoredFile.of(path, clock) : AtomicFile.at(given);
        } catch (IOException e) {
            throw AtomicFile.fault(given, e);
        }
    }

    /**
     * Says whether what belongs to a scenario can be written here.
     *
     * @throws InputFault when another scenario lives here
     */
    default void suits(Scenario scenario) {}

    /**
     * Writes the bytes.
     *
     * @param label what was done, in a few words, for a place that keeps its history
     * @return where they are now, as a sentence
     * @throws FileFault when they cannot be written; all is then as it was before
     * @throws InputFault when they are no document that fits here
     */
    String write(byte[] bytes, String label);

    /** What the coach should be told of the place since the last time. */
    default List<String> news() {
        return List.of();
    }
}
