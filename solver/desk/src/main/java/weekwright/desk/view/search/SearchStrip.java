package weekwright.desk.view.search;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A search, or the way to begin one.
 *
 * @param base address of the folder
 * @param query query of the address that shows the same part of the week
 * @param revision the revision that a search would start from
 * @param state what is going on: idle, waiting, running or ended
 * @param planned whether there is a plan to stay close to
 * @param status how far it is, in a sentence
 * @param seconds how long it may take, one of the choices
 * @param curve points of wishes unmet over time in a field of 300 by 60, or an empty text
 * @param steps the last better plans, the newest first, in words
 * @param outcome what came of the last search in a sentence, or null
 * @param changes what it changed, group by group
 * @param number of the news of it that is shown
 */
public record SearchStrip(
        String base,
        String query,
        int revision,
        String state,
        boolean planned,
        String status,
        int seconds,
        String curve,
        List<String> steps,
        @Nullable String outcome,
        List<Changes> changes,
        long number) {
    /** How long a search may take, in seconds. */
    public static final List<Integer> SECONDS = List.of(2, 5, 15, 60);

    private static final int FEW = 8;

    public SearchStrip {
        steps = List.copyOf(steps);
        changes = List.copyOf(changes);
    }

    /** Whether a search is on. */
    public boolean on() {
        return state.equals("waiting") || state.equals("running");
    }

    /** Whether what changed is told in a few lines, and does not push the week out of sight. */
    public boolean fewChanges() {
        return changes.stream().mapToInt(part -> part.lines().size()).sum() <= FEW;
    }

    /** What changed, under a heading. */
    public record Changes(String heading, List<String> lines) {
        public Changes {
            lines = List.copyOf(lines);
        }
    }
}
