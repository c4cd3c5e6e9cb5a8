package weekwright.desk.export;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Named;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** For whom something is given out: a group, or one athlete. */
public sealed interface Whose {
    /** A name that stays the same, for ids. */
    String key();

    /** A whole group. */
    record OfGroup(Group group) implements Whose {
        @Override
        public String key() {
            return "group/" + group.id();
        }
    }

    /** One athlete. */
    record OfAthlete(Athlete athlete) implements Whose {
        @Override
        public String key() {
            return "athlete/" + athlete.id();
        }
    }

    /**
     * Who is meant.
     *
     * @param group a group, or null
     * @param athlete an athlete, or null
     * @throws InputFault when nobody is called so, or when neither is given and there are several groups
     */
    static Whose of(Scenario scenario, @Nullable String group, @Nullable String athlete) {
        if (group != null && athlete != null) {
            throw new InputFault("give --group or --athlete, not both");
        }
        if (athlete != null) {
            return new OfAthlete(Named.athlete(scenario, athlete));
        }
        if (group == null && scenario.groups().size() != 1) {
            throw new InputFault("the scenario has several groups: say for whom with --group, one of "
                    + String.join(", ", ids(scenario)) + ", or with --athlete");
        }
        return new OfGroup(group == null ? scenario.groups().get(0) : Named.group(scenario, group));
    }

    private static List<String> ids(Scenario scenario) {
        return scenario.groups().stream().map(Group::id).toList();
    }
}
