package weekwright.desk.store;

/** A revision is not as it was written. */
final class DamagedException extends Exception {
    private static final long serialVersionUID = 1;

    DamagedException(String message) {
        super(message);
    }
}
