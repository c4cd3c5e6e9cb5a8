package weekwright.benchmarks.rivals;

import java.util.List;
import weekwright.benchmarks.rivals.PairRules.Found;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Leads;

/** What sessions of all groups have in common: the rules about two of them, rooms, and those who lead. */
final class Common {
    private final Problem problem;
    private final PairRules pairs;
    private final List<Booked> booked;

    Common(Problem problem) {
        this.problem = problem;
        pairs = new PairRules(problem);
        booked = Booked.all(problem);
    }

    Found pair(Stimulus a, Stimulus b) {
        return pairs.of(a, b);
    }

    /** Whether a booking is there when another starts; of those that start at once the one that comes first in order. */
    static boolean runsAtStartOf(Stimulus other, Stimulus booking) {
        return other.end > booking.start && Stimulus.inOrder(other, booking) <= 0;
    }

    /** Groups for which there is room beside the commitments that are there at the start of a booking, itself included. */
    int roomAtStartOf(Stimulus booking) {
        int room = problem.facilities.get(booking.facility).groups;
        for (Booked other : booked) {
            boolean there = other.facility() == booking.facility && other.day() == booking.day;
            room -= there && runsAtStartOf(other.commitment(), booking) ? other.groups() : 0;
        }
        return room;
    }

    /** Sessions of a day that nobody is free to lead. */
    int withoutLead(List<Stimulus> placed) {
        Stimulus[] inOrder = placed.stream().sorted(Stimulus::inOrder).toArray(Stimulus[]::new);
        Leads leads = Leads.of(problem, inOrder);
        int missing = 0;
        for (int i = 0; i < inOrder.length; i++) {
            missing += leads.lead(i) == Leads.NOBODY && needsLead(inOrder[i].index) ? 1 : 0;
        }
        return missing;
    }

    private boolean needsLead(int session) {
        return problem.staff.stream().anyMatch(member -> problem.mayLead(member.index, session));
    }
}
