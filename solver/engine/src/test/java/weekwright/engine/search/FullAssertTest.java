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
    void forty_thousand_moves_of_a_tiny_week_pass_full_assertion() {
        Problem problem = ProblemBuilder.of(SquadGenerator.tiny(1));
        var start = Construction.held(problem);

        Searcher.Found found =
                new TimefoldSearcher(EnvironmentMode.FULL_ASSERT).search(problem, start, 1, 40_000, Watch.NONE);

        assertThat(found.moves()).isGreaterThanOrEqualTo(40_000);
        assertThat(Judge.of(problem, found.at())
                        .total()
                        .compareLevels(Judge.of(problem, start).total()))
                .isNegative();
    }
}
