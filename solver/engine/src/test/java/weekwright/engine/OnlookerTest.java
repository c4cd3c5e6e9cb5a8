package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Budget;
import weekwright.model.plan.Totals;
import weekwright.scenarios.Scenarios;

/** Whoever looks on sees each better plan, and the last of them is the plan that comes out. */
class OnlookerTest {
    @Test
    void the_best_plan_can_be_drawn_while_it_is_searched() {
        List<Judged> drawn = new ArrayList<>();
        List<Integer> placed = new ArrayList<>();
        Onlooker onlooker = new Onlooker() {
            @Override
            public void plan(Supplier<Judged> plan) {
                drawn.add(plan.get());
            }

            @Override
            public void better(Totals totals, int number, int sessions, long moves, double seconds) {
                placed.add(number);
            }

            @Override
            public boolean stop() {
                return false;
            }
        };

        Engine.propose(new Proposal(Scenarios.read("sprint-week"), null, Budget.moves(3_000), 1, 1, null), onlooker);

        assertThat(drawn).hasSameSizeAs(placed).hasSizeGreaterThan(1);
        for (int i = 0; i < drawn.size(); i++) {
            assertThat(drawn.get(i).plan().placements()).hasSize(placed.get(i));
            assertThat(drawn.get(i).days()).hasSize(14);
        }
    }
}
