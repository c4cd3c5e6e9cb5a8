package weekwright.engine.rules;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.Dose;

/** An aim in a week, or after a fixture: which of its sessions are placed. */
public final class AimView extends View {
    private final Timelines timelines;
    private AimInfo aim;
    private int week;
    private Stimulus[] placed = new Stimulus[8];
    private int count;
    private int micro;
    private @Nullable Stimulus fixture;
    private int lastDay;

    AimView(Problem problem, Timelines timelines, AimInfo any) {
        super(problem);
        this.timelines = timelines;
        aim = any;
    }

    /** Looks at an aim in a week. */
    AimView of(AimInfo of, int inWeek) {
        aim = of;
        week = inWeek;
        fixture = null;
        count = 0;
        micro = 0;
        add(inWeek);
        return this;
    }

    /** Looks at an aim in the weeks from a fixture up to a day of the plan. */
    AimView after(AimInfo of, Stimulus played, int upTo) {
        of(of, Math.max(0, played.day) / 7);
        fixture = played;
        lastDay = upTo;
        for (int later = week + 1; later <= upTo / 7; later++) {
            add(later);
        }
        return this;
    }

    private void add(int ofWeek) {
        for (Session session : aim.sessions.get(ofWeek)) {
            Stimulus at = timelines.at(session.index);
            if (at != null) {
                add(at);
            }
        }
    }

    private void add(Stimulus at) {
        if (count == placed.length) {
            placed = Arrays.copyOf(placed, 2 * count);
        }
        int place = count++;
        while (place > 0 && Stimulus.inOrder(at, placed[place - 1]) < 0) {
            placed[place] = placed[place - 1];
            place--;
        }
        placed[place] = at;
        micro += at.dose == Dose.MICRO ? 1 : 0;
    }

    /** The aim. */
    public AimInfo aim() {
        return aim;
    }

    /** The plan week. */
    public int week() {
        return week;
    }

    /** The fixture looked at. */
    Stimulus fixture() {
        return java.util.Objects.requireNonNull(fixture);
    }

    /** The last day looked at after a fixture. */
    int lastDay() {
        return lastDay;
    }

    /** Sessions placed, of any dose. */
    int placed() {
        return count;
    }

    /** A session placed, in order of start. */
    Stimulus placement(int i) {
        return placed[i];
    }

    /** Whether somebody who takes part has done something tiring that day. */
    boolean tired(Stimulus at) {
        for (int cohort : at.cohorts) {
            if (timelines.day(cohort, at.day).tiringStart < at.start) {
                return true;
            }
        }
        return false;
    }

    /** All that counts: sessions placed and commitments of the family. */
    int counted() {
        return count + aim.commitments[week];
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
