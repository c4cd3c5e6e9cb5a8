package weekwright.model.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * A session that differs between two plans.
 *
 * @param session its id
 * @param what {@code moved} in time, {@code placed} elsewhere, {@code dosed} anew, {@code led} by somebody else or
 *     {@code varied} to another lift, in this order; or {@code added} or {@code dropped} alone
 * @param before where it lay, or null
 * @param after where it lies, or null
 */
public record Change(
        String session,
        List<String> what,
        @Nullable Spot before,
        @Nullable Spot after,
        String text) {
    public Change {
        what = Ids.listed(what);
    }
}
