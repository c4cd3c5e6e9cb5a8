package weekwright.desk.page;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Moment;

/** Reads what was typed into the fields of a beginning, and gathers what is wrong with it. */
final class Typed {
    final List<String> problems = new ArrayList<>();

    /** A date; null, and a problem, where it is none. */
    @Nullable
    LocalDate date(String what, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            problems.add(what + " is \"" + text + "\": give a date, such as 2027-03-01");
            return null;
        }
    }

    /** The start of a fixture; null, and a problem, where it is none. */
    @Nullable
    Moment start(String fixture, String date, String time) {
        try {
            return Moment.of(LocalDateTime.of(LocalDate.parse(date), LocalTime.parse(time)));
        } catch (DateTimeException e) {
            problems.add("the fixture \"" + fixture + "\" " + wrong(date, time));
            return null;
        }
    }

    private static String wrong(String date, String time) {
        if (date.isBlank() && time.isBlank()) {
            return "has no date and no start: give both";
        }
        if (date.isBlank() || time.isBlank()) {
            String missing = date.isBlank() ? "date" : "start";
            return "has no " + missing + ": give its " + missing;
        }
        return "is on \"" + date + "\" at \"" + time + "\": give its date and its start";
    }
}
