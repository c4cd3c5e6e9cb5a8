package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.StaffInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Breach;
import weekwright.engine.rules.Judge;
import weekwright.engine.rules.JudgedRule;
import weekwright.engine.rules.Sink;
import weekwright.engine.rules.View;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;

/**
 * Counts every way of placing what is owed in a small problem. A branch is cut only where a rule is broken that no further
 * session can put right, so that what is counted out cannot be had, whatever else is placed.
 */
final class EveryWay {
    /** What came of it. */
    enum Answer {
        /** A plan that keeps all that must hold and meets all that is owed. */
        FOUND,
        /** There is none. */
        NONE,
        /** There are too many ways, or some of them break only what another session might put right. */
        UNKNOWN
    }

    /** Ways tried before the rest is left to a search. */
    private static final int MOST = 60_000;

    /**
     * Rules that a further session can only break more, of which a breach is nobody's in particular: where a session lies, and
     * how many there are.
     */
    private static final Set<String> OF_A_SESSION =
            Set.of("inside-window", "facility-open", "facility-fits", "aim-most");

    /**
     * Rules that a further session can only break more, for those who come to all sessions: those of pairs, and those that
     * count. Not among them: visits (a session between two visits makes them one), high days and high blocks (a session just
     * before another shortens its warm-up and so the day's load; a harder one moves a block's edges), leads (who is free
     * depends on who else leads) and quorum (who has something else to do).
     */
    private static final Set<String> OF_PEOPLE = Set.of(
            "one-place-at-a-time",
            "night-rest",
            "pathway-gap-floor",
            "before-fixture",
            "after-fixture",
            "primer-end",
            "free-day");

    /** As {@link #OF_A_SESSION}, where nobody may ever sit anything out: fewer people may need less room. */
    private static final String ROOM = "facility-room";

    private final Problem problem;
    private final Judge judge;
    /** Those who may sit out a session: for them a further one may put a rule right. */
    private final Set<Integer> maySitOut;

    private final List<Session> owed = new ArrayList<>();
    private final Hopeless hopeless = new Hopeless();
    private boolean tooFew;
    private boolean doubtful;
    private int tried;

    private EveryWay(Problem problem) {
        this.problem = problem;
        judge = new Judge(problem);
        maySitOut = Set.copyOf(problem.mayMiss.cohorts());
        problem.sessions.stream().filter(session -> session.stays).forEach(owed::add);
        problem.aims.forEach(this::addOwed);
        owed.sort(Comparator.comparingInt(session -> session.options.length));
    }

    /** Counts the ways of a problem. */
    static Answer of(Problem problem) {
        return new EveryWay(problem).answer();
    }

    private void addOwed(AimInfo aim) {
        for (int week = 0; week < problem.calendar.weeks(); week++) {
            List<Session> sessions = aim.sessions.get(week);
            long there = sessions.stream().filter(session -> session.stays).count() + aim.commitments[week];
            long missing = Math.max(0, aim.least(week) - there);
            List<Session> free = sessions.stream()
                    .filter(session -> !session.stays && !session.pin.out())
                    .limit(missing)
                    .toList();
            owed.addAll(free);
            tooFew |= free.size() < missing;
        }
    }

    private Answer answer() {
        if (tooFew) {
            return Answer.NONE;
        }
        boolean found = place(0, -1);
        return found ? Answer.FOUND : doubtful ? Answer.UNKNOWN : Answer.NONE;
    }

    private boolean place(int depth, int before) {
        if (depth == owed.size()) {
            boolean met = met(judge.total());
            // What breaks nothing for good and is not met all the same lacks something that was not placed.
            doubtful |= !met;
            return met;
        }
        Session session = owed.get(depth);
        int first = depth > 0 && alike(owed.get(depth - 1), session) ? before + 1 : 0;
        for (int option = first; option < session.options.length; option++) {
            if (tried++ >= MOST) {
                doubtful = true;
                return false;
            }
            if (placeAt(session, session.options[option], depth, option)) {
                return true;
            }
        }
        return false;
    }

    private boolean placeAt(Session session, Stimulus at, int depth, int option) {
        if (!counts(session, at)) {
            return false;
        }
        judge.keep();
        judge.move(session, at);
        boolean hope = judge.settle().must == 0 || !(nobodyWorks(at) || hopeless.after(session));
        if (hope && place(depth + 1, option)) {
            return true;
        }
        judge.move(session, null);
        judge.settle();
        return false;
    }

    /** Whether nobody who may lead a session works then, whoever else is led. */
    private boolean nobodyWorks(Stimulus at) {
        List<StaffInfo> leads = problem.staff.stream()
                .filter(member -> problem.mayLead(member.index, at.index))
                .toList();
        return !leads.isEmpty() && leads.stream().noneMatch(member -> member.works(at.start, at.end));
    }

    /** A dose that does not count for the least is no way to have what is owed; what is held is held. */
    private static boolean counts(Session session, Stimulus at) {
        AimInfo aim = session.aim;
        return aim == null || session.stays || aim.aim.microCounts() || at.dose != Dose.MICRO;
    }

    /** Sessions of an aim's week that nobody holds are taken in one order only. */
    private static boolean alike(Session one, Session other) {
        return one.aim == other.aim
                && one.aim != null
                && one.week == other.week
                && one.pin.isNone()
                && other.pin.isNone()
                && one.options.length == other.options.length;
    }

    /** Whether all that must hold holds and all that is owed is met. */
    static boolean met(Cost total) {
        return total.must == 0 && total.key == 0 && total.main == 0;
    }

    /** Hears whether something is broken for good. */
    private final class Hopeless implements Sink {
        private boolean any;

        /** What a session breaks where it has just been put, and all that this has touched. */
        boolean after(Session session) {
            any = false;
            judge.explainSession(session, this);
            for (int part : judge.partsLookedAt()) {
                if (!any) {
                    judge.explainPart(part, this);
                }
            }
            return any;
        }

        @Override
        public void breach(JudgedRule rule, View view, Breach breach, int groupHeads) {
            any |= rule.level() == RuleLevel.MUST && !breach.isTold() && forGood(rule.id(), breach);
        }

        private boolean forGood(String rule, Breach breach) {
            return OF_A_SESSION.contains(rule)
                    || (rule.equals(ROOM) && !problem.mayMiss.anybody())
                    || (OF_PEOPLE.contains(rule)
                            && Arrays.stream(breach.cohorts()).anyMatch(cohort -> !maySitOut.contains(cohort)));
        }
    }
}
