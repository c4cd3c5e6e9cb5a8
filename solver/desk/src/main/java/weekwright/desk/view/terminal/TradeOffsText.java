package weekwright.desk.view.terminal;

import java.util.List;
import java.util.function.Function;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Words;
import weekwright.model.answer.Clash;
import weekwright.model.answer.GiveUp;
import weekwright.model.answer.TradeOffs;

/** Sets what cannot all be had and what could go on one screen. */
public final class TradeOffsText {
    private static final int WIDTH = 100;
    private static final int INDENT = 2;
    /** What could go that is shown; the file has it all. */
    private static final int MOST_LINES = 10;

    private static final String POINT = "· ";

    private final Paper paper = new Paper(WIDTH);
    private final Ink ink;

    private TradeOffsText(Ink ink) {
        this.ink = ink;
    }

    /** The answer in lines of at most 100 columns, each ended by a line feed. */
    public static String of(TradeOffs answer, Ink ink) {
        TradeOffsText text = new TradeOffsText(ink);
        text.paper.wrapped(0, "", Plain.text(answer.text()));
        text.paper.wrapped(0, "", Words.verdict(answer.totals()));
        text.lines("What clashes", answer.clashes(), Clash::text);
        text.lines("What could go, what buys most first", answer.couldGo(), GiveUp::text);
        if (!answer.couldGo().isEmpty()) {
            text.paper.blank();
            text.paper.line(ink.faint("Each was tried by a search of " + Dates.grouped(answer.moves())
                    + " moves. A point is an hour of rest that the whole group would"));
            text.paper.line(ink.faint("rather have, or its like; what changes is said of the whole plan."));
        }
        return text.paper.toString();
    }

    private <T> void lines(String heading, List<T> all, Function<T, String> text) {
        if (all.isEmpty()) {
            return;
        }
        paper.blank();
        paper.line(ink.strong(heading));
        all.stream().limit(MOST_LINES).forEach(one -> paper.wrapped(INDENT, POINT, Plain.text(text.apply(one))));
        if (all.size() > MOST_LINES) {
            paper.line("  and " + (all.size() - MOST_LINES) + " more; --json gives them all");
        }
    }
}
