package weekwright.desk.view.load;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Level;

/**
 * Whose load it is.
 *
 * @param athlete the athlete, or null for a group's usual member
 * @param group the group, of an athlete the main one
 * @param groups ids of all groups whose sessions count
 */
public record Who(String id, String label, @Nullable Athlete athlete, Group group, List<String> groups) {
    static Who of(Group group) {
        return new Who(group.id(), group.label(), null, group, List.of(group.id()));
    }

    static Who of(Athlete athlete, Group main) {
        return new Who(athlete.id(), athlete.name(), athlete, main, athlete.groups());
    }

    /** Id of the athlete, or null. */
    @Nullable
    String athleteId() {
        return athlete == null ? null : athlete.id();
    }

    Level level() {
        return athlete == null || athlete.level() == null ? group.level() : athlete.level();
    }
}
