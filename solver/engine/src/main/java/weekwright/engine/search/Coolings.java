package weekwright.engine.search;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Searcher.Found;

/**
 * Walks that begin warm, taking steps that make the plan a little worse, and cool as their moves or seconds are used up. Each
 * goes by one weighted sum, while the plan that is kept is compared by levels. If the end of the first, short one breaks more
 * musts than the best plan seen, a must weighs double from then on. With much time the best plan is warmed and cooled again
 * and again, until several whole coolings find nothing better.
 */
final class Coolings {
    /** What a step may make worse at the start of a cooling, in tenths of a point: some of one wish. Found by trying 6 to 50. */
    static final int WARMTH = 15;
    /** Coolings that find nothing better one after the other, before nothing is left to gain. */
    private static final int IN_VAIN = 10;
    /** Moves of one cooling at most, for each option of the sessions that may move. */
    private static final int LONGEST = Searcher.PATIENCE / IN_VAIN;

    private static final double FIRST_PART = 0.1;

    /** One walk. */
    interface Cooling {
        /**
         * Walks until the pace says stop; there is something to move and something to gain.
         *
         * @return by session where the walk ended, or the best of it by the weighted sum
         */
        @Nullable
        Stimulus[] walk(@Nullable Stimulus[] start, long seed, Pace pace, int mustFactor);
    }

    private final Problem problem;
    private final Cooling cooling;
    private final long moves;
    private final long longest;
    private final boolean movable;
    private final Watch watch;

    /** Coolings of some sessions, within a number of moves or until the watch says stop. */
    Coolings(Problem problem, List<Session> free, Cooling cooling, long moves, Watch watch) {
        this.problem = problem;
        this.cooling = cooling;
        this.moves = moves;
        this.watch = watch;
        longest = LONGEST * Searcher.options(free);
        movable = free.stream().anyMatch(MoveMaker::movable);
    }

    /** Cools from a plan, again and again from the best seen. */
    Found from(@Nullable Stimulus[] start, long seed) {
        long first = Math.min(longest, moves == Long.MAX_VALUE ? moves : (long) (moves * FIRST_PART));
        Pace pace = pace(start, watch.forShare(FIRST_PART), first);
        @Nullable Stimulus[] end = walk(start, seed, pace, 1);
        int mustFactor = Judge.of(problem, end).total().must > pace.best.cost().must ? 2 : 1;
        long tried = pace.moves();
        int vain = 0;
        for (int next = 1; !pace.settled(); next++) {
            @Nullable Stimulus[] at = pace.best.at();
            Cost before = pace.best.cost();
            pace = pace(at, watch, Math.min(longest, moves == Long.MAX_VALUE ? moves : moves - tried));
            walk(at, seed + next, pace, mustFactor);
            tried += pace.moves();
            if (pace.most() < longest || watch.tried(0)) {
                break;
            }
            vain = pace.best.cost().compareLevels(before) == 0 ? vain + 1 : 0;
            if (vain == IN_VAIN) {
                return new Found(at, tried, true);
            }
        }
        return new Found(pace.best.at(), tried, pace.settled());
    }

    private @Nullable Stimulus[] walk(@Nullable Stimulus[] start, long its, Pace pace, int mustFactor) {
        return movable && pace.most() > 0 && !pace.settled() ? cooling.walk(start, its, pace, mustFactor) : start;
    }

    private Pace pace(@Nullable Stimulus[] at, Watch its, long most) {
        return new Pace(Judge.of(problem, at), new Scale(problem), its, most, Long.MAX_VALUE);
    }
}
