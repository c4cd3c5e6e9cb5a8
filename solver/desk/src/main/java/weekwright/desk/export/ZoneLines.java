package weekwright.desk.export;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A zone as a calendar describes it (RFC 5545, 3.6.5), as short as can be: the offset in force at the first time needed, and
 * each change of the clocks up to the last.
 */
final class ZoneLines {
    private static final LocalDateTime LONG_AGO = LocalDateTime.of(1970, 1, 1, 0, 0);

    private final ZoneRules rules;
    private final List<String> lines = new ArrayList<>();

    private ZoneLines(ZoneId zone) {
        rules = zone.getRules();
    }

    /** The component, right from the first to the last instant. */
    static List<String> of(ZoneId zone, Instant first, Instant last) {
        ZoneLines zoneLines = new ZoneLines(zone);
        zoneLines.lines.add("BEGIN:VTIMEZONE");
        zoneLines.lines.add("TZID:" + zone.getId());
        zoneLines.observances(first, last);
        zoneLines.lines.add("END:VTIMEZONE");
        return zoneLines.lines;
    }

    private void observances(Instant first, Instant last) {
        ZoneOffsetTransition change = rules.previousTransition(first.plusSeconds(1));
        if (change == null) {
            ZoneOffset always = rules.getOffset(first);
            observance(false, LONG_AGO, always, always);
            change = rules.nextTransition(first);
        }
        while (change != null && !change.getInstant().isAfter(last)) {
            observance(
                    rules.isDaylightSavings(change.getInstant()),
                    change.getDateTimeBefore(),
                    change.getOffsetBefore(),
                    change.getOffsetAfter());
            change = rules.nextTransition(change.getInstant());
        }
    }

    /** Begins at what the clocks showed before the change. */
    private void observance(boolean daylight, LocalDateTime start, ZoneOffset from, ZoneOffset to) {
        String name = daylight ? "DAYLIGHT" : "STANDARD";
        lines.add("BEGIN:" + name);
        lines.add("DTSTART:" + CalendarLines.local(start));
        lines.add("TZOFFSETFROM:" + offset(from));
        lines.add("TZOFFSETTO:" + offset(to));
        lines.add("END:" + name);
    }

    private static String offset(ZoneOffset offset) {
        int seconds = Math.abs(offset.getTotalSeconds());
        String text = String.format(
                Locale.ROOT, "%s%02d%02d", offset.getTotalSeconds() < 0 ? "-" : "+", seconds / 3600, seconds / 60 % 60);
        return seconds % 60 == 0 ? text : text + String.format(Locale.ROOT, "%02d", seconds % 60);
    }
}
