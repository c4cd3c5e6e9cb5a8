package weekwright.engine.rules;

import java.util.List;
import weekwright.engine.problem.Cohort;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;

/** The fewest facts that a rule needs. Views are reused and valid only while a judge looks. */
public abstract class View {
    final Problem problem;
    private final List<Cohort> cohorts;
    private final Breach breach = new Breach();

    View(Problem problem) {
        this.problem = problem;
        cohorts = problem.cohorts;
    }

    /** A breach with nothing in it yet. */
    final Breach breach() {
        return breach.none();
    }

    /** People in a cohort. */
    final int heads(int cohort) {
        return cohorts.get(cohort).heads();
    }

    /** A cohort. */
    final Cohort cohort(int index) {
        return cohorts.get(index);
    }

    /** The group among whom a cost is shared, and whose rules hold. */
    public abstract GroupInfo group();
}
