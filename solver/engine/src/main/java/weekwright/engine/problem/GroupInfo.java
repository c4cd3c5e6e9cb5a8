package weekwright.engine.problem;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Phase;

/** A group with its free time as spans and the rules that hold for it. */
public final class GroupInfo {
    /** Place in the problem's list. */
    public final int index;
    /** The group as it stands in the scenario. */
    public final Group group;
    /** People in the group. */
    public final int heads;

    /** When it can train. */
    public final FreeTime free;
    /** Levels, weights and numbers of the rules as they hold for it. */
    public final RuleSettings settings;

    private final List<Stimulus> fixtures = new ArrayList<>();
    private final boolean[] fixtureDays;
    private final boolean[] daysOfFixtureWeeks;
    private final boolean[] highDaysAsked;

    /** Minutes of travel at a stretch after which a day is not free. */
    final int longTravelMinutes;

    /** Birth date of the youngest athlete listed in the group; null where none is known. */
    public final @Nullable LocalDate youngest;

    GroupInfo(
            int index,
            Group group,
            int heads,
            Calendar calendar,
            RuleSettings settings,
            @Nullable LocalDate youngest,
            Asked asks) {
        this.youngest = youngest;
        this.index = index;
        this.group = group;
        this.heads = heads;
        this.settings = settings;
        free = new FreeTime(calendar, group.windows(), group.away());
        fixtureDays = new boolean[calendar.days() + 2 * Problem.EDGE];
        daysOfFixtureWeeks = new boolean[fixtureDays.length];
        longTravelMinutes = (int) settings.number("free-day", "travelMinutes");
        highDaysAsked = new boolean[calendar.weeks()];
        for (int week = 0; week < highDaysAsked.length; week++) {
            highDaysAsked[week] = asks.asks(Asked.highDays(group.id(), calendar.date(7 * week)));
        }
    }

    /** Notes a fixture of the group. */
    void add(Stimulus fixture) {
        fixtures.add(fixture);
        fixtures.sort(Stimulus::inOrder);
        int at = fixture.day + Problem.EDGE;
        if (at >= 0 && at < fixtureDays.length) {
            fixtureDays[at] = true;
        }
        int monday = at - Math.floorMod(fixture.day, 7);
        for (int day = Math.max(0, monday); day < Math.min(monday + 7, fixtureDays.length); day++) {
            daysOfFixtureWeeks[day] = true;
        }
    }

    /** The group's fixtures, to come and in the history, in order of start. */
    public List<Stimulus> fixtures() {
        return fixtures;
    }

    /** Whether strength is the group's sport, so that upper-body work counts in full. */
    public boolean strength() {
        return group.kind() == GroupKind.STRENGTH;
    }

    /** Whether sprinting or strength is the group's sport. */
    public boolean sprintOrStrength() {
        return strength() || sprint();
    }

    /** Whether sprinting is the group's sport. */
    public boolean sprint() {
        return group.kind() == GroupKind.SPRINT;
    }

    /** Whether the group trains for sprinting or is off season, when middle days cost double. */
    public boolean keepsDaysApart() {
        return group.kind() == GroupKind.SPRINT || group.phase() == Phase.OFF_SEASON;
    }

    /** Whether its athletes are novices. */
    public boolean novice() {
        return group.level() == Level.NOVICE;
    }

    /** High days of a whole week, or null where the coach sets none; nothing is owed where they are not asked for. */
    public @Nullable PerWeek highDays(int week) {
        PerWeek usual = group.highDays();
        return usual == null || highDaysAsked[week] ? usual : new PerWeek(0, usual.target(), usual.most());
    }

    /** Whether the group has a fixture on a day, {@value Problem#EDGE} days before and after the plan included. */
    public boolean fixtureOn(int day) {
        int at = day + Problem.EDGE;
        return at >= 0 && at < fixtureDays.length && fixtureDays[at];
    }

    /** Whether the group has a fixture in the week of a day. */
    public boolean fixtureInWeekOf(int day) {
        int at = day + Problem.EDGE;
        return at >= 0 && at < fixtureDays.length && daysOfFixtureWeeks[at];
    }

    /** Minutes of a span that lie outside the group's windows or inside its absences. */
    public int outside(int from, int to) {
        return free.outside(from, to);
    }

    /** Minutes by which the group would have to be free longer for a whole span; without end where it is away then. */
    public int freeLonger(int from, int to) {
        return free.longer(from, to);
    }
}
