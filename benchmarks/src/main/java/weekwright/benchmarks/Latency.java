package weekwright.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.explain.WhyNots;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;

/** How long a coach waits: for what every start of a session would do, for a new plan after two pins, for a first plan. */
public final class Latency {
    private static final int RUNS = 5;

    /** Held, so that it stays as it is set. */
    private static final Logger TIMEFOLD = Logger.getLogger("ai.timefold.solver");

    private final PrintStream out;

    private Latency(PrintStream out) {
        this.out = out;
    }

    /**
     * Prints the table.
     *
     * @param arguments path of the runnable jar, then more options of the Java machine for it
     */
    public static void main(String[] arguments) throws Exception {
        TIMEFOLD.setLevel(Level.OFF);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Latency latency = new Latency(out);
        out.println("| what | median | worst |");
        out.println("| --- | ---: | ---: |");
        latency.consequences("week");
        latency.consequences("eight-squads");
        latency.explanation("week");
        latency.explanation("eight-squads");
        latency.again();
        latency.fixtureMoved();
        latency.process(arguments[0], Arrays.asList(arguments).subList(1, arguments.length));
    }

    /** What every start, place and dose of a session would do, for 50 sessions on a warm machine. */
    private void consequences(String name) {
        Scenario scenario = Instance.of(name).scenario(false);
        Plan plan = propose(scenario, null, Budget.moves(20_000));
        Problem problem = ProblemBuilder.of(scenario, plan, PlanUse.START);
        @Nullable Stimulus[] at = new @Nullable Stimulus[problem.sessions.size()];
        problem.sessions.forEach(session -> at[session.index] = session.before);
        Judge judge = Judge.of(problem, at);
        for (int warm = 0; warm < 20; warm++) {
            problem.sessions.forEach(session -> look(judge, session));
        }
        List<Double> millis = new ArrayList<>();
        for (Session session : problem.sessions.subList(0, Math.min(50, problem.sessions.size()))) {
            long start = System.nanoTime();
            look(judge, session);
            millis.add((System.nanoTime() - start) / 1e6);
        }
        row("consequences of every start of one session, " + Instance.of(name).label(), millis, "ms");
        whyNot(name, problem, at);
    }

    /** What whynot works out for a session: every start, place and dose, open or not. */
    private void whyNot(String name, Problem problem, @Nullable Stimulus[] at) {
        WhyNots whyNots = new WhyNots(problem, at);
        for (int warm = 0; warm < 10; warm++) {
            problem.sessions.forEach(whyNots::changes);
        }
        List<Double> millis = new ArrayList<>();
        List<Double> counts = new ArrayList<>();
        for (Session session : problem.sessions.subList(0, Math.min(50, problem.sessions.size()))) {
            long start = System.nanoTime();
            int options = whyNots.changes(session).size();
            millis.add((System.nanoTime() - start) / 1e6);
            counts.add((double) options);
        }
        row("whynot of one session, " + Instance.of(name).label(), millis, "ms");
        row("whynot of one session, " + Instance.of(name).label(), counts, "options");
    }

    /** All that a plan breaks, in words, with what stands in the way of what is left out. */
    private void explanation(String name) {
        Scenario scenario = Instance.of(name).scenario(false);
        Plan plan = propose(scenario, null, Budget.moves(20_000));
        List<Double> millis = new ArrayList<>();
        for (int run = 0; run < 4 * RUNS; run++) {
            long start = System.nanoTime();
            Engine.judge(scenario, plan);
            double took = (System.nanoTime() - start) / 1e6;
            if (run >= 2 * RUNS) {
                millis.add(took);
            }
        }
        row("full explanation of a plan that was read, " + Instance.of(name).label(), millis, "ms");
    }

    /** The squad's next fixture is played a day later. */
    private void fixtureMoved() {
        Scenario scenario = Instance.of("week").scenario(false);
        Plan plan = propose(scenario, null, Budget.moves(200_000));
        Scenario moved = Moved.firstFixture(scenario, 1);
        solvedAgain("after a fixture moved by a day", moved, plan);
    }

    private void solvedAgain(String after, Scenario scenario, Plan from) {
        for (double seconds : List.of(0.3, 5.0)) {
            List<Double> taken = new ArrayList<>();
            List<Double> moved = new ArrayList<>();
            List<Double> wants = new ArrayList<>();
            for (int run = 0; run < RUNS; run++) {
                long start = System.nanoTime();
                Plan again = propose(scenario, from, Budget.seconds(seconds), run + 1);
                taken.add((System.nanoTime() - start) / 1e9);
                moved.add((double) moved(from, again));
                wants.add(Objects.requireNonNull(again.totals()).want());
            }
            String label = String.format(Locale.ROOT, "a new plan %s, %.1f s: ", after, seconds);
            row(label + "time", taken, "s");
            row(label + "sessions moved besides", moved, "");
            row(label + "want", wants, "points");
        }
        Totals before =
                Objects.requireNonNull(Engine.judge(scenario, from).plan().totals());
        out.printf(
                Locale.ROOT,
                "| %s and nothing moved: must, key, main | %.0f, %.1f, %.1f | |%n",
                after,
                before.must(),
                before.key(),
                before.main());
    }

    private static long look(Judge judge, Session session) {
        long sum = 0;
        for (Stimulus option : session.options) {
            judge.move(session, option);
            sum += judge.settle().want;
            judge.revert();
        }
        return sum;
    }

    /** Two sessions of a squad's week are held on another day. */
    private void again() {
        Scenario scenario = Instance.of("week").scenario(false);
        Plan plan = propose(scenario, null, Budget.moves(200_000));
        Plan held = held(plan, 3, held(plan, 8, plan));
        solvedAgain("after two pins", scenario, held);
    }

    private static Plan held(Plan plan, int at, Plan into) {
        Placement p = plan.placements().get(at);
        Placement other = plan.placements().get((at + 5) % plan.placements().size());
        Pin pin = new Pin(true, false, false, false, false, false, false, List.of());
        Placement there = new Placement(
                p.id(), p.group(), p.family(), other.start(), p.minutes(), p.facility(), p.lead(), p.dose(), null, pin);
        List<Placement> all = into.placements().stream()
                .map(one -> Objects.equals(one.id(), p.id()) ? there : one)
                .toList();
        return new Plan(
                into.weekwright(),
                into.scenario(),
                into.scenarioDigest(),
                null,
                into.solver(),
                all,
                into.leftOut(),
                into.softened(),
                into.totals(),
                into.findings());
    }

    private static long moved(Plan before, Plan after) {
        return before.placements().stream()
                .filter(old -> after.placements().stream()
                        .noneMatch(now -> Objects.equals(now.id(), old.id())
                                && now.start().equals(old.start())
                                && Objects.equals(now.facility(), old.facility())
                                && now.dose() == old.dose()))
                .count();
    }

    private static Plan propose(Scenario scenario, @Nullable Plan from, Budget budget) {
        return propose(scenario, from, budget, 1);
    }

    private static Plan propose(Scenario scenario, @Nullable Plan from, Budget budget, long seed) {
        return Engine.propose(new Proposal(scenario, from, budget, seed, 2, null), Progress.SILENT)
                .plan();
    }

    private void process(String jar, List<String> options) throws Exception {
        List<Double> first = new ArrayList<>();
        List<Double> end = new ArrayList<>();
        for (int run = 0; run < RUNS; run++) {
            List<String> command = new ArrayList<>();
            command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
            command.addAll(options);
            command.addAll(List.of("-jar", jar, "propose", "demo:one-match", "--moves", "2000"));
            long start = System.nanoTime();
            Process process = new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            Callable<Double> since = () -> (System.nanoTime() - start) / 1e9;
            first.add(firstPlan(process, since));
            process.waitFor();
            end.add(since.call());
        }
        row("process start to the first plan told of (one-match)", first, "s");
        row("process start to the end of 2,000 moves", end, "s");
    }

    private static double firstPlan(Process process, Callable<Double> since) throws Exception {
        double at = Double.NaN;
        try (BufferedReader lines = process.errorReader(StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                at = Double.isNaN(at) && line.contains(" placed") ? since.call() : at;
            }
        } catch (IOException e) {
            return at;
        }
        return at;
    }

    private void row(String what, List<Double> values, String unit) {
        List<Double> sorted = values.stream().sorted().toList();
        out.printf(
                Locale.ROOT,
                "| %s | %.2f %s | %.2f %s |%n",
                what,
                sorted.get(sorted.size() / 2),
                unit,
                sorted.get(sorted.size() - 1),
                unit);
    }
}
