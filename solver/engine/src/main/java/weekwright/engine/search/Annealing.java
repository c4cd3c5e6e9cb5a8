package weekwright.engine.search;

import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/**
 * The coolings of {@link TimefoldSearcher} walked by ourselves. By how much a step may make the plan worse is drawn before
 * the plan is judged and not after, with the same odds: so a move is judged no further than it takes to reject it, and about
 * twice as many are tried in the same time.
 */
final class Annealing implements Searcher {
    @Override
    public Found search(
            Problem problem, @Nullable Stimulus[] start, List<Session> free, long seed, long moves, Watch watch) {
        Coolings.Cooling cooling = (at, itsSeed, pace, mustFactor) ->
                new Run(problem, at, free, new SplittableRandom(itsSeed), pace, mustFactor).end();
        return new Coolings(problem, free, cooling, moves, watch).from(start, seed);
    }

    /** One cooling. */
    private static final class Run {
        private final Judge judge;
        private final Scale scale;
        private final RandomGenerator random;
        private final Pace pace;
        private final int mustFactor;
        private final MoveMaker maker;
        private long now;

        Run(
                Problem problem,
                @Nullable Stimulus[] start,
                List<Session> free,
                RandomGenerator random,
                Pace pace,
                int mustFactor) {
            judge = Judge.of(problem, start);
            scale = new Scale(problem);
            this.random = random;
            this.pace = pace;
            this.mustFactor = mustFactor;
            maker = new MoveMaker(problem, judge, Seat.of(free, start), random);
            now = scale.slope(judge, mustFactor);
        }

        @Nullable
        Stimulus[] end() {
            boolean stop = false;
            while (!stop) {
                SlotMove move = maker.next();
                stop = move.changes() ? tried(move) : pace.triedInVain();
            }
            pace.end();
            return judge.placements();
        }

        private boolean tried(SlotMove move) {
            long limit = now + 1 + worse();
            move.in(judge);
            long slope = scale.slopeBelow(judge, mustFactor, limit, pace.best);
            boolean stop = slope == Scale.BEYOND ? pace.triedInVain() : pace.tried(judge);
            if (slope < limit) {
                judge.keep();
                move.take();
                now = slope;
            } else {
                judge.revert();
            }
            return stop;
        }

        /** By how much the next step may make the plan worse: by that much or more with odds of e to the minus that over the warmth. */
        private long worse() {
            double warmth = Coolings.WARMTH * pace.left();
            return (long) (-Math.log(1 - random.nextDouble()) * warmth);
        }
    }
}
