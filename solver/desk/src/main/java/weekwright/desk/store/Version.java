package weekwright.desk.store;

/** A revision with its documents. */
public record Version(Revision revision, Contents contents) {
    /** Its number. */
    public int number() {
        return revision.number();
    }
}
