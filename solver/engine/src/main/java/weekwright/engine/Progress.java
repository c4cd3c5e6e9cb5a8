package weekwright.engine;

import weekwright.model.plan.Totals;

/** Told of progress from the searching threads. */
public interface Progress {
    /**
     * A better plan was found.
     *
     * @param placed sessions placed
     * @param sessions sessions that could be placed
     * @param moves moves tried so far
     * @param seconds seconds searched so far
     */
    void better(Totals totals, int placed, int sessions, long moves, double seconds);

    /** Whether to stop and give the best plan so far; asked often. */
    boolean stop();
}
