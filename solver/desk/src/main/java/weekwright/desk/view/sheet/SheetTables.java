package weekwright.desk.view.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weekwright.desk.view.sheet.SheetPage.Table;
import weekwright.model.answer.DaySheet.Plan;
import weekwright.model.answer.DaySheet.Row;
import weekwright.model.answer.DaySheet.Session;
import weekwright.model.prescription.Target;
import weekwright.model.prescription.Target.Kind;
import weekwright.model.scenario.Level;

/** The tables of a session: a row an athlete, a column a line that asks each for something else. */
final class SheetTables {
    private static final String WARM_UP_SETS = "warm-up sets";
    private static final String OTHERS = "Others";

    private final SheetWords words;
    private final boolean personal;

    SheetTables(SheetWords words, boolean personal) {
        this.words = words;
        this.personal = personal;
    }

    /** One table for all levels that have the same columns. */
    List<Table> of(Session session) {
        Map<List<String>, List<SheetPage.Row>> byColumns = new LinkedHashMap<>();
        Map<List<String>, Level> whom = new LinkedHashMap<>();
        Level own = session.plans().isEmpty()
                ? Level.TRAINED
                : session.plans().get(0).level();
        for (Plan plan : session.plans()) {
            List<String> columns = columns(plan);
            whom.putIfAbsent(columns, plan.level());
            byColumns.computeIfAbsent(columns, key -> new ArrayList<>()).addAll(rows(plan, plan.level() == own));
        }
        List<Table> tables = new ArrayList<>();
        byColumns.forEach((columns, rows) -> {
            Level level = whom.getOrDefault(columns, own);
            String before = level == own ? "" : SheetWords.level(level) + ", ";
            tables.add(table(columns, rows, before));
        });
        return tables.stream()
                .filter(table -> !table.rows().isEmpty() || !table.feet().isEmpty())
                .toList();
    }

    /** Who has a number stands in the table; words are told below it, of all who have the same in one line. */
    private static Table table(List<String> columns, List<SheetPage.Row> rows, String before) {
        List<Integer> kept = IntStream.range(0, columns.size())
                .filter(i -> rows.stream()
                        .anyMatch(row -> SheetPage.isNumber(row.cells().get(i))))
                .boxed()
                .toList();
        List<SheetPage.Row> left = rows.stream()
                .map(row -> new SheetPage.Row(
                        row.name(), kept.stream().map(row.cells()::get).toList(), row.notes()))
                .sorted(Comparator.comparing(row -> row.name().startsWith(OTHERS)))
                .toList();
        List<SheetPage.Row> numbers = left.stream()
                .filter(row -> !row.notes().isEmpty() || row.cells().stream().anyMatch(SheetPage::isNumber))
                .toList();
        List<String> names = kept.stream().map(columns::get).toList();
        List<String> feet = new ArrayList<>(sameForAll(columns, kept, rows, before));
        left.stream()
                .filter(row -> !kept.isEmpty() && !numbers.contains(row))
                .collect(Collectors.groupingBy(
                        row -> words(names, row.cells()),
                        LinkedHashMap::new,
                        Collectors.mapping(SheetPage.Row::name, Collectors.joining(", "))))
                .forEach((words, whom) -> feet.add(whom + ": " + words + "."));
        boolean brackets = numbers.stream()
                .anyMatch(row -> row.cells().stream().anyMatch(cell -> cell.contains(SheetWords.NOT_OVER)));
        if (brackets) {
            feet.add("In brackets: a slower run is no speed work any more.");
        }
        return new Table(names, numbers, feet);
    }

    /** Words in cells, each with its columns where they differ. */
    private static String words(List<String> columns, List<String> cells) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            if (!cells.get(i).isEmpty()) {
                alike.computeIfAbsent(cells.get(i), key -> new ArrayList<>()).add(columns.get(i));
            }
        }
        return alike.size() <= 1
                ? String.join("", alike.keySet())
                : alike.entrySet().stream()
                        .map(entry -> String.join(", ", entry.getValue()) + " " + entry.getKey())
                        .collect(Collectors.joining("; "));
    }

    /** Columns without a number, with the words of each level. */
    private static List<String> sameForAll(
            List<String> columns, List<Integer> kept, List<SheetPage.Row> rows, String before) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            if (!kept.contains(i) && !rows.isEmpty()) {
                int column = i;
                String words = rows.stream()
                        .map(row -> row.cells().get(column))
                        .filter(cell -> !cell.isEmpty())
                        .distinct()
                        .collect(Collectors.joining(" / "));
                alike.computeIfAbsent(words, key -> new ArrayList<>()).add(columns.get(i));
            }
        }
        List<String> feet = new ArrayList<>();
        alike.forEach((words, same) -> feet.add(before + String.join(", ", same) + ": " + words + "."));
        return feet;
    }

    /** Which lines have numbers of each athlete, in order. */
    private static List<Integer> numbered(Plan plan) {
        return IntStream.range(0, plan.lines().size())
                .filter(i -> !plan.lines().get(i).isWarmUpSet())
                .filter(i -> plan.byFeel().get(i).kind() != Kind.NONE
                        || plan.athletes().stream()
                                .anyMatch(row -> row.targets().get(i).kind() != Kind.NONE))
                .boxed()
                .toList();
    }

    private static String warmUpSets(Plan plan, List<Target> targets) {
        return SheetWords.warmUpSets(IntStream.range(0, targets.size())
                .filter(i -> plan.lines().get(i).isWarmUpSet() && targets.get(i).kind() == Kind.WEIGHT)
                .mapToObj(targets::get)
                .toList());
    }

    private static boolean hasWarmUpSets(Plan plan) {
        return plan.athletes().stream()
                .anyMatch(row -> !warmUpSets(plan, row.targets()).isEmpty());
    }

    private List<String> columns(Plan plan) {
        List<String> columns = new ArrayList<>(numbered(plan).stream()
                .map(i -> words.column(plan.lines().get(i)))
                .toList());
        if (hasWarmUpSets(plan)) {
            columns.add(WARM_UP_SETS);
        }
        return columns;
    }

    private List<SheetPage.Row> rows(Plan plan, boolean own) {
        boolean numbers = !numbered(plan).isEmpty();
        List<SheetPage.Row> rows = new ArrayList<>();
        plan.athletes().stream()
                .filter(row -> numbers || !row.remarks().isEmpty())
                .forEach(row -> rows.add(row(plan, row, own)));
        if (numbers && !personal && (plan.others() > 0 || plan.athletes().isEmpty())) {
            String name = plan.athletes().isEmpty() ? "Everybody" : OTHERS + " (" + plan.others() + ")";
            rows.add(new SheetPage.Row(name, cells(plan, plan.byFeel()), ""));
        }
        return rows;
    }

    private SheetPage.Row row(Plan plan, Row row, boolean own) {
        List<String> notes = new ArrayList<>(row.remarks());
        notes.addAll(flags(plan, row.targets()));
        if (personal) {
            numbered(plan).stream()
                    .map(i -> row.targets().get(i).basis())
                    .filter(Objects::nonNull)
                    .distinct()
                    .forEach(basis -> notes.add("from " + basis));
        }
        String name =
                own || personal ? row.name() : row.name() + " (" + plan.level().id() + ")";
        return new SheetPage.Row(name, cells(plan, row.targets()), String.join("; ", notes));
    }

    /** Each flag once, with the columns that it is for unless it is for all numbers. */
    private List<String> flags(Plan plan, List<Target> targets) {
        List<Integer> lines = numbered(plan);
        long numbers =
                lines.stream().filter(i -> targets.get(i).kind() != Kind.WORDS).count();
        Map<String, List<String>> flags = new LinkedHashMap<>();
        for (int i : lines) {
            targets.get(i).flags().stream()
                    .filter(flag -> !flag.equals(Target.NO_MARK))
                    .forEach(flag -> flags.computeIfAbsent(flag, key -> new ArrayList<>())
                            .add(words.column(plan.lines().get(i))));
        }
        return flags.entrySet().stream()
                .map(entry -> entry.getValue().size() >= Math.max(1, numbers)
                        ? entry.getKey()
                        : entry.getKey() + " (" + String.join(", ", entry.getValue()) + ")")
                .toList();
    }

    private List<String> cells(Plan plan, List<Target> targets) {
        List<String> cells = new ArrayList<>(
                numbered(plan).stream().map(i -> words.target(targets.get(i))).toList());
        if (hasWarmUpSets(plan)) {
            cells.add(warmUpSets(plan, targets));
        }
        return cells;
    }
}
