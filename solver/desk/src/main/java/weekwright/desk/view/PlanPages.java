package weekwright.desk.view;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import weekwright.desk.view.PlanPage.Day;
import weekwright.desk.view.PlanPage.Entry;
import weekwright.desk.view.PlanPage.Kind;
import weekwright.desk.view.PlanPage.Lane;
import weekwright.desk.view.PlanPage.Week;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Travel;

/** Lays a judged plan out by week, group and day. */
public final class PlanPages {
    private static final Totals CLEAN = new Totals(0, 0, 0, 0);

    private final Scenario scenario;
    private final Judged judged;
    private final Names names;

    private PlanPages(Scenario scenario, Judged judged) {
        this.scenario = scenario;
        this.judged = judged;
        this.names = new Names(scenario);
    }

    /** The page of a judged plan. */
    public static PlanPage of(Scenario scenario, Judged judged) {
        return new PlanPages(scenario, judged).page();
    }

    /** How a plan stands, in one sentence. */
    public static String verdict(Plan plan) {
        Totals totals = plan.totals();
        return Words.verdict(totals == null ? CLEAN : totals);
    }

    private PlanPage page() {
        List<Week> weeks = new ArrayList<>();
        for (int week = 0; week < scenario.weeks(); week++) {
            weeks.add(week(week));
        }
        Plan plan = judged.plan();
        return new PlanPage(
                scenario.title(),
                Dates.span(scenario.firstDay(), scenario.lastDay()),
                scenario.zone().getId(),
                weeks,
                Standings.of(names, judged),
                plan.solver() == null ? null : Words.made(plan.solver()));
    }

    private Week week(int index) {
        LocalDate first = scenario.firstDay().plusDays(7L * index);
        LocalDate sunday = first.plusDays(6);
        LocalDate last = sunday.isAfter(scenario.lastDay()) ? scenario.lastDay() : sunday;
        String heading = scenario.weeks() == 1
                ? null
                : "Week " + (index + 1) + " of " + scenario.weeks() + ", " + Dates.span(first, last);
        return new Week(
                heading,
                scenario.groups().stream()
                        .map(group -> lane(group, first, last))
                        .toList());
    }

    private Lane lane(Group group, LocalDate first, LocalDate last) {
        List<Day> days = judged.days().stream()
                .filter(day -> day.group().equals(group.id()))
                .filter(day -> !day.date().isBefore(first) && !day.date().isAfter(last))
                .sorted(Comparator.comparing(DayPicture::date))
                .map(day -> day(day, group.id()))
                .toList();
        return new Lane(group.label(), days);
    }

    private Day day(DayPicture day, String group) {
        List<Entry> entries = Stream.of(
                        fixtures(group, day.date()), commitments(group, day.date()), placements(group, day.date()))
                .flatMap(found -> found)
                .sorted(Comparator.comparing(entry -> entry.start().instant(scenario.zone())))
                .toList();
        return new Day(day.date(), day.matchDay(), day.dayClass(), day.demand(), day.load(), entries);
    }

    private Stream<Entry> fixtures(String group, LocalDate date) {
        return scenario.fixtures().stream()
                .filter(fixture -> fixture.groups().contains(group))
                .filter(fixture -> fixture.start().date().equals(date))
                .map(this::entry);
    }

    private Entry entry(Fixture fixture) {
        List<String> notes = new ArrayList<>();
        if (fixture.weight() != FixtureWeight.REGULAR) {
            notes.add(fixture.weight().id() + " fixture");
        }
        if (!fixture.travel().equals(Travel.NONE)) {
            notes.add("travel " + fixture.travel().outMinutes() + " min out, "
                    + fixture.travel().backMinutes() + " back");
        }
        return new Entry(
                Kind.FIXTURE,
                fixture.start(),
                end(fixture.start(), fixture.minutes()),
                fixture.label(),
                null,
                null,
                notes);
    }

    private Stream<Entry> commitments(String group, LocalDate date) {
        return scenario.commitments().stream()
                .filter(commitment -> commitment.groups().contains(group))
                .filter(commitment -> commitment.start().date().equals(date))
                .map(this::entry);
    }

    private Entry entry(Commitment commitment) {
        String effort = commitment.effort() == null
                ? "fixed"
                : "fixed, " + commitment.effort().id();
        return new Entry(
                Kind.FIXED,
                commitment.start(),
                end(commitment.start(), commitment.minutes()),
                commitment.label(),
                null,
                names.facility(commitment.facility()),
                List.of(effort));
    }

    private Stream<Entry> placements(String group, LocalDate date) {
        return judged.plan().placements().stream()
                .filter(placement -> placement.group().equals(group))
                .filter(placement -> placement.start().date().equals(date))
                .map(this::entry);
    }

    private Entry entry(Placement placement) {
        Integer minutes = placement.minutes();
        return new Entry(
                Kind.SESSION,
                placement.start(),
                minutes == null ? null : end(placement.start(), minutes),
                names.family(placement.family()),
                Words.dose(placement.dose()),
                names.facility(placement.facility()),
                Stream.of(
                                names.variant(placement.family(), placement.variant()),
                                Words.whom(placement),
                                names.staff(placement.lead()),
                                Words.pinned(placement.held()))
                        .filter(Objects::nonNull)
                        .toList());
    }

    private Moment end(Moment start, int minutes) {
        Instant end = start.instant(scenario.zone()).plusSeconds(60L * minutes);
        return Moment.at(end, scenario.zone());
    }
}
