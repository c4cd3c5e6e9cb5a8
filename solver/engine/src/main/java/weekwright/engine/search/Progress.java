package weekwright.engine.search;

import weekwright.model.plan.Totals;

/** Hears of a search while it runs, from the searching threads. */
public interface Progress {
    /** Hears nothing and never stops. */
    Progress SILENT = new Progress() {
        @Override
        public void better(Totals totals, int placed, int sessions, long moves, double seconds) {}

        @Override
        public boolean stop() {
            return false;
        }
    };

    /**
     * A better plan was found.
     *
     * @param placed sessions placed in it
     * @param sessions sessions that may be placed
     * @param moves moves tried so far
     * @param seconds seconds since the start
     */
    void better(Totals totals, int placed, int sessions, long moves, double seconds);

    /** Whether to stop now, with the best plan so far. Asked often. */
    boolean stop();
}
