package weekwright.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import org.junit.jupiter.api.Test;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.rules.Judge;
import weekwright.scenarios.SquadGenerator;

/** Timefold's own check of every score against a fresh calculator: a corrupt score or a move not undone would throw. */
class FullAssertTest {
    @Test
    void forty_thousand_moves_of_tiny_weeks_pass_full_assertion() {
        long moves = 0;
        for (long seed = 1; moves < 40_000; seed++) {
            Problem problem = ProblemBuilder.of(SquadGenerator.tiny(seed));
            var start = Construction.held(problem);

            Searcher.Found found = new TimefoldSearcher(EnvironmentMode.FULL_ASSERT)
                    .search(problem, start, problem.sessions, 1, 20_000, Watch.NONE);

            assertThat(found.moves()).as("moves of week %d", seed).isPositive();
            assertThat(Judge.of(problem, found.at())
                            .total()
                            .compareLevels(Judge.of(problem, start).total()))
                    .isNegative();
            moves += found.moves();
        }
    }
}
