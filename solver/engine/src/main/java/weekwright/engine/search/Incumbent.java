package weekwright.engine.search;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/**
 * The best plan seen, compared by levels. Every complete state that is judged is offered to it: the weighted sum that
 * guides the walk may prefer a state that breaks a must.
 */
final class Incumbent {
    private final Scale scale;
    private final Cost cost;
    private @Nullable Stimulus[] at;

    Incumbent(Judge judge, Scale scale) {
        this.scale = scale;
        cost = scale.cost(judge);
        at = judge.placements();
    }

    /** Takes over the judge's state if it is better. */
    boolean offer(Judge judge) {
        if (judge.total().compareLevels(cost) >= 0) {
            return false;
        }
        Cost whole = scale.cost(judge);
        if (whole.compareLevels(cost) >= 0) {
            return false;
        }
        cost.set(whole);
        at = judge.placements();
        return true;
    }

    /** Whether no plan that costs this or more is any better. */
    boolean noneBetterFrom(Cost least) {
        return least.compareLevels(cost) >= 0;
    }

    Cost cost() {
        return cost;
    }

    @Nullable
    Stimulus[] at() {
        return at;
    }

    int placed() {
        int placed = 0;
        for (Stimulus where : at) {
            placed += where == null ? 0 : 1;
        }
        return placed;
    }
}
