package weekwright.benchmarks.rivals;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Problem;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Priority;

/** An aim in a plan week. */
record AimWeek(AimInfo aim, int week) {
    /** All of them. */
    static List<AimWeek> all(Problem problem) {
        List<AimWeek> all = new ArrayList<>();
        for (AimInfo aim : problem.aims) {
            for (int week = 0; week < problem.calendar.weeks(); week++) {
                all.add(new AimWeek(aim, week));
            }
        }
        return all;
    }

    int commitments() {
        return aim.commitments[week];
    }

    /** Sessions that may be placed. */
    int most() {
        return Math.max(0, aim.most(week) - commitments());
    }

    /** Whether a dose counts for the least. */
    boolean counts(Dose dose) {
        return dose != Dose.MICRO || aim.aim.microCounts();
    }

    /** Sessions below the least. */
    int owed(int counted) {
        return Math.max(0, aim.least(week) - commitments() - counted);
    }

    /** Sessions below the target, of those beyond the least. */
    int wanted(int placed) {
        return Math.max(0, aim.target(week) - Math.max(placed + commitments(), aim.least(week)));
    }

    Priority priority() {
        return aim.aim.priority();
    }

    /** Points of a session missing of the target; of a spare aim of the least, too. */
    int points() {
        return switch (priority()) {
            case KEY -> 16;
            case MAIN -> 12;
            case SPARE -> 4;
        };
    }
}
