package weekwright.desk.view.terminal;

import java.util.Locale;
import java.util.Objects;
import weekwright.desk.view.Dates;
import weekwright.model.prescription.Improvement;
import weekwright.model.prescription.Improvements;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.SprintStart;

/** Sets the marks that a log betters on a terminal. */
public final class MarksText {
    private static final int WIDTH = 100;

    private MarksText() {}

    /** The list in lines of at most 100 columns, each ended by a line feed. */
    public static String of(Improvements found) {
        Paper paper = new Paper(WIDTH);
        paper.line(found.better().isEmpty() ? "The log betters no mark." : "Marks that the log betters");
        found.better().forEach(one -> paper.wrapped(2, "", Plain.text(sentence(one))));
        if (!found.unused().isEmpty()) {
            paper.line("Not used");
            found.unused().forEach(one -> paper.wrapped(2, "", Plain.text(one)));
        }
        return paper.toString();
    }

    private static String sentence(Improvement one) {
        Mark before = one.before();
        return one.athlete().name() + ": " + what(one.mark(), one.value()) + " on "
                + Dates.day(one.mark().date())
                + (before == null
                        ? "; no mark of the kind that holds so far"
                        : "; so far " + value(before, Objects.requireNonNull(one.valueBefore())) + " on "
                                + Dates.day(before.date()));
    }

    private static String what(Mark mark, double value) {
        if (mark.measure() == Measure.LIFT) {
            return mark.lift() + " " + value(mark, value);
        }
        String start = mark.start() == SprintStart.FLYING
                ? "flying "
                : mark.start() == SprintStart.BLOCKS ? "from blocks " : "";
        String timing = mark.timing() == null ? "" : ", " + mark.timing().id();
        return start + Dates.exact(Objects.requireNonNull(mark.metres())) + " m " + value(mark, value) + timing;
    }

    private static String value(Mark mark, double value) {
        if (mark.measure() != Measure.LIFT) {
            return String.format(Locale.ROOT, "%.2f s", value);
        }
        String set = Dates.exact(Objects.requireNonNull(mark.kg())) + " kg × " + mark.repetitions();
        return Objects.requireNonNull(mark.repetitions()) == 1
                ? set
                : set + " (maximum " + String.format(Locale.ROOT, "%.1f", value) + " kg)";
    }
}
