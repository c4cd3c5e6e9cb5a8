package weekwright.desk.view.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Text for a terminal: harmless whatever a name holds, and measured in columns as a terminal shows it.
 *
 * <p>Widths are those of common terminals: two columns for East Asian wide characters and pictures, none for marks that
 * are set on the letter before (Unicode Standard Annex 11, from memory).
 */
public final class Plain {
    /** Marks on one letter that are shown; more would run over the lines above and below. */
    private static final int MOST_MARKS = 4;

    private static final String CUT = "…";

    /** First and last of each run of wide characters. */
    private static final int[][] WIDE = {
        {0x1100, 0x115F}, {0x231A, 0x231B}, {0x2329, 0x232A}, {0x23E9, 0x23EC}, {0x25FD, 0x25FE}, {0x2614, 0x2615},
        {0x2648, 0x2653}, {0x26AA, 0x26AB}, {0x26BD, 0x26BE}, {0x26C4, 0x26C5}, {0x26F2, 0x26F5}, {0x2705, 0x2705},
        {0x270A, 0x270B}, {0x2728, 0x2728}, {0x274C, 0x274E}, {0x2753, 0x2757}, {0x2795, 0x2797}, {0x2B1B, 0x2B1C},
        {0x2B50, 0x2B55}, {0x2E80, 0x303E}, {0x3041, 0x33FF}, {0x3400, 0x4DBF}, {0x4E00, 0xA4CF}, {0xA960, 0xA97F},
        {0xAC00, 0xD7A3}, {0xF900, 0xFAFF}, {0xFE30, 0xFE6F}, {0xFF00, 0xFF60}, {0xFFE0, 0xFFE6}, {0x1F300, 0x1F64F},
        {0x1F680, 0x1F6FF}, {0x1F900, 0x1F9FF}, {0x1FA70, 0x1FAFF}, {0x20000, 0x3FFFD}
    };

    private Plain() {}

    /**
     * The text with all that could steer a terminal or turn its reading order written out, e.g. {@code <U+202E>}: line
     * ends, escapes, invisible characters and halves of characters.
     */
    public static String text(String raw) {
        StringBuilder safe = new StringBuilder(raw.length());
        int marks = 0;
        for (int point : raw.codePoints().toArray()) {
            marks = isMark(point) ? marks + 1 : 0;
            if (isHarmful(point)) {
                safe.append(String.format(Locale.ROOT, "<U+%04X>", point));
            } else if (marks <= MOST_MARKS) {
                safe.appendCodePoint(point);
            }
        }
        return safe.toString();
    }

    private static boolean isHarmful(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED -> true;
            case Character.FORMAT -> !joins(point);
            default -> false;
        };
    }

    /** Joiners are needed to spell some scripts and to build some pictures. */
    private static boolean joins(int point) {
        return point == 0x200C || point == 0x200D;
    }

    private static boolean isMark(int point) {
        int type = Character.getType(point);
        return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
    }

    /** Columns that a harmless text takes. */
    public static int columns(String text) {
        return text.codePoints().map(Plain::columns).sum();
    }

    private static int columns(int point) {
        if (isMark(point) || joins(point)) {
            return 0;
        }
        for (int[] run : WIDE) {
            if (point >= run[0] && point <= run[1]) {
                return 2;
            }
        }
        return 1;
    }

    /** The text in exactly so many columns: filled up with spaces, or cut with an ellipsis. */
    public static String fit(String text, int columns) {
        String cut = cut(text, columns);
        return cut + " ".repeat(columns - columns(cut));
    }

    /** The text in at most so many columns, at least 1: whole, or cut with an ellipsis. */
    public static String cut(String text, int columns) {
        if (columns(text) <= columns) {
            return text;
        }
        return head(text, columns - 1).stripTrailing() + CUT;
    }

    /** As much of the start of a text as so many columns hold. */
    private static String head(String text, int columns) {
        StringBuilder head = new StringBuilder();
        int used = 0;
        for (int point : text.codePoints().toArray()) {
            used += columns(point);
            if (used > columns) {
                break;
            }
            head.appendCodePoint(point);
        }
        return head.toString();
    }

    /** The text in lines of at most so many columns, broken between words; a longer word is broken inside. */
    public static List<String> wrap(String text, int columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split(" +", -1)) {
            String rest = word;
            if (!line.isEmpty() && columns(line.toString()) + 1 + columns(rest) > columns) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (columns(rest) > columns) {
                String head = head(rest, columns);
                lines.add(head);
                rest = rest.substring(head.length());
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }
}
