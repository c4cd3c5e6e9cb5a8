package weekwright.desk.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.desk.store.Contents;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Log;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** Reads documents from files, from standard input ({@code -}) or from the demo scenarios ({@code demo:one-match}). */
public final class Inputs {
    /** Stands for standard input. */
    public static final String STANDARD_INPUT = "-";
    /** Begins the name of a demo scenario. */
    public static final String DEMO = "demo:";

    /** A byte more than the reader of documents accepts; it says so then. */
    private static final int MOST_BYTES = 16 * 1024 * 1024 + 1;

    private final InputStream standardInput;

    /** Inputs, of which {@code -} is read from the stream that is given. */
    public Inputs(InputStream standardInput) {
        this.standardInput = standardInput;
    }

    /**
     * Reads a scenario.
     *
     * @throws InputFault when it cannot be used
     * @throws FileFault when it cannot be read
     */
    public Scenario scenario(String where) {
        try {
            return Documents.readScenario(name(where), bytes(where));
        } catch (DocumentException e) {
            throw InputFault.of(e);
        }
    }

    /**
     * Reads a plan of a scenario.
     *
     * @throws InputFault when it cannot be used
     * @throws FileFault when it cannot be read
     */
    public Plan plan(String where, Scenario scenario) {
        try {
            return Documents.readPlan(name(where), bytes(where), scenario);
        } catch (DocumentException e) {
            throw InputFault.of(e);
        }
    }

    /**
     * Reads a log of a scenario.
     *
     * @throws InputFault when it cannot be used
     * @throws FileFault when it cannot be read
     */
    public Log log(String where, Scenario scenario) {
        try {
            return Documents.readLog(name(where), bytes(where), scenario);
        } catch (DocumentException e) {
            throw InputFault.of(e);
        }
    }

    /** Whether what was given is a folder: the desk of one scenario, with its plan beside it. */
    static boolean isFolder(String where) {
        return !where.equals(STANDARD_INPUT) && !where.startsWith(DEMO) && Files.isDirectory(path(where));
    }

    /**
     * The file of a demo scenario.
     *
     * @throws InputFault when there is none of that name
     */
    public static byte[] demo(String name) {
        try {
            return Scenarios.bytes(name);
        } catch (IllegalArgumentException e) {
            throw new InputFault(Objects.requireNonNullElse(e.getMessage(), name));
        }
    }

    /**
     * Documents that were given as bytes.
     *
     * @param plan the plan's, or null where there is none
     * @throws InputFault when they cannot be used
     */
    public static Contents documents(byte[] scenario, byte @Nullable [] plan) {
        try {
            Scenario read = Documents.readScenario(Folders.SCENARIO, scenario);
            return new Contents(read, plan == null ? null : Documents.readPlan(Folders.PLAN, plan, read), null);
        } catch (DocumentException e) {
            throw InputFault.of(e);
        }
    }

    /**
     * Reads a file, or standard input, whatever it holds; of one that is too large a byte more than 16 MiB.
     *
     * @throws FileFault when it cannot be read
     */
    public byte[] file(String where) {
        return bytes(where);
    }

    private static String name(String where) {
        return where.equals(STANDARD_INPUT) ? "standard input" : where;
    }

    private byte[] bytes(String where) {
        if (where.startsWith(DEMO)) {
            return demo(where.substring(DEMO.length()));
        }
        try (InputStream in = where.equals(STANDARD_INPUT) ? standardInput : Files.newInputStream(path(where))) {
            return in.readNBytes(MOST_BYTES);
        } catch (IOException e) {
            throw unread(where, e);
        }
    }

    private static FileFault unread(String where, IOException e) {
        boolean folder = !where.equals(STANDARD_INPUT) && Files.isDirectory(path(where));
        return folder
                ? new FileFault(
                        where + " is a folder, and a file is wanted here; a folder's plan is "
                                + path(where).resolve(Folders.PLAN),
                        e)
                : AtomicFile.fault(name(where), e);
    }

    /**
     * The path of a file as it was given.
     *
     * @throws FileFault when no file can have that name on this machine
     */
    public static Path path(String given) {
        try {
            return Path.of(given);
        } catch (InvalidPathException e) {
            throw new FileFault(given + " cannot be the name of a file here", e);
        }
    }
}
