package weekwright.engine.rules;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/**
 * What is placed for one cohort that may have to miss something, day by day in the order in which it is attended: sessions
 * of the main group first, then in order of time. What it sits out is among it.
 */
final class OwnLine {
    final int cohort;
    private final Problem problem;
    private final Stimulus[][] placed;
    private final int[] counts;
    private final @Nullable Absence[] absences;
    private final int reach;
    /** By day, how much lies within reach of it that may keep the cohort from a session. */
    private final int[] keepers;

    private int firstChanged = Integer.MAX_VALUE;
    private int lastChanged = -1;
    private int firstRank = Integer.MAX_VALUE;

    /**
     * The line of a cohort with nothing placed.
     *
     * @param reach days within which one thing may keep it from another
     */
    OwnLine(Problem problem, int cohort, int reach) {
        this.reach = reach;
        this.problem = problem;
        this.cohort = cohort;
        placed = new Stimulus[problem.calendar.days()][4];
        counts = new int[problem.calendar.days()];
        absences = new @Nullable Absence[problem.sessions.size()];
        keepers = new int[counts.length];
        problem.fixed.stream().filter(fixed -> fixed.has(cohort)).forEach(fixed -> countKeeper(fixed, 1));
    }

    private void countKeeper(Stimulus thing, int more) {
        if (problem.mayMiss.keeps(cohort, thing)) {
            int last = Math.min(keepers.length - 1, thing.day + reach);
            for (int day = Math.max(0, thing.day - reach); day <= last; day++) {
                keepers[day] += more;
            }
        }
    }

    /** Whether anything near a day may keep the cohort from a session on it. */
    boolean mayBeKept(int day) {
        return keepers[day] > 0;
    }

    int count(int day) {
        return day < 0 || day >= counts.length ? 0 : counts[day];
    }

    Stimulus at(int day, int i) {
        return placed[day][i];
    }

    /** Place of a session's group among the cohort's groups. */
    int rank(Stimulus session) {
        return problem.mayMiss.rank(cohort, session.group);
    }

    /** Whether a session is attended before another is decided on. */
    boolean before(Stimulus a, Stimulus b) {
        int first = rank(a);
        int second = rank(b);
        return first != second ? first < second : Stimulus.inOrder(a, b) < 0;
    }

    /** Whether a session is attended, as it was last decided. */
    boolean attends(Stimulus session) {
        return absences[session.index] == null;
    }

    @Nullable
    Absence absence(int session) {
        return absences[session];
    }

    void setAbsence(int session, @Nullable Absence absence) {
        absences[session] = absence;
    }

    void add(Stimulus session) {
        int day = session.day;
        Stimulus[] list = placed[day];
        if (counts[day] == list.length) {
            list = Arrays.copyOf(list, 2 * list.length);
            placed[day] = list;
        }
        int place = counts[day]++;
        while (place > 0 && before(session, list[place - 1])) {
            list[place] = list[place - 1];
            place--;
        }
        list[place] = session;
        countKeeper(session, 1);
        changed(session);
    }

    void remove(Stimulus session) {
        int day = session.day;
        Stimulus[] list = placed[day];
        int place = 0;
        while (list[place] != session) {
            place++;
        }
        int last = --counts[day];
        System.arraycopy(list, place + 1, list, place, last - place);
        countKeeper(session, -1);
        changed(session);
    }

    private void changed(Stimulus session) {
        changed(session.day);
        firstRank = Math.min(firstRank, rank(session));
    }

    /** Notes that what is attended on a day has changed. */
    void changed(int day) {
        firstChanged = Math.min(firstChanged, day);
        lastChanged = Math.max(lastChanged, day);
    }

    boolean isChanged() {
        return lastChanged >= 0;
    }

    /** First and last day of which anything has changed since the last decision. */
    int firstChanged() {
        return firstChanged;
    }

    int lastChanged() {
        return lastChanged;
    }

    /** Place of the first group, among the cohort's, of which anything has changed. */
    int firstRank() {
        return firstRank;
    }

    void settled() {
        firstChanged = Integer.MAX_VALUE;
        lastChanged = -1;
        firstRank = Integer.MAX_VALUE;
    }
}
