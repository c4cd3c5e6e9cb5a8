package weekwright.engine.problem;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Spans of time in epoch minutes, half open, merged where they touch, in order. */
public final class Spans {
    /** One span. */
    public record Span(int from, int to) {}

    private final int[] froms;
    private final int[] tos;

    private Spans(List<Span> merged) {
        froms = merged.stream().mapToInt(Span::from).toArray();
        tos = merged.stream().mapToInt(Span::to).toArray();
    }

    /** Merges spans that overlap or touch. */
    public static Spans of(List<Span> spans) {
        List<Span> merged = new ArrayList<>();
        for (Span span :
                spans.stream().sorted(Comparator.comparingInt(Span::from)).toList()) {
            Span last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && span.from() <= last.to()) {
                merged.set(merged.size() - 1, new Span(last.from(), Math.max(last.to(), span.to())));
            } else if (span.from() < span.to()) {
                merged.add(span);
            }
        }
        return new Spans(merged);
    }

    /** Minutes of {@code [from, to)} that lie inside these spans. */
    public int inside(int from, int to) {
        int at = Arrays.binarySearch(froms, from);
        int minutes = 0;
        for (int i = Math.max(0, at >= 0 ? at : -at - 2); i < froms.length && froms[i] < to; i++) {
            minutes += Math.max(0, Math.min(to, tos[i]) - Math.max(from, froms[i]));
        }
        return minutes;
    }

    /**
     * Minutes by which one of these spans would have to be longer, at its ends together, so that {@code [from, to)} lies
     * inside it; 0 where it does, {@link Integer#MAX_VALUE} where there is no span.
     */
    public int missing(int from, int to) {
        int at = Arrays.binarySearch(froms, from);
        int near = at >= 0 ? at : -at - 2;
        int least = Integer.MAX_VALUE;
        for (int i = Math.max(0, near); i < froms.length && i <= near + 1; i++) {
            least = Math.min(least, Math.max(0, froms[i] - from) + Math.max(0, to - tos[i]));
        }
        return least;
    }
}
