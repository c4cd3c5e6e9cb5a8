package weekwright.desk.view;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Moment;

/** Dates, match days and numbers as a coach says them; the same on every machine, whatever its language. */
public final class Dates {
    // Written out, since the names that Java knows differ from version to version.
    private static final List<String> MONTHS = List.of(
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December");
    private static final List<String> WEEKDAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");

    private Dates() {}

    /** E.g. {@code Tue 9 Feb}. */
    public static String day(LocalDate date) {
        return weekday(date) + " " + dayOfMonth(date);
    }

    /** E.g. {@code 9 Feb}. */
    public static String dayOfMonth(LocalDate date) {
        return date.getDayOfMonth() + " " + month(date).substring(0, 3);
    }

    /** E.g. {@code Tue  9 Feb}: in columns the days stand below each other. */
    public static String dayInColumn(LocalDate date) {
        return String.format(
                Locale.ROOT,
                "%s %2d %s",
                weekday(date),
                date.getDayOfMonth(),
                month(date).substring(0, 3));
    }

    /** E.g. {@code 8 to 14 February 2027}. */
    public static String span(LocalDate first, LocalDate last) {
        if (first.equals(last)) {
            return whole(last);
        }
        String start = String.valueOf(first.getDayOfMonth());
        if (first.getMonth() != last.getMonth() || first.getYear() != last.getYear()) {
            start += " " + month(first);
        }
        if (first.getYear() != last.getYear()) {
            start += " " + first.getYear();
        }
        return start + " to " + whole(last);
    }

    private static String whole(LocalDate date) {
        return date.getDayOfMonth() + " " + month(date) + " " + date.getYear();
    }

    /** E.g. {@code MD−2} two days before a match, {@code MD} on its day; empty where no match is near. */
    public static String matchDay(@Nullable Integer distance) {
        if (distance == null) {
            return "";
        }
        return distance == 0 ? "MD" : distance < 0 ? "MD−" + -distance : "MD+" + distance;
    }

    /** A number with one decimal at most: {@code 12.4}, {@code 3}. */
    public static String number(double value) {
        String text = decimal(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    /** A number with one decimal: {@code 3.0}. */
    public static String decimal(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /** A number as it is: {@code 0.25}, {@code 72}. */
    public static String exact(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }

    /** A whole number with its thousands apart: {@code 1,830,000}. */
    public static String grouped(long value) {
        return String.format(Locale.ROOT, "%,d", value);
    }

    /** A time of day, e.g. {@code 09:30}. */
    public static String clock(Moment moment) {
        return moment.local().toLocalTime().toString();
    }

    /** A length of time, e.g. {@code 1 h 30 min}, {@code 2 h}, {@code 45 min}. */
    public static String hours(int minutes) {
        String rest = minutes % 60 == 0 ? "" : minutes % 60 + " min";
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h" + (rest.isEmpty() ? "" : " " + rest);
    }

    /** E.g. {@code Tue}. */
    public static String weekday(LocalDate date) {
        return WEEKDAYS.get(date.getDayOfWeek().getValue() - 1);
    }

    private static String month(LocalDate date) {
        return MONTHS.get(date.getMonthValue() - 1);
    }
}
