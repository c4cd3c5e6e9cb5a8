package weekwright.model.scenario;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * Something fixed that is no fixture: a practice, a class, a work shift.
 *
 * @param groups groups concerned, or empty where {@code athletes} are named
 * @param athletes athletes concerned, for one person's work shift, school match or second club
 * @param family session family, or null for time that is only taken up and trains nothing
 * @param facility facility used, or null
 * @param effort how hard, or null for the family's own figures
 */
public record Commitment(
        String id,
        String label,
        List<String> groups,
        List<String> athletes,
        @Nullable String family,
        Moment start,
        int minutes,
        @Nullable String facility,
        @Nullable Effort effort,
        @Nullable Lends lends) {
    public Commitment {
        label = label == null ? id : label;
        groups = Ids.listed(groups);
        athletes = Ids.listed(athletes);
    }

    /** The same under another id at another start. */
    public Commitment withStart(String id, Moment start) {
        return new Commitment(id, label, groups, athletes, family, start, minutes, facility, effort, lends);
    }
}
