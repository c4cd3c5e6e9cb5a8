package weekwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Solver;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Share;

/** The words for what documents write as short names. */
public final class Words {
    /** What holds whatever a plan says. */
    public static final String CAUTION =
            "This is planning help, not medical advice. In return to play, pain, illness, minors, heat"
                    + " and maximal testing, clinicians, local rules and licensed practice come first.";

    /** Stands before what somebody does not take part in; why is nobody else's concern. */
    public static final String SITS_OUT = "Sits out: ";

    private Words() {}

    /** The dose where it is not full, else null. */
    public static @Nullable String dose(Dose dose) {
        return switch (dose) {
            case FULL -> null;
            case REDUCED -> "reduced dose";
            case MICRO -> "micro dose";
        };
    }

    /** A label without what is explained after a semicolon. */
    public static String brief(String label) {
        int more = label.indexOf("; ");
        return more < 0 ? label : label.substring(0, more);
    }

    /** Words in a list: {@code a, b and c}. */
    public static String and(List<String> words) {
        return joined(words, " and ");
    }

    /** Words in a list, the last after a word of its own. */
    public static String joined(List<String> words, String beforeLast) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + beforeLast + words.get(last);
    }

    /** One letter a point of demand; each class has its own, so that it can be told without colour. */
    public static String mark(DayClass dayClass) {
        return switch (dayClass) {
            case FREE -> " ";
            case LOW -> "░";
            case MIDDLE -> "▒";
            case HIGH -> "█";
        };
    }

    /** What is held of a placement, or null where nothing is. */
    public static @Nullable String pinned(Pin pin) {
        List<String> held = new ArrayList<>();
        add(held, pin.start(), "time");
        add(held, pin.day() && !pin.start(), "day");
        add(held, pin.facility(), "place");
        add(held, pin.lead(), "lead");
        add(held, pin.dose(), "dose");
        add(held, pin.variant(), "lift");
        if (!pin.notDays().isEmpty()) {
            held.add("not on "
                    + String.join(", ", pin.notDays().stream().map(Dates::day).toList()));
        }
        return held.isEmpty() ? null : "pinned: " + String.join(", ", held);
    }

    /** For whom a placement is, where it is not for all: its aim is named in its id, {@code group/family+whom/week/n}. */
    public static @Nullable String whom(Placement placement) {
        String aim = placement.id() == null ? "" : placement.id();
        if (aim.contains("+" + Share.NOT_PLAYED.id() + "/")) {
            return "for those who did not play";
        }
        return aim.contains("+" + Share.PLAYED.id() + "/") ? "for those who played" : null;
    }

    private static void add(List<String> held, boolean is, String word) {
        if (is) {
            held.add(word);
        }
    }

    /** Heading over what is broken at a level. */
    public static String heading(RuleLevel level) {
        return switch (level) {
            case MUST -> "What must hold and does not";
            case KEY -> "Key work that falls short";
            case MAIN -> "Main work that falls short";
            case WANT -> "Wishes unmet";
            case TOLD, OFF -> "Good to know";
        };
    }

    /** The totals in one sentence. */
    public static String verdict(Totals totals) {
        List<String> parts = new ArrayList<>();
        parts.add(
                totals.must() == 0
                        ? "nothing is broken that must hold"
                        : Dates.number(totals.must()) + (totals.must() == 1 ? " thing is" : " things are")
                                + " broken that must hold");
        shortfall(parts, "key", totals.key());
        shortfall(parts, "main", totals.main());
        parts.add(
                totals.want() == 0
                        ? "every wish is met"
                        : Dates.number(totals.want()) + (totals.want() == 1 ? " point" : " points")
                                + " of wishes unmet");
        String sentence = String.join("; ", parts);
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1) + ".";
    }

    private static void shortfall(List<String> parts, String level, double missing) {
        if (missing > 0) {
            parts.add(level + " work falls short by " + Dates.number(missing));
        }
    }

    /** How a plan was made. */
    public static String made(Solver solver) {
        String time = solver.seconds() == null ? "" : " in " + Dates.number(solver.seconds()) + " s";
        return "Found with seed " + solver.seed() + " after " + Dates.grouped(solver.moves()) + " moves" + time + ".";
    }
}
