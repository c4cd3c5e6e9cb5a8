package weekwright.desk.store;

import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Log;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * What one revision holds.
 *
 * @param plan the plan, or null while there is none
 * @param log what was really done, or null while nothing was written down
 */
public record Contents(
        Scenario scenario, @Nullable Plan plan, @Nullable Log log) {
    /** The same with another plan. */
    public Contents with(Plan other) {
        return new Contents(scenario, other, log);
    }
}
