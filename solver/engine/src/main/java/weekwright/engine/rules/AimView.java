package weekwright.engine.rules;

import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;

/** An aim in a week: how many of its sessions are placed. */
public final class AimView extends View {
    private AimInfo aim;
    private int week;
    private int placed;
    private int micro;

    AimView(Problem problem, AimInfo any) {
        super(problem);
        aim = any;
    }

    AimView of(AimInfo of, int inWeek, int placedSessions, int microOnes) {
        aim = of;
        week = inWeek;
        placed = placedSessions;
        micro = microOnes;
        return this;
    }

    /** The aim. */
    public AimInfo aim() {
        return aim;
    }

    /** The plan week. */
    public int week() {
        return week;
    }

    /** Sessions placed, of any dose. */
    int placed() {
        return placed;
    }

    /** All that counts: sessions placed and commitments of the family. */
    int counted() {
        return placed + aim.commitments[week];
    }

    /** What counts for the least that is owed: micro doses only where the aim says so. */
    int countedForLeast() {
        return counted() - (aim.aim.microCounts() ? 0 : micro);
    }

    @Override
    public GroupInfo group() {
        return aim.group;
    }
}
