package weekwright.engine.search;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/** Finds a good plan: starting from one, within a budget, telling of every better one. */
public interface Searcher {
    /**
     * A search stops by itself when so many moves for each option of the sessions that may move brought no better plan: by
     * then each option was tried some hundred times.
     */
    int PATIENCE = 300;

    /**
     * Searches.
     *
     * @param start where each session lies at first, by session
     * @param free the sessions that may move; the others stay where they lie
     * @param seed seed of all lots drawn
     * @param moves moves to try at most, or {@link Long#MAX_VALUE} where the watch decides
     * @return the best plan seen, never worse than the start
     */
    Found search(Problem problem, @Nullable Stimulus[] start, List<Session> free, long seed, long moves, Watch watch);

    /** Options of those sessions on the coarse grid. */
    static long options(List<Session> free) {
        return free.stream().mapToLong(session -> session.coarse.length).sum();
    }

    /**
     * What was found.
     *
     * @param at where each session lies, by session
     * @param moves moves tried
     * @param settled whether the search stopped by itself because nothing was left to gain
     */
    @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
    record Found(@Nullable Stimulus[] at, long moves, boolean settled) {}
}
