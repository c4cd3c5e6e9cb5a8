package weekwright.engine.search;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/**
 * One searcher for the first part of the moves or the time, another from what it found. Taking several sessions out at once
 * soon finds what a good plan looks like in the large, and a cooling what is best in the small.
 */
record InTurn(Searcher first, Searcher then) implements Searcher {
    private static final double FIRST_PART = 0.1;

    @Override
    public Found search(
            Problem problem, @Nullable Stimulus[] start, List<Session> free, long seed, long moves, Watch watch) {
        boolean byMoves = moves < Long.MAX_VALUE;
        long its = byMoves ? (long) (moves * FIRST_PART) : moves;
        Found found = first.search(problem, start, free, seed, its, watch.forShare(FIRST_PART));
        long left = byMoves ? moves - found.moves() : moves;
        Found better = then.search(problem, found.at(), free, seed, left, watch);
        return new Found(better.at(), found.moves() + better.moves(), better.settled());
    }
}
