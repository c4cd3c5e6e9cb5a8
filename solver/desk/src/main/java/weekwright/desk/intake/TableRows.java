package weekwright.desk.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import weekwright.desk.app.InputFault;
import weekwright.desk.intake.table.Column;
import weekwright.desk.intake.table.DateText;
import weekwright.desk.intake.table.Table;
import weekwright.desk.intake.table.TableText;
import weekwright.model.Nearest;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Scenario;

/** Goes through the rows of a table of people and gathers what comes of each. */
final class TableRows {
    private TableRows() {}

    /**
     * A row that is being read.
     *
     * @param number its number in the preview
     */
    record Cell(int number, TableText.Cells cells, Table table, Answers answers, Remarks remarks) {
        String cell(Column column) {
            return table.cell(cells, column);
        }

        /** The row that comes of it; asked about where there are doubts. */
        Row row(Verdict verdict, String text, List<String> said, UnaryOperator<Scenario> step) {
            if (!remarks.doubts().isEmpty() && !answers.accepts(number)) {
                return Row.still(number, place(), Verdict.ASKED, text, remarks.doubts());
            }
            List<String> all = new ArrayList<>(said);
            all.addAll(remarks.notes());
            return verdict == Verdict.SAME
                    ? Row.still(number, place(), verdict, text, all)
                    : new Row(number, place(), verdict, text, all, step);
        }

        String place() {
            return "line " + cells.line();
        }

        /** The athlete whom the row names, by id or by name. */
        Athlete athlete(Scenario scenario) {
            String named = cell(Column.ATHLETE);
            if (named.isEmpty()) {
                throw new IllegalArgumentException("it names no athlete");
            }
            List<Athlete> found = scenario.athletes().stream()
                    .filter(athlete -> athlete.id().equals(named)
                            || Labels.plain(athlete.name()).equals(Labels.plain(named)))
                    .toList();
            if (found.size() > 1) {
                throw new IllegalArgumentException("several athletes are called \"" + Table.cut(named)
                        + "\": give the id, "
                        + String.join(" or ", found.stream().map(Athlete::id).toList()));
            }
            return found.stream().findFirst().orElseThrow(() -> unknown(scenario, named));
        }

        private static IllegalArgumentException unknown(Scenario scenario, String named) {
            List<String> names = scenario.athletes().stream().map(Athlete::name).toList();
            return new IllegalArgumentException("no athlete is called \"" + Table.cut(named) + "\""
                    + Nearest.of(Table.cut(named), names)
                            .map(near -> ": did you mean " + near + "?")
                            .orElse(""));
        }
    }

    static Preview preview(
            Scenario scenario, Table table, DateText dates, Answers answers, Function<Cell, Row> reader) {
        List<Row> rows = new ArrayList<>();
        for (TableText.Cells cells : table.rows()) {
            rows.add(row(new Cell(rows.size() + 1, cells, table, answers, new Remarks()), reader));
        }
        List<String> how = new ArrayList<>(table.how());
        String order = dates.how();
        if (order != null) {
            how.add(order);
        }
        String question = dates.question();
        return new Preview(scenario, how, question == null ? List.of() : List.of(question), rows, List.of());
    }

    private static Row row(Cell at, Function<Cell, Row> reader) {
        String text = Table.cut(String.join(" | ", at.cells().cells()));
        if (at.answers().leavesOut(at.number())) {
            return Row.still(at.number(), at.place(), Verdict.PASSED_OVER, text, List.of("left out, as you said"));
        }
        try {
            return reader.apply(at);
        } catch (IllegalArgumentException | InputFault e) {
            return Row.still(
                    at.number(), at.place(), Verdict.UNREADABLE, text, List.of(String.valueOf(e.getMessage())));
        }
    }
}
