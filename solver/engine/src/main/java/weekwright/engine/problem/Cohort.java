package weekwright.engine.problem;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Restriction;

/**
 * People whose weeks cannot differ: equal groups, minutes played, restrictions, absences and history.
 *
 * @param index place in the problem's list
 * @param groups indexes of their groups, the main one first
 * @param heads how many they are
 * @param athletes ids of those who are listed by name
 * @param representative one of the athletes listed, or an empty text for unnamed people
 * @param restrictions what a clinician allows them
 * @param own when they can come at all, or null for always
 */
public record Cohort(
        int index,
        List<Integer> groups,
        int heads,
        List<String> athletes,
        String representative,
        List<Restriction> restrictions,
        @Nullable FreeTime own) {
    /** Index of the main group. */
    public int mainGroup() {
        return groups.get(0);
    }
}
