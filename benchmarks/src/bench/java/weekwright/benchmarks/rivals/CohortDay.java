package weekwright.benchmarks.rivals;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/** A day of a cohort, in the plan or up to five days before and after it, with what is fixed on it. */
final class CohortDay {
    /** Days before and after the plan on which things may still matter to it. */
    static final int EDGE = 5;

    private final int cohort;
    private final int day;
    private final GroupInfo group;
    private final int heads;
    private final boolean inPlan;
    private final boolean longTravel;
    private final List<Stimulus> fixed;
    private final Day fixedDay;

    private CohortDay(Problem problem, int cohort, int day) {
        this.cohort = cohort;
        this.day = day;
        group = problem.groups.get(problem.cohorts.get(cohort).mainGroup());
        inPlan = day >= 0 && day < problem.calendar.days();
        heads = problem.cohorts.get(cohort).heads();
        longTravel = problem.longTravel(cohort, day);
        fixed = List.of(problem.fixed(cohort, day));
        fixedDay = Day.of(this, fixed);
    }

    /** All of them. */
    static List<CohortDay> all(Problem problem) {
        List<CohortDay> all = new ArrayList<>();
        for (int cohort = 0; cohort < problem.cohorts.size(); cohort++) {
            for (int day = -EDGE; day < problem.calendar.days() + EDGE; day++) {
                all.add(new CohortDay(problem, cohort, day));
            }
        }
        return all;
    }

    int cohort() {
        return cohort;
    }

    int day() {
        return day;
    }

    GroupInfo group() {
        return group;
    }

    int heads() {
        return heads;
    }

    boolean inPlan() {
        return inPlan;
    }

    int week() {
        return Math.floorDiv(day, 7);
    }

    /** Whether a middle day is judged there. */
    boolean judgesMiddle() {
        boolean near = group.fixtureOn(day - 1) || group.fixtureOn(day + 1) || group.fixtureOn(day + 2);
        return inPlan && !near && !group.novice();
    }

    /** Minutes wanted from one high block to the next, where the next lies on this day. */
    int wantedBetweenBlocks() {
        boolean fixture = false;
        for (int of = 7 * week(); of < 7 * week() + 7; of++) {
            fixture |= group.fixtureOn(of);
        }
        return (fixture ? 24 : 48) * 60;
    }

    boolean longTravel() {
        return longTravel;
    }

    List<Stimulus> fixed() {
        return fixed;
    }

    /** What the day is with nothing placed. */
    Day fixedDay() {
        return fixedDay;
    }

    /** The day with those sessions placed besides what is fixed. */
    Day with(List<Stimulus> placed) {
        if (placed.isEmpty()) {
            return fixedDay;
        }
        List<Stimulus> things = new ArrayList<>(fixed);
        things.addAll(placed);
        return Day.of(this, things);
    }
}
