package weekwright.desk.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.intake.table.Column;
import weekwright.desk.intake.table.DateText;
import weekwright.desk.intake.table.NumberText;
import weekwright.desk.intake.table.Table;
import weekwright.model.Ids;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.SprintStart;
import weekwright.model.scenario.Timing;

/** Takes measured bests from a table: a mark that an athlete has already is left as it is, others are added. */
final class MarkIntake {
    /** A kilogram and a metre beyond which a slip is likelier than a best (common practice, no source). */
    private static final double MOST_KG = 500;

    private static final double FASTEST = 13;

    private final Scenario scenario;
    private final DateText dates;
    private final NumberText numbers;
    private final Set<List<Object>> seen = new HashSet<>();

    private MarkIntake(Scenario scenario, Table table, Answers answers) {
        this.scenario = scenario;
        dates = DateText.of(table.cells(Column.DATE), answers);
        numbers = NumberText.of(
                Stream.of(Column.METRES, Column.SECONDS, Column.KG, Column.SPEED)
                        .flatMap(column -> table.cells(column).stream())
                        .toList(),
                answers);
    }

    static Preview preview(byte[] bytes, Scenario scenario, Wanted wanted, Answers answers) {
        Table table = Table.read(bytes, wanted.what(), answers);
        MarkIntake intake = new MarkIntake(scenario, table, answers);
        return TableRows.preview(scenario, table, intake.dates, answers, intake::row);
    }

    private Row row(TableRows.Cell at) {
        Athlete athlete = at.athlete(scenario);
        if (at.cell(Column.DATE).isEmpty()) {
            throw new IllegalArgumentException("it has no date");
        }
        Mark mark = mark(at, dates.date(at.cell(Column.DATE)));
        if (!mark.date().isBefore(scenario.lastDay().plusDays(1))) {
            at.remarks().doubt("it lies after the plan");
        }
        boolean known = athlete.marks().contains(mark) || !seen.add(List.of(athlete.id(), mark));
        return at.row(
                known ? Verdict.SAME : Verdict.NEW,
                athlete.name() + ": " + text(mark) + ", " + mark.date(),
                List.of(),
                taken -> taken.withAthletes(Revised.changed(
                        taken.athletes(),
                        Athlete::id,
                        athlete.id(),
                        old -> old.withMarks(Revised.and(old.marks(), mark)))));
    }

    private Mark mark(TableRows.Cell at, LocalDate date) {
        return switch (measure(at)) {
            case SPRINT -> sprint(at, date);
            case LIFT -> lift(at, date);
            case AEROBIC_SPEED ->
                new Mark(
                        Measure.AEROBIC_SPEED,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        positive(at, Column.SPEED),
                        date);
        };
    }

    /** What is measured: as the row says, or by the cells that are filled. */
    private static Measure measure(TableRows.Cell at) {
        String said = at.cell(Column.MEASURE);
        if (!said.isEmpty()) {
            return one(Measure.values(), Ids::of, said, "measure");
        }
        List<Measure> fit = new ArrayList<>();
        if (!at.cell(Column.SECONDS).isEmpty() || !at.cell(Column.METRES).isEmpty()) {
            fit.add(Measure.SPRINT);
        }
        if (!at.cell(Column.KG).isEmpty()) {
            fit.add(Measure.LIFT);
        }
        if (!at.cell(Column.SPEED).isEmpty()) {
            fit.add(Measure.AEROBIC_SPEED);
        }
        if (fit.size() != 1) {
            throw new IllegalArgumentException("it does not say what was measured: give metres and seconds, or kg and"
                    + " repetitions, or metres per second, or a column measure");
        }
        return fit.get(0);
    }

    private static <E extends Enum<E>> E one(E[] values, Function<E, String> id, String said, String what) {
        String name = said.toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-");
        return Arrays.stream(values)
                .filter(value -> id.apply(value).equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + Table.cut(said) + "\" is no " + what + ": give "
                        + String.join(", ", Arrays.stream(values).map(id).toList())));
    }

    private Mark sprint(TableRows.Cell at, LocalDate date) {
        double metres = positive(at, Column.METRES);
        double seconds = positive(at, Column.SECONDS);
        if (metres / seconds > FASTEST) {
            at.remarks().doubt(number(metres) + " m in " + number(seconds) + " s is faster than anybody runs");
        }
        SprintStart start = one(
                SprintStart.values(),
                SprintStart::id,
                needed(at, Column.FROM_START, "standing, flying or blocks"),
                "start");
        Timing timing = one(Timing.values(), Timing::id, needed(at, Column.TIMING, "electronic or hand"), "timing");
        return new Mark(Measure.SPRINT, metres, seconds, start, timing, null, null, null, null, date);
    }

    private Mark lift(TableRows.Cell at, LocalDate date) {
        String lift = needed(at, Column.LIFT, "back-squat")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        if (!Labels.isId(lift)) {
            throw new IllegalArgumentException(
                    "\"" + Table.cut(at.cell(Column.LIFT)) + "\" is no name of a lift: write it" + " as back-squat");
        }
        double kg = positive(at, Column.KG);
        if (kg > MOST_KG) {
            at.remarks().doubt(number(kg) + " kg is more than anybody lifts here; are they pounds?");
        }
        int repetitions = numbers.whole(needed(at, Column.REPETITIONS, "1"));
        if (repetitions < 1) {
            throw new IllegalArgumentException("repetitions are 1 or more");
        }
        return new Mark(Measure.LIFT, null, null, null, null, lift, kg, repetitions, null, date);
    }

    private static String needed(TableRows.Cell at, Column column, String example) {
        String cell = at.cell(column);
        if (cell.isEmpty()) {
            throw new IllegalArgumentException("it has no " + column.example() + ": give one, such as " + example);
        }
        return cell;
    }

    private double positive(TableRows.Cell at, Column column) {
        double number = numbers.number(needed(at, column, column == Column.KG ? "120" : "4.12"));
        if (number <= 0) {
            throw new IllegalArgumentException(column.example() + " must be more than 0");
        }
        return number;
    }

    private static String text(Mark mark) {
        return switch (mark.measure()) {
            case SPRINT ->
                number(mark.metres()) + " m in " + number(mark.seconds()) + " s, " + id(mark.start()) + " start, "
                        + id(mark.timing());
            case LIFT -> mark.lift() + " " + number(mark.kg()) + " kg × " + mark.repetitions();
            case AEROBIC_SPEED -> "aerobic speed " + number(mark.metresPerSecond()) + " m/s";
        };
    }

    private static String id(@Nullable Enum<?> value) {
        return value == null ? "" : Ids.of(value);
    }

    private static String number(@Nullable Double value) {
        return value == null ? "" : weekwright.model.Plain.number(value);
    }
}
