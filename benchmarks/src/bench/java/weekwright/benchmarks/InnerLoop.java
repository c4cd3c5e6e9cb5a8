package weekwright.benchmarks;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Clocked;
import weekwright.engine.search.Portfolio;
import weekwright.engine.search.Progress;

/** The inner loop by itself: what one move costs, tried and taken back, on a good plan. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class InnerLoop {
    private static final int LOTS = 4096;

    /** Which problem. */
    @Param({"week", "four-weeks", "eight-squads", "twelve-weeks"})
    public String problem = "week";

    /** Whether under the yardstick rules, or under all. */
    @Param({"true", "false"})
    public boolean yardstick;

    private @Nullable Judge judge;
    private Session[] sessions = {};
    private Stimulus[] options = {};
    private int at;

    /** Makes a good plan and draws the lots beforehand. */
    @Setup
    public void prepare() {
        Problem made = ProblemBuilder.of(Instance.of(problem).scenario(yardstick));
        Budget budget = Budget.moves(20_000);
        Clocked watch = new Clocked(budget, Progress.SILENT, made.sessions.size());
        judge = Judge.of(
                made, new Portfolio(made, null).search(budget, 1, 1, watch).at());
        Random random = new Random(1);
        sessions = new Session[LOTS];
        options = new Stimulus[LOTS];
        for (int i = 0; i < LOTS; i++) {
            do {
                sessions[i] = made.sessions.get(random.nextInt(made.sessions.size()));
            } while (sessions[i].options.length == 0);
            options[i] = sessions[i].options[random.nextInt(sessions[i].options.length)];
        }
    }

    /** A session moved to a chance option, judged, and taken back. */
    @Benchmark
    public long moveTriedAndTakenBack() {
        Judge its = java.util.Objects.requireNonNull(judge);
        at = (at + 1) % LOTS;
        its.move(sessions[at], options[at]);
        long want = its.settle().want;
        its.revert();
        return want;
    }
}
