package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.engine.testing.TightWeeks;
import weekwright.model.answer.Clash;
import weekwright.model.scenario.Scenario;

/**
 * Clashes against CP-SAT, which proves of the rules stated a second time whether some wishes can be had together: of each
 * clash it must say that all of them cannot, and that without any one of them the rest can.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ClashProofTest {
    private static final double SECONDS = 300;
    private int clashes;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24})
    void cp_sat_says_the_same_of_every_clash(long number) {
        Scenario week = TightWeeks.week(number);
        Proposal proposal = new Proposal(week, null, Budget.moves(20_000), 1, 1, null);
        for (Clash clash :
                Engine.tradeOffs(proposal, Progress.SILENT, what -> {}).answer().clashes()) {
            String what = "week " + number + ": " + clash.text();
            assertThat(canBeHad(week, Set.copyOf(clash.wishes()))).as(what).isFalse();
            for (String wish : clash.wishes()) {
                Set<String> rest = new HashSet<>(clash.wishes());
                rest.remove(wish);
                assertThat(canBeHad(week, rest)).as("%s Without %s", what, wish).isTrue();
            }
            clashes++;
        }
        System.out.println("week " + number + ": " + clashes + " clashes proven so far");
    }

    @AfterAll
    void there_were_clashes_to_prove() {
        assertThat(clashes).as("or this says little").isGreaterThan(15);
    }

    private static boolean canBeHad(Scenario week, Set<String> wishes) {
        return Proof.canOweNothing(TightWeeks.asking(week, wishes), SECONDS);
    }
}
