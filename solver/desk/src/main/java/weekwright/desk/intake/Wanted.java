package weekwright.desk.intake;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.InputFault;
import weekwright.model.Nearest;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/**
 * What is taken from a file, and for whom.
 *
 * @param group id of the group concerned, or null
 * @param athlete id of the athlete concerned, or null
 * @param facility id of the facility concerned, or null
 * @param fixture id of the fixture concerned, or null
 * @param family family of the fixtures, or null for that of the football codes
 */
public record Wanted(
        What what,
        @Nullable String group,
        @Nullable String athlete,
        @Nullable String facility,
        @Nullable String fixture,
        @Nullable String family) {
    /** Fixtures of the only group. */
    public static final Wanted FIXTURES = of(What.FIXTURES);

    /** Something whose owner need not be named. */
    public static Wanted of(What what) {
        return new Wanted(what, null, null, null, null, null);
    }

    /** The same for a group. */
    public Wanted group(String id) {
        return new Wanted(what, id, athlete, facility, fixture, family);
    }

    /** The same for an athlete. */
    public Wanted athlete(String id) {
        return new Wanted(what, group, id, facility, fixture, family);
    }

    /** The same for a facility. */
    public Wanted facility(String id) {
        return new Wanted(what, group, athlete, id, fixture, family);
    }

    /** The same for a fixture. */
    public Wanted fixture(String id) {
        return new Wanted(what, group, athlete, facility, id, family);
    }

    /** The group that is named, or the only one. */
    Group group(Scenario scenario) {
        if (group == null && scenario.groups().size() != 1) {
            throw new InputFault("the scenario has several groups: say for which, one of "
                    + String.join(
                            ", ", scenario.groups().stream().map(Group::id).toList()));
        }
        return group == null ? scenario.groups().get(0) : find("group", group, scenario.groups(), Group::id);
    }

    Athlete athlete(Scenario scenario, String id) {
        return find("athlete", id, scenario.athletes(), Athlete::id);
    }

    Facility facility(Scenario scenario, String id) {
        return find("facility", id, scenario.facilities(), Facility::id);
    }

    Fixture fixture(Scenario scenario, String id) {
        return find("fixture", id, scenario.fixtures(), Fixture::id);
    }

    private static <T> T find(String kind, String id, List<T> all, Function<T, String> ids) {
        return all.stream()
                .filter(one -> ids.apply(one).equals(id))
                .findFirst()
                .orElseThrow(() -> new InputFault("no " + kind + " is called \"" + id + "\": "
                        + (all.isEmpty()
                                ? "none is listed"
                                : Nearest.hint(id, all.stream().map(ids).toList()))));
    }
}
