package weekwright.benchmarks.rivals;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.plan.Totals;
import weekwright.scenarios.SquadGenerator;
import weekwright.scenarios.Yardstick;

/** The streams are measured against the same rules as the engine: of any plan they say exactly what its judge says. */
class StreamRulesTest {
    private static final int PLANS = 200;

    /** Seed, squads, sessions a week, weeks: all seeds of one squad, and squads that share rooms and leads. */
    @ParameterizedTest
    @CsvSource({
        "10, 1, 28, 1",
        "10, 1, 28, 4",
        "3, 1, 20, 2",
        "4, 1, 35, 1",
        "5, 2, 40, 2",
        "10, 8, 224, 1",
        "6, 4, 60, 1"
    })
    void streams_and_judge_say_the_same_of_random_plans(long seed, int squads, int sessions, int weeks) {
        Problem problem = ProblemBuilder.of(Yardstick.of(SquadGenerator.squad(seed, squads, sessions, weeks)));
        StreamSearch.Scorer scorer = new StreamSearch(problem).scorer();
        Random random = new Random(seed);
        for (int plan = 0; plan < PLANS; plan++) {
            Stimulus[] at = randomly(problem, random);
            Totals judged = Judge.of(problem, at).total().totals();
            assertThat(scorer.totals(at)).as("plan %d", plan).isEqualTo(judged);
        }
    }

    /** From nearly empty to everything placed. */
    private static Stimulus[] randomly(Problem problem, Random random) {
        int share = random.nextInt(101);
        Stimulus[] at = new Stimulus[problem.sessions.size()];
        for (Session session : problem.sessions) {
            boolean placed = session.options.length > 0 && random.nextInt(100) < share;
            at[session.index] = placed ? session.options[random.nextInt(session.options.length)] : null;
        }
        return at;
    }
}
