package weekwright.engine.rules;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Scopes.Marks;

/**
 * Keeps what a plan costs while sessions move: a move works out only the scopes that it touches, so that it costs the same
 * on one week and on twelve. The moves since the last {@link #keep} can be taken back at once by {@link #revert}. Not for
 * use by several threads.
 */
public final class Judge {
    /** What the walk pays for a session beyond the number wanted, in tenths of a point; expert proposal. */
    private static final int BEYOND = 20;

    /** What sessions break by themselves and with each other thing, in place of a part. */
    public static final int OWN = -1;

    /** What fixed things break among themselves, in place of a part. */
    public static final int FIXED = -2;

    /** Days of a plan that is given up before anybody reads them. */
    private static final Touched.Days UNREAD = (cohort, day) -> {};

    private final Problem problem;
    private final Timelines timelines;
    private final Scopes scopes;
    private final Evaluator evaluator;
    private final SessionCosts costs;
    private final Teller teller;
    private final Journal journal;
    private final CostSink sink = new CostSink();
    private final Cost scratch = new Cost();
    private final Cost total = new Cost();
    /** What all scopes cost together: the rest of the total is what sessions cost by themselves and in pairs. */
    private final Cost ofScopes = new Cost();

    private final Cost least = new Cost();
    private final Cost[] kept;
    private final Touched touched;
    private final Marks marks;
    private final Touched.Days lookedAgain = this::settleDay;
    private final int[] reseated;
    private final boolean[] isReseated;
    private int reseatedCount;

    /** A judge of an empty plan. */
    public Judge(Problem problem) {
        this.problem = problem;
        timelines = new Timelines(problem);
        scopes = new Scopes(problem);
        evaluator = new Evaluator(problem, timelines, scopes, false);
        costs = new SessionCosts(problem, evaluator);
        teller = new Teller(problem, timelines, scopes, evaluator);
        journal = new Journal();
        touched = new Touched(problem, timelines, scopes);
        marks = touched.marks;
        kept = new Cost[scopes.count()];
        reseated = new int[problem.sessions.size()];
        isReseated = new boolean[reseated.length];
        for (int scope = 0; scope < kept.length; scope++) {
            kept[scope] = new Cost();
            evaluator.scope(scope, sink.into(kept[scope]));
            total.add(kept[scope]);
            ofScopes.add(kept[scope]);
        }
        for (Session session : problem.sessions) {
            total.add(costs.unplaced(session));
        }
        keep();
    }

    /** A judge of a plan: each session at an option, or nowhere. */
    public static Judge of(Problem problem, @Nullable Stimulus[] at) {
        Judge judge = new Judge(problem);
        for (Session session : problem.sessions) {
            judge.move(session, at[session.index]);
        }
        judge.settle();
        judge.keep();
        return judge;
    }

    /** Where a session lies, or null. */
    public @Nullable Stimulus at(Session session) {
        Stimulus at = timelines.at(session.index);
        return at == null ? null : at.base;
    }

    /** Where a session lies, with those who come to it as the plan stands, or null. */
    public @Nullable Stimulus attended(Session session) {
        return timelines.at(session.index);
    }

    /** Where all sessions lie. */
    public @Nullable Stimulus[] placements() {
        @Nullable Stimulus[] all = new @Nullable Stimulus[problem.sessions.size()];
        problem.sessions.forEach(session -> all[session.index] = at(session));
        return all;
    }

    /** Puts a session somewhere, or nowhere; {@link #settle} must follow before costs are read. */
    public void move(Session session, @Nullable Stimulus to) {
        Stimulus from = timelines.at(session.index);
        if (to == null ? from == null : from != null && from.base == to) {
            return;
        }
        journal.moved(session, from);
        if (from == null) {
            total.subtract(costs.unplaced(session));
        } else {
            total.subtract(costs.alone(session, from));
            total.subtract(costs.pairs(from));
            touched.at(from);
        }
        timelines.put(session.index, to);
        if (to == null) {
            total.add(costs.unplaced(session));
        } else {
            total.add(costs.alone(session, to));
            total.add(costs.pairs(to));
            touched.at(to);
        }
        countBeyond(session, from, to);
        touched.moved(session, from, to);
    }

    /** One more than wanted costs nothing; it weighs something for the walk, so that it is not carried along for nothing. */
    private void countBeyond(Session session, @Nullable Stimulus from, @Nullable Stimulus to) {
        if (session.aim == null || (from == null) == (to == null)) {
            return;
        }
        int others = 0;
        for (Session other : session.aim.sessions.get(session.week)) {
            others += other != session && timelines.at(other.index) != null ? 1 : 0;
        }
        if (others >= session.aim.wanted(session.week)) {
            int more = to == null ? -1 : 1;
            total.beyond += more;
            total.restSlope += (long) more * BEYOND;
        }
    }

    /** Whether a session would break, at an option, more that must hold than left out, whatever else is placed. */
    public boolean breaksMustAlone(Session session, Stimulus option) {
        return costs.alone(session, option).must > costs.unplaced(session).must;
    }

    /** Works out what the moves since the last call have touched, and tells what the plan costs. */
    public Cost settle() {
        settleUnless(least -> false);
        return total;
    }

    /**
     * The same, but leaves off as soon as what is worked out so far is hopeless: no cost is negative, so that the rest can
     * only add to it. Then only {@link #revert} may follow.
     *
     * @param hopeless whether a plan that costs this or more at any level is of no use
     * @return whether all was worked out
     */
    public boolean settleUnless(Predicate<Cost> hopeless) {
        seatAnew();
        least.set(total);
        least.subtract(ofScopes);
        boolean hope = !hopeless.test(least);
        touched.forgetDays(hope ? lookedAgain : UNREAD);
        if (hope) {
            settleStaff();
            hope = settleScopes(hopeless);
        }
        marks.clear();
        return hope;
    }

    private void settleDay(int cohort, int day) {
        DayState before = timelines.day(cohort, day);
        DayState now = timelines.workedOut(cohort, day, new DayState());
        journal.changed(cohort, day, before);
        timelines.setDay(cohort, day, now);
        scopes.dayChanged(cohort, day, before, now, timelines, marks);
    }

    private void settleStaff() {
        for (int i = 0; i < marks.count(); i++) {
            if (scopes.scope(marks.at(i)).kind() == Scopes.Kind.STAFF) {
                settleStaff(scopes.scope(marks.at(i)).at());
            }
        }
    }

    private boolean settleScopes(Predicate<Cost> hopeless) {
        least.set(total);
        for (int i = 0; i < marks.count(); i++) {
            least.subtract(kept[marks.at(i)]);
        }
        for (int i = 0; i < marks.count(); i++) {
            int scope = marks.at(i);
            settleScope(scope);
            least.add(kept[scope]);
            if (hopeless.test(least)) {
                return false;
            }
        }
        return true;
    }

    /** Decides who comes; sessions to which others come than before are judged anew. */
    private void seatAnew() {
        timelines.attendance.settle((line, session, before) -> {
            Absence now = line.absence(session.index);
            if (!Objects.equals(before, now)) {
                journal.changed(line.cohort, session.index, before);
            }
            Stimulus at = Objects.requireNonNull(timelines.at(session.index));
            if (at.has(line.cohort) != (now == null) && !isReseated[session.index]) {
                isReseated[session.index] = true;
                reseated[reseatedCount++] = session.index;
            }
        });
        for (int i = 0; i < reseatedCount; i++) {
            isReseated[reseated[i]] = false;
            reseat(problem.sessions.get(reseated[i]));
        }
        reseatedCount = 0;
    }

    /** Nothing has changed where a cohort changed its mind twice. */
    private void reseat(Session session) {
        Stimulus from = Objects.requireNonNull(timelines.at(session.index));
        Stimulus to = timelines.attendance.attended(from);
        if (Arrays.equals(from.cohorts, to.cohorts)) {
            return;
        }
        journal.moved(session, from);
        total.subtract(costs.alone(session, from));
        total.subtract(costs.pairs(from));
        timelines.put(session.index, to);
        total.add(costs.alone(session, to));
        total.add(costs.pairs(to));
        for (int cohort : from.base.cohorts) {
            if (from.has(cohort) != to.has(cohort)) {
                touched.day(cohort, from.day);
            }
        }
        touched.turnout(session);
    }

    /** Works out who leads on a day; where that changes, the weeks of the aims are looked at again. */
    private void settleStaff(int day) {
        StaffDay before = timelines.staff(day);
        StaffDay now = evaluator.staffDay(day);
        journal.changed(day, before);
        timelines.setStaff(day, now);
        // A session that has left the day has moved: its week is looked at in any case.
        now.changedSince(before, at -> touched.leads(problem.sessions.get(at.index)));
    }

    private void settleScope(int scope) {
        scratch.clear();
        journal.looked(scope);
        evaluator.scope(scope, sink.into(scratch));
        if (!scratch.same(kept[scope])) {
            journal.changed(scope, kept[scope]);
            total.subtract(kept[scope]);
            total.add(scratch);
            ofScopes.subtract(kept[scope]);
            ofScopes.add(scratch);
            kept[scope].set(scratch);
        }
    }

    /** What the plan costs; {@link #settle} must have been called since the last move. */
    public Cost total() {
        return total;
    }

    /** Makes the moves so far final: {@link #revert} goes back to here. */
    public void keep() {
        journal.clear(total, ofScopes);
    }

    /** Takes back all moves since the last {@link #keep}. */
    public void revert() {
        journal.takeBack(timelines, kept, total, ofScopes);
    }

    /** Tells a sink all that is broken, part by part; told facts too. */
    public void explain(Sink facts) {
        explainByPart(part -> facts);
    }

    /** Tells all that is broken; told facts too. The sinks are asked for by part, or {@link #OWN} or {@link #FIXED}. */
    public void explainByPart(IntFunction<? extends Sink> sinks) {
        teller.all(sinks);
    }

    /** How many parts of the plan (days, nights, weeks, fixtures and so on) have costs of their own. */
    public int parts() {
        return scopes.count();
    }

    /**
     * The parts that were looked at again since the last {@link #keep}: all else that those moves can have changed is what
     * the moved sessions break by themselves. One may come twice.
     */
    public int[] partsLookedAt() {
        return journal.looked();
    }

    /** Sessions that were moved, or to which others come, since the last {@link #keep}; one may come twice. */
    public List<Session> sessionsLookedAt() {
        return journal.moved();
    }

    /** Whether anybody may ever have to miss a session, so that moving one may change what another breaks. */
    public boolean mayOthersChange() {
        return problem.mayMiss.anybody();
    }

    /** Tells a sink what is broken in one part of the plan; not what is only told. */
    public void explainPart(int part, Sink facts) {
        teller.part(part, facts);
    }

    /** Tells a sink what a session breaks where it stands, or by not being placed; not what is only told. */
    public void explainSession(Session session, Sink facts) {
        teller.session(session, facts);
    }

    /** Tells a sink what fixed things break among themselves: facts that nobody here can mend. */
    public void explainFixed(Sink facts) {
        teller.fixed(facts);
    }

    /** A cohort's day as the plan stands. */
    public DayState day(int cohort, int day) {
        return timelines.day(cohort, day);
    }

    /** What a cohort does on a day, in order of start. */
    public Stimulus[] things(int cohort, int day) {
        return timelines.things(cohort, day);
    }

    /** Ids of the rules in force for a group. */
    public List<String> rulesInForce(int group) {
        return teller.rulesInForce(group);
    }
}
