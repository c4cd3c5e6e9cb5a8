package weekwright.engine.problem;

import java.util.List;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.PerWeek;

/** An aim of a group, with the sessions that serve it by week. */
public final class AimInfo {
    /** Place in the problem's list. */
    public final int index;
    /** Whose aim it is. */
    public final GroupInfo group;
    /** The aim as it stands in the scenario. */
    public final Aim aim;
    /** What kind of session it asks for. */
    public final FamilyInfo family;
    /** The largest dose that the aim allows. */
    public final Dose fullest;
    /** Sessions by week; those beyond {@code most} come only from plans written by hand. */
    public final List<List<Session>> sessions;
    /** Commitments of the family, by week. */
    public final int[] commitments;

    private final Calendar calendar;
    private final boolean[] asked;

    AimInfo(int index, GroupInfo group, Aim aim, FamilyInfo family, Calendar calendar, Asked asks) {
        this.index = index;
        this.group = group;
        this.aim = aim;
        this.family = family;
        this.calendar = calendar;
        fullest = aim.doses().stream().min(Dose::compareTo).orElse(Dose.FULL);
        sessions = java.util.stream.IntStream.range(0, calendar.weeks())
                .<List<Session>>mapToObj(week -> new java.util.ArrayList<>())
                .toList();
        commitments = new int[calendar.weeks()];
        asked = new boolean[calendar.weeks()];
        for (int week = 0; week < asked.length; week++) {
            asked[week] = asks.asks(Asked.aim(group.group.id(), aim.key(), calendar.date(7 * week)));
        }
    }

    /** Whether it is asked for in a week; where it is not, nothing of it is owed or wanted. */
    public boolean asked(int week) {
        return asked[week];
    }

    /** The fewest owed in a week. */
    public int least(int week) {
        return asked[week] ? shortened(aim.perWeek(), calendar.daysIn(week)).least() : 0;
    }

    /** The number wanted in a week. */
    public int target(int week) {
        return asked[week] ? shortened(aim.perWeek(), calendar.daysIn(week)).target() : 0;
    }

    /** The most allowed in a week. */
    public int most(int week) {
        return shortened(aim.perWeek(), calendar.daysIn(week)).most();
    }

    /** Sessions wanted in a week beside the commitments of the family; more are placed only where that betters the plan. */
    public int wanted(int week) {
        return Math.max(0, Math.max(target(week), least(week)) - commitments[week]);
    }

    /** Weekly numbers in a week of fewer days: least rounded down, target half up, most up. */
    public static PerWeek shortened(PerWeek perWeek, int days) {
        if (days == 7) {
            return perWeek;
        }
        return new PerWeek(
                perWeek.least() * days / 7, (2 * perWeek.target() * days + 7) / 14, (perWeek.most() * days + 6) / 7);
    }
}
