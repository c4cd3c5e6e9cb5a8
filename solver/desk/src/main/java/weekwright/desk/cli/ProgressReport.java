package weekwright.desk.cli;

import java.io.PrintStream;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import weekwright.desk.view.search.SearchLine;
import weekwright.desk.view.terminal.Plain;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Totals;

/** Tells how a search goes: one line that is rewritten on a terminal, a line now and then elsewhere. */
final class ProgressReport implements Progress {
    private static final int COLUMNS = 79;
    private static final long NANOS = 1_000_000_000L;
    private static final long LIVE_EVERY = NANOS / 10;
    private static final long OTHERWISE_EVERY = 2 * NANOS;

    private final PrintStream err;
    private final boolean live;
    private final LongSupplier nanoTime;
    private final BooleanSupplier stop;
    private boolean told;
    private long last;
    private int tries;

    ProgressReport(PrintStream err, boolean live, LongSupplier nanoTime, BooleanSupplier stop) {
        this.err = err;
        this.live = live;
        this.nanoTime = nanoTime;
        this.stop = stop;
    }

    /** Says that the search begins. */
    synchronized void begin() {
        line("Searching; interrupt (Ctrl-C) to take the best plan so far.");
    }

    /** Says that many searches begin. */
    synchronized void beginMany() {
        line("Searching again and again; interrupt (Ctrl-C) to take what is known so far.");
    }

    @Override
    public synchronized void better(Totals totals, int placed, int sessions, long moves, double seconds) {
        if (due()) {
            line(new SearchLine(totals, placed, sessions, moves, seconds).toString());
        }
    }

    /** Says what is tried next, among many searches. */
    synchronized void trying(String what) {
        tries++;
        if (due()) {
            line(tries + ": " + Plain.text(what));
        }
    }

    private boolean due() {
        long now = nanoTime.getAsLong();
        if (told && now - last < (live ? LIVE_EVERY : OTHERWISE_EVERY)) {
            return false;
        }
        told = true;
        last = now;
        return true;
    }

    private void line(String line) {
        if (live) {
            err.print("\r" + Plain.fit(line, COLUMNS));
            err.flush();
        } else {
            err.println(line);
        }
    }

    @Override
    public boolean stop() {
        return stop.getAsBoolean();
    }

    /** Leaves the line clean for what follows. */
    synchronized void end() {
        if (live) {
            err.print("\r" + " ".repeat(COLUMNS) + "\r");
            err.flush();
        }
    }
}
