package weekwright.desk.intake.table;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.desk.intake.Answers;
import weekwright.desk.intake.Limits;
import weekwright.desk.intake.Times;

/**
 * Reads dates as tables write them. Which of two numbers is the day is found out from all cells of a column: one number above
 * 12 tells for all; where none does, it is asked.
 */
public final class DateText {
    private static final String MONTHS = "jan feb mar apr may jun jul aug sep oct nov dec";
    private static final String DAYS = "mon tue wed thu fri sat sun";

    /** A weekday before it and an ordinal's letters are no part of a date. */
    private static final Pattern WEEKDAY = Pattern.compile("(?i)^(mon|tue|wed|thu|fri|sat|sun)[a-z]{0,6}\\.?,?\\s+");

    private static final Pattern YEAR_FIRST =
            Pattern.compile("(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})|(\\d{4})(\\d{2})(\\d{2})");
    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,2})([-/.])\\s?(\\d{1,2})\\2\\s?(\\d{4}|\\d{2})");
    private static final Pattern DAY_AND_NAME =
            Pattern.compile("(?i)(\\d{1,2})(?:st|nd|rd|th)?[\\s-]+([a-z]{3,9})\\.?,?[\\s-]+(\\d{4}|\\d{2})");
    private static final Pattern NAME_AND_DAY =
            Pattern.compile("(?i)([a-z]{3,9})\\.?\\s+(\\d{1,2})(?:st|nd|rd|th)?,?\\s+(\\d{4})");

    /** Which of two numbers comes first. */
    enum Order {
        DAY_FIRST,
        MONTH_FIRST,
        /** Nobody knows. */
        OPEN,
        /** Some cells say the one and some the other. */
        BOTH
    }

    private final Order order;
    private final Answers answers;
    private @Nullable String undecided;

    private DateText(Order order, Answers answers) {
        this.order = order;
        this.answers = answers;
    }

    /** A reader for cells that were written by one hand. */
    public static DateText of(List<String> cells, Answers answers) {
        Optional<Boolean> said = answers.either(Answers.DAY_FIRST, Answers.MONTH_FIRST);
        Order order = said.map(dayFirst -> dayFirst ? Order.DAY_FIRST : Order.MONTH_FIRST)
                .orElseGet(() -> order(cells));
        return new DateText(order, answers);
    }

    private static Order order(List<String> cells) {
        boolean dayFirst = false;
        boolean monthFirst = false;
        for (String cell : cells) {
            Matcher numbers = NUMBERS.matcher(bare(datePart(cell)));
            // With full stops the day comes first wherever they are used.
            if (numbers.matches() && !numbers.group(2).equals(".")) {
                dayFirst |= Integer.parseInt(numbers.group(1)) > 12;
                monthFirst |= Integer.parseInt(numbers.group(3)) > 12;
            }
        }
        return dayFirst && monthFirst
                ? Order.BOTH
                : dayFirst ? Order.DAY_FIRST : monthFirst ? Order.MONTH_FIRST : Order.OPEN;
    }

    /** The part of a cell that is a date; a time may follow it. */
    static String datePart(String cell) {
        Matcher time = ClockText.AFTER_DATE.matcher(cell);
        return time.find() ? cell.substring(0, time.start()).strip() : cell.strip();
    }

    private static String bare(String text) {
        return WEEKDAY.matcher(text).replaceFirst("").replaceFirst("[.,]$", "").strip();
    }

    /**
     * A date.
     *
     * @throws IllegalArgumentException when it is none, or could be two; the message says so
     */
    public LocalDate date(String text) {
        String bare = bare(text);
        try {
            LocalDate date = read(bare);
            if (date == null) {
                throw new IllegalArgumentException(
                        "\"" + Table.cut(text) + "\" is no date that is understood: write it as" + " 2027-02-13"
                                + (text.matches("\\d{5}(\\.\\d+)?") ? "; format the column as a date" : ""));
            }
            if (date.getYear() < Limits.FIRST_YEAR || date.getYear() > Limits.LAST_YEAR) {
                throw new IllegalArgumentException("the year " + date.getYear() + " cannot be meant");
            }
            return date;
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("\"" + Table.cut(text) + "\" is no day of the calendar", e);
        }
    }

    private @Nullable LocalDate read(String bare) {
        Matcher yearFirst = YEAR_FIRST.matcher(bare);
        if (yearFirst.matches()) {
            boolean parted = yearFirst.group(1) != null;
            return date(
                    yearFirst.group(parted ? 1 : 5), yearFirst.group(parted ? 3 : 6), yearFirst.group(parted ? 4 : 7));
        }
        Matcher numbers = NUMBERS.matcher(bare);
        if (numbers.matches()) {
            return numbers(numbers);
        }
        Matcher dayAndName = DAY_AND_NAME.matcher(bare);
        if (dayAndName.matches()) {
            return named(dayAndName.group(1), dayAndName.group(2), dayAndName.group(3));
        }
        Matcher nameAndDay = NAME_AND_DAY.matcher(bare);
        return nameAndDay.matches() ? named(nameAndDay.group(2), nameAndDay.group(1), nameAndDay.group(3)) : null;
    }

    private LocalDate numbers(Matcher numbers) {
        String first = numbers.group(1);
        String second = numbers.group(3);
        String year = numbers.group(4);
        if (numbers.group(2).equals(".") || Integer.parseInt(first) > 12) {
            return date(year, second, first);
        }
        if (Integer.parseInt(second) > 12) {
            return date(year, first, second);
        }
        if (first.equals(second)) {
            return date(year, first, second);
        }
        return switch (order) {
            case DAY_FIRST -> date(year, second, first);
            case MONTH_FIRST -> date(year, first, second);
            case OPEN, BOTH -> throw either(numbers.group(), date(year, second, first), date(year, first, second));
        };
    }

    private IllegalArgumentException either(String text, LocalDate one, LocalDate other) {
        undecided = undecided == null ? text : undecided;
        return new IllegalArgumentException(Table.cut(text) + " is " + Times.day(one) + " or " + Times.day(other));
    }

    /** The question that is left when all dates have been read, or null. */
    public @Nullable String question() {
        if (undecided == null) {
            return null;
        }
        String say = "say " + answers.way(Answers.DAY_FIRST) + " or " + answers.way(Answers.MONTH_FIRST) + ".";
        return order == Order.BOTH
                ? "Of the dates some can only have the day first and some only the month: dates such as " + undecided
                        + " cannot be read. Write all of them in one way, or " + say
                : "Dates such as " + undecided + " can be read in two ways: " + say;
    }

    /** How dates with two numbers were read, or null where none told. */
    public @Nullable String how() {
        return switch (order) {
            case DAY_FIRST -> "Dates are read with the day first.";
            case MONTH_FIRST -> "Dates are read with the month first.";
            case OPEN, BOTH -> null;
        };
    }

    private static LocalDate date(String year, String month, String day) {
        int full = year.length() == 2 ? 2000 + Integer.parseInt(year) : Integer.parseInt(year);
        return LocalDate.of(full, Integer.parseInt(month), Integer.parseInt(day));
    }

    private static @Nullable LocalDate named(String day, String month, String year) {
        String name = month.toLowerCase(Locale.ROOT).substring(0, 3);
        int at = MONTHS.indexOf(name);
        return at < 0 || at % 4 != 0 ? null : date(year, String.valueOf(at / 4 + 1), day);
    }

    /** What a weekday that stands before a date says against it, or null where it agrees or none stands there. */
    static @Nullable String weekdayAgainst(String text, LocalDate date) {
        Matcher weekday = WEEKDAY.matcher(text);
        if (!weekday.find()) {
            return null;
        }
        int at = DAYS.indexOf(weekday.group(1).toLowerCase(Locale.ROOT)) / 4;
        DayOfWeek said = DayOfWeek.of(at + 1);
        return said == date.getDayOfWeek()
                ? null
                : "it is called " + weekday.group().strip().replaceFirst("[.,]+$", "") + ", and that day is "
                        + Times.day(date);
    }
}
