package weekwright.model.plan;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import weekwright.model.Ids;

/**
 * The cheapest single change that clears a finding, with its price.
 *
 * @param steps what to do, one step a line ({@code do} in documents)
 * @param change change of the totals by level; negative is better
 * @param adds ids of rules newly broken
 * @param free whether it costs nothing
 */
public record Remedy(
        @JsonProperty("do") List<String> steps, Totals change, List<String> adds, boolean free, String text) {
    public Remedy {
        steps = Ids.listed(steps);
        adds = Ids.listed(adds);
    }
}
