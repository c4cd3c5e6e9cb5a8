package weekwright.engine.rules;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/** Two things on common timelines, the earlier first. */
public final class PairView extends View {
    private Stimulus first;
    private Stimulus second;
    private GroupInfo group;
    private int @Nullable [] only;

    PairView(Problem problem, Stimulus any, GroupInfo anyGroup) {
        super(problem);
        first = any;
        second = any;
        group = anyGroup;
    }

    /** Puts two things in order of start; what starts with a fixture comes after it. */
    PairView of(Stimulus a, Stimulus b) {
        boolean withFixture = a.start == b.start && a.isFixture() != b.isFixture();
        boolean inOrder = withFixture ? a.isFixture() : Stimulus.inOrder(a, b) <= 0;
        first = inOrder ? a : b;
        second = inOrder ? b : a;
        group = problem.groups.get(groupOf());
        only = null;
        return this;
    }

    /** Looks at the pair for one cohort alone, which takes part in both. */
    PairView only(int cohort) {
        only = new int[] {cohort};
        return this;
    }

    /** Whom the view looks at among those who take part in a thing. */
    int[] cohorts(Stimulus of) {
        return only == null ? of.cohorts : only;
    }

    /** The later placement's group; of two fixed things the later one's. */
    private int groupOf() {
        if (second.placed() || !first.placed()) {
            return second.group >= 0
                    ? second.group
                    : first.group >= 0 ? first.group : cohort(second.cohorts[0]).mainGroup();
        }
        return first.group;
    }

    /** The earlier thing. */
    public Stimulus first() {
        return first;
    }

    /** The later thing. */
    public Stimulus second() {
        return second;
    }

    /** Elapsed minutes from the end of the earlier to the start of the later. */
    int gap() {
        return second.start - first.end;
    }

    /** Whether at least one of them was placed. */
    boolean onePlaced() {
        return first.placed() || second.placed();
    }

    /** Adds all cohorts that take part in both, at one cost a head. */
    void addCommon(Breach breach, int cost, int measured, int limit) {
        for (int cohort : cohorts(first)) {
            if (second.has(cohort)) {
                breach.add(cohort, heads(cohort), cost, measured, limit);
            }
        }
        if (!onePlaced()) {
            breach.told();
        }
    }

    @Override
    public GroupInfo group() {
        return group;
    }
}
