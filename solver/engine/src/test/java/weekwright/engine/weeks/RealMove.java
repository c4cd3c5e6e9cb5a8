package weekwright.engine.weeks;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Moment;
import weekwright.scenarios.SeasonFile;

/**
 * A real change of a match in 2025-26, from the public football data of the openfootball project (CC0 1.0), clubs and
 * competitions replaced by codes.
 *
 * @param timeBefore kick-off before, or null where none was known
 */
record RealMove(LocalDate before, @Nullable LocalTime timeBefore, LocalDate after, LocalTime timeAfter) {
    private static final int MOST_DAYS = 2;

    /** What a row is about. */
    enum Kind {
        MOVE,
        FIRST_TIME,
        WRONG_YEAR,
        MONTH_BACK
    }

    /** All rows; where no time was known before, the tests take the usual one (common practice, no source). */
    static List<RealMove> all() {
        String csv = new String(SeasonFile.reschedules(), StandardCharsets.UTF_8);
        return csv.lines().skip(1).map(RealMove::row).toList();
    }

    private static RealMove row(String line) {
        List<String> cells = Arrays.asList(line.split(",", -1));
        return new RealMove(
                LocalDate.parse(cells.get(3)),
                cells.get(4).isEmpty() ? null : LocalTime.parse(cells.get(4)),
                LocalDate.parse(cells.get(5)),
                LocalTime.parse(cells.get(6)));
    }

    Kind kind() {
        long days = ChronoUnit.DAYS.between(before, after);
        if (before.getYear() != after.getYear()
                && before.withYear(after.getYear()).equals(after)) {
            return Kind.WRONG_YEAR;
        }
        if (Math.abs(days) > MOST_DAYS) {
            return Kind.MONTH_BACK;
        }
        return days == 0 && timeBefore == null ? Kind.FIRST_TIME : Kind.MOVE;
    }

    /** When it was to be played; where no time was known, at the usual one. */
    Moment from() {
        boolean weekend = before.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) > 0;
        LocalTime usual = weekend ? LocalTime.of(15, 0) : LocalTime.of(19, 45);
        return Moment.of(before.atTime(timeBefore == null ? usual : timeBefore));
    }

    /** When it is played now. */
    Moment to() {
        return Moment.of(after.atTime(timeAfter));
    }
}
