package weekwright.engine.search;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/** A first plan: the dearest and hardest sessions first, each where it costs least then. */
final class Construction {
    private final Problem problem;
    private final Judge judge;
    private final Watch watch;

    Construction(Problem problem, Watch watch) {
        this.problem = problem;
        this.watch = watch;
        judge = new Judge(problem);
    }

    /** Where the sessions of the plan that was read stand, and nothing else. */
    static @Nullable Stimulus[] standing(Problem problem) {
        @Nullable Stimulus[] at = new @Nullable Stimulus[problem.sessions.size()];
        for (Session session : problem.sessions) {
            at[session.index] = session.start();
        }
        return at;
    }

    /** Only what must stay placed. */
    static @Nullable Stimulus[] held(Problem problem) {
        @Nullable Stimulus[] at = standing(problem);
        for (Session session : problem.sessions) {
            if (!session.stays) {
                at[session.index] = null;
            }
        }
        return at;
    }

    /** The plan that was read, with what is missing in it. */
    @Nullable
    Stimulus[] build() {
        begin(standing(problem));
        placeMissing();
        return judge.placements();
    }

    /**
     * The plan that was read without what cannot stay: what is held first, then every session back where it stood unless it
     * would break what must hold, and what found no place so, or is missing, anew. After a change that breaks something, a
     * search from here has little left to move; from an empty plan it would hardly find its way back.
     */
    @Nullable
    Stimulus[] repaired() {
        begin(held(problem));
        problem.sessions.stream()
                .filter(session -> session.start() != null && !session.stays)
                .sorted(Comparator.comparing(Construction::rank))
                .forEach(this::putBack);
        placeMissing();
        return judge.placements();
    }

    private void begin(@Nullable Stimulus[] at) {
        for (Session session : problem.sessions) {
            judge.move(session, at[session.index]);
        }
        judge.settle();
        judge.keep();
    }

    private void putBack(Session session) {
        long before = judge.total().must;
        judge.move(session, session.start());
        if (judge.settle().must > before) {
            judge.revert();
        } else {
            judge.keep();
        }
    }

    private void placeMissing() {
        List<Session> missing = problem.sessions.stream()
                .filter(session -> judge.at(session) == null && wanted(session))
                .sorted(Comparator.comparing(Construction::rank).thenComparingInt(s -> s.coarse.length))
                .toList();
        for (Session session : missing) {
            if (watch.tried(0)) {
                break;
            }
            place(session);
        }
    }

    static int rank(Session session) {
        return session.aim == null ? 0 : session.aim.aim.priority().ordinal();
    }

    /** Sessions beyond the number wanted are left to the search. */
    private boolean wanted(Session session) {
        AimInfo aim = session.aim;
        if (aim == null || session.options.length == 0) {
            return false;
        }
        return aim.sessions.get(session.week).indexOf(session) < aim.wanted(session.week);
    }

    private void place(Session session) {
        Stimulus best = null;
        long least = Scale.slope(judge.total(), 1);
        for (Stimulus option : session.coarse) {
            judge.move(session, option);
            long limit = least;
            boolean whole = judge.settleUnless(from -> Scale.slope(from, 1) >= limit);
            if (whole && Scale.slope(judge.total(), 1) < least) {
                least = Scale.slope(judge.total(), 1);
                best = option;
            }
            judge.revert();
        }
        judge.move(session, best);
        judge.settle();
        judge.keep();
    }
}
