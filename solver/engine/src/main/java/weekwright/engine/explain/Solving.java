package weekwright.engine.explain;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/** How plans are looked for while trade-offs are worked out: each search has the same budget. */
public interface Solving {
    /**
     * The best plan found: where each session lies, by session.
     *
     * @param enough whether to stop as soon as all that must hold holds and all that is owed is met
     */
    @Nullable
    Stimulus[] solve(Problem problem, boolean enough);

    /** Moves of each search. */
    long moves();

    /** Hears what is tried next, in a few words. */
    void trying(String what);

    /** Whether to end with what is known so far. */
    boolean stop();
}
