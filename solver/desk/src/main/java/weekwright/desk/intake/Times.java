package weekwright.desk.intake;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;

/** Times as a preview says them, and as a zone's clocks show them. */
public final class Times {
    private static final List<String> WEEKDAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");

    private Times() {}

    /** E.g. {@code Sat 2027-02-13}. */
    public static String day(LocalDate date) {
        return WEEKDAYS.get(date.getDayOfWeek().getValue() - 1) + " " + date;
    }

    /** E.g. {@code Sat 2027-02-13 15:00}. */
    static String day(Instant instant, ZoneId zone) {
        LocalDateTime local = LocalDateTime.ofInstant(instant, zone);
        return day(local.toLocalDate()) + " " + clock(local);
    }

    /** E.g. {@code Sat 2027-02-13 15:00}, or without the time where it is not known. */
    static String day(When when, ZoneId zone) {
        return when.instant() == null ? day(when.date()) : day(when.instant(), zone);
    }

    /** E.g. {@code Sat 2027-02-13 15:00 to 16:50}; the end's day where it is another. */
    static String span(Instant start, Instant end, ZoneId zone) {
        LocalDateTime from = LocalDateTime.ofInstant(start, zone);
        LocalDateTime to = LocalDateTime.ofInstant(end, zone);
        boolean sameDay = from.toLocalDate().equals(to.toLocalDate());
        return day(start, zone) + " to " + (sameDay ? clock(to) : day(end, zone));
    }

    private static String clock(LocalDateTime local) {
        String text = local.toLocalTime().toString();
        return text.length() > 5 ? text.substring(0, 5) : text;
    }

    /** A span of time in words: {@code 31 days}, {@code 2 h 30 min}. */
    static String span(Duration duration) {
        Duration size = duration.abs();
        if (size.toHours() >= 24 && size.toMinutes() % (24 * 60) == 0) {
            return size.toDays() == 1 ? "1 day" : size.toDays() + " days";
        }
        if (size.toDays() >= 2) {
            return size.toDays() + " days " + span(size.minusDays(size.toDays()));
        }
        String minutes = size.toMinutesPart() == 0 ? "" : size.toMinutesPart() + " min";
        return size.toHours() == 0 ? minutes : (size.toHours() + " h " + minutes).strip();
    }

    /**
     * A local time of a zone as an instant. One that happens twice is the earlier, one that never happens is read with the
     * offset before the change (both RFC 5545, 3.3.5); both are said, and the second is asked about.
     */
    public static Instant instant(LocalDateTime local, ZoneId zone, Remarks remarks) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.size() == 2) {
            remarks.note(clock(local) + " happens twice that night in " + zone + "; it is the earlier of the two");
        } else if (offsets.isEmpty()) {
            var change = zone.getRules().getTransition(local);
            Instant read = local.toInstant(change.getOffsetBefore());
            remarks.doubt(clock(local) + " never happens that night in " + zone + ", as the clocks go forward; is it "
                    + clock(LocalDateTime.ofInstant(read, zone)) + "?");
            return read;
        }
        return local.toInstant(offsets.get(0));
    }
}
