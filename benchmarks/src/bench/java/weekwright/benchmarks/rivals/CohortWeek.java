package weekwright.benchmarks.rivals;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Cohort;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.PerWeek;

/**
 * A cohort's plan week: high days as its group asks for them, and whether it has a free day.
 *
 * @param asked high days asked for, or null
 * @param restricted whether a clinician's restriction holds on any of its days
 * @param couldBeFree whether it is a whole week with a day on which nothing is fixed
 */
record CohortWeek(
        int cohort,
        int week,
        GroupInfo group,
        int heads,
        @Nullable PerWeek asked,
        boolean restricted,
        boolean couldBeFree) {

    /** All of them. */
    static List<CohortWeek> all(Problem problem) {
        List<CohortWeek> all = new ArrayList<>();
        for (Cohort cohort : problem.cohorts) {
            for (int week = 0; week < problem.calendar.weeks(); week++) {
                all.add(of(problem, cohort, week));
            }
        }
        return all;
    }

    private static CohortWeek of(Problem problem, Cohort cohort, int week) {
        GroupInfo group = problem.groups.get(cohort.mainGroup());
        int days = problem.calendar.daysIn(week);
        PerWeek usual = group.highDays(week);
        boolean restricted = false;
        for (int day = 7 * week; day < 7 * week + days; day++) {
            var date = problem.calendar.date(day);
            restricted |= cohort.restrictions().stream().anyMatch(restriction -> restriction.holdsOn(date));
        }
        return new CohortWeek(
                cohort.index(),
                week,
                group,
                cohort.heads(),
                usual == null ? null : AimInfo.shortened(usual, days),
                restricted,
                days == 7 && couldBeFree(problem, cohort.index(), 7 * week));
    }

    private static boolean couldBeFree(Problem problem, int cohort, int first) {
        for (int day = first; day < first + 7; day++) {
            boolean busy = problem.longTravel(cohort, day);
            for (Stimulus fixed : problem.fixed(cohort, day)) {
                busy |= fixed.family != null && !fixed.family.recovery;
            }
            if (!busy) {
                return true;
            }
        }
        return false;
    }

    /** Whether more high days are ours than may be. */
    boolean tooManyHigh(int high, int ours) {
        return asked != null && Math.min(high - asked.most(), ours) > 0;
    }

    /** Units that a head pays for high days below the least. */
    int owed(int high) {
        return asked == null || restricted ? 0 : Units.POINT * Math.max(0, asked.least() - high);
    }

    /** Units that a head pays for high days short of the target or beyond it. */
    int wanted(int high, int ours) {
        if (asked == null || restricted) {
            return 0;
        }
        int missing = asked.target() - high;
        return missing > 0
                ? Units.MISSING_HIGH_DAY * missing
                : Units.HIGH_DAY_TOO_MANY * Math.max(0, Math.min(-missing, ours));
    }
}
