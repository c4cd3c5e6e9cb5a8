package weekwright.desk.intake.table;

import java.time.DayOfWeek;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;

/** Reads weekdays as people write them: {@code Mon}, {@code Mon-Fri}, {@code Tue, Thursday}. */
public final class WeekdayText {
    private static final String DAYS = "mon tue wed thu fri sat sun";

    private WeekdayText() {}

    /**
     * The weekdays that a text names, in its order.
     *
     * @throws IllegalArgumentException when a part of it is none; the message says so
     */
    public static Set<DayOfWeek> days(String text) {
        Set<DayOfWeek> named = new LinkedHashSet<>();
        for (String part : text.strip().split("[,;/ ]+", -1)) {
            String[] ends = part.split("[-–]", -1);
            int first = weekday(ends[0]);
            int last = weekday(ends[ends.length - 1]);
            for (int day = first; day != last; day = day % 7 + 1) {
                named.add(DayOfWeek.of(day));
            }
            named.add(DayOfWeek.of(last));
        }
        return named;
    }

    private static int weekday(String name) {
        int at = name.length() < 3 ? -1 : DAYS.indexOf(name.substring(0, 3).toLowerCase(Locale.ROOT));
        if (at < 0 || at % 4 != 0) {
            throw new IllegalArgumentException("\"" + Table.cut(name) + "\" is no weekday: write Mon, Tue or Mon-Fri");
        }
        return at / 4 + 1;
    }
}
