package weekwright.engine.search;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/** Finds a good plan: starting from one, within a budget, telling of every better one. */
public interface Searcher {
    /**
     * Searches.
     *
     * @param start where each session lies at first, by session
     * @param seed seed of all lots drawn
     * @param moves moves to try, or {@link Long#MAX_VALUE} where the watch decides
     * @return the best plan seen, never worse than the start
     */
    Found search(Problem problem, @Nullable Stimulus[] start, long seed, long moves, Watch watch);

    /**
     * What was found.
     *
     * @param at where each session lies, by session
     * @param moves moves tried
     */
    @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
    record Found(@Nullable Stimulus[] at, long moves) {}
}
