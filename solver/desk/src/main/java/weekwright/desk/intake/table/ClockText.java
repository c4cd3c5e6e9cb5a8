package weekwright.desk.intake.table;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads times of day as tables write them. */
public final class ClockText {
    private static final String CLOCK =
            "\\d{1,2}[:.h]\\d{2}(?::\\d{2}(?:\\.\\d+)?)?\\s*(?:[AaPp]\\.?[Mm]\\.?)?|\\d{1,2}\\s*[AaPp]\\.?[Mm]\\.?";
    /** A time behind a date in one cell, with an offset where one is written. */
    static final Pattern AFTER_DATE =
            Pattern.compile("(?:(?<=\\d)T|\\s+|,\\s*)(?<time>" + CLOCK + ")\\s*(?<offset>Z|[+-]\\d{2}:?\\d{2})?$");

    private static final Pattern TIME =
            Pattern.compile("(\\d{1,2})(?:[:.h](\\d{2}))?(?::(\\d{2})(?:\\.\\d+)?)?\\s*([AaPp])?(?:\\.?[Mm]\\.?)?");
    private static final Pattern UNKNOWN =
            Pattern.compile("(?i)|tb[cda]|to be (confirmed|decided|announced)|\\?+|-+|–|n/?a|none|unknown");

    private ClockText() {}

    /** Whether a cell says that the time is not known. */
    static boolean isUnknown(String cell) {
        return UNKNOWN.matcher(cell.strip()).matches();
    }

    /**
     * A time of day; null where the cell says that it is not known.
     *
     * @throws IllegalArgumentException when it is none; the message says so
     */
    static @Nullable LocalTime time(String cell) {
        String text = cell.strip();
        if (isUnknown(text)) {
            return null;
        }
        Matcher time = TIME.matcher(text);
        boolean matches = time.matches() && (time.group(2) != null || time.group(4) != null);
        if (!matches) {
            throw notUnderstood(text);
        }
        try {
            int hour = Integer.parseInt(time.group(1));
            int minute = time.group(2) == null ? 0 : Integer.parseInt(time.group(2));
            return LocalTime.of(time.group(4) == null ? hour : halfDay(hour, time.group(4), text), minute);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("\"" + Table.cut(text) + "\" is no time of day", e);
        }
    }

    private static int halfDay(int hour, String half, String text) {
        if (hour < 1 || hour > 12) {
            throw notUnderstood(text);
        }
        return hour % 12 + (half.toLowerCase(Locale.ROOT).equals("p") ? 12 : 0);
    }

    private static IllegalArgumentException notUnderstood(String text) {
        return new IllegalArgumentException(
                "\"" + Table.cut(text) + "\" is no time that is understood: write it as 15:00");
    }
}
