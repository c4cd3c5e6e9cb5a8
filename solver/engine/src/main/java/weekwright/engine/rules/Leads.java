package weekwright.engine.rules;

import java.util.Arrays;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.StaffInfo;
import weekwright.engine.problem.Stimulus;

/**
 * Who leads what: a lead that is held, else the first who may lead the session, works then and is free; those who lead
 * little come before those who lead much. A plain function of where the sessions lie, so that a what-if is exact.
 */
public final class Leads {
    /** Nobody leads. */
    public static final int NOBODY = -1;

    private final Problem problem;
    private final Stimulus[] placed;
    private final int[] leads;
    private final boolean[] missing;
    /** Minutes of the longest session: none that began earlier than so long ago still runs. */
    private final int longest;

    private Leads(Problem problem, Stimulus[] placed) {
        this.problem = problem;
        this.placed = placed;
        leads = new int[placed.length];
        missing = new boolean[placed.length];
        longest = Arrays.stream(placed).mapToInt(Stimulus::minutes).max().orElse(0);
        Arrays.fill(leads, NOBODY);
        assign(true);
        assign(false);
    }

    /** The leads of placed sessions in order of start. */
    public static Leads of(Problem problem, Stimulus[] placed) {
        return new Leads(problem, placed);
    }

    /** Place in the staff list of who leads a session, or {@link #NOBODY}. */
    public int lead(int i) {
        return leads[i];
    }

    /** Whether a session needs a lead and has none who may, works and is free. */
    boolean missing(int i) {
        return missing[i];
    }

    /** Held leads first: whoever is held is taken, free or not. */
    private void assign(boolean held) {
        for (int i = 0; i < placed.length; i++) {
            int holds = held(placed[i]);
            if (held == (holds >= 0)) {
                int free = held ? (free(i, problem.staff.get(holds)) ? holds : NOBODY) : firstFree(i);
                missing[i] = free == NOBODY && needed(i);
                leads[i] = held ? holds : free;
            }
        }
    }

    private int held(Stimulus at) {
        return at.lead >= 0 ? at.lead : problem.sessions.get(at.index).heldLead;
    }

    private int firstFree(int i) {
        for (StaffInfo staff : problem.staff) {
            if (free(i, staff)) {
                return staff.index;
            }
        }
        return NOBODY;
    }

    private boolean needed(int i) {
        for (StaffInfo staff : problem.staff) {
            if (problem.mayLead(staff.index, placed[i].index)) {
                return true;
            }
        }
        return false;
    }

    private boolean free(int i, StaffInfo staff) {
        Stimulus session = placed[i];
        if (!problem.mayLead(staff.index, session.index) || !staff.works(session.start, session.end)) {
            return false;
        }
        return leading(i, staff.index) < staff.member.atOnce();
    }

    /** How many other sessions somebody leads at the time of one. */
    private int leading(int i, int staff) {
        Stimulus session = placed[i];
        int leading = 0;
        for (int earlier = i - 1; earlier >= 0 && placed[earlier].start > session.start - longest; earlier--) {
            leading += leads[earlier] == staff && placed[earlier].end > session.start ? 1 : 0;
        }
        for (int later = i + 1; later < placed.length && placed[later].start < session.end; later++) {
            leading += leads[later] == staff ? 1 : 0;
        }
        return leading;
    }
}
