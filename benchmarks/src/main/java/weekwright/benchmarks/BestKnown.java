package weekwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Totals;

/** The best totals that any run has found so far, kept in a small file so that gaps of different days can be compared. */
final class BestKnown {
    private static final Comparator<Totals> BY_LEVELS = Comparator.comparingDouble(Totals::must)
            .thenComparingDouble(Totals::key)
            .thenComparingDouble(Totals::main)
            .thenComparingDouble(Totals::want);
    /** A gap is a share of the best want total, but of no less than this. */
    private static final double LEAST_BASE = 50;

    private final Path file;
    private final Map<String, Totals> best = new TreeMap<>();

    BestKnown(Path file) throws IOException {
        this.file = file;
        if (Files.exists(file)) {
            for (String line : Files.readAllLines(file)) {
                List<String> words = Arrays.asList(line.split(" ", -1));
                if (words.size() == 5) {
                    best.put(words.get(0), new Totals(at(words, 1), at(words, 2), at(words, 3), at(words, 4)));
                }
            }
        }
    }

    private static double at(List<String> words, int place) {
        return Double.parseDouble(words.get(place));
    }

    /** Takes over a plan's totals if they are better than any before. */
    void offer(String key, Totals totals) {
        best.merge(key, totals, (old, now) -> BY_LEVELS.compare(now, old) < 0 ? now : old);
    }

    Totals of(String key) {
        return java.util.Objects.requireNonNull(best.get(key));
    }

    /** The share by which a plan's wishes cost more than the best known; null where it is worse above the wishes. */
    @Nullable
    Double gap(String key, Totals totals) {
        Totals known = of(key);
        boolean equal = totals.must() == known.must() && totals.key() == known.key() && totals.main() == known.main();
        return equal ? (totals.want() - known.want()) / Math.max(known.want(), LEAST_BASE) : null;
    }

    void write() throws IOException {
        StringBuilder text = new StringBuilder();
        best.forEach((key, t) ->
                text.append(String.join(" ", key, "" + t.must(), "" + t.key(), "" + t.main(), "" + t.want()) + "\n"));
        Files.writeString(file, text);
    }
}
