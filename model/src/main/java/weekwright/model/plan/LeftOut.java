package weekwright.model.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.rulebook.RuleLevel;

/**
 * A session that is wanted and not placed.
 *
 * @param need {@code least} where it is owed, {@code target} where it is only wanted
 * @param cost what its absence adds to the total of its level
 * @param options starts times facilities times doses of its week
 * @param cheapest the option that would cost least, or null where there is none
 */
public record LeftOut(
        String id,
        String need,
        RuleLevel level,
        double cost,
        @Nullable Pin pin,
        int options,
        List<Blocker> blockers,
        @Nullable CheapestOption cheapest,
        String text) {
    public LeftOut {
        blockers = Ids.listed(blockers);
    }
}
