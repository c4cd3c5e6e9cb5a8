package weekwright.engine.rules;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/**
 * Who comes to which session, kept while sessions move. A few people with something else to do sit a session out; what
 * they sit out leaves nothing on their line, and so decides on what they can attend later. Only those cohorts are looked
 * at that may have to miss anything, and of their lines only what lies near a change.
 */
final class Attendance {
    /** Hears of each decision that changes. */
    interface Change {
        /** A cohort comes to a session now, or no longer. */
        void of(OwnLine line, Stimulus session, @Nullable Absence before);
    }

    private final Problem problem;
    private final @Nullable OwnLine[] lines;
    private final Decision decision;
    private final int reach;
    private final int ranks;
    private final Map<Stimulus, @Nullable Stimulus[]> fewer = new HashMap<>();

    Attendance(Problem problem, DayBook days, Visiting[] visiting) {
        this.problem = problem;
        lines = new @Nullable OwnLine[problem.cohorts.size()];
        decision = new Decision(problem, days, visiting);
        reach = decision.reach();
        problem.mayMiss.cohorts().forEach(cohort -> lines[cohort] = new OwnLine(problem, cohort, reach));
        ranks = problem.cohorts.stream()
                .mapToInt(cohort -> cohort.groups().size())
                .max()
                .orElse(1);
    }

    /** Takes a session's place over: from nowhere, or to nowhere, or from one to another. */
    void put(@Nullable Stimulus from, @Nullable Stimulus to) {
        Stimulus base = from == null ? null : from.base;
        Stimulus next = to == null ? null : to.base;
        if (base == next) {
            return;
        }
        if (base != null) {
            for (int cohort : problem.mayMiss.ofGroup(base.group)) {
                if (base.has(cohort)) {
                    line(cohort).remove(base);
                }
            }
        }
        if (next != null) {
            for (int cohort : problem.mayMiss.ofGroup(next.group)) {
                if (next.has(cohort)) {
                    line(cohort).add(next);
                }
            }
        }
    }

    private OwnLine line(int cohort) {
        return java.util.Objects.requireNonNull(lines[cohort]);
    }

    /** Decides anew wherever a change may matter. */
    void settle(Change change) {
        for (OwnLine line : lines) {
            if (line != null && line.isChanged()) {
                settle(line, change);
                line.settled();
            }
        }
    }

    /** Sessions of a group are decided on after all of the groups before it, and within it in order of time. */
    private void settle(OwnLine line, Change change) {
        int firstRank = line.firstRank();
        for (int rank = firstRank; rank < ranks; rank++) {
            decision.begin(line);
            int first = line.firstChanged() - (rank == firstRank ? 0 : reach);
            for (int day = Math.max(0, first);
                    day <= line.lastChanged() + reach && day < problem.calendar.days();
                    day++) {
                settle(line, rank, day, change);
            }
        }
    }

    private void settle(OwnLine line, int rank, int day, Change change) {
        for (int i = 0; i < line.count(day); i++) {
            Stimulus session = line.at(day, i);
            if (line.rank(session) == rank) {
                decide(line, session, change);
                decision.passed(session);
            }
        }
    }

    private void decide(OwnLine line, Stimulus session, Change change) {
        Absence before = line.absence(session.index);
        Absence now = problem.mayMiss.asked(line.cohort, session) ? decision.absence(line, session) : null;
        line.setAbsence(session.index, now);
        if ((before == null) != (now == null)) {
            line.changed(session.day);
        }
        change.of(line, session, before);
    }

    /** A session as it is attended: without those who sit it out. */
    Stimulus attended(Stimulus session) {
        Stimulus attended = session.base;
        for (int cohort : problem.mayMiss.ofGroup(session.group)) {
            if (attended.has(cohort) && !line(cohort).attends(session)) {
                attended = without(attended, cohort);
            }
        }
        return attended;
    }

    /** One object for the same session with the same people, so that what it costs is worked out once. */
    private Stimulus without(Stimulus session, int cohort) {
        if (session.option < 0) {
            return session.without(cohort);
        }
        int[] some = problem.mayMiss.ofGroup(session.group);
        @Nullable Stimulus[] known = fewer.computeIfAbsent(session, any -> new @Nullable Stimulus[some.length]);
        int place = Arrays.binarySearch(some, cohort);
        Stimulus less = known[place];
        if (less == null) {
            less = session.without(cohort);
            known[place] = less;
        }
        return less;
    }

    /** Why a cohort sits a session out, or null. */
    @Nullable
    Absence absence(int cohort, int session) {
        OwnLine line = lines[cohort];
        return line == null ? null : line.absence(session);
    }

    /** Takes an older decision back over. */
    void restore(int cohort, int session, @Nullable Absence absence) {
        line(cohort).setAbsence(session, absence);
    }

    /** Forgets what has changed: all decisions stand. */
    void settled() {
        for (OwnLine line : lines) {
            if (line != null) {
                line.settled();
            }
        }
    }
}
