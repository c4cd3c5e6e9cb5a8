package weekwright.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.testing.SmallWeeks;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;

/**
 * The best plan of a small week is known: CP-SAT has proven it from the rules stated a second time (profile {@code bench},
 * {@code ProofTest}). It is judged the same here, and the search reaches it.
 */
class ProvenWeeksTest {
    private static final long MOVES = 100_000;

    static List<SmallWeeks.Proven> weeks() {
        return SmallWeeks.all();
    }

    @ParameterizedTest
    @MethodSource("weeks")
    void the_proven_plan_is_judged_as_it_was_proven(SmallWeeks.Proven week) {
        assertThat(week.plan().totals()).isEqualTo(proven(week));
    }

    @ParameterizedTest
    @MethodSource("weeks")
    void the_search_reaches_what_was_proven_to_be_the_best(SmallWeeks.Proven week) {
        for (long seed = 1; seed <= 3; seed++) {
            Plan found = Engine.propose(
                            new Proposal(week.scenario(), null, Budget.moves(MOVES), seed, 2, null), Progress.SILENT)
                    .plan();
            assertThat(found.totals()).as("seed %d", seed).isEqualTo(proven(week));
        }
    }

    private static Totals proven(SmallWeeks.Proven week) {
        return new Totals(0, week.key(), week.main(), week.want());
    }
}
