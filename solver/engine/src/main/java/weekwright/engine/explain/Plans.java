package weekwright.engine.explain;

import java.util.List;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;

/** Plans in which something is otherwise. */
final class Plans {
    private Plans() {}

    /** A plan of other sessions, of which nothing has been said yet. */
    static Plan with(Plan of, List<Placement> placements, List<LeftOut> leftOut) {
        return new Plan(
                of.weekwright(),
                of.scenario(),
                null,
                of.published(),
                null,
                placements,
                leftOut,
                List.of(),
                null,
                List.of());
    }
}
