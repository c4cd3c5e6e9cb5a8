package weekwright.engine.search;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/** The last strict steps: every session tries each of its options, and only what is better by levels is taken. */
final class Descent {
    private final Problem problem;
    private final Judge judge;
    private final Watch watch;
    private long moves;

    Descent(Problem problem, @Nullable Stimulus[] start, Watch watch) {
        this.problem = problem;
        this.watch = watch;
        judge = Judge.of(problem, start);
    }

    /** Walks down until no single change helps, or the watch says stop. */
    @Nullable
    Stimulus[] run() {
        int unchanged = 0;
        for (int i = 0; unchanged < problem.sessions.size(); i = (i + 1) % problem.sessions.size()) {
            Session session = problem.sessions.get(i);
            unchanged = improve(session) ? 0 : unchanged + 1;
            if (watch.tried(session.options.length)) {
                break;
            }
        }
        return judge.placements();
    }

    long moves() {
        return moves;
    }

    private boolean improve(Session session) {
        Stimulus now = judge.at(session);
        Stimulus best = now;
        Cost least = judge.total().copy();
        if (now != null && !session.stays && better(session, null, least)) {
            best = null;
        }
        for (Stimulus option : session.options) {
            if (option != now && better(session, option, least)) {
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

    private boolean better(Session session, @Nullable Stimulus to, Cost least) {
        moves++;
        judge.move(session, to);
        boolean better = judge.settle().compareLevels(least) < 0;
        if (better) {
            least.set(judge.total());
        }
        judge.revert();
        return better;
    }
}
