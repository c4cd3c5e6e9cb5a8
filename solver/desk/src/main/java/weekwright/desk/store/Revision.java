package weekwright.desk.store;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

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

    /** What ends a line or turns the way of reading. */
    private static final Pattern UNPRINTABLE =
            Pattern.compile("[\\u0000-\\u001f\\u007f-\\u009f\\u2028\\u2029\\u202a-\\u202e\\u2066-\\u2069]");

    /** What a coach is told when a label was lost or never given. */
    static final String NO_LABEL = "Change";

    public Revision {
        label = tidy(label);
        files = Map.copyOf(files);
    }

    /** What is written of it: the same in its own file and in a list. */
    public Map<String, Object> fields() {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("revision", number);
        fields.put("at", at.toString());
        fields.put("label", label);
        fields.put("shows", shows);
        for (Part part : Part.values()) {
            String digest = files.get(part.file());
            if (digest != null) {
                fields.put(part.file(), digest);
            }
        }
        return fields;
    }

    /** One line that can be printed, not too long. */
    private static String tidy(String label) {
        String plain = UNPRINTABLE.matcher(label).replaceAll(" ").strip();
        int length = Math.min(LONGEST_LABEL, plain.codePointCount(0, plain.length()));
        String line = plain.substring(0, plain.offsetByCodePoints(0, length)).strip();
        return line.isEmpty() ? NO_LABEL : line;
    }
}
