package weekwright.engine.recalculation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;

/** Which aim a placement serves, and the ids of placements written by hand. */
final class PlacementIds {
    private PlacementIds() {}

    /** The aim named in the id, else the group's aim for all, else the only one of the family, else none. */
    static @Nullable Aim aimOf(Scenario scenario, Placement placement) {
        List<Aim> aims = scenario.groups().stream()
                .filter(group -> group.id().equals(placement.group()))
                .flatMap(group -> group.aims().stream())
                .filter(aim -> aim.family().equals(placement.family()))
                .toList();
        Share named = shareIn(placement.id());
        if (named != null) {
            return aims.stream().filter(aim -> aim.whom() == named).findFirst().orElse(null);
        }
        return aims.stream()
                .filter(aim -> aim.whom() == Share.ALL)
                .findFirst()
                .orElse(aims.size() == 1 ? aims.get(0) : null);
    }

    private static @Nullable Share shareIn(@Nullable String id) {
        if (id == null) {
            return null;
        }
        return id.contains("+not-played") ? Share.NOT_PLAYED : id.contains("+played") ? Share.PLAYED : null;
    }

    /** The ids in the order of the plan; missing ones are given in order of start, with the first free number. */
    static List<String> of(Scenario scenario, Plan plan) {
        List<Placement> placements = plan.placements();
        String[] ids = placements.stream().map(Placement::id).toArray(String[]::new);
        List<String> taken =
                new ArrayList<>(Arrays.stream(ids).filter(Objects::nonNull).toList());
        IntStream.range(0, ids.length)
                .filter(i -> ids[i] == null)
                .boxed()
                .sorted(Comparator.comparing(i -> placements.get(i).start().instant(scenario.zone())))
                .forEach(i -> {
                    ids[i] = firstFree(stem(scenario, placements.get(i)), taken);
                    taken.add(ids[i]);
                });
        return List.of(ids);
    }

    private static String stem(Scenario scenario, Placement placement) {
        Aim aim = aimOf(scenario, placement);
        Weeks weeks = Weeks.of(scenario);
        return placement.group() + "/" + (aim == null ? placement.family() : aim.key()) + "/"
                + weeks.firstDateOf(weeks.numberOf(placement.start().date())) + "/";
    }

    private static String firstFree(String stem, List<String> taken) {
        int n = 1;
        while (taken.contains(stem + n)) {
            n++;
        }
        return stem + n;
    }
}
