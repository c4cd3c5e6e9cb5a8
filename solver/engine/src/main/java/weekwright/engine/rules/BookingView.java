package weekwright.engine.rules;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.problem.FacilityInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/** A booking of a facility and all that run there when it starts, itself last. */
public final class BookingView extends View {
    private FacilityInfo facility;
    private final List<Stimulus> running = new ArrayList<>();

    BookingView(Problem problem, FacilityInfo any) {
        super(problem);
        facility = any;
    }

    BookingView of(FacilityInfo of) {
        facility = of;
        running.clear();
        return this;
    }

    /** The facility. */
    public FacilityInfo facility() {
        return facility;
    }

    /** Bookings that run when the last of them starts. */
    public List<Stimulus> running() {
        return running;
    }

    /** The booking looked at. */
    public Stimulus booking() {
        return running.get(running.size() - 1);
    }

    /** Groups there at once. */
    int groupsAtOnce() {
        int groups = 0;
        for (Stimulus booking : running) {
            groups += problem.groupsIn(booking);
        }
        return groups;
    }

    /** Athletes there at once. */
    int athletesAtOnce() {
        int athletes = 0;
        for (Stimulus booking : running) {
            athletes += problem.bookedHeads(booking);
        }
        return athletes;
    }

    boolean onePlaced() {
        for (Stimulus booking : running) {
            if (booking.placed()) {
                return true;
            }
        }
        return false;
    }

    /** The group of the latest booking that has one; of single athletes their main group. */
    @Override
    public GroupInfo group() {
        for (int i = running.size() - 1; i >= 0; i--) {
            Stimulus there = running.get(i);
            if (there.group >= 0 || there.cohorts.length > 0) {
                return problem.groups.get(
                        there.group >= 0
                                ? there.group
                                : cohort(there.cohorts[0]).mainGroup());
            }
        }
        return problem.groups.get(0);
    }
}
