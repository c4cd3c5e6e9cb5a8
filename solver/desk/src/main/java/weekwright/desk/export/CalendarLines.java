package weekwright.desk.export;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** The form of a calendar's lines (RFC 5545): times, escapes, folding by octets, CR LF. */
final class CalendarLines {
    /** Octets of a line without its end (RFC 5545, 3.1). */
    static final int OCTETS = 75;

    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);

    private CalendarLines() {}

    /** An instant in UTC: {@code 20270209T120030Z}. */
    static String utc(Instant instant) {
        return LOCAL.format(instant.atOffset(ZoneOffset.UTC)) + "Z";
    }

    /** A local time: {@code 20270209T120030}. */
    static String local(LocalDateTime time) {
        return LOCAL.format(time);
    }

    /**
     * A property at an instant, in local time of a zone; in UTC where the local time happens twice and this is the later,
     * which a local time cannot say (RFC 5545, 3.3.5).
     */
    static String time(String property, Instant instant, ZoneId zone) {
        LocalDateTime local = LocalDateTime.ofInstant(instant, zone);
        return local.atZone(zone).toInstant().equals(instant)
                ? property + ";TZID=" + zone.getId() + ":" + local(local)
                : property + ":" + utc(instant);
    }

    /** A property of text: escaped, and without what cannot stand in a calendar. */
    static String text(String property, String value) {
        StringBuilder escaped = new StringBuilder(property).append(':');
        for (int point : value.codePoints().toArray()) {
            if (point == '\\' || point == ';' || point == ',') {
                escaped.append('\\').appendCodePoint(point);
            } else if (point == '\n') {
                escaped.append("\\n");
            } else if (!isHarmful(point)) {
                escaped.appendCodePoint(point);
            }
        }
        return escaped.toString();
    }

    private static boolean isHarmful(int point) {
        int type = Character.getType(point);
        return type == Character.CONTROL || type == Character.SURROGATE;
    }

    /** The lines as text, each folded after at most 75 octets and never inside a character. */
    static String folded(List<String> lines) {
        StringBuilder text = new StringBuilder();
        for (String line : lines) {
            fold(line, text);
        }
        return text.toString();
    }

    private static void fold(String line, StringBuilder text) {
        int octets = 0;
        for (int point : line.codePoints().toArray()) {
            int more = octets(point);
            if (octets + more > OCTETS) {
                text.append("\r\n ");
                octets = 1;
            }
            text.appendCodePoint(point);
            octets += more;
        }
        text.append("\r\n");
    }

    private static int octets(int point) {
        return point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
    }
}
