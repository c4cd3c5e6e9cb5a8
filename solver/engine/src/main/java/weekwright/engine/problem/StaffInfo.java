package weekwright.engine.problem;

import weekwright.model.scenario.StaffMember;

/** A staff member with working hours as spans. */
public final class StaffInfo {
    /** Place in the problem's list. */
    public final int index;
    /** The member as it stands in the scenario. */
    public final StaffMember member;
    /** When somebody can lead. */
    public final FreeTime free;

    StaffInfo(int index, StaffMember member, Calendar calendar) {
        this.index = index;
        this.member = member;
        free = new FreeTime(calendar, member.windows(), member.away());
    }

    /** Whether this person works through a whole span. */
    public boolean works(int from, int to) {
        return free.outside(from, to) == 0;
    }

    /** Minutes by which this person would have to work longer for a whole span; without end for who is away then. */
    public int worksLonger(int from, int to) {
        return free.longer(from, to);
    }
}
