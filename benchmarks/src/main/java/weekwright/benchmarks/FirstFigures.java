package weekwright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Solver;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/**
 * The first figures: moves a second, time until everything that is placed at the end is placed without a must broken, and
 * seconds from the start of a process to its plan. Medians of five seeds; nothing is the best of several.
 */
public final class FirstFigures {
    private static final int SEEDS = 5;
    private static final double SECONDS = 3;

    private FirstFigures() {}

    /**
     * Prints the table.
     *
     * @param arguments path of the runnable jar, for the time of a whole process; none leaves that row out
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        out.printf(
                Locale.ROOT,
                "Java %s, %d processors, %s s a search, 2 threads, medians of %d seeds%n%n",
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                SECONDS,
                SEEDS);
        out.println("| week | sessions | moves a second | everything placed after, s | want: median (worst) |");
        out.println("| --- | ---: | ---: | ---: | ---: |");
        run("warm-up, not counted", Scenarios.read("one-match"), out);
        for (String name : List.of("one-match", "two-matches", "sprint-week", "two-evenings", "clash")) {
            run(name, Scenarios.read(name), out);
        }
        run("generated squad, 28 sessions", SquadGenerator.squad(1, 7, 28, 1), out);
        run("generated squad, four weeks", SquadGenerator.squad(1, 7, 28, 4), out);
        if (arguments.length > 0) {
            out.printf(
                    Locale.ROOT,
                    "%nProcess start to its plan (one-match, 2,000 moves): median %.2f s%n",
                    process(arguments[0]));
        }
    }

    private static void run(String name, Scenario scenario, PrintStream out) {
        List<Double> speeds = new ArrayList<>();
        List<Double> placed = new ArrayList<>();
        List<Double> wants = new ArrayList<>();
        int sessions = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            Track track = new Track();
            Judged judged = Engine.propose(new Proposal(scenario, null, Budget.seconds(SECONDS), seed, 2, null), track);
            Solver solver = java.util.Objects.requireNonNull(judged.plan().solver());
            Totals totals = java.util.Objects.requireNonNull(judged.plan().totals());
            double seconds = java.util.Objects.requireNonNull(solver.seconds());
            speeds.add(solver.moves() / seconds);
            placed.add(track.lastGain);
            wants.add(totals.want());
            sessions = track.sessions;
        }
        out.printf(
                Locale.ROOT,
                "| %s | %d | %,.0f | %.2f | %.1f (%.1f) |%n",
                name,
                sessions,
                median(speeds),
                median(placed),
                median(wants),
                Collections.max(wants));
    }

    private static double process(String jar) throws IOException, InterruptedException {
        List<Double> seconds = new ArrayList<>();
        for (int run = 0; run < SEEDS; run++) {
            long start = System.nanoTime();
            new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-jar",
                            jar,
                            "propose",
                            "demo:one-match",
                            "--moves",
                            "2000")
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start()
                    .waitFor();
            seconds.add((System.nanoTime() - start) / 1e9);
        }
        return median(seconds);
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }

    /** Notes when the levels above the wishes were last bettered: from then on everything is placed that will be. */
    private static final class Track implements Progress {
        private Totals best = new Totals(Double.MAX_VALUE, 0, 0, 0);
        private double lastGain;
        private int sessions;

        @Override
        public synchronized void better(Totals totals, int placed, int ofSessions, long moves, double seconds) {
            boolean gain = totals.must() < best.must() || totals.key() < best.key() || totals.main() < best.main();
            lastGain = gain ? seconds : lastGain;
            best = totals;
            sessions = ofSessions;
        }

        @Override
        public boolean stop() {
            return false;
        }
    }
}
