package weekwright.desk.view.terminal;

import java.util.List;
import java.util.stream.IntStream;
import weekwright.desk.view.sheet.SheetPage;
import weekwright.desk.view.sheet.SheetPage.Block;
import weekwright.desk.view.sheet.SheetPage.Lane;
import weekwright.desk.view.sheet.SheetPage.Part;
import weekwright.desk.view.sheet.SheetPage.Row;
import weekwright.desk.view.sheet.SheetPage.Step;
import weekwright.desk.view.sheet.SheetPage.Table;

/** Sets a day sheet on a terminal. */
public final class SheetText {
    private static final int WIDTH = 100;
    private static final int MOST_NAME = 22;
    private static final int MOST_CELL = 30;
    private static final int MOST_LABEL = 40;
    private static final String GAP = "  ";

    private final Paper paper = new Paper(WIDTH);
    private final Ink ink;

    private SheetText(Ink ink) {
        this.ink = ink;
    }

    /** The sheet in lines of at most 100 columns, each ended by a line feed. */
    public static String of(SheetPage page, Ink ink) {
        return new SheetText(ink).set(page);
    }

    private String set(SheetPage page) {
        paper.line(ink.strong(page.day() + (page.who() == null ? "" : " · " + Plain.text(page.who()))));
        paper.wrapped(0, "", Plain.text(page.title()));
        if (page.lanes().isEmpty()) {
            paper.blank();
            paper.line("Nothing lies on this day.");
        }
        page.lanes().forEach(this::lane);
        paper.blank();
        page.cautions().forEach(caution -> paper.wrapped(0, "! ", caution));
        return paper.toString();
    }

    private void lane(Lane lane) {
        paper.blank();
        paper.wrapped(0, "", ink.strong(Plain.text(lane.label())) + " · " + lane.facts());
        lane.blocks().forEach(this::block);
    }

    private void block(Block block) {
        paper.blank();
        String facts = block.facts().isEmpty() ? "" : " · " + Plain.text(block.facts());
        paper.wrapped(0, block.time() + GAP, ink.strong(Plain.text(block.label())) + facts);
        block.remarks().forEach(remark -> paper.wrapped(2, "", Plain.text(remark)));
        if (!block.warmUp().isEmpty()) {
            paper.wrapped(2, block.warmUpLabel() + ": ", Plain.text(String.join("; ", block.warmUp())));
        }
        block.parts().forEach(this::part);
        block.tables().forEach(this::table);
        block.out().forEach(out -> paper.wrapped(2, "", Plain.text(out.name() + " " + out.text())));
    }

    private void part(Part part) {
        if (part.level() != null) {
            paper.line(GAP + ink.strong(part.level()));
        }
        int label = widest(
                part.steps().stream()
                        .filter(step -> !step.amount().isEmpty())
                        .map(Step::label)
                        .toList(),
                MOST_LABEL);
        int amount = widest(part.steps().stream().map(Step::amount).toList(), MOST_CELL);
        part.steps().forEach(step -> step(step, label, amount));
        if (!part.rules().isEmpty()) {
            paper.wrapped(2, "", String.join(" ", part.rules()));
        }
    }

    private void step(Step step, int label, int amount) {
        if ((step.amount() + step.effort() + step.rest()).isEmpty()) {
            paper.wrapped(2, "", Plain.text(step.label()));
            return;
        }
        String head = Plain.fit(Plain.text(step.label()), label) + GAP + Plain.fit(step.amount(), amount) + GAP;
        String effort = step.effort().isEmpty() || step.rest().isEmpty()
                ? step.effort() + step.rest()
                : step.effort() + "; " + step.rest();
        if (effort.isEmpty()) {
            paper.line(GAP + head);
        } else {
            paper.wrapped(2, head, effort);
        }
        if (!step.note().isEmpty()) {
            paper.wrapped(4, "", ink.faint(Plain.text(step.note())));
        }
    }

    private void table(Table table) {
        int name = widest(table.rows().stream().map(Row::name).toList(), MOST_NAME);
        List<Integer> columns = IntStream.range(0, table.columns().size())
                .mapToObj(i -> Math.max(
                        widest(List.of(table.columns().get(i)), MOST_CELL),
                        widest(
                                table.rows().stream()
                                        .map(row -> row.cells().get(i))
                                        .toList(),
                                MOST_CELL)))
                .toList();
        if (!table.columns().isEmpty()) {
            paper.line(GAP + " ".repeat(name) + ink.faint(cells(table.columns(), columns)));
        }
        for (Row row : table.rows()) {
            String start = Plain.fit(Plain.text(row.name()), name) + cells(row.cells(), columns);
            int used = 2 + Plain.columns(start) + 2;
            boolean fits = used + Plain.columns(row.notes()) <= WIDTH;
            paper.line(GAP + start + (fits ? GAP + ink.faint(Plain.text(row.notes())) : ""));
            if (!fits) {
                paper.wrapped(4, "", ink.faint(Plain.text(row.notes())));
            }
        }
        table.feet().forEach(foot -> paper.wrapped(2, "", Plain.text(foot)));
    }

    private static String cells(List<String> cells, List<Integer> widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            line.append(GAP).append(Plain.fit(Plain.text(cells.get(i)), widths.get(i)));
        }
        return line.toString();
    }

    private static int widest(List<String> texts, int most) {
        return texts.stream()
                .mapToInt(text -> Math.min(most, Plain.columns(Plain.text(text))))
                .max()
                .orElse(0);
    }
}
