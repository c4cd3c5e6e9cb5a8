package weekwright.engine.problem;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import weekwright.engine.problem.Spans.Span;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Window;

/**
 * Instants as epoch minutes and local dates as day numbers, 0 being the plan's first day. Gaps are differences of
 * minutes, so they are elapsed time across clock changes; days are local dates.
 */
public final class Calendar {
    private static final int MARGIN = 64;
    private static final int DAY_MINUTES = 24 * 60;

    private final ZoneId zone;
    private final LocalDate firstDay;
    private final int days;
    /** First minute of each day, from {@link #MARGIN} days before the plan on. */
    private final int[] midnights;

    /** The calendar of a scenario. */
    public Calendar(Scenario scenario) {
        zone = scenario.zone();
        firstDay = scenario.firstDay();
        days = scenario.days();
        midnights = new int[days + 2 * MARGIN];
        for (int day = -MARGIN; day < days + MARGIN; day++) {
            midnights[day + MARGIN] = minute(date(day).atStartOfDay());
        }
    }

    /** Number of days in the plan. */
    public int days() {
        return days;
    }

    /** Number of weeks in the plan, a short last one included. */
    public int weeks() {
        return (days + 6) / 7;
    }

    /** The plan week of a day inside the plan. */
    public int weekOf(int day) {
        return Math.floorDiv(day, 7);
    }

    /** Days in a plan week: 7, or fewer in a short last one. */
    public int daysIn(int week) {
        return Math.min(7, days - 7 * week);
    }

    /** The date of a day number. */
    public LocalDate date(int day) {
        return firstDay.plusDays(day);
    }

    /** The day number of a date. */
    public int day(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(firstDay, date);
    }

    /** The day number on which an instant lies, up to some weeks before and after the plan. */
    public int dayOf(int minute) {
        int at = Arrays.binarySearch(midnights, minute);
        return (at >= 0 ? at : -at - 2) - MARGIN;
    }

    /** The epoch minute of a moment. */
    public int minute(Moment moment) {
        return minute(moment.instant(zone));
    }

    /** The epoch minute of a local time; one that does not exist means the next that does. */
    public int minute(LocalDateTime local) {
        return minute(local.atZone(zone).toInstant());
    }

    /** The moment of an epoch minute. */
    public Moment moment(int minute) {
        return Moment.at(instant(minute), zone);
    }

    /** The local times of a day on a grid that exist; where one happens twice, the earlier. */
    public List<Integer> gridStarts(int day, int gridMinutes) {
        List<Integer> starts = new ArrayList<>();
        LocalDateTime midnight = date(day).atStartOfDay();
        for (int minute = 0; minute < 24 * 60; minute += gridMinutes) {
            Moment moment = Moment.of(midnight.plusMinutes(minute));
            if (moment.existsIn(zone)) {
                starts.add(minute(moment));
            }
        }
        return starts;
    }

    /** Minutes after local midnight that the clock shows at an instant. */
    public int clockMinutes(int minute) {
        int day = dayOf(minute) + MARGIN;
        if (midnights[day + 1] - midnights[day] == DAY_MINUTES) {
            return minute - midnights[day];
        }
        return LocalDateTime.ofInstant(instant(minute), zone).toLocalTime().toSecondOfDay() / 60;
    }

    /** The spans of windows from two days before the plan to two days after it; no window means always. */
    public Spans spans(List<Window> windows) {
        List<Span> spans = new ArrayList<>();
        if (windows.isEmpty()) {
            spans.add(new Span(
                    minute(date(-2).atStartOfDay()), minute(date(days + 2).atStartOfDay())));
        }
        for (int day = -2; day < days + 2; day++) {
            for (Window window : windows) {
                if (window.holdsOn(date(day))) {
                    spans.add(new Span(
                            minute(window.from().on(date(day))),
                            minute(window.to().on(date(day)))));
                }
            }
        }
        return Spans.of(spans);
    }

    /** The spans of absences or closures. */
    public Spans awaySpans(List<Away> away) {
        return Spans.of(away.stream()
                .map(a -> new Span(minute(a.from()), minute(a.to())))
                .toList());
    }

    private static int minute(Instant instant) {
        return (int) Math.floorDiv(instant.getEpochSecond(), 60L);
    }

    private static Instant instant(int minute) {
        return Instant.ofEpochSecond(minute * 60L);
    }
}
