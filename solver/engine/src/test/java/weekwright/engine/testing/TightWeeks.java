package weekwright.engine.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Weekday;
import weekwright.model.scenario.Window;
import weekwright.scenarios.SquadGenerator;
import weekwright.scenarios.Yardstick;

/** Made-up weeks of one squad, of up to eight sessions, in which more is owed than the days will hold. */
public final class TightWeeks {
    private static final int MOST_SESSIONS = 8;

    private TightWeeks() {}

    /** A week by its number, under the yardstick rules. */
    public static Scenario week(long number) {
        Scenario small = SquadGenerator.small(number);
        Random random = new Random(number);
        Group group = small.groups().get(0);
        return Yardstick.of(small.withGroups(List.of(tight(group, random))));
    }

    /** The same week asking for some wishes of a clash, by their names, and for nothing else. */
    public static Scenario asking(Scenario week, Set<String> wishes) {
        Group group = week.groups().get(0);
        Set<String> aims = new HashSet<>();
        for (Aim aim : group.aims()) {
            if (wishes.contains(group.id() + "/" + aim.key() + "/" + week.firstDay())) {
                aims.add(aim.key());
            }
        }
        boolean highDays = wishes.contains(group.id() + "/high-days/" + week.firstDay());
        assertThat(aims.size() + (highDays ? 1 : 0)).isEqualTo(wishes.size());
        return only(week, aims, highDays);
    }

    /** The same week with only some of its aims, by their keys, and with its least of high days or without. */
    private static Scenario only(Scenario week, Set<String> aims, boolean highDays) {
        Group group = week.groups().get(0);
        PerWeek days = group.highDays();
        PerWeek asked = days == null || highDays ? days : new PerWeek(0, days.target(), days.most());
        List<Aim> some =
                group.aims().stream().filter(aim -> aims.contains(aim.key())).toList();
        return week.withGroups(List.of(group.withHighDays(asked).withAims(some)));
    }

    private static Group tight(Group group, Random random) {
        List<Weekday> days = new ArrayList<>(List.of(Weekday.values()));
        Collections.shuffle(days, random);
        List<Weekday> kept = days.subList(0, 2 + random.nextInt(3));
        List<Window> windows = new ArrayList<>();
        for (Window window : group.windows()) {
            List<Weekday> on = window.days().stream().filter(kept::contains).toList();
            if (!on.isEmpty()) {
                windows.add(new Window(on, null, window.from(), window.to(), window.firstDate(), window.lastDate()));
            }
        }
        List<Aim> aims = new ArrayList<>();
        int sessions = 0;
        for (Aim aim : group.aims()) {
            int owed = Math.max(1, aim.perWeek().target());
            if (sessions + owed <= MOST_SESSIONS) {
                sessions += owed;
                PerWeek perWeek =
                        new PerWeek(owed, owed, Math.max(owed, aim.perWeek().most()));
                aims.add(aim.withPerWeek(perWeek, aims.size() % 2 == 0 ? Priority.KEY : Priority.MAIN));
            }
        }
        // Without a window a group could train at any time.
        return group.withWindows(windows.isEmpty() ? group.windows() : windows).withAims(aims);
    }
}
