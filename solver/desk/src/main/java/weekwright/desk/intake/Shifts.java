package weekwright.desk.intake;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/** What is said of a fixture that moves, and which moves are asked about. */
final class Shifts {
    /** Moves of four weeks and more are rarer than slips of the month (common practice, no source). */
    private static final long FAR = 28;

    private Shifts() {}

    /** Doubts a move that looks like a slip, from a day whose time may not have been known. */
    static void doubt(When before, LocalDate to, ZoneId zone, Remarks remarks) {
        LocalDate from = before.date();
        long days = ChronoUnit.DAYS.between(from, to);
        if (Math.abs(days) < FAR) {
            return;
        }
        boolean sameDayOfYear = from.getMonth() == to.getMonth() && from.getDayOfMonth() == to.getDayOfMonth();
        remarks.doubt(
                sameDayOfYear
                        ? "only the year differs: it was " + Times.day(before, zone) + "; which is right?"
                        : "it moves by " + Times.span(Duration.ofDays(days)) + (days < 0 ? " to an earlier day" : "")
                                + ": it was " + Times.day(before, zone) + "; is the month right?");
    }

    /** A move in words. */
    static String told(When before, Instant after, ZoneId zone) {
        LocalDate to = LocalDate.ofInstant(after, zone);
        if (before.instant() == null) {
            return before.date().equals(to)
                    ? "its first time; only the day was known"
                    : "its first time; it was " + Times.day(before, zone);
        }
        return before.instant().equals(after) ? "it does not move" : "moved from " + Times.day(before, zone);
    }
}
