package weekwright.desk.view.terminal;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import weekwright.desk.store.Revision;
import weekwright.desk.view.Dates;
import weekwright.model.scenario.Moment;

/** The revisions of a folder as lines to read. */
public final class HistoryText {
    private static final int WIDTH = 100;

    private HistoryText() {}

    /**
     * Each revision with its number, when it was saved and what was done, the newest first.
     *
     * @param head number of the one in force
     * @param zone whose clocks are shown
     */
    public static String of(List<Revision> revisions, int head, ZoneId zone, Ink ink) {
        Paper paper = new Paper(WIDTH);
        int digits = revisions.isEmpty()
                ? 1
                : Integer.toString(revisions.get(0).number()).length();
        for (Revision revision : revisions) {
            String number = Integer.toString(revision.number());
            Moment at = Moment.at(revision.at().truncatedTo(ChronoUnit.MINUTES), zone);
            LocalDate day = at.date();
            String begin = " ".repeat(digits - number.length())
                    + (revision.number() == head ? ink.strong(number) : number)
                    + "  " + Dates.dayInColumn(day) + " " + day.getYear() + " " + Dates.clock(at) + "  ";
            paper.wrapped(0, begin, Plain.text(revision.label()) + standing(revision, head));
        }
        return paper.toString();
    }

    private static String standing(Revision revision, int head) {
        if (revision.beside()) {
            return " (came late, kept beside)";
        }
        return revision.number() == head ? " (in force)" : "";
    }
}
