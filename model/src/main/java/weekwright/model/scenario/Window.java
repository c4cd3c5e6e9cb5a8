package weekwright.model.scenario;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * Hours of the wall clock that are free or open: on some weekdays, or on one date.
 *
 * @param days weekdays, empty where {@code date} is given
 * @param date the one date, or null
 * @param from first minute, {@code HH:mm}
 * @param to end, {@code HH:mm}, after {@code from}; {@code 24:00} is the end of the day
 * @param firstDate first date on which it holds, or null for always
 * @param lastDate last date on which it holds, or null for always
 */
public record Window(
        List<Weekday> days,
        @Nullable LocalDate date,
        ClockTime from,
        ClockTime to,
        @Nullable LocalDate firstDate,
        @Nullable LocalDate lastDate) {
    public Window {
        days = Ids.listed(days);
    }

    /** Whether the window holds on a local date. */
    public boolean holdsOn(LocalDate day) {
        boolean named = date != null
                ? date.equals(day)
                : days.stream().anyMatch(weekday -> weekday.dayOfWeek() == day.getDayOfWeek());
        return named && (firstDate == null || !day.isBefore(firstDate)) && (lastDate == null || !day.isAfter(lastDate));
    }
}
