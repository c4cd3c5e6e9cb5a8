package weekwright.desk.cli;

import java.io.BufferedInputStream;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import weekwright.desk.app.Planner;
import weekwright.desk.view.terminal.Ink;
import weekwright.desk.view.terminal.Plain;

/**
 * All that a command meets outside the program.
 *
 * @param out standard output, for data only
 * @param err standard error, for messages and progress
 * @param ink how letters are set on standard output
 * @param live whether standard error is a terminal, where a line can be rewritten
 * @param debug whether a fault of ours shows where it happened
 */
record Surroundings(
        InputStream in,
        OutputStream out,
        PrintStream err,
        Ink ink,
        boolean live,
        boolean debug,
        Clock clock,
        Planner planner) {

    /** The machine's own. Text goes out in UTF-8 whatever the machine's language. */
    static Surroundings ofTheMachine() {
        Map<String, String> environment = System.getenv();
        boolean terminal = isTerminal();
        boolean coloured = terminal
                && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
        return new Surroundings(
                // Buffered: a bare file stream asks a pipe for its length when many bytes are read at once.
                new BufferedInputStream(new FileInputStream(FileDescriptor.in)),
                new FileOutputStream(FileDescriptor.out),
                new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8),
                coloured ? Ink.TERMINAL : Ink.PLAIN,
                terminal && !errorIsAFile(),
                environment.containsKey("WEEKWRIGHT_DEBUG"),
                Clock.systemUTC(),
                Planner.ENGINE);
    }

    /** Tells the coach something aside, each sentence on a line. */
    void tell(List<String> sentences) {
        sentences.forEach(sentence -> err.println(Plain.text(sentence)));
    }

    /** Tells which letters the font for paper lacks, if any. */
    void tellLacking(String letters) {
        if (!letters.isEmpty()) {
            tell(List.of("The font for paper lacks " + letters + ": print the page of --html instead."));
        }
    }

    @SuppressWarnings("SystemConsoleNull") // What later versions of Java give instead of null is asked below.
    private static boolean isTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            // From Java 22 on there may be a console without a terminal, and a method that tells.
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }

    /** The console speaks for input and output only; some systems show where errors go. */
    private static boolean errorIsAFile() {
        try {
            return !Files.readSymbolicLink(Path.of("/proc/self/fd/2")).startsWith("/dev");
        } catch (IOException | UnsupportedOperationException e) {
            return false;
        }
    }
}
