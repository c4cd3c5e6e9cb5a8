package weekwright.desk.app;

import weekwright.desk.store.StoreFault;

/** A file could not be read or written; nothing was changed. */
public final class FileFault extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** A sentence that says which file, what is wrong with it, and what would be right. */
    public FileFault(String message) {
        super(message);
    }

    /** The same, with what the machine said. */
    public FileFault(String message, Throwable cause) {
        super(message, cause);
    }

    static FileFault of(StoreFault fault) {
        return new FileFault(String.valueOf(fault.getMessage()), fault);
    }
}
