package weekwright.model.scenario;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * A named athlete.
 *
 * @param groups ids of the groups, the main one first
 * @param level training age, or null for the main group's
 * @param born date of birth, or null
 */
public record Athlete(
        String id,
        String name,
        List<String> groups,
        @Nullable Level level,
        @Nullable LocalDate born,
        List<Mark> marks,
        List<Window> windows,
        List<Away> away,
        List<Restriction> restrictions) {
    public Athlete {
        name = name == null ? id : name;
        groups = Ids.listed(groups);
        marks = Ids.listed(marks);
        windows = Ids.listed(windows);
        away = Ids.listed(away);
        restrictions = Ids.listed(restrictions);
    }

    /** The same with other marks. */
    public Athlete withMarks(List<Mark> marks) {
        return copy(marks, windows, away, restrictions);
    }

    /** The same with other hours. */
    public Athlete withWindows(List<Window> windows) {
        return copy(marks, windows, away, restrictions);
    }

    /** The same with other spans away. */
    public Athlete withAway(List<Away> away) {
        return copy(marks, windows, away, restrictions);
    }

    /** The same with other restrictions. */
    public Athlete withRestrictions(List<Restriction> restrictions) {
        return copy(marks, windows, away, restrictions);
    }

    private Athlete copy(List<Mark> marks, List<Window> windows, List<Away> away, List<Restriction> restrictions) {
        return new Athlete(id, name, groups, level, born, marks, windows, away, restrictions);
    }
}
