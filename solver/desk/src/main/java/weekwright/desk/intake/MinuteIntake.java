package weekwright.desk.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weekwright.desk.app.Named;
import weekwright.desk.intake.table.Column;
import weekwright.desk.intake.table.DateText;
import weekwright.desk.intake.table.NumberText;
import weekwright.desk.intake.table.Table;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;

/** Takes minutes, played or expected, from a table into the fixtures of a scenario. */
final class MinuteIntake {
    private final Scenario scenario;
    private final Wanted wanted;
    private final DateText dates;
    private final NumberText numbers;
    private final Map<String, Integer> seen = new HashMap<>();

    private MinuteIntake(Scenario scenario, Wanted wanted, Table table, Answers answers) {
        this.scenario = scenario;
        this.wanted = wanted;
        dates = DateText.of(table.cells(Column.DATE), answers);
        numbers = NumberText.of(table.cells(Column.PLAYED), answers);
    }

    static Preview preview(byte[] bytes, Scenario scenario, Wanted wanted, Answers answers) {
        Table table = Table.read(bytes, wanted.what(), answers);
        MinuteIntake intake = new MinuteIntake(scenario, wanted, table, answers);
        return TableRows.preview(scenario, table, intake.dates, answers, intake::row);
    }

    private Row row(TableRows.Cell at) {
        Athlete athlete = at.athlete(scenario);
        Fixture fixture = fixture(at);
        if (at.cell(Column.PLAYED).isEmpty()) {
            throw new IllegalArgumentException("it has no minutes: write 0 for who does not play");
        }
        int minutes = numbers.whole(at.cell(Column.PLAYED));
        if (minutes > fixture.minutes()) {
            throw new IllegalArgumentException(
                    minutes + " minutes are more than the fixture lasts, " + fixture.minutes());
        }
        Integer other = seen.putIfAbsent(fixture.id() + " " + athlete.id(), at.number());
        if (other != null) {
            throw new IllegalArgumentException("row " + other + " gives minutes of the same athlete already");
        }
        Appearance now = new Appearance(athlete.id(), minutes);
        String text = athlete.name() + ": " + minutes + " min in " + fixture.label() + ", "
                + Times.day(fixture.start().date());
        return at.row(
                verdict(fixture, now),
                text,
                List.of(),
                taken -> taken.withFixtures(
                        Revised.changed(taken.fixtures(), Fixture::id, fixture.id(), old -> with(old, now))));
    }

    private Fixture fixture(TableRows.Cell at) {
        if (wanted.fixture() != null) {
            return Named.fixture(scenario, wanted.fixture());
        }
        String named = at.cell(Column.FIXTURE);
        LocalDate date = at.cell(Column.DATE).isEmpty() ? null : dates.date(at.cell(Column.DATE));
        if (named.isEmpty() && date == null) {
            throw new IllegalArgumentException(
                    "it names no fixture: give its id or its date, or say which fixture it is for all rows");
        }
        List<Fixture> found = scenario.fixtures().stream()
                .filter(fixture -> named.isEmpty()
                        || fixture.id().equals(named)
                        || Labels.plain(fixture.label()).equals(Labels.plain(named)))
                .filter(fixture -> date == null || fixture.start().date().equals(date))
                .toList();
        if (found.size() != 1) {
            String what = named.isEmpty() ? "on " + date : "called \"" + Table.cut(named) + "\"";
            throw new IllegalArgumentException(
                    found.isEmpty()
                            ? "no fixture of the plan is " + what
                            : "several fixtures are " + what + ": give the id");
        }
        return found.get(0);
    }

    private List<Appearance> known(Fixture fixture) {
        return wanted.what() == What.MINUTES ? fixture.played() : fixture.expected();
    }

    private Verdict verdict(Fixture fixture, Appearance now) {
        return known(fixture).stream()
                .filter(old -> old.athlete().equals(now.athlete()))
                .findFirst()
                .map(old -> old.equals(now) ? Verdict.SAME : Verdict.CHANGED)
                .orElse(Verdict.NEW);
    }

    private Fixture with(Fixture old, Appearance now) {
        List<Appearance> list = new ArrayList<>(known(old));
        list.removeIf(one -> one.athlete().equals(now.athlete()));
        list.add(now);
        return wanted.what() == What.MINUTES ? old.withPlayed(list) : old.withExpected(list);
    }
}
