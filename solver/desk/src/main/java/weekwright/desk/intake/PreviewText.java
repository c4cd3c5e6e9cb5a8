package weekwright.desk.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weekwright.desk.view.terminal.Ink;
import weekwright.desk.view.terminal.Paper;
import weekwright.desk.view.terminal.Plain;

/** Sets a preview of what a file holds: how it was read, row by row what was understood, what is open. */
public final class PreviewText {
    private static final int WIDTH = 100;
    /** Rows that come to nothing for the same reason and are shown; the others are counted. */
    private static final int MOST_ALIKE = 3;

    private static final String GAP = "  ";

    private final Paper paper = new Paper(WIDTH);
    private final Preview preview;
    private final boolean all;
    private final Ink ink;

    private PreviewText(Preview preview, boolean all, Ink ink) {
        this.preview = preview;
        this.all = all;
        this.ink = ink;
    }

    /**
     * The preview in lines of at most 100 columns, each ended by a line feed.
     *
     * @param all whether rows that come to nothing are all shown
     */
    public static String of(Preview preview, boolean all, Ink ink) {
        PreviewText text = new PreviewText(preview, all, ink);
        preview.how().forEach(sentence -> text.paper.wrapped(0, "", Plain.text(sentence)));
        text.rows();
        text.foot();
        return text.paper.toString();
    }

    private void rows() {
        Map<String, Integer> alike = new HashMap<>();
        paper.blank();
        for (Row row : preview.rows()) {
            boolean still = row.verdict() == Verdict.PASSED_OVER || row.verdict() == Verdict.SAME;
            int before = still ? alike.merge(alike(row), 1, Integer::sum) : 0;
            if (all || before <= MOST_ALIKE) {
                row(row);
            }
        }
        if (!all) {
            alike.entrySet().stream()
                    .filter(entry -> entry.getValue() > MOST_ALIKE)
                    .sorted(Map.Entry.comparingByKey())
                    .forEach(entry -> paper.wrapped(
                            0,
                            "",
                            "and " + (entry.getValue() - MOST_ALIKE) + " more rows " + entry.getKey()
                                    + " (--all shows them)"));
        }
    }

    private static String alike(Row row) {
        return row.remarks().isEmpty()
                ? row.verdict().word()
                : row.verdict().word() + ": " + Plain.text(row.remarks().get(0));
    }

    private void row(Row row) {
        int digits = String.valueOf(preview.rows().size()).length();
        String number = String.valueOf(row.number());
        String head = " ".repeat(digits - number.length())
                + number
                + GAP
                + ink.strong(Plain.fit(row.verdict().word(), widest()))
                + GAP;
        paper.wrapped(0, head, Plain.text(row.text()));
        int indent = digits + widest() + 2 * GAP.length();
        row.remarks().forEach(remark -> paper.wrapped(indent, "", Plain.text(remark)));
    }

    private int widest() {
        return preview.rows().stream()
                .mapToInt(row -> row.verdict().word().length())
                .max()
                .orElse(0);
    }

    private void foot() {
        paper.blank();
        paper.line(ink.strong(Character.toUpperCase(preview.counts().charAt(0))
                + preview.counts().substring(1) + "."));
        preview.notes().forEach(note -> paper.wrapped(0, "", Plain.text(note)));
        List<String> open = preview.open();
        if (!open.isEmpty()) {
            paper.blank();
            paper.line(ink.strong("To be answered"));
            open.forEach(question -> paper.wrapped(GAP.length(), "", Plain.text(question)));
            paper.wrapped(
                    GAP.length(),
                    "",
                    "Rows that are right as they stand: --accept 3,5-9. Rows that are not wanted: --leave-out 4."
                            + " All that is open left out: --rest.");
        }
    }
}
