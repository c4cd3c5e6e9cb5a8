package weekwright.engine.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import java.util.Map;
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
import weekwright.engine.testing.Squad;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;
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
                Arguments.of(Scenarios.read("clash"), 5_000),
                Arguments.of(liftsThatRotate(), 10_000));
    }

    /** Lifts with short runs, so that hardly a line can be filled for nothing, and leads who are away now and then. */
    private static Scenario liftsThatRotate() {
        return squad().days(21)
                .level(Level.ADVANCED)
                .window("10:00", "13:00")
                .rule("maximum-repeated", null, null, Map.of("advancedWeeks", 1))
                .rule("variant-churn", null, null, Map.of("advancedExposures", 2, "testedWeeks", 1))
                .staff(new StaffMember(
                        "alder",
                        "Alder",
                        List.of("*"),
                        1,
                        List.of(),
                        List.of(Squad.absence("2027-03-04T00:00", "2027-03-06T11:00"))))
                .staff("birch", "heavy-lower-knee", "technique")
                .aim("heavy-lower-knee", 0, 2, 2)
                .doses(Dose.FULL, Dose.REDUCED, Dose.MICRO)
                .aim("heavy-lower-hip", 0, 1, 2)
                .aim("technique", 0, 2, 3)
                .group("guests")
                .window("10:00", "13:00")
                .aim("heavy-lower-knee", 0, 1, 1)
                .done("heavy-lower-knee", "2027-02-24T10:00")
                .lift("front-squat")
                .scenario();
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
