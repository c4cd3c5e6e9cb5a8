package weekwright.desk.app;

/** A file could not be read or written; nothing was changed. */
public final class FileFault extends RuntimeException {
    private static final long serialVersionUID = 1;

    public FileFault(String message) {
        super(message);
    }

    public FileFault(String message, Throwable cause) {
        super(message, cause);
    }
}
