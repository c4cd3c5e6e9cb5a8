package weekwright.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.SquadGenerator;
import weekwright.scenarios.Yardstick;

/**
 * Notices a worse search, by what it finds within a number of moves and by the moves that it needs, never by time: five
 * seeds, on one thread, may do a little worse than what was kept here and not more. Whoever has made the search better, or
 * changed a yardstick rule, keeps the new figures: a failure says what they are.
 */
class SearchGuardTest {
    private static final int SEEDS = 5;
    private static final long MOVES = 30_000;
    /** By how many times the moves that were kept may be needed: they differ much from seed to seed. */
    private static final double MORE_MOVES = 1.4;

    /**
     * What the search reached when it was looked at last.
     *
     * @param want mean of what the wishes cost; nothing above the wishes is broken
     * @param worse points by which it may be more
     * @param goal what the wishes are to come down to
     * @param movesToGoal median of the moves needed for that
     */
    record Kept(
            String name,
            int squads,
            int sessions,
            int weeks,
            double want,
            double worse,
            double goal,
            long movesToGoal) {
        Scenario scenario() {
            return Yardstick.of(SquadGenerator.squad(10, squads, sessions, weeks));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Kept> kept() {
        return List.of(
                new Kept("a squad's week", 1, 28, 1, 18.0, 4, 24, 5_209),
                new Kept("a squad's four weeks", 1, 28, 4, 101.4, 6, 112, 16_473),
                new Kept("three squads in a crowded week", 3, 84, 1, 106.4, 6, 118, 12_640));
    }

    @ParameterizedTest
    @MethodSource("kept")
    void finds_plans_as_good_as_it_did_in_as_few_moves(Kept kept) {
        Scenario scenario = kept.scenario();
        double want = 0;
        List<Long> needed = new ArrayList<>();
        for (long seed = 1; seed <= SEEDS; seed++) {
            Goal goal = new Goal(kept.goal());
            Proposal proposal = new Proposal(scenario, null, Budget.moves(MOVES), seed, 1, null);
            Totals found =
                    Objects.requireNonNull(Engine.propose(proposal, goal).plan().totals());
            assertThat(List.of(found.must(), found.key(), found.main())).containsOnly(0.0);
            want += found.want() / SEEDS;
            needed.add(goal.reachedAt);
        }
        needed.sort(null);

        assertThat(want).as("mean of the wishes").isLessThanOrEqualTo(kept.want() + kept.worse());
        assertThat((double) needed.get(SEEDS / 2))
                .as("median of the moves to %s", kept.goal())
                .isLessThanOrEqualTo(kept.movesToGoal() * MORE_MOVES);
    }

    /** Notes after how many moves a plan is as good as the goal. */
    private static final class Goal implements Progress {
        private final double goal;
        private long reachedAt = Long.MAX_VALUE;

        Goal(double goal) {
            this.goal = goal;
        }

        @Override
        public void better(Totals totals, int placed, int sessions, long moves, double seconds) {
            boolean clean = totals.must() == 0 && totals.key() == 0 && totals.main() == 0;
            if (clean && totals.want() <= goal) {
                reachedAt = Math.min(reachedAt, moves);
            }
        }

        @Override
        public boolean stop() {
            return false;
        }
    }
}
