package weekwright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.document.DocumentException;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;

/**
 * How good plans are after so many seconds, or so many moves, against the best that any run has found. Medians and worst
 * of some seeds; nothing is the best of several.
 */
public final class Targets {
    /** Held, so that it stays as it is set. */
    private static final Logger TIMEFOLD = Logger.getLogger("ai.timefold.solver");

    private static final double WARM_UP = 5;

    private final PrintStream out;
    private final BestKnown best;
    private final int seeds;
    private final List<Runnable> lines = new ArrayList<>();

    private Targets(PrintStream out, BestKnown best, int seeds) {
        this.out = out;
        this.best = best;
        this.seeds = seeds;
    }

    /**
     * Prints one table.
     *
     * @param arguments {@code seconds} or {@code moves}, the folder of best known plans, seeds a row, then names of rows
     *     ({@code week}, or {@code week.yardstick} and {@code week.all} for one kind of rules alone); none means all
     */
    public static void main(String[] arguments) throws IOException, DocumentException {
        TIMEFOLD.setLevel(Level.OFF);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        boolean bySeconds = arguments[0].equals("seconds");
        BestKnown best = new BestKnown(Path.of(arguments[1]));
        int seeds = Integer.parseInt(arguments[2]);
        new Targets(out, best, seeds).print(bySeconds, rows(List.of(arguments).subList(3, arguments.length)));
    }

    /** A problem under the yardstick rules, or under all. */
    private record Row(Instance instance, boolean yardstick) {
        boolean isOf(String name) {
            return name.equals(instance.name()) || name.equals(key());
        }

        String key() {
            return instance.key(yardstick);
        }
    }

    private static List<Row> rows(List<String> names) {
        List<Row> all = Instance.ALL.stream()
                .flatMap(instance -> Stream.of(new Row(instance, true), new Row(instance, false)))
                .toList();
        for (String name : names) {
            if (all.stream().noneMatch(row -> row.isOf(name))) {
                throw new IllegalArgumentException("no such table: [" + name + "]; there are "
                        + all.stream().map(Row::key).toList());
            }
        }
        return all.stream()
                .filter(row -> names.isEmpty() || names.stream().anyMatch(row::isOf))
                .toList();
    }

    private void print(boolean bySeconds, List<Row> rows) throws IOException, DocumentException {
        out.printf(
                Locale.ROOT,
                "Java %s, %d processors, 2 threads, %d seeds a row%n%n",
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                seeds);
        out.println("| problem | rules | budget | as good above the wishes | must, key, main: worst "
                + "| gap: median (worst) | moves a second |");
        out.println("| --- | --- | ---: | ---: | ---: | ---: | ---: |");
        for (Row row : rows) {
            Instance instance = row.instance();
            Scenario scenario = instance.scenario(row.yardstick());
            if (bySeconds) {
                warmUp(scenario);
            }
            for (double seconds : bySeconds ? instance.seconds() : List.<Double>of()) {
                run(row, scenario, Budget.seconds(seconds), seconds + " s");
            }
            for (long moves : bySeconds ? List.<Long>of() : instance.moves(row.yardstick())) {
                run(row, scenario, Budget.moves(moves), String.format(Locale.ROOT, "%,d", moves));
            }
            // Only now is it known which plan is the best.
            lines.forEach(Runnable::run);
            lines.clear();
        }
    }

    /** One search that is not counted: a desk is warm by the time that a coach plans again. */
    private static void warmUp(Scenario scenario) {
        Engine.proposeWithoutRemedies(
                new Proposal(scenario, null, Budget.seconds(WARM_UP), 1, 2, null), Progress.SILENT);
    }

    private void run(Row row, Scenario scenario, Budget budget, String label) throws IOException, DocumentException {
        String key = row.key();
        List<Totals> found = new ArrayList<>();
        List<Double> speeds = new ArrayList<>();
        for (long seed = 1; seed <= seeds; seed++) {
            long start = System.nanoTime();
            Plan plan = Engine.proposeWithoutRemedies(
                            new Proposal(scenario, null, budget, seed, 2, null), Progress.SILENT)
                    .plan();
            double seconds = (System.nanoTime() - start) / 1e9;
            Totals totals = Objects.requireNonNull(plan.totals());
            best.offer(key, scenario, plan);
            found.add(totals);
            speeds.add(Objects.requireNonNull(plan.solver()).moves() / seconds);
        }
        lines.add(() -> line(row, label, found, speeds));
    }

    private void line(Row row, String label, List<Totals> found, List<Double> speeds) {
        String key = row.key();
        List<Double> gaps = new ArrayList<>();
        for (Totals totals : found) {
            Double gap = best.gap(key, totals);
            gaps.add(gap == null ? Double.POSITIVE_INFINITY : gap);
        }
        gaps.sort(null);
        Totals worst = worst(found);
        out.printf(
                Locale.ROOT,
                "| %s | %s | %s | %d of %d | %.0f, %.1f, %.1f | %s (%s) | %,.0f |%n",
                row.instance().label(),
                row.yardstick() ? "yardstick" : "all",
                label,
                gaps.stream().filter(Double::isFinite).count(),
                seeds,
                worst.must(),
                worst.key(),
                worst.main(),
                percent(gaps.get(gaps.size() / 2)),
                percent(gaps.get(gaps.size() - 1)),
                speeds.stream().sorted().toList().get(speeds.size() / 2));
    }

    private static Totals worst(List<Totals> found) {
        return found.stream()
                .max(java.util.Comparator.comparingDouble(Totals::must)
                        .thenComparingDouble(Totals::key)
                        .thenComparingDouble(Totals::main))
                .orElseThrow();
    }

    private static String percent(double gap) {
        return Double.isInfinite(gap) ? "–" : String.format(Locale.ROOT, "%.1f %%", 100 * gap);
    }
}
