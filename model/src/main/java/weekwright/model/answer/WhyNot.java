package weekwright.model.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.plan.Totals;

/**
 * What every other time, place and dose of a session would do, the rest of the plan staying.
 *
 * @param session id of the session
 * @param now where it lies, or null where it is left out
 * @param totals how the plan stands
 * @param options every start, place and dose of its week in its group's hours, in order of time
 * @param days day by day in words
 * @param text the answer in a sentence or two
 */
public record WhyNot(
        String session,
        @Nullable Spot now,
        Totals totals,
        List<WhyNotOption> options,
        List<WhyNotDay> days,
        String text) {
    public WhyNot {
        options = Ids.listed(options);
        days = Ids.listed(days);
    }
}
