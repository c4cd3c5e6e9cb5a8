package weekwright.desk.cli;

import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Totals;

/** What the program's end says to whoever called it. */
final class Exit {
    /** Done. */
    static final int DONE = 0;
    /** A fault of the program's own. */
    static final int OUR_FAULT = 1;
    /** Bad usage or input; nothing was written. */
    static final int BAD_INPUT = 2;
    /** Done, but the plan breaks what must hold. */
    static final int MUST_BROKEN = 3;
    /** A file could not be read or written; nothing was changed. */
    static final int FILE = 4;
    /** Interrupted for the second time. */
    static final int INTERRUPTED = 130;

    private Exit() {}

    /** What is said of a plan by its totals; one that was not judged has none. */
    static int of(@Nullable Totals totals) {
        return totals != null && totals.must() > 0 ? MUST_BROKEN : DONE;
    }
}
