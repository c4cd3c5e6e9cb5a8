package weekwright.desk.intake.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.desk.intake.Remarks;

/** The clocks of a zone as a calendar itself describes them (RFC 5545, 3.6.5), over some years. */
final class DefinedZone implements LocalClock {
    /** No zone of the world has as many. */
    private static final int MOST_OBSERVANCES = 100;

    private static final Pattern OFFSET = Pattern.compile("([+-])(\\d{2})(\\d{2})(\\d{2})?");
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);

    private final LocalDateTime first;
    private final LocalDateTime last;
    /** What holds from each onset on, until the next; an onset is what the clocks showed before it. */
    private final TreeMap<LocalDateTime, ZoneOffset> onsets = new TreeMap<>();

    private ZoneOffset before = ZoneOffset.UTC;

    private DefinedZone(LocalDate first, LocalDate last) {
        this.first = first.atStartOfDay();
        this.last = last.plusDays(1).atStartOfDay();
    }

    /** The zone that a component describes, from the first to the last date, where it can be read. */
    static Optional<DefinedZone> of(Component zone, LocalDate first, LocalDate last) {
        List<Component> observances = zone.parts().stream()
                .filter(part -> part.name().equals("STANDARD") || part.name().equals("DAYLIGHT"))
                .toList();
        if (observances.isEmpty() || observances.size() > MOST_OBSERVANCES) {
            return Optional.empty();
        }
        DefinedZone defined = new DefinedZone(first, last);
        try {
            observances.forEach(defined::observance);
        } catch (IllegalArgumentException | DateTimeParseException e) {
            return Optional.empty();
        }
        return Optional.of(defined);
    }

    private void observance(Component part) {
        ZoneOffset from = offset(part.text("TZOFFSETFROM"));
        ZoneOffset to = offset(part.text("TZOFFSETTO"));
        LocalDateTime start = LocalDateTime.parse(part.text("DTSTART").strip(), TIME);
        if (onsets.isEmpty() || start.isBefore(onsets.firstKey())) {
            before = from;
        }
        onsets.put(start, to);
        part.all("RRULE").forEach(line -> repeated(Repetition.of(line.value()), start, from, to));
        part.all("RDATE").forEach(line -> {
            for (String date : line.value().split(",", -1)) {
                onsets.put(LocalDateTime.parse(date.strip(), TIME), to);
            }
        });
    }

    private void repeated(Repetition rule, LocalDateTime start, ZoneOffset from, ZoneOffset to) {
        LocalDateTime until = rule.until() == null ? last : until(rule.until(), from);
        rule.between(start, first, last).stream()
                .filter(onset -> !onset.isAfter(until))
                .forEach(onset -> onsets.put(onset, to));
        if (until.isBefore(first)) {
            // It ended before: its last time holds until something else begins.
            rule.between(start, until.minusYears(1), until).forEach(onset -> onsets.put(onset, to));
        }
    }

    /** The end of a rule, in the local time before its change. */
    private static LocalDateTime until(String text, ZoneOffset from) {
        if (text.length() == 8) {
            return LocalDateTime.parse(text + "T235959", TIME);
        }
        LocalDateTime time = LocalDateTime.parse(text.replace("Z", ""), TIME);
        return text.endsWith("Z") ? time.plusSeconds(from.getTotalSeconds()) : time;
    }

    private static ZoneOffset offset(String text) {
        Matcher offset = OFFSET.matcher(text.strip());
        if (!offset.matches()) {
            throw new IllegalArgumentException("no offset: " + text);
        }
        int seconds = Integer.parseInt(offset.group(2)) * 3600
                + Integer.parseInt(offset.group(3)) * 60
                + (offset.group(4) == null ? 0 : Integer.parseInt(offset.group(4)));
        if (seconds > 18 * 3600) {
            throw new IllegalArgumentException("no offset: " + text);
        }
        return ZoneOffset.ofTotalSeconds(offset.group(1).equals("-") ? -seconds : seconds);
    }

    @Override
    public Instant instant(LocalDateTime local, Remarks remarks) {
        Map.Entry<LocalDateTime, ZoneOffset> inForce = onsets.floorEntry(local);
        return local.toInstant(inForce == null ? before : inForce.getValue());
    }
}
