package weekwright.model.scenario;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * What a clinician allows an athlete, typed in as given; both dates inclusive. The program never clears anybody.
 *
 * @param pathways pathways concerned
 * @param upTo the most that is allowed
 * @param why who said so, shown on the coach's own pages only
 */
public record Restriction(
        List<Pathway> pathways,
        RestrictionLimit upTo,
        LocalDate from,
        LocalDate to,
        @Nullable String why) {
    public Restriction {
        pathways = Ids.listed(pathways);
    }

    /** Whether it holds on a local date. */
    public boolean holdsOn(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }
}
