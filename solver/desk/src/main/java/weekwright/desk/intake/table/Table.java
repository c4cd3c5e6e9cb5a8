package weekwright.desk.intake.table;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.desk.app.InputFault;
import weekwright.desk.intake.Answers;
import weekwright.desk.intake.What;

/**
 * A table whose columns are known.
 *
 * @param columns place of each column that was found
 * @param rows its rows below the headings
 * @param how how it was read, sentence by sentence
 */
public record Table(Map<Column, Integer> columns, List<TableText.Cells> rows, List<String> how) {
    /** Rows among which the headings are looked for: some spreadsheets begin with a title. */
    private static final int HEAD = 10;

    /**
     * Reads a table and finds its columns.
     *
     * @throws InputFault when they cannot be found, or two mean the same
     */
    public static Table read(byte[] bytes, What what, Answers answers) {
        TableText text = TableText.read(bytes, answers.encoding());
        Map<String, String> said = said(what, answers);
        for (int i = 0; i < Math.min(HEAD, text.rows().size()); i++) {
            TableText.Cells head = text.rows().get(i);
            Map<Column, Integer> columns = columns(head, what, said, answers);
            if (Column.needed(what).stream().anyMatch(columns::containsKey)) {
                List<TableText.Cells> rows =
                        text.rows().subList(i + 1, text.rows().size());
                return new Table(columns, rows, how(text, head, rows.size(), unused(head, columns, what, answers)));
            }
        }
        TableText.Cells first = text.rows().get(0);
        throw new InputFault("line " + first.line() + " has no heading that is known; found are "
                + first.cells().stream()
                        .limit(12)
                        .map(cell -> "\"" + cut(cell) + "\"")
                        .collect(Collectors.joining(", "))
                + ". Needed is "
                + Column.needed(what).stream().map(Column::example).collect(Collectors.joining(" or "))
                + "; known besides are "
                + Column.of(what).stream()
                        .filter(column -> !Column.needed(what).contains(column))
                        .map(Column::example)
                        .collect(Collectors.joining(", "))
                + ". Say what a column holds with "
                + answers.way(
                        Answers.COLUMN, Column.needed(what).iterator().next().id() + "=HEADING"));
    }

    private static Map<String, String> said(What what, Answers answers) {
        List<String> ids = Column.of(what).stream().map(Column::id).toList();
        Map<String, String> said = new LinkedHashMap<>();
        answers.columns().forEach((id, heading) -> {
            if (!ids.contains(id)) {
                throw new InputFault(answers.way(Answers.COLUMN) + " says \"" + cut(id)
                        + "\", and no column holds that: known are " + String.join(", ", ids));
            }
            said.put(plain(heading), id);
        });
        return said;
    }

    private static Map<Column, Integer> columns(
            TableText.Cells head, What what, Map<String, String> said, Answers answers) {
        Map<Column, Integer> columns = new EnumMap<>(Column.class);
        Set<Column> wanted = Column.of(what);
        List<String> headings = head.cells().stream().map(Table::plain).toList();
        for (int at = 0; at < headings.size(); at++) {
            String saidId = said.get(headings.get(at));
            if (saidId != null) {
                Column column = wanted.stream()
                        .filter(one -> one.id().equals(saidId))
                        .findFirst()
                        .orElseThrow();
                columns.put(column, at);
            }
        }
        Set<Column> settled = Set.copyOf(columns.keySet());
        for (int at = 0; at < headings.size(); at++) {
            String heading = headings.get(at);
            if (!said.containsKey(heading)) {
                int here = at;
                wanted.stream()
                        .filter(column -> column.isCalled(heading) && !settled.contains(column))
                        .findFirst()
                        .ifPresent(column -> put(columns, column, here, head, answers));
            }
        }
        return columns;
    }

    private static void put(
            Map<Column, Integer> columns, Column column, int at, TableText.Cells head, Answers answers) {
        Integer other = columns.putIfAbsent(column, at);
        if (other != null) {
            throw new InputFault("line " + head.line() + ": two columns can be the " + column.example() + ", \""
                    + cut(head.cells().get(other)) + "\" and \""
                    + cut(head.cells().get(at))
                    + "\"; say which it is with "
                    + answers.way(
                            Answers.COLUMN,
                            column.id() + "=\"" + cut(head.cells().get(at)) + "\""));
        }
    }

    private static List<String> how(TableText text, TableText.Cells head, int rows, String unused) {
        String found = "A table of " + (rows == 1 ? "1 row" : rows + " rows") + " below line " + head.line() + ". "
                + text.how();
        return unused.isEmpty() ? List.of(found) : List.of(found, unused);
    }

    private static String unused(TableText.Cells head, Map<Column, Integer> columns, What what, Answers answers) {
        List<String> unused = new ArrayList<>();
        for (int at = 0; at < head.cells().size(); at++) {
            String heading = head.cells().get(at);
            if (!columns.containsValue(at) && !heading.isEmpty()) {
                unused.add("\"" + cut(heading) + "\"");
            }
        }
        return unused.isEmpty()
                ? ""
                : "Columns not looked at: " + String.join(", ", unused) + missing(columns, what, answers) + ".";
    }

    /** How to say what a column holds of which only the heading was not understood. */
    private static String missing(Map<Column, Integer> columns, What what, Answers answers) {
        return Column.of(what).stream()
                .filter(column -> column != Column.ID && !columns.containsKey(column))
                .findFirst()
                .map(column -> "; what one of them holds is said with "
                        + answers.way(Answers.COLUMN, column.id() + "=HEADING"))
                .orElse("");
    }

    /** A heading in small letters, with single spaces for all other signs. */
    private static String plain(String heading) {
        return Normalizer.normalize(heading, Normalizer.Form.NFKC)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }

    /** A text, cut where it is long. */
    public static String cut(String text) {
        return text.codePointCount(0, text.length()) > 40
                ? text.substring(0, text.offsetByCodePoints(0, 40)) + "…"
                : text;
    }

    /** Whether there is such a column. */
    public boolean has(Column column) {
        return columns.containsKey(column);
    }

    /** A cell, empty where the row has none. */
    public String cell(TableText.Cells row, Column column) {
        Integer at = columns.get(column);
        return at == null || at >= row.cells().size() ? "" : row.cells().get(at);
    }

    /** All cells of a column that are not empty. */
    public List<String> cells(Column column) {
        return rows.stream()
                .map(row -> cell(row, column))
                .filter(cell -> !cell.isEmpty())
                .toList();
    }
}
