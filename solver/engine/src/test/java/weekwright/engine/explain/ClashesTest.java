package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.engine.testing.TightWeeks;
import weekwright.model.answer.Clash;
import weekwright.model.answer.TradeOffs;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;

/**
 * Clashes are what they say, on made-up weeks of up to eight sessions: with one wish fewer a plan is found for the rest, on
 * documents that ask for nothing else; with all of them none is found, however long one looks. (CP-SAT says the same of these
 * weeks: {@code ClashProofTest} in profile {@code bench}.)
 */
class ClashesTest {
    private static final int WEEKS = 8;
    private static final long MOVES = 4_000;
    private static final long LONG = 8_000;

    @Test
    void without_any_one_wish_the_rest_are_met_and_with_all_of_them_never() {
        int clashes = 0;
        int counted = 0;
        Set<Integer> sizes = new TreeSet<>();
        for (long number : LongStream.rangeClosed(1, WEEKS).toArray()) {
            Scenario week = TightWeeks.week(number);
            for (Clash clash : tradeOffs(week).clashes()) {
                String what = "week " + number + ": " + clash.text();
                assertThat(clash.text()).as(what).contains(clash.proved() ? " cannot " : "No plan with ");
                assertThat(isMet(week, Set.copyOf(clash.wishes()), LONG))
                        .as(what)
                        .isFalse();
                for (String wish : clash.wishes()) {
                    Set<String> rest = new HashSet<>(clash.wishes());
                    rest.remove(wish);
                    assertThat(isMet(week, rest, LONG))
                            .as("%s Without %s", what, wish)
                            .isTrue();
                }
                clashes++;
                counted += clash.proved() ? 1 : 0;
                sizes.add(clash.wishes().size());
            }
        }
        assertThat(clashes).as("or this says little").isGreaterThan(4);
        assertThat(counted).isPositive();
        assertThat(sizes).contains(2, 3, 4);
    }

    private static TradeOffs tradeOffs(Scenario week) {
        return Engine.tradeOffs(new Proposal(week, null, Budget.moves(MOVES), 1, 1, null), Progress.SILENT, what -> {})
                .answer();
    }

    /** Whether a plan is found that keeps all that must hold and meets these wishes, which alone are asked for. */
    private static boolean isMet(Scenario week, Set<String> wishes, long moves) {
        Scenario only = TightWeeks.asking(week, wishes);
        Totals totals = Objects.requireNonNull(
                Engine.propose(new Proposal(only, null, Budget.moves(moves), 1, 1, null), Progress.SILENT)
                        .plan()
                        .totals());
        return List.of(totals.must(), totals.key(), totals.main()).stream().allMatch(owed -> owed == 0);
    }
}
