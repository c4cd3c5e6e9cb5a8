package weekwright.engine;

import org.jspecify.annotations.Nullable;
import weekwright.engine.search.Budget;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/**
 * A plan to be proposed.
 *
 * @param from the plan to start from and stay close to, with its pins, or null
 * @param threads searches that may run at one time; they never change what is found under a number of moves
 * @param now the present, for what a published plan holds in the next hours, or null
 */
public record Proposal(
        Scenario scenario,
        @Nullable Plan from,
        Budget budget,
        long seed,
        int threads,
        @Nullable Moment now) {}
