package weekwright.engine.problem;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

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
        Span nearest = nearest(from, to);
        return nearest == null ? Integer.MAX_VALUE : missing(nearest, from, to);
    }

    /** The span that would have to be lengthened least so that {@code [from, to)} lies inside it; null without spans. */
    public @Nullable Span nearest(int from, int to) {
        int at = Arrays.binarySearch(froms, from);
        int near = at >= 0 ? at : -at - 2;
        Span nearest = null;
        for (int i = Math.max(0, near); i < froms.length && i <= near + 1; i++) {
            Span span = new Span(froms[i], tos[i]);
            nearest = nearest == null || missing(span, from, to) < missing(nearest, from, to) ? span : nearest;
        }
        return nearest;
    }

    private static int missing(Span span, int from, int to) {
        return Math.max(0, span.from() - from) + Math.max(0, to - span.to());
    }
}
