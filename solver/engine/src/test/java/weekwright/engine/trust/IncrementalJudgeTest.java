package weekwright.engine.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/** What the judge keeps while sessions move is what it would find on looking at the whole plan anew. */
class IncrementalJudgeTest {
    /** 200,000 moves in all: many on small weeks, fewer on those where a fresh look takes longer. */
    static Stream<Arguments> scenarios() {
        return Stream.of(
                Arguments.of(SquadGenerator.tiny(1), 50_000),
                Arguments.of(SquadGenerator.tiny(2), 50_000),
                Arguments.of(SquadGenerator.tiny(3), 60_000),
                Arguments.of(Scenarios.read("one-match"), 10_000),
                Arguments.of(Scenarios.read("two-matches"), 10_000),
                Arguments.of(Scenarios.read("sprint-week"), 5_000),
                Arguments.of(Scenarios.read("two-evenings"), 10_000),
                Arguments.of(Scenarios.read("clash"), 5_000));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void kept_costs_equal_fresh_ones_after_every_move(Scenario scenario, int moves) {
        Problem problem = ProblemBuilder.of(scenario);
        Judge judge = new Judge(problem);
        Random random = new Random(7);
        for (int move = 0; move < moves; move++) {
            for (int together = random.nextInt(3); together >= 0; together--) {
                Session session = problem.sessions.get(random.nextInt(problem.sessions.size()));
                judge.move(session, anywhere(session, random));
            }
            Cost kept = judge.settle();
            Cost fresh = Judge.of(problem, judge.placements()).total();
            if (!kept.same(fresh)) {
                assertThat(kept.totals()).as("%s, move %d", scenario.id(), move).isEqualTo(fresh.totals());
                assertThat(kept.same(fresh)).as("slopes after move %d", move).isTrue();
            }
            takeBackOrKeep(judge, problem, random);
        }
    }

    private static void takeBackOrKeep(Judge judge, Problem problem, Random random) {
        if (random.nextInt(4) == 0) {
            judge.keep();
            return;
        }
        judge.revert();
        if (random.nextInt(50) == 0) {
            assertThat(judge.total().same(Judge.of(problem, judge.placements()).total()))
                    .as("taken back whole")
                    .isTrue();
        }
    }

    private static Stimulus anywhere(Session session, Random random) {
        int at = random.nextInt(session.options.length + 1);
        return at == session.options.length ? null : session.options[at];
    }
}
