package weekwright.engine.rules;

import java.util.Arrays;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.StaffInfo;
import weekwright.engine.problem.Stimulus;

/**
 * Who leads what: a lead that is held, else the first on the list who may lead the session, works then and is free. A
 * plain function of where the sessions lie, so that a what-if is exact.
 */
public final class Leads {
    /** Nobody who may lead it is free. */
    public static final int MISSING = -2;
    /** No lead is needed. */
    public static final int NOT_NEEDED = -1;

    private Leads() {}

    /** The leads of placed sessions in order of start: places in the staff list, or one of the two constants. */
    public static int[] of(Problem problem, Stimulus[] placed) {
        int[] leads = new int[placed.length];
        Arrays.fill(leads, NOT_NEEDED);
        if (problem.staff.isEmpty()) {
            return leads;
        }
        for (int i = 0; i < placed.length; i++) {
            int held = problem.sessions.get(placed[i].index).heldLead;
            if (held >= 0) {
                leads[i] = free(problem, placed, leads, i, problem.staff.get(held)) ? held : MISSING;
            }
        }
        for (int i = 0; i < placed.length; i++) {
            if (problem.sessions.get(placed[i].index).heldLead < 0) {
                leads[i] = cheapest(problem, placed, leads, i);
            }
        }
        return leads;
    }

    private static int cheapest(Problem problem, Stimulus[] placed, int[] leads, int i) {
        boolean needed = false;
        for (StaffInfo staff : problem.staff) {
            if (problem.mayLead(staff.index, placed[i].index)) {
                needed = true;
                if (free(problem, placed, leads, i, staff)) {
                    return staff.index;
                }
            }
        }
        return needed ? MISSING : NOT_NEEDED;
    }

    private static boolean free(Problem problem, Stimulus[] placed, int[] leads, int i, StaffInfo staff) {
        Stimulus session = placed[i];
        if (!problem.mayLead(staff.index, session.index) || !staff.works(session.start, session.end)) {
            return false;
        }
        int leading = 0;
        for (int other = 0; other < placed.length; other++) {
            boolean same = other != i && leads[other] == staff.index;
            if (same && placed[other].start < session.end && session.start < placed[other].end) {
                leading++;
            }
        }
        return leading < staff.member.atOnce();
    }
}
