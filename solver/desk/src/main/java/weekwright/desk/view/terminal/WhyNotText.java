package weekwright.desk.view.terminal;

import weekwright.model.answer.WhyNot;
import weekwright.model.answer.WhyNotDay;

/** Sets the answer why a session does not lie elsewhere: a line or two a day, best start and what it costs first. */
public final class WhyNotText {
    private static final int WIDTH = 100;
    /** Stands between a day and what is said of it. */
    private static final String SAYS = ": ";

    private WhyNotText() {}

    /** The answer in lines of at most 100 columns, each ended by a line feed. */
    public static String of(WhyNot answer) {
        Paper paper = new Paper(WIDTH);
        paper.wrapped(0, "", Plain.text(answer.text()));
        paper.blank();
        int widest = answer.days().stream()
                .mapToInt(day -> Plain.columns(when(day)))
                .max()
                .orElse(0);
        for (WhyNotDay day : answer.days()) {
            paper.wrapped(0, Plain.fit(when(day), widest) + "  ", what(day));
        }
        return paper.toString();
    }

    private static String when(WhyNotDay day) {
        return day.text().substring(0, day.text().indexOf(SAYS));
    }

    private static String what(WhyNotDay day) {
        return Plain.text(day.text().substring(day.text().indexOf(SAYS) + SAYS.length()));
    }
}
