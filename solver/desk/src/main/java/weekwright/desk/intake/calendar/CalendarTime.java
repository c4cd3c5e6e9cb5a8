package weekwright.desk.intake.calendar;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import weekwright.desk.intake.Limits;

/**
 * A date, or a date with a time, as a calendar writes it (RFC 5545, 3.3.4 and 3.3.5).
 *
 * @param date the date
 * @param time date and time, or null where there is only a date
 * @param utc whether the time is universal
 * @param zone name of its zone in the calendar, or null where it names none
 */
record CalendarTime(
        LocalDate date,
        @Nullable LocalDateTime time,
        boolean utc,
        @Nullable String zone) {
    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    /**
     * Reads one value.
     *
     * @throws IllegalArgumentException when it is none; the message says so
     */
    static CalendarTime of(String value, @Nullable String zone) {
        String text = value.strip();
        try {
            if (text.matches("\\d{8}")) {
                return new CalendarTime(inReach(LocalDate.parse(text, DATE)), null, false, zone);
            }
            boolean utc = text.endsWith("Z");
            String local = utc ? text.substring(0, text.length() - 1) : text;
            LocalDateTime time = LocalDateTime.parse(local.length() == 13 ? local + "00" : local, TIME);
            return new CalendarTime(inReach(time.toLocalDate()), time, utc, utc ? null : zone);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "\"" + (text.length() > 40 ? text.substring(0, 40) + "…" : text) + "\" is no date or time", e);
        }
    }

    private static LocalDate inReach(LocalDate date) {
        if (date.getYear() < Limits.FIRST_YEAR || date.getYear() > Limits.LAST_YEAR) {
            throw new IllegalArgumentException("the year " + date.getYear() + " cannot be meant");
        }
        return date;
    }

    boolean isDateOnly() {
        return time == null;
    }

    /** The local time; midnight of a date. */
    LocalDateTime local() {
        return time == null ? date.atStartOfDay() : time;
    }

    /** The same kind of time at another local time. */
    CalendarTime at(LocalDateTime other) {
        return new CalendarTime(other.toLocalDate(), time == null ? null : other, utc, zone);
    }
}
