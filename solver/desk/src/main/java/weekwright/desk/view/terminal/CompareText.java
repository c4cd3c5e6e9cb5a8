package weekwright.desk.view.terminal;

import java.util.List;
import java.util.function.Function;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Words;
import weekwright.model.answer.Change;
import weekwright.model.answer.Comparison;
import weekwright.model.answer.Shift;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;

/** Sets two plans side by side: the sentence that sums it up, the sessions that differ, what is better and what is worse. */
public final class CompareText {
    private static final int WIDTH = 100;
    private static final int INDENT = 2;
    /** Sentences shown under one heading; the file has them all. */
    private static final int MOST_LINES = 12;

    private static final String POINT = "· ";

    private final Paper paper = new Paper(WIDTH);
    private final Ink ink;

    private CompareText(Ink ink) {
        this.ink = ink;
    }

    /** The comparison in lines of at most 100 columns, each ended by a line feed. */
    public static String of(Comparison comparison, Ink ink) {
        CompareText text = new CompareText(ink);
        text.paper.wrapped(0, "", Plain.text(comparison.text()));
        text.differences(comparison);
        return text.paper.toString();
    }

    /**
     * What would come of a change, in lines of at most 100 columns.
     *
     * @param besides what it brings with it, one sentence each
     */
    public static String whatIf(String question, List<String> besides, Comparison comparison, Ink ink) {
        CompareText text = new CompareText(ink);
        text.paper.wrapped(0, "", ink.strong(Plain.text(question)));
        besides.forEach(one -> text.paper.wrapped(0, "", Plain.text(one)));
        text.paper.wrapped(0, "", Plain.text(comparison.text()));
        text.differences(comparison);
        return text.paper.toString();
    }

    private void differences(Comparison comparison) {
        boolean changed = comparison.changed() != null;
        boolean same = comparison.sessions().isEmpty()
                && comparison.better().isEmpty()
                && comparison.worse().isEmpty();
        if (same && !changed) {
            return;
        }
        paper.blank();
        stand("Before:  ", comparison.before());
        Totals standing = comparison.changed();
        if (standing != null) {
            stand("Changed: ", standing);
        }
        stand("After:   ", comparison.after());
        lines("What the change broke by itself", comparison.broke(), one -> POINT, one -> one);
        lines("Sessions that differ", comparison.sessions(), one -> POINT, Change::text);
        shifts("Kept better", comparison.better());
        shifts(changed ? "Kept worse than before the change" : "Kept worse", comparison.worse());
    }

    private void stand(String when, Totals totals) {
        paper.wrapped(0, ink.strong(when), Words.verdict(totals));
    }

    private void shifts(String heading, List<Shift> shifts) {
        int columns =
                shifts.stream().mapToInt(shift -> price(shift).length()).max().orElse(0);
        lines(
                heading,
                shifts,
                shift -> " ".repeat(columns - price(shift).length()) + price(shift) + (columns == 0 ? "" : "  "),
                Shift::text);
    }

    /** What must hold and what is owed says by itself how grave it is. */
    private static String price(Shift shift) {
        if (shift.level() != RuleLevel.WANT) {
            return "";
        }
        double more = shift.after() - shift.before();
        return (more < 0 ? "−" : "+") + Dates.number(Math.abs(more));
    }

    private <T> void lines(String heading, List<T> all, Function<T, String> before, Function<T, String> text) {
        if (all.isEmpty()) {
            return;
        }
        paper.line(ink.strong(heading));
        all.stream()
                .limit(MOST_LINES)
                .forEach(one -> paper.wrapped(INDENT, before.apply(one), Plain.text(text.apply(one))));
        if (all.size() > MOST_LINES) {
            paper.line("  and " + (all.size() - MOST_LINES) + " more; --json gives them all");
        }
    }
}
