package weekwright.engine;

import java.util.List;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;

/** Judges plans and proposes them. */
public final class Engine {
    private Engine() {}

    /** Judges a plan as it stands. */
    public static Judged judge(Scenario scenario, Plan plan) {
        return new Judged(plan, List.of(), List.of());
    }

    /** Searches for the best plan. */
    public static Judged propose(Proposal proposal, Progress progress) {
        Plan empty = new Plan(
                Scenario.VERSION,
                proposal.scenario().id(),
                null,
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                new Totals(0, 0, 0, 0),
                List.of());
        return new Judged(empty, List.of(), List.of());
    }
}
