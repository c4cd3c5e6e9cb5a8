package weekwright.model.answer;

import java.util.List;
import weekwright.model.Ids;
import weekwright.model.plan.Totals;

/**
 * Something given up, and the plan that was then found.
 *
 * @param steps what to do, one step a line ({@code do} in documents)
 * @param change change of the totals; negative is better
 */
public record GiveUp(
        @com.fasterxml.jackson.annotation.JsonProperty("do") List<String> steps, Totals change, String text) {
    public GiveUp {
        steps = Ids.listed(steps);
    }
}
