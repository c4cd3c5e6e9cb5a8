package weekwright.engine.rules;

import java.util.Arrays;
import java.util.function.Consumer;
import weekwright.engine.problem.Stimulus;

/**
 * Who leads the sessions of one day.
 *
 * @param sessions those that start on the day, in order of start
 * @param leads place in the staff list of who leads each, or {@link Leads#NOBODY}
 * @param missing which of them need a lead and have none who may, works and is free
 */
@SuppressWarnings("ArrayRecordComponent")
record StaffDay(Stimulus[] sessions, int[] leads, boolean[] missing) {
    /** A day without sessions. */
    static final StaffDay EMPTY = new StaffDay(new Stimulus[0], new int[0], new boolean[0]);

    /** A day out of the leads of sessions in order of start, some of which may lie on other days. */
    static StaffDay of(Leads leads, Stimulus[] inOrder, int day) {
        int from = 0;
        while (from < inOrder.length && inOrder[from].day < day) {
            from++;
        }
        int to = from;
        while (to < inOrder.length && inOrder[to].day == day) {
            to++;
        }
        Stimulus[] own = Arrays.copyOfRange(inOrder, from, to);
        StaffDay staff = new StaffDay(own, new int[own.length], new boolean[own.length]);
        for (int i = 0; i < own.length; i++) {
            staff.leads[i] = leads.lead(from + i);
            staff.missing[i] = leads.missing(from + i);
        }
        return staff;
    }

    /** Tells of each session of this day that was not on the day before a change, or was led by somebody else. */
    void changedSince(StaffDay before, Consumer<Stimulus> changed) {
        int old = 0;
        for (int i = 0; i < sessions.length; i++) {
            while (old < before.sessions.length && Stimulus.inOrder(before.sessions[old], sessions[i]) < 0) {
                old++;
            }
            boolean same = old < before.sessions.length && before.sessions[old] == sessions[i];
            if (!same || before.leads[old] != leads[i]) {
                changed.accept(sessions[i]);
            }
        }
    }

    /** Place in the staff list of who leads a session of the day, or {@link Leads#NOBODY}. */
    int lead(int session) {
        int i = 0;
        while (sessions[i].index != session) {
            i++;
        }
        return leads[i];
    }
}
