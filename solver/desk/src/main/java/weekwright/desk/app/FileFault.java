package weekwright.desk.app;

import weekwright.desk.store.StoreFault;

/** A file could not be read or written; nothing was changed. */
public final class FileFault extends RuntimeException {
    private static final long serialVersionUID = 1;

    public FileFault(String message) {
        super(message);
    }

    public FileFault(String message, Throwable cause) {
        super(message, cause);
    }

    static FileFault of(StoreFault fault) {
        return new FileFault(String.valueOf(fault.getMessage()), fault);
    }
}
