package weekwright.engine.search;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/**
 * The last strict steps, on the scenario's own grid: every session tries its options, at first those near where it lies and
 * then all of them, and only what is better by levels is taken.
 */
final class Descent {
    /** Minutes within which an option is near: what the coarse grid leaves out. */
    private static final int NEAR = 45;

    private final List<Session> free;
    private final Judge judge;
    private final Scale scale;
    private final Watch watch;
    private final long most;
    private long moves;
    private boolean stopped;

    Descent(Problem problem, @Nullable Stimulus[] start, List<Session> free, long most, Watch watch) {
        this.free = free;
        this.watch = watch;
        this.most = most;
        judge = Judge.of(problem, start);
        scale = new Scale(problem);
    }

    /** Walks down until no single change helps, the moves are used up, or the watch says stop. */
    @Nullable
    Stimulus[] run() {
        Cost cost = scale.cost(judge);
        if (most > 0 && !(cost.clean() && cost.beyond == 0)) {
            down(true);
            down(false);
        }
        return judge.placements();
    }

    private void down(boolean nearOnly) {
        int unchanged = 0;
        for (int i = 0; unchanged < free.size() && !stopped; i = (i + 1) % free.size()) {
            long before = moves;
            unchanged = improve(free.get(i), nearOnly) ? 0 : unchanged + 1;
            stopped |= watch.tried(moves - before);
        }
    }

    long moves() {
        return moves;
    }

    /** Whether it ended because no single change helps. */
    boolean settled() {
        return !stopped;
    }

    private boolean improve(Session session, boolean nearOnly) {
        Stimulus now = judge.at(session);
        Stimulus best = now;
        Cost least = scale.cost(judge);
        if (now != null && !session.stays && better(session, null, least)) {
            best = null;
        }
        for (Stimulus option : session.options) {
            boolean looked = !nearOnly || (now != null && near(option, now));
            if (looked && option != now && better(session, option, least)) {
                best = option;
            }
        }
        if (best == now) {
            return false;
        }
        judge.move(session, best);
        judge.settle();
        judge.keep();
        return true;
    }

    private static boolean near(Stimulus option, Stimulus now) {
        return Math.abs(option.start - now.start) < NEAR;
    }

    private boolean better(Session session, @Nullable Stimulus to, Cost least) {
        if (moves >= most) {
            stopped = true;
            return false;
        }
        moves++;
        judge.move(session, to);
        boolean better = judge.settleUnless(from -> from.compareLevels(least) >= 0)
                && scale.cost(judge).compareLevels(least) < 0;
        if (better) {
            least.set(scale.cost(judge));
        }
        judge.revert();
        return better;
    }
}
