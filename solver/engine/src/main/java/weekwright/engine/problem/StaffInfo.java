package weekwright.engine.problem;

import weekwright.model.scenario.StaffMember;

/** A staff member with working hours as spans. */
public final class StaffInfo {
    public final int index;
    public final StaffMember member;
    public final Spans windows;
    private final Spans away;

    StaffInfo(int index, StaffMember member, Calendar calendar) {
        this.index = index;
        this.member = member;
        windows = calendar.spans(member.windows());
        away = calendar.awaySpans(member.away());
    }

    /** Whether this person works through a whole span. */
    public boolean works(int from, int to) {
        return windows.inside(from, to) == to - from && away.inside(from, to) == 0;
    }

    /** Minutes by which this person would have to work longer for a whole span; without end for who is away then. */
    public int worksLonger(int from, int to) {
        return away.inside(from, to) > 0 ? Integer.MAX_VALUE : windows.missing(from, to);
    }
}
