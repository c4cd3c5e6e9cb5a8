package weekwright.desk.store;

import java.time.Instant;
import java.util.Map;

/**
 * A confirmed change, without its documents.
 *
 * @param number counted up from 1 in its folder; no number is given twice
 * @param at when it was confirmed, by the clock of the machine
 * @param label what was done, in a few words
 * @param shows the revision that first held these documents: its own number, or after undo and redo an older one
 * @param beside whether it was refused because it came late, and is only kept beside the plan in force
 * @param files the digest of each document, by the name of its file
 */
public record Revision(int number, Instant at, String label, int shows, boolean beside, Map<String, String> files) {
    /** The longest label, in characters. */
    static final int LONGEST_LABEL = 200;

    /** What a coach is told when a label was lost or never given. */
    static final String NO_LABEL = "Change";

    public Revision {
        label = tidy(label);
        files = Map.copyOf(files);
    }

    /** One line that can be printed, not too long. */
    private static String tidy(String label) {
        String line = label.codePoints()
                .map(point -> Character.isISOControl(point) ? ' ' : point)
                .limit(LONGEST_LABEL)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString()
                .strip();
        return line.isEmpty() ? NO_LABEL : line;
    }
}
