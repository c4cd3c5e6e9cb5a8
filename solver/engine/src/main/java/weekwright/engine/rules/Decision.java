package weekwright.engine.rules;

import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.FreeTime;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Absence.Why;

/**
 * Decides whether a cohort can attend one more session beside all that it attends already: all that is fixed, the sessions
 * of groups that come first for it, and the earlier ones of the session's own group. It sits the session out where a must
 * would break otherwise, and what it would break with is theirs alone.
 */
final class Decision {
    private final Problem problem;
    private final SoFar soFar;
    private final PairMusts[] pairMusts;
    private final DayMusts[] dayMusts;
    private final int pairReach;
    private final int reach;
    private @Nullable PairView pair;
    private boolean anyAlone;

    Decision(Problem problem, DayBook days, Visiting[] visiting) {
        this.problem = problem;
        soFar = new SoFar(problem, days, visiting);
        pairMusts = problem.groups.stream()
                .map(group -> new PairMusts(group.settings))
                .toArray(PairMusts[]::new);
        dayMusts = problem.groups.stream().map(DayMusts::new).toArray(DayMusts[]::new);
        pairReach = PairReach.days(problem);
        reach = Math.max(pairReach, DayMusts.REACH);
    }

    /** Days between two things beyond which the one has nothing to do with whether the other is attended. */
    int reach() {
        return reach;
    }

    /** Begins with the sessions of the next of the cohort's groups. */
    void begin(OwnLine line) {
        soFar.begin(line);
    }

    /** A session was decided on and is now among what is attended, or not. */
    void passed(Stimulus session) {
        soFar.passed(session);
    }

    /** Why a cohort has to sit a session out, or null where it comes. */
    @Nullable
    Absence absence(OwnLine line, Stimulus session) {
        FreeTime own = problem.cohorts.get(line.cohort).own();
        if (own != null && own.outside(session.start, session.end) > 0) {
            return Absence.OWN;
        }
        if (!line.mayBeKept(session.day)) {
            return null;
        }
        soFar.before(session);
        Stimulus near = tooNear(line, session);
        if (near != null) {
            return new Absence(Why.ANOTHER_THING, near);
        }
        Why tooMuch = anyAlone ? tooMuch(line, session) : null;
        return tooMuch == null ? null : Absence.of(tooMuch);
    }

    private @Nullable Stimulus tooNear(OwnLine line, Stimulus session) {
        anyAlone = false;
        return soFar.first(
                session.day - reach,
                session.day + reach,
                thing -> alone(thing, session) && clash(line.cohort, thing, session));
    }

    private boolean alone(Stimulus thing, Stimulus session) {
        boolean alone = problem.alone(thing, session);
        anyAlone |= alone;
        return alone;
    }

    private boolean clash(int cohort, Stimulus thing, Stimulus session) {
        if (!mayClash(thing, session)) {
            return false;
        }
        PairMusts asking = pairMusts[session.group];
        PairView view = pair(thing, session).only(cohort);
        return pairMusts[view.group().index].broken(view, asking)
                || PairMusts.nightTooShort(thing, session, pairMusts[mainGroup(cohort).index], asking);
    }

    /** Beyond the next day only fixtures and the same quality have anything to say. */
    private boolean mayClash(Stimulus thing, Stimulus session) {
        int apart = Math.abs(thing.day - session.day);
        return apart <= 1 || (apart <= pairReach && (thing.isFixture() || sharesHigh(thing, session)));
    }

    private static boolean sharesHigh(Stimulus thing, Stimulus session) {
        return thing.family != null && session.family != null && (thing.family.high & session.family.high) != 0;
    }

    private PairView pair(Stimulus thing, Stimulus session) {
        if (pair == null) {
            pair = new PairView(problem, session, problem.groups.get(0));
        }
        return pair.of(thing, session);
    }

    private GroupInfo mainGroup(int cohort) {
        return problem.groups.get(problem.cohorts.get(cohort).mainGroup());
    }

    /** What a day, a run of days or a week would hold too much of with the session, and does not without. */
    private @Nullable Why tooMuch(OwnLine line, Stimulus session) {
        DayMusts own = dayMusts[mainGroup(line.cohort).index];
        DayMusts asking = dayMusts[session.group];
        Predicate<Stimulus> alone = thing -> problem.alone(thing, session);
        return own.tooMuch(soFar, session, asking, alone);
    }
}
