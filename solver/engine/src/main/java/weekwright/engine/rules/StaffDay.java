package weekwright.engine.rules;

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

    /** Who leads a session; nobody where it does not lie on the day. */
    int lead(int session) {
        for (int i = 0; i < sessions.length; i++) {
            if (sessions[i].index == session) {
                return leads[i];
            }
        }
        return Leads.NOBODY;
    }
}
