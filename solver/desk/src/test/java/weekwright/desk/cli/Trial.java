package weekwright.desk.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import weekwright.desk.app.Planner;
import weekwright.desk.view.terminal.Ink;

/** Runs commands as a terminal would, and keeps what they say. */
final class Trial {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private InputStream in = InputStream.nullInputStream();
    private Planner planner = Planner.ENGINE;
    private boolean live;
    private boolean debug;

    Trial in(byte[] given) {
        in = new ByteArrayInputStream(given);
        return this;
    }

    Trial planner(Planner other) {
        planner = other;
        return this;
    }

    Trial live() {
        live = true;
        return this;
    }

    Trial debug() {
        debug = true;
        return this;
    }

    /** Runs a command; gives its exit code. */
    int run(String... arguments) {
        forget();
        return new Cli(new Surroundings(
                        in,
                        out,
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        Ink.PLAIN,
                        live,
                        debug,
                        Clock.fixed(Instant.parse("2027-02-08T12:00:30Z"), ZoneOffset.UTC),
                        planner))
                .run(arguments);
    }

    /** Forgets what the last command said. */
    void forget() {
        out.reset();
        err.reset();
    }

    /** What the last command printed. */
    String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    /** What the last command said aside. */
    String err() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
