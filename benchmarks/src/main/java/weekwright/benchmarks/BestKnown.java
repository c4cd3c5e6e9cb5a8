package weekwright.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.Engine;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;

/**
 * The best plan that any run has found so far of each instance, kept as a document so that gaps of different days can be
 * compared. It is judged anew when it is read, so that a rule that has changed changes its totals too, and it gives way
 * only to a better one.
 */
final class BestKnown {
    private static final Comparator<Totals> BY_LEVELS = Comparator.comparingDouble(Totals::must)
            .thenComparingDouble(Totals::key)
            .thenComparingDouble(Totals::main)
            .thenComparingDouble(Totals::want);
    /** A gap is a share of the best want total, but of no less than this. */
    private static final double LEAST_BASE = 50;

    private final Path folder;
    private final Map<String, Plan> best = new HashMap<>();

    /**
     * The plans of a folder, each in a file named by its instance.
     *
     * @throws IOException when the folder cannot be made
     */
    BestKnown(Path folder) throws IOException {
        this.folder = Files.createDirectories(folder);
    }

    /** Keeps a plan if it is better than any before; its file is replaced at once and as a whole. */
    void offer(String key, Scenario scenario, Plan plan) throws IOException, DocumentException {
        Plan known = known(key, scenario);
        if (known != null && BY_LEVELS.compare(totals(plan), totals(known)) >= 0) {
            return;
        }
        Plan kept = withoutFindings(plan);
        best.put(key, kept);
        Path beside = folder.resolve(key + ".new");
        Files.writeString(beside, Documents.write(kept), StandardCharsets.UTF_8);
        Files.move(beside, file(key), StandardCopyOption.REPLACE_EXISTING);
    }

    private Path file(String key) {
        return folder.resolve(key + ".plan.json");
    }

    private @Nullable Plan known(String key, Scenario scenario) throws IOException, DocumentException {
        if (!best.containsKey(key) && Files.exists(file(key))) {
            Plan read = Documents.readPlan(file(key).toString(), Files.readAllBytes(file(key)), scenario);
            best.put(key, withoutFindings(Engine.judge(scenario, read).plan()));
        }
        return best.get(key);
    }

    private static Plan withoutFindings(Plan plan) {
        return new Plan(
                plan.weekwright(),
                plan.scenario(),
                plan.scenarioDigest(),
                null,
                plan.solver(),
                plan.placements(),
                List.of(),
                List.of(),
                plan.totals(),
                List.of());
    }

    private static Totals totals(Plan plan) {
        return Objects.requireNonNull(plan.totals());
    }

    /** Totals of the best plan of an instance of which one was offered. */
    Totals of(String key) {
        return totals(Objects.requireNonNull(best.get(key)));
    }

    /** The share by which a plan's wishes cost more than the best known; null where it is worse above the wishes. */
    @Nullable
    Double gap(String key, Totals totals) {
        Totals known = of(key);
        boolean equal = totals.must() == known.must() && totals.key() == known.key() && totals.main() == known.main();
        return equal ? (totals.want() - known.want()) / Math.max(known.want(), LEAST_BASE) : null;
    }

    /** Order of totals, the better first. */
    static Comparator<Totals> byLevels() {
        return BY_LEVELS;
    }
}
