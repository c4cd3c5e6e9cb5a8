package weekwright.model;

import java.util.Collection;
import java.util.Optional;

/** Finds the name that was probably meant by a misspelt one. */
public final class Nearest {
    private Nearest() {}

    /**
     * The known name that needs the fewest letters changed, added, dropped or swapped with a neighbour; the first of
     * equals; none where more than half of the letters would change.
     */
    public static Optional<String> of(String asked, Collection<String> known) {
        String best = null;
        int fewest = Integer.MAX_VALUE;
        for (String name : known) {
            int changes = changes(asked, name);
            if (changes < fewest && 2 * changes <= Math.max(asked.length(), name.length())) {
                best = name;
                fewest = changes;
            }
        }
        return Optional.ofNullable(best);
    }

    /** What to say after "not known": the nearest name, or all of them where none is near, or that there is none. */
    public static String hint(String asked, Collection<String> known) {
        return of(asked, known)
                .map(name -> "did you mean " + name + "?")
                .orElseGet(() -> known.isEmpty() ? "none is known" : "known are " + String.join(", ", known));
    }

    private static int changes(String from, String to) {
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(from, to, i, j, cost);
            }
        }
        return cost[from.length()][to.length()];
    }

    private static int cheapest(String from, String to, int i, int j, int[][] cost) {
        boolean same = from.charAt(i - 1) == to.charAt(j - 1);
        int least = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + (same ? 0 : 1));
        boolean swapped =
                i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
    }
}
