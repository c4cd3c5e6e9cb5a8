package weekwright.desk.export;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One entry of a calendar.
 *
 * @param uid made from ids, so that it stays the same and shows no name
 * @param place where it is, or null
 * @param note what else to know, or null
 * @param busy whether it takes up the reader's time
 */
record CalendarEntry(
        UUID uid,
        Instant start,
        Instant end,
        String title,
        @Nullable String place,
        @Nullable String note,
        boolean busy) {
    /** Its lines but for those that say which writing of it this is. */
    List<String> content(ZoneId zone) {
        List<String> lines = new ArrayList<>();
        lines.add(CalendarLines.time("DTSTART", start, zone));
        lines.add(CalendarLines.time("DTEND", end, zone));
        lines.add(CalendarLines.text("SUMMARY", title));
        if (place != null) {
            lines.add(CalendarLines.text("LOCATION", place));
        }
        if (note != null) {
            lines.add(CalendarLines.text("DESCRIPTION", note));
        }
        lines.add("STATUS:CONFIRMED");
        lines.add(busy ? "TRANSP:OPAQUE" : "TRANSP:TRANSPARENT");
        return lines;
    }
}
