package weekwright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.model.document.DocumentException;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;

/**
 * Ours beside Timefold as it comes and CP-SAT: the same problems under the same rules, on the same cores, in turns within
 * one run. Medians and worst of some seeds; nothing is the best of several.
 */
public final class SideBySide {
    private static final int WARM_UP_SECONDS = 3;

    /** Held, so that it stays as it is set. */
    private static final Logger TIMEFOLD = Logger.getLogger("ai.timefold.solver");

    private final PrintStream out;
    private final BestKnown best;
    private final int seeds;

    private SideBySide(PrintStream out, BestKnown best, int seeds) {
        this.out = out;
        this.best = best;
        this.seeds = seeds;
    }

    /**
     * Prints one table.
     *
     * @param arguments the folder of best known plans, seeds a row, seconds with commas between, then names of rows; none
     *     means all
     */
    public static void main(String[] arguments) throws IOException, DocumentException {
        TIMEFOLD.setLevel(Level.OFF);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        List<Double> seconds =
                Arrays.stream(arguments[2].split(",", -1)).map(Double::valueOf).toList();
        List<Instance> rows = Arrays.stream(arguments).skip(3).map(Instance::of).toList();
        SideBySide table = new SideBySide(out, new BestKnown(Path.of(arguments[0])), Integer.parseInt(arguments[1]));
        table.head();
        for (Instance row : rows.isEmpty() ? Instance.ALL : rows) {
            table.print(row, seconds);
        }
    }

    private void head() {
        out.printf(
                Locale.ROOT,
                "Java %s, %d processors, %d seeds a row%n%n",
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                seeds);
        out.println(
                "| problem | seconds | who | as good above the wishes | must, key, main: worst | want: median (worst) "
                        + "| gap: median (worst) | proven at least |");
        out.println("| --- | ---: | --- | ---: | ---: | ---: | ---: | ---: |");
        Instance week = Instance.of("week");
        for (Rival rival : Rival.ALL) {
            rival.best(ProblemBuilder.of(week.scenario(true)), WARM_UP_SECONDS, 1);
        }
    }

    private void print(Instance row, List<Double> seconds) throws IOException, DocumentException {
        Scenario scenario = row.scenario(true);
        Problem problem = ProblemBuilder.of(scenario);
        List<Rival> rivals =
                Rival.ALL.stream().filter(rival -> rival.fits(problem)).toList();
        List<Runnable> lines = new ArrayList<>();
        for (double budget : seconds) {
            List<List<Rival.Found>> found = new ArrayList<>();
            rivals.forEach(rival -> found.add(new ArrayList<>()));
            for (long seed = 1; seed <= seeds; seed++) {
                for (int rival = 0; rival < rivals.size(); rival++) {
                    Rival.Found its = rivals.get(rival).best(problem, budget, seed);
                    found.get(rival).add(its);
                    Run run = its.run();
                    if (run != null) {
                        best.offer(row.key(true), scenario, run.plan());
                    }
                }
            }
            for (int rival = 0; rival < rivals.size(); rival++) {
                String who = rivals.get(rival).name();
                List<Rival.Found> its = found.get(rival);
                lines.add(() -> line(row, budget, who, its));
            }
        }
        // Only now is it known which plan is the best.
        lines.forEach(Runnable::run);
    }

    private void line(Instance row, double budget, String who, List<Rival.Found> found) {
        List<Totals> totals = new ArrayList<>();
        List<Double> gaps = new ArrayList<>();
        double bound = 0;
        for (Rival.Found its : found) {
            Totals of = its.totals();
            bound = Math.max(bound, its.bound());
            Double gap = of == null ? null : best.gap(row.key(true), of);
            gaps.add(gap == null ? Double.POSITIVE_INFINITY : gap);
            if (of != null) {
                totals.add(of);
            }
        }
        gaps.sort(null);
        totals.sort(BestKnown.byLevels());
        boolean all = totals.size() == found.size();
        Totals middle = all ? totals.get(totals.size() / 2) : null;
        Totals worst = all ? totals.get(totals.size() - 1) : null;
        out.printf(
                Locale.ROOT,
                "| %s | %.1f | %s | %d of %d | %s | %s (%s) | %s (%s) | %s |%n",
                row.label(),
                budget,
                who,
                gaps.stream().filter(Double::isFinite).count(),
                found.size(),
                worst == null
                        ? "no plan"
                        : String.format(Locale.ROOT, "%.0f, %.1f, %.1f", worst.must(), worst.key(), worst.main()),
                want(middle),
                want(worst),
                percent(gaps.get(gaps.size() / 2)),
                percent(gaps.get(gaps.size() - 1)),
                bound > 0 ? String.format(Locale.ROOT, "%.1f", bound) : "");
    }

    private static String want(@Nullable Totals totals) {
        return totals == null ? "–" : String.format(Locale.ROOT, "%.1f", totals.want());
    }

    private static String percent(double gap) {
        return Double.isInfinite(gap) ? "–" : String.format(Locale.ROOT, "%.1f %%", 100 * gap);
    }
}
