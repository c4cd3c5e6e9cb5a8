package weekwright.model.document;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import weekwright.model.Nearest;

/** Makes what stands in a document fit to be shown in a message. */
final class Shown {
    private static final int LONGEST = 60;
    /** Longer texts are no misspelt names, and comparing them letter by letter would take long. */
    private static final int LONGEST_NAME = 64;

    private static final int MOST_NAMES = 40;
    /** No squad is larger, and no list of time zones; a hostile file could list a hundred thousand names. */
    private static final int MOST_COMPARED = 700;

    private Shown() {}

    /** The text with control characters, line breaks and hidden changes of direction written as escapes. */
    static String safe(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (harmless(c)) {
                out.appendCodePoint(c);
            } else {
                out.append(escape(c));
            }
        });
        return out.toString();
    }

    /** Whether a character neither controls a terminal nor hides what is shown. */
    static boolean harmless(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE -> false;
            default -> true;
        };
    }

    /** A character as JSON writes it in six signs, such as {@code \u0007}. */
    static String escape(int c) {
        return Character.isBmpCodePoint(c)
                ? String.format(Locale.ROOT, "\\u%04x", c)
                : escape(Character.highSurrogate(c)) + escape(Character.lowSurrogate(c));
    }

    /** The text in quotes, cut where it is long. */
    static String quoted(String text) {
        return "\"" + cut(text) + "\"";
    }

    /** The text, cut where it is long. */
    static String cut(String text) {
        if (text.codePointCount(0, text.length()) <= LONGEST) {
            return text;
        }
        return text.substring(0, text.offsetByCodePoints(0, LONGEST)) + "…";
    }

    /** A value as it stands in the document, in a few words. */
    static String value(Node node) {
        return switch (node.kind()) {
            case TEXT -> quoted(node.written());
            case OBJECT -> "a set of fields";
            case LIST -> "a list";
            case NUMBER, BOOLEAN, NULL, NOTHING -> cut(node.written());
        };
    }

    /** Advice on a name that is not known: the one that was probably meant, or those that are known. */
    static String meant(String asked, Collection<String> known) {
        return nearest(asked, known)
                .map(name -> "Did you mean \"" + name + "\"?")
                .orElseGet(() -> listed(known));
    }

    /** The known name that was probably meant. */
    static Optional<String> nearest(String asked, Collection<String> known) {
        return known.stream()
                .filter(asked::equalsIgnoreCase)
                .findFirst()
                .or(() -> asked.length() > LONGEST_NAME
                        ? Optional.empty()
                        : Nearest.of(asked, known.stream().limit(MOST_COMPARED).toList()));
    }

    /** The names that are known. */
    static String listed(Collection<String> known) {
        if (known.isEmpty()) {
            return "None is listed.";
        }
        String names =
                String.join(", ", known.stream().distinct().limit(MOST_NAMES).toList());
        return (known.size() == 1 ? "Known is " : "Known are ")
                + names
                + (known.size() > MOST_NAMES ? " and others." : ".");
    }
}
