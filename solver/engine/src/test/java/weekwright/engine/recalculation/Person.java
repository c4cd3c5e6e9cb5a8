package weekwright.engine.recalculation;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Athlete;

/**
 * One human being, named or not.
 *
 * @param name the athlete's id, or {@code group#n} for somebody who is only counted
 * @param groups ids of the groups, the main one first
 * @param athlete what is known of a named one, or null
 */
record Person(String name, List<String> groups, @Nullable Athlete athlete) {
    String mainGroup() {
        return groups.get(0);
    }

    boolean in(List<String> someGroups) {
        return groups.stream().anyMatch(someGroups::contains);
    }
}
