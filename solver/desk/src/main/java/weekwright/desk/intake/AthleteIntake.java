package weekwright.desk.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import weekwright.desk.intake.table.Column;
import weekwright.desk.intake.table.DateText;
import weekwright.desk.intake.table.Table;
import weekwright.model.Nearest;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Scenario;

/** Takes athletes from a table: who is known by id or by name is changed, who is not is added. */
final class AthleteIntake {
    private final Scenario scenario;
    private final Wanted wanted;
    private final Answers answers;
    private final DateText dates;
    private final TreeSet<String> ids = new TreeSet<>();
    private final Map<String, Integer> names = new HashMap<>();

    private AthleteIntake(Scenario scenario, Wanted wanted, Table table, Answers answers) {
        this.scenario = scenario;
        this.wanted = wanted;
        this.answers = answers;
        dates = DateText.of(table.cells(Column.BORN), answers);
        scenario.athletes().forEach(athlete -> ids.add(athlete.id()));
    }

    static Preview preview(byte[] bytes, Scenario scenario, Wanted wanted, Answers answers) {
        Table table = Table.read(bytes, wanted.what(), answers);
        AthleteIntake intake = new AthleteIntake(scenario, wanted, table, answers);
        return TableRows.preview(scenario, table, intake.dates, answers, intake::row);
    }

    private Row row(TableRows.Cell at) {
        String name = Labels.clean(at.cell(Column.NAME), at.remarks());
        if (name.isEmpty()) {
            throw new IllegalArgumentException("it has no name");
        }
        Integer twice = names.putIfAbsent(Labels.plain(name) + at.cell(Column.ID), at.number());
        if (twice != null) {
            at.remarks().doubt("row " + twice + " has the same name");
        }
        List<String> groups = groups(at.cell(Column.GROUP));
        Level level = level(at.cell(Column.LEVEL));
        LocalDate born = at.cell(Column.BORN).isEmpty() ? null : dates.date(at.cell(Column.BORN));
        if (born != null && !born.isBefore(scenario.firstDay())) {
            throw new IllegalArgumentException("born on " + born + ", which is not before the plan");
        }
        Athlete known = known(at.cell(Column.ID), name);
        return known == null ? added(at, name, groups, level, born) : changed(at, known, name, groups, level, born);
    }

    private @Nullable Athlete known(String id, String name) {
        return scenario.athletes().stream()
                .filter(athlete -> id.isEmpty()
                        ? Labels.plain(athlete.name()).equals(Labels.plain(name))
                        : athlete.id().equals(id))
                .findFirst()
                .orElse(null);
    }

    private List<String> groups(String cell) {
        if (cell.isEmpty()) {
            return List.of();
        }
        return Arrays.stream(cell.split("[;,/]", -1))
                .map(String::strip)
                .map(this::group)
                .toList();
    }

    private String group(String name) {
        List<String> known = scenario.groups().stream().map(Group::id).toList();
        return scenario.groups().stream()
                .filter(group -> Labels.plain(group.id()).equals(Labels.plain(name))
                        || Labels.plain(group.label()).equals(Labels.plain(name)))
                .map(Group::id)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "no group is called \"" + Table.cut(name) + "\": " + Nearest.hint(Table.cut(name), known)));
    }

    private static @Nullable Level level(String cell) {
        if (cell.isEmpty()) {
            return null;
        }
        return Arrays.stream(Level.values())
                .filter(level -> level.id().equals(cell.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "\"" + Table.cut(cell) + "\" is no training age: give novice, trained or advanced"));
    }

    private Row added(
            TableRows.Cell at, String name, List<String> groups, @Nullable Level level, @Nullable LocalDate born) {
        String given = at.cell(Column.ID);
        String id = Labels.isId(given) && !ids.contains(given) ? given : Labels.id(name, "", ids);
        ids.add(id);
        List<String> in =
                groups.isEmpty() ? List.of(wanted.group(scenario, answers).id()) : groups;
        Athlete athlete = new Athlete(id, name, in, level, born, List.of(), List.of(), List.of(), List.of());
        return at.row(
                Verdict.NEW,
                text(athlete),
                List.of(),
                taken -> taken.withAthletes(Revised.and(taken.athletes(), athlete)));
    }

    private static String text(Athlete athlete) {
        return athlete.name() + " (" + athlete.id() + "), " + String.join(", ", athlete.groups())
                + (athlete.level() == null ? "" : ", " + athlete.level().id())
                + (athlete.born() == null ? "" : ", born " + athlete.born());
    }

    private static Row changed(
            TableRows.Cell at,
            Athlete known,
            String name,
            List<String> groups,
            @Nullable Level level,
            @Nullable LocalDate born) {
        Athlete now = new Athlete(
                known.id(),
                name,
                groups.isEmpty() ? known.groups() : groups,
                level == null ? known.level() : level,
                born == null ? known.born() : born,
                known.marks(),
                known.windows(),
                known.away(),
                known.restrictions());
        return at.row(
                now.equals(known) ? Verdict.SAME : Verdict.CHANGED,
                text(now),
                changes(known, now),
                taken -> taken.withAthletes(Revised.changed(taken.athletes(), Athlete::id, known.id(), old -> now)));
    }

    private static List<String> changes(Athlete before, Athlete now) {
        List<String> changes = new ArrayList<>();
        if (!before.name().equals(now.name())) {
            changes.add("was called \"" + before.name() + "\"");
        }
        if (!before.groups().equals(now.groups())) {
            changes.add("was in " + String.join(", ", before.groups()));
        }
        if (before.level() != now.level()) {
            changes.add("was "
                    + (before.level() == null
                            ? "of the group's training age"
                            : before.level().id()));
        }
        if (!Objects.equals(before.born(), now.born()) && before.born() != null) {
            changes.add("was born on " + before.born());
        }
        return changes;
    }
}
