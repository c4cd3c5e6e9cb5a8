package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Scenario;

/** The days of the plan and its weeks: seven local dates from the first day, the last week perhaps shorter. */
record Weeks(LocalDate firstDay, int days) {
    static Weeks of(Scenario scenario) {
        return new Weeks(scenario.firstDay(), scenario.days());
    }

    LocalDate lastDay() {
        return firstDay.plusDays(days - 1L);
    }

    List<LocalDate> allDays() {
        return LongStream.range(0, days).mapToObj(firstDay::plusDays).toList();
    }

    boolean contains(LocalDate day) {
        return !day.isBefore(firstDay) && !day.isAfter(lastDay());
    }

    List<Integer> numbers() {
        return IntStream.range(0, (days + 6) / 7).boxed().toList();
    }

    /** The number of the week of a date; it runs on below 0 and beyond the last. */
    int numberOf(LocalDate day) {
        return (int) Math.floorDiv(ChronoUnit.DAYS.between(firstDay, day), 7L);
    }

    LocalDate firstDateOf(int week) {
        return firstDay.plusDays(7L * week);
    }

    List<LocalDate> datesOf(int week) {
        return allDays().stream().filter(day -> numberOf(day) == week).toList();
    }

    boolean isWhole(int week) {
        return datesOf(week).size() == 7;
    }

    /** What a week asks for: a short one asks for its share, the least rounded down, the target half up, the most up. */
    PerWeek share(PerWeek asked, int week) {
        int n = datesOf(week).size();
        return new PerWeek(
                (int) Fraction.of((long) asked.least() * n, 7).roundedDown(),
                (int) Fraction.of((long) asked.target() * n, 7).roundedHalfUp(),
                (int) Fraction.of((long) asked.most() * n, 7).roundedUp());
    }
}
