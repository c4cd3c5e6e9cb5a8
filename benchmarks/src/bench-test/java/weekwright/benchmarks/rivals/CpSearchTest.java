package weekwright.benchmarks.rivals;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Clocked;
import weekwright.engine.search.Portfolio;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Totals;
import weekwright.scenarios.SquadGenerator;
import weekwright.scenarios.Yardstick;

/** CP-SAT is measured on the same rules: of any plan that keeps every must its model says what the engine's judge says. */
class CpSearchTest {
    /** Seed, sessions a week, weeks; the plans are those that a search of ours comes by. */
    @ParameterizedTest
    @CsvSource({"10, 28, 1", "3, 12, 1", "4, 35, 1", "6, 20, 1", "7, 16, 2", "10, 28, 4"})
    void model_and_judge_say_the_same_of_good_plans_and_poor_ones(long seed, int sessions, int weeks) {
        Problem problem = problem(seed, sessions, weeks);
        for (long moves : new long[] {10, 300, 3_000, 20_000}) {
            Budget budget = Budget.moves(moves);
            Clocked watch = new Clocked(budget, Progress.SILENT, problem.sessions.size());
            Stimulus[] at =
                    new Portfolio(problem, null).search(budget, moves, 1, watch).at();
            Totals judged = Judge.of(problem, at).total().totals();

            assertThat(judged.must()).isZero();
            assertThat(new CpSearch(problem).claims(at)).as("%d moves", moves).isEqualTo(judged);
        }
    }

    @Test
    void what_it_finds_is_what_it_says_and_no_better_than_it_proves() {
        Problem problem = problem(3, 12, 1);
        CpSearch.Found found = new CpSearch(problem).best(60, 1, 2);
        Totals judged = Judge.of(problem, found.at()).total().totals();

        assertThat(found.claimed()).isEqualTo(judged);
        assertThat(found.bound()).isLessThanOrEqualTo(judged.want());
    }

    private static Problem problem(long seed, int sessions, int weeks) {
        return ProblemBuilder.of(Yardstick.of(SquadGenerator.squad(seed, 1, sessions, weeks)));
    }
}
