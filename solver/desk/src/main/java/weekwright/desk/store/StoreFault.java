package weekwright.desk.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;

/** A folder could not be read or written. What was confirmed before is safe; what was asked for is not done. */
public final class StoreFault extends RuntimeException {
    private static final long serialVersionUID = 1;

    private static final String SAFE = " Nothing new is saved; all that was saved before is safe.";

    StoreFault(String message) {
        super(message);
    }

    private StoreFault(String message, IOException cause) {
        super(message, cause);
    }

    /** What a failure means to a coach. */
    static StoreFault of(Path folder, IOException cause) {
        if (cause instanceof NoSuchFileException) {
            return new StoreFault(goneText(folder), cause);
        }
        String reason = reason(cause);
        String plain = reason.toLowerCase(Locale.ROOT);
        if (cause instanceof AccessDeniedException || plain.contains("read-only")) {
            return new StoreFault(
                    "The folder " + folder + " may not be written to: give yourself the right to, or copy it to"
                            + " another place." + SAFE,
                    cause);
        }
        if (plain.contains("no space") || plain.contains("not enough space") || plain.contains("quota")) {
            return new StoreFault(
                    "The disk is full, so nothing can be written into " + folder + ": make room and try again." + SAFE,
                    cause);
        }
        return new StoreFault("The folder " + folder + " could not be read or written: " + reason + "." + SAFE, cause);
    }

    static StoreFault gone(Path folder) {
        return new StoreFault(goneText(folder));
    }

    private static String goneText(Path folder) {
        return "The folder " + folder + " is not as it was left: was it moved, or a drive taken out? Put it back and"
                + " try again." + SAFE;
    }

    static StoreFault busy(Path folder) {
        return new StoreFault("Another window or command is writing into " + folder
                + " just now: try again when it has ended." + SAFE);
    }

    static StoreFault halfForgotten(Path folder, IOException cause) {
        return new StoreFault(
                "The folder " + folder + " could not be written to the end: " + reason(cause)
                        + ". Without the athlete all"
                        + " is saved; what still holds the name is deleted when the folder is opened next: open it again.",
                cause);
    }

    static StoreFault newer(Path file) {
        return new StoreFault(file + " was written by a newer version of the program, which this one cannot read: use"
                + " the newer one." + SAFE);
    }

    private static String reason(IOException cause) {
        String reason = cause instanceof FileSystemException system ? system.getReason() : cause.getMessage();
        return Objects.requireNonNullElse(reason, cause.getClass().getSimpleName());
    }
}
