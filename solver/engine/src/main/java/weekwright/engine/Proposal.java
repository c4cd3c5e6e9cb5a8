package weekwright.engine;

import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/**
 * What a plan is asked for.
 *
 * @param from a plan to start from and to stay close to, or null
 * @param seed seed of all chance in the search
 * @param threads threads that may search side by side; they never change the plan of a search counted in moves
 * @param now the time of asking, for a published plan; or null
 */
public record Proposal(
        Scenario scenario,
        @Nullable Plan from,
        Budget budget,
        long seed,
        int threads,
        @Nullable Moment now) {}
