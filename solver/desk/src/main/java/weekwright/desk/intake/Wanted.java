package weekwright.desk.intake;

import org.jspecify.annotations.Nullable;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Named;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/**
 * What is taken from a file, and for whom.
 *
 * @param group the group concerned, by id or name, or null
 * @param athlete the athlete concerned, by id or name, or null
 * @param facility the facility concerned, by id or name, or null
 * @param fixture the fixture concerned, by id or name, or null
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
    Group group(Scenario scenario, Answers answers) {
        if (group == null && scenario.groups().size() != 1) {
            throw new InputFault("the scenario has several groups: say for which with "
                    + answers.way(Answers.GROUP) + ", one of "
                    + String.join(
                            ", ", scenario.groups().stream().map(Group::id).toList()));
        }
        return group == null ? scenario.groups().get(0) : Named.group(scenario, group);
    }
}
