package weekwright.desk.store;

import org.jspecify.annotations.Nullable;

/** How a write ended. */
public sealed interface Outcome {
    /** The version in force afterwards. */
    Version head();

    /** How it ended, in a coach's words. */
    String message();

    /** It is confirmed: on the disk, as the version in force. */
    record Saved(Version head, String message) implements Outcome {}

    /** There was nothing to save: the folder shows this already, or there is nothing to undo or to redo. */
    record Same(Version head, String message) implements Outcome {}

    /**
     * It was made from a revision that is no longer in force, and is refused; both versions are kept.
     *
     * @param head the version in force
     * @param offered what was to be saved, or null where it was an undo or a redo
     * @param kept the revision under which the offered documents are kept beside, or null where nothing was offered
     */
    record Stale(
            Version head,
            @Nullable Contents offered,
            @Nullable Revision kept,
            String message) implements Outcome {}
}
