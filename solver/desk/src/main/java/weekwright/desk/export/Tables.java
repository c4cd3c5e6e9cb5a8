package weekwright.desk.export;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.InputFault;
import weekwright.desk.view.Names;
import weekwright.desk.view.Words;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.explain.Judged;
import weekwright.model.Ids;
import weekwright.model.Nearest;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** A plan as tables for a spreadsheet. Reasons of restrictions are not in them. */
public final class Tables {
    /** Which table. */
    public enum Kind {
        /** All that lies in the plan, in order of time. */
        PLAN,
        /** What it breaks, and facts. */
        FINDINGS,
        /** Demand and load of each group's days. */
        LOADS,
        /** What each place is used for. */
        BOOKINGS;

        /**
         * The table of a name.
         *
         * @throws InputFault when there is none
         */
        public static Kind named(String name) {
            List<String> known = Arrays.stream(values()).map(Ids::of).toList();
            return Arrays.stream(values())
                    .filter(kind -> Ids.of(kind).equals(name))
                    .findFirst()
                    .orElseThrow(() ->
                            new InputFault("there is no table of \"" + name + "\": " + Nearest.hint(name, known)));
        }
    }

    private final Scenario scenario;
    private final ZoneId zone;
    private final Judged judged;
    private final Names names;
    private final boolean semicolons;

    private Tables(Scenario scenario, Judged judged, boolean semicolons) {
        this.scenario = scenario;
        this.zone = scenario.zone();
        this.judged = judged;
        this.names = new Names(scenario);
        this.semicolons = semicolons;
    }

    /**
     * A table as text.
     *
     * @param judged the plan, judged
     * @param semicolons whether columns are parted by semicolons and decimals by a comma
     */
    public static String of(Kind kind, Scenario scenario, Judged judged, boolean semicolons) {
        Tables tables = new Tables(scenario, judged, semicolons);
        CsvText table = switch (kind) {
            case PLAN -> tables.plan();
            case FINDINGS -> tables.findings();
            case LOADS -> tables.loads();
            case BOOKINGS -> tables.bookings();
        };
        return table.toString();
    }

    /** Something with its place in time, so that kinds can be mixed in order. */
    private record Timed(Instant start, String key, List<@Nullable Object> cells) {}

    private CsvText table(List<Timed> rows, String... headings) {
        CsvText table = new CsvText(semicolons, headings);
        rows.stream()
                .sorted(Comparator.comparing(Timed::start).thenComparing(Timed::key))
                .forEach(row -> table.row(row.cells().toArray()));
        return table;
    }

    private CsvText plan() {
        List<Timed> rows = new ArrayList<>();
        scenario.fixtures().forEach(fixture -> rows.add(row(fixture)));
        scenario.commitments().forEach(commitment -> rows.add(row(commitment)));
        judged.plan().placements().forEach(placement -> rows.add(row(placement)));
        return table(
                rows, "date", "start", "end", "minutes", "kind", "group", "what", "dose", "lift", "place", "lead",
                "for", "pinned", "id");
    }

    private Timed timed(Moment start, int minutes, String key, @Nullable Object... more) {
        Instant begin = start.instant(zone);
        Instant end = begin.plusSeconds(60L * minutes);
        List<@Nullable Object> cells = new ArrayList<>(List.of(start.date(), clock(begin), clock(end), minutes));
        cells.addAll(Arrays.asList(more));
        return new Timed(begin, key, cells);
    }

    private String clock(Instant instant) {
        return LocalDateTime.ofInstant(instant, zone).toLocalTime().toString();
    }

    private Timed row(Fixture fixture) {
        return timed(
                fixture.start(),
                fixture.minutes(),
                fixture.id(),
                "fixture",
                groups(fixture.groups()),
                fixture.label(),
                null,
                null,
                null,
                null,
                null,
                null,
                fixture.id());
    }

    private String groups(List<String> ids) {
        return ids.stream().map(names::group).collect(Collectors.joining(", "));
    }

    private Timed row(Commitment commitment) {
        return timed(
                commitment.start(),
                commitment.minutes(),
                commitment.id(),
                "fixed",
                groups(commitment.groups()),
                commitment.label(),
                null,
                null,
                names.facility(commitment.facility()),
                null,
                commitment.athletes().isEmpty() ? null : athletes(commitment.athletes()),
                null,
                commitment.id());
    }

    private String athletes(List<String> ids) {
        return scenario.athletes().stream()
                .filter(athlete -> ids.contains(athlete.id()))
                .map(Athlete::name)
                .collect(Collectors.joining(", "));
    }

    private Timed row(Placement placement) {
        String pinned = Words.pinned(placement.held());
        return timed(
                placement.start(),
                minutes(placement),
                id(placement),
                "session",
                names.group(placement.group()),
                names.family(placement.family()),
                Ids.of(placement.dose()),
                names.variant(placement.family(), placement.variant()),
                names.facility(placement.facility()),
                names.staff(placement.lead()),
                Words.whom(placement),
                pinned == null ? null : pinned.replaceFirst("^pinned: ", ""),
                placement.id());
    }

    private static int minutes(Placement placement) {
        return Objects.requireNonNull(placement.minutes(), "a judged plan has its minutes");
    }

    private static String id(Placement placement) {
        return Objects.requireNonNull(placement.id(), "a judged plan has its ids");
    }

    private CsvText findings() {
        CsvText table = new CsvText(
                semicolons,
                "level",
                "cost",
                "rule",
                "finding",
                "groups",
                "athletes",
                "people",
                "day",
                "week",
                "measured",
                "limit",
                "unit",
                "what would help");
        for (Finding finding : judged.plan().findings()) {
            table.row(
                    finding.level().id(),
                    finding.cost(),
                    finding.title(),
                    finding.text(),
                    groups(finding.groups()),
                    athletes(finding.athletes()),
                    finding.heads(),
                    finding.day(),
                    finding.week(),
                    finding.measured(),
                    finding.limit(),
                    finding.unit(),
                    finding.remedy() == null ? null : finding.remedy().text());
        }
        return table;
    }

    private CsvText loads() {
        CsvText table = new CsvText(semicolons, "date", "group", "match day", "class", "demand points", "load AU");
        for (Group group : scenario.groups()) {
            judged.days().stream()
                    .filter(day -> day.group().equals(group.id()))
                    .sorted(Comparator.comparing(DayPicture::date))
                    .forEach(day -> table.row(
                            day.date(),
                            group.label(),
                            matchDay(day.matchDay()),
                            day.dayClass().id(),
                            day.demand(),
                            day.load()));
        }
        return table;
    }

    /** Written so that no spreadsheet takes it for a sum. */
    private static @Nullable String matchDay(@Nullable Integer distance) {
        return distance == null ? null : distance == 0 ? "MD" : "MD" + (distance < 0 ? "−" : "+") + Math.abs(distance);
    }

    private CsvText bookings() {
        List<Timed> rows = new ArrayList<>();
        for (Commitment commitment : scenario.commitments()) {
            if (commitment.facility() != null) {
                rows.add(booking(
                        commitment.facility(),
                        commitment.start(),
                        commitment.minutes(),
                        commitment.label(),
                        groups(commitment.groups()),
                        null,
                        commitment.id()));
            }
        }
        for (Placement placement : judged.plan().placements()) {
            if (placement.facility() != null) {
                rows.add(booking(
                        placement.facility(),
                        placement.start(),
                        minutes(placement),
                        names.family(placement.family()),
                        names.group(placement.group()),
                        names.staff(placement.lead()),
                        id(placement)));
            }
        }
        CsvText table = new CsvText(semicolons, "place", "date", "start", "end", "minutes", "what", "group", "lead");
        rows.stream()
                .sorted(Comparator.comparing((Timed row) -> order(row.key()))
                        .thenComparing(Timed::start)
                        .thenComparing(Timed::key))
                .forEach(row -> table.row(row.cells().toArray()));
        return table;
    }

    /** Places stand in the order of the scenario. */
    private int order(String key) {
        String facility = key.substring(0, key.indexOf(' '));
        return scenario.facilities().stream().map(one -> one.id()).toList().indexOf(facility);
    }

    private Timed booking(
            String facility, Moment start, int minutes, String what, String group, @Nullable String lead, String id) {
        Timed timed = timed(start, minutes, facility + " " + id, what, group, lead);
        List<@Nullable Object> cells = new ArrayList<>();
        cells.add(names.facility(facility));
        cells.addAll(timed.cells());
        return new Timed(timed.start(), timed.key(), cells);
    }
}
