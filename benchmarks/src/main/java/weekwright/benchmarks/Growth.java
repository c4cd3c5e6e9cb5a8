package weekwright.benchmarks;

import java.io.PrintStream;
import java.lang.ref.Reference;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Clocked;
import weekwright.engine.search.Portfolio;
import weekwright.engine.search.Progress;
import weekwright.engine.search.Searcher.Found;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.SquadGenerator;

/** How time and memory grow with squads and weeks, under all rules: where it bends. */
public final class Growth {
    private static final int THREADS = 2;
    private static final int SESSIONS_A_SQUAD = 28;
    private static final List<int[]> SIZES = List.of(
            new int[] {1, 1},
            new int[] {2, 1},
            new int[] {4, 1},
            new int[] {8, 1},
            new int[] {16, 1},
            new int[] {1, 2},
            new int[] {1, 4},
            new int[] {1, 8},
            new int[] {1, 12},
            new int[] {4, 4},
            new int[] {16, 4});
    /** Held, so that it stays as it is set. */
    private static final Logger TIMEFOLD = Logger.getLogger("ai.timefold.solver");

    private final PrintStream out;
    private final double seconds;
    private final int seeds;

    private Growth(PrintStream out, double seconds, int seeds) {
        this.out = out;
        this.seconds = seconds;
        this.seeds = seeds;
    }

    /**
     * Prints the table.
     *
     * @param arguments seconds of each search, seeds a row
     */
    public static void main(String[] arguments) {
        TIMEFOLD.setLevel(Level.OFF);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Growth growth = new Growth(out, Double.parseDouble(arguments[0]), Integer.parseInt(arguments[1]));
        // One search that is not counted.
        growth.run(ProblemBuilder.of(scenario(1, 1)), 1);
        out.println(
                "| squads | weeks | sessions | problem read, s | first plan, s: median (worst) "
                        + "| nothing above the wishes left to gain, s: median (worst) | moves a second | memory, MB | a session, kB |");
        out.println("| ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        SIZES.forEach(size -> growth.row(size[0], size[1]));
    }

    private static Scenario scenario(int squads, int weeks) {
        return SquadGenerator.squad(10, squads, SESSIONS_A_SQUAD * squads, weeks);
    }

    private void row(int squads, int weeks) {
        Scenario scenario = scenario(squads, weeks);
        long start = System.nanoTime();
        Problem problem = ProblemBuilder.of(scenario);
        double reading = (System.nanoTime() - start) / 1e9;
        int sessions = problem.sessions.size();
        List<Search> runs = new ArrayList<>();
        for (long seed = 1; seed <= seeds; seed++) {
            runs.add(run(problem, seed));
        }
        double megabytes = megabytes(scenario);
        out.printf(
                Locale.ROOT,
                "| %d | %d | %,d | %.2f | %s | %s | %,.0f | %.0f | %.0f |%n",
                squads,
                weeks,
                sessions,
                reading,
                medianAndWorst(runs.stream().map(Search::first).toList()),
                medianAndWorst(runs.stream().map(Search::placed).toList()),
                runs.stream().map(Search::speed).sorted().toList().get(seeds / 2),
                megabytes,
                megabytes * 1024 / sessions);
    }

    private static String medianAndWorst(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        return String.format(Locale.ROOT, "%.2f (%.2f)", sorted.get(sorted.size() / 2), sorted.get(sorted.size() - 1));
    }

    /**
     * A search.
     *
     * @param first seconds from the search's start to the first plan
     * @param placed seconds to a plan as good above the wishes as the last one
     * @param speed moves a second
     */
    private record Search(double first, double placed, double speed) {}

    /** A search by itself: the problem is there, and nothing is explained afterwards. */
    private Search run(Problem problem, long seed) {
        Better better = new Better();
        Clocked watch = new Clocked(Budget.seconds(seconds), better, problem.sessions.size());
        Found found = new Portfolio(problem, null).search(Budget.seconds(seconds), seed, THREADS, watch);
        Totals totals = Judge.of(problem, found.at()).total().totals();
        return new Search(better.times.get(0), better.firstAsGoodAs(totals), found.moves() / watch.seconds());
    }

    /** Notes each better plan with its time. */
    private static final class Better implements Progress {
        private final List<Totals> totals = new ArrayList<>();
        private final List<Double> times = new ArrayList<>();

        @Override
        public void better(Totals now, int placed, int sessions, long moves, double seconds) {
            totals.add(now);
            times.add(seconds);
        }

        double firstAsGoodAs(Totals last) {
            for (int i = 0; i < totals.size(); i++) {
                Totals of = totals.get(i);
                if (of.must() <= last.must() && of.key() <= last.key() && of.main() <= last.main()) {
                    return times.get(i);
                }
            }
            return Double.NaN;
        }

        @Override
        public boolean stop() {
            return false;
        }
    }

    /** Memory that stays taken by a problem and a judge of it, as a search or a page holds them. */
    private static double megabytes(Scenario scenario) {
        long before = used();
        Problem problem = ProblemBuilder.of(scenario);
        Judge judge = new Judge(problem);
        problem.sessions.forEach(session -> {
            for (var option : session.options) {
                judge.move(session, option);
                judge.settle();
                judge.revert();
            }
        });
        try {
            return (used() - before) / (1024.0 * 1024.0);
        } finally {
            Reference.reachabilityFence(judge);
        }
    }

    private static long used() {
        Runtime runtime = Runtime.getRuntime();
        for (int i = 0; i < 4; i++) {
            runtime.gc();
        }
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
