package weekwright.desk.view.week;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Moment;

/**
 * The hours of a day that a page shows, in rows of five minutes.
 *
 * @param from minute of the day at which it begins, a whole hour
 * @param to minute at which it ends, a whole hour
 */
record TimeAxis(int from, int to) {
    /** Minutes of a row. */
    static final int ROW = 5;

    private static final int HOUR = 60;
    private static final int DAY = 24 * HOUR;
    private static final int USUAL_FROM = 7 * HOUR;
    private static final int USUAL_TO = 21 * HOUR;
    private static final int LEAST_HOURS = 6 * HOUR;

    /** A stretch of a day, in minutes from its midnight. */
    record Stretch(int from, int to) {
        boolean isEmpty() {
            return to <= from;
        }
    }

    /** The axis on which all stretches are seen; a usual day where there is none. */
    static TimeAxis over(List<Stretch> stretches) {
        int from = stretches.stream().mapToInt(Stretch::from).min().orElse(USUAL_FROM);
        int to = stretches.stream().mapToInt(Stretch::to).max().orElse(USUAL_TO);
        int start = from / HOUR * HOUR;
        int end = (to + HOUR - 1) / HOUR * HOUR;
        int longer = Math.max(0, LEAST_HOURS - (end - start));
        int later = Math.min(longer, DAY - end);
        return new TimeAxis(Math.max(0, start - (longer - later)), end + later);
    }

    /** A stretch cut to the axis. */
    Stretch shown(Stretch stretch) {
        return new Stretch(Math.max(from, stretch.from()), Math.min(to, stretch.to()));
    }

    /** The row in which a minute lies, the first being 0. */
    int row(int minute) {
        return (minute - from) / ROW;
    }

    /** Rows that a stretch takes, at least one. */
    int rows(Stretch stretch) {
        int end = (stretch.to() - from + ROW - 1) / ROW;
        return Math.max(1, end - row(stretch.from()));
    }

    /** Rows of the whole axis. */
    int rows() {
        return (to - from) / ROW;
    }

    /** The whole hours of the axis, each with the row where it begins. */
    List<Landscape.Hour> hours() {
        List<Landscape.Hour> hours = new ArrayList<>();
        for (int minute = from; minute < to; minute += HOUR) {
            hours.add(new Landscape.Hour(row(minute), String.format(Locale.ROOT, "%02d:00", minute / HOUR)));
        }
        return hours;
    }

    /** What of a time from start to end lies on a date; empty where nothing does. */
    static Stretch on(LocalDate date, Moment start, @Nullable Moment end) {
        return on(date, start.local(), end == null ? start.local().plusMinutes(ROW) : end.local());
    }

    /** The same for local times. */
    static Stretch on(LocalDate date, LocalDateTime start, LocalDateTime end) {
        LocalDateTime midnight = date.atStartOfDay();
        long from = Math.max(0, ChronoUnit.MINUTES.between(midnight, start));
        long to = Math.min(DAY, ChronoUnit.MINUTES.between(midnight, end));
        // Where the clocks go back inside it, the end may show an earlier time than the start.
        boolean turned = start.toLocalDate().equals(date) && to <= from && !end.isBefore(start.minusHours(1));
        return turned ? new Stretch((int) from, (int) from + ROW) : new Stretch((int) from, (int) Math.max(from, to));
    }
}
