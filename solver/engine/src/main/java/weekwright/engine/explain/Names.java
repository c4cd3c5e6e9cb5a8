package weekwright.engine.explain;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.problem.Stimulus.Kind;
import weekwright.model.scenario.Moment;

/** How things, days and numbers are called in sentences. */
final class Names {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final Problem problem;

    Names(Problem problem) {
        this.problem = problem;
    }

    /** A thing with its day and time: {@code Primer (Fri 5 Mar 10:00)}; a fixture by its label alone. */
    String thing(Stimulus thing) {
        Moment start = problem.calendar.moment(thing.start);
        return thing.isFixture() ? label(thing) : label(thing) + " (" + moment(start) + ")";
    }

    /** A day and time: {@code Tue 2 Mar 16:30}. */
    static String moment(Moment moment) {
        return DAY.format(moment.local()) + " " + TIME.format(moment.local());
    }

    /** The time at which a thing starts: {@code 16:30}. */
    String time(Stimulus thing) {
        return TIME.format(problem.calendar.moment(thing.start).local());
    }

    /** A thing without its time. */
    String label(Stimulus thing) {
        if (thing.kind == Kind.COMMITMENT) {
            return problem.scenario.commitments().get(thing.index).label();
        }
        if (thing.kind == Kind.FIXTURE) {
            return problem.scenario.fixtures().get(thing.index).label();
        }
        String family = thing.family == null ? "" : thing.family.family.label();
        return thing.isFixture() ? "the fixture of " + day(thing.day) : family;
    }

    /** Things in a list: {@code A, B and C}. */
    String things(List<Stimulus> things) {
        return list(things.stream().map(this::thing).toList());
    }

    /** Words in a list: {@code a, b and c}. */
    static String list(List<String> words) {
        return joined(words, " and ");
    }

    /** Words to choose from: {@code a, b or c}. */
    static String choice(List<String> words) {
        return joined(words, " or ");
    }

    private static String joined(List<String> words, String beforeLast) {
        if (words.size() < 2) {
            return String.join("", words);
        }
        return String.join(", ", words.subList(0, words.size() - 1)) + beforeLast + words.get(words.size() - 1);
    }

    /** Words as the beginning of a sentence. */
    static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A day: {@code Tue 2 Mar}. */
    String day(int day) {
        return DAY.format(problem.calendar.date(day));
    }

    /** A week by its first day. */
    String week(int firstDay) {
        return "the week from " + day(7 * Math.floorDiv(firstDay, 7));
    }

    /** Minutes as hours and minutes, nothing rounded: {@code 91 h 30 min}; less than nothing is nothing. */
    static String hours(int minutes) {
        int shown = Math.max(0, minutes);
        if (shown < 60) {
            return shown + (shown == 0 ? " h" : " min");
        }
        return shown / 60 + " h" + (shown % 60 == 0 ? "" : " " + shown % 60 + " min");
    }

    /** A number to two decimals at most, without trailing zeros. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("\\.?0+$", "");
    }

    /** A count with its word: {@code 1 visit}, {@code 3 visits}. */
    static String count(int count, String one) {
        return count + " " + (count == 1 ? one : one + "s");
    }
}
