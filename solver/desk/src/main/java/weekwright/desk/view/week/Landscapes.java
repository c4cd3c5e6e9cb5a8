package weekwright.desk.view.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.Words;
import weekwright.desk.view.plan.Entries;
import weekwright.desk.view.plan.Entries.Laid;
import weekwright.desk.view.plan.PlanPage;
import weekwright.desk.view.week.Lay.Closed;
import weekwright.desk.view.week.Lay.Hill;
import weekwright.desk.view.week.TimeAxis.Stretch;
import weekwright.desk.view.week.Tracks.Track;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.PersonPicture;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.DayClass;
import weekwright.model.catalogue.Demands;
import weekwright.model.plan.Placement;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Scenario;

/** Lays a judged plan out as a landscape. */
public final class Landscapes {
    private final Scenario scenario;
    private final LookAt look;
    private final Names names;
    private final Catalogue catalogue;
    private final List<Lay> lays;
    private final Set<String> broken;

    private Landscapes(Scenario scenario, Judged judged, Supplier<List<PersonPicture>> people, LookAt look) {
        this.scenario = scenario;
        this.look = look;
        names = new Names(scenario);
        catalogue = Catalogue.builtIn().with(scenario.catalogue());
        Lays all = new Lays(scenario, new Entries(scenario, names, judged.plan()));
        lays = switch (look.by()) {
            case GROUP -> all.byGroup(judged);
            case PLACE -> all.byPlace();
            case ATHLETE -> all.byAthlete(people.get());
        };
        broken = judged.plan().findings().stream()
                .filter(finding -> finding.level() == RuleLevel.MUST)
                .flatMap(finding -> finding.placements().stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * The landscape of a judged plan.
     *
     * @param people what each athlete does; asked for only where athletes are the lanes
     */
    public static Landscape of(Scenario scenario, Judged judged, Supplier<List<PersonPicture>> people, LookAt look) {
        return new Landscapes(scenario, judged, people, look).landscape();
    }

    /** The lane in which the starts of a held session are shown. */
    record HeldLane(String mark, TimeAxis axis) {}

    /**
     * The lane of a held session: its group's, that of the place in question, or an athlete's.
     *
     * @param facility id of the place in question, or an empty text
     * @param asked mark of the lane where it was taken up, or an empty text
     * @return null where it is in no lane that is shown
     */
    static @Nullable HeldLane heldLane(Open open, LookAt look, String session, String facility, String asked) {
        Landscapes all = new Landscapes(open.scenario(), open.judged(), open.people(), look);
        String group = session.substring(0, session.indexOf('/'));
        return all.lays.stream()
                .filter(lay -> switch (look.by()) {
                    case GROUP -> lay.id().equals(group);
                    case PLACE -> lay.id().equals(facility.isEmpty() ? Lays.ANYWHERE : facility);
                    case ATHLETE ->
                        lay.laid().stream().anyMatch(laid -> laid.id().equals(session));
                })
                .min(Comparator.comparing(lay -> !mark(lay.id()).equals(asked)))
                .map(lay -> new HeldLane(mark(lay.id()), all.axis(lay)))
                .orElse(null);
    }

    /** The id of a session, fixture or commitment as it stands in a page, where no stroke may be. */
    public static String mark(String id) {
        return "at-" + id.replace("+", "__").replace("/", "_");
    }

    private Landscape landscape() {
        List<Landscape.Week> weeks =
                IntStream.rangeClosed(first(), last()).mapToObj(this::week).toList();
        return new Landscape(weeks, look.week() != LookAt.ALL);
    }

    private TimeAxis axis(Lay lay) {
        return TimeAxis.over(Lays.stretches(lay, monday(first()), sunday(last())));
    }

    private int first() {
        return look.week() == LookAt.ALL ? 0 : look.week() - 1;
    }

    private int last() {
        return look.week() == LookAt.ALL ? scenario.weeks() - 1 : look.week() - 1;
    }

    private LocalDate monday(int week) {
        return scenario.firstDay().plusDays(7L * week);
    }

    private LocalDate sunday(int week) {
        LocalDate last = monday(week).plusDays(6);
        return last.isAfter(scenario.lastDay()) ? scenario.lastDay() : last;
    }

    private Landscape.Week week(int index) {
        List<LocalDate> dates =
                monday(index).datesUntil(sunday(index).plusDays(1)).toList();
        return new Landscape.Week(
                index + 1,
                Dates.span(dates.get(0), dates.get(dates.size() - 1)),
                dates.stream().map(Landscapes::head).toList(),
                lays.stream().map(lay -> lane(lay, dates)).toList());
    }

    private static Landscape.Head head(LocalDate date) {
        return new Landscape.Head(date.toString(), Dates.weekday(date), Dates.dayOfMonth(date));
    }

    private Landscape.Lane lane(Lay lay, List<LocalDate> dates) {
        TimeAxis axis = axis(lay);
        List<Landscape.Day> days =
                dates.stream().map(date -> day(lay, date, axis)).toList();
        return new Landscape.Lane(
                mark(lay.id()), lay.label(), lay.note(), new Landscape.Axis(axis.rows(), axis.hours()), days);
    }

    private Landscape.Day day(Lay lay, LocalDate date, TimeAxis axis) {
        int index = IntStream.range(0, lay.days().size())
                .filter(at -> lay.days().get(at).date().equals(date))
                .findFirst()
                .orElseThrow();
        Hill hill = lay.days().get(index);
        String matchDay = Dates.matchDay(hill.matchDay());
        return new Landscape.Day(
                date.toString(),
                Dates.day(date),
                Dates.weekday(date),
                matchDay,
                Skyline.over(lay.days(), index),
                shades(lay.shut().on(date), axis),
                cards(lay, date, axis));
    }

    private static List<Landscape.Shade> shades(List<Closed> closed, TimeAxis axis) {
        List<Landscape.Shade> shades = new ArrayList<>();
        for (Closed one : closed) {
            Stretch shown = axis.shown(one.stretch());
            if (!shown.isEmpty()) {
                shades.add(new Landscape.Shade(one.kind(), axis.row(shown.from()), axis.rows(shown), one.why()));
            }
        }
        return shades;
    }

    private List<Landscape.Card> cards(Lay lay, LocalDate date, TimeAxis axis) {
        List<Laid> laid =
                lay.laid().stream().filter(one -> !stretch(one, date).isEmpty()).toList();
        List<Track> tracks =
                Tracks.of(laid.stream().map(one -> stretch(one, date)).toList());
        List<Landscape.Card> cards = new ArrayList<>();
        for (int i = 0; i < laid.size(); i++) {
            cards.add(card(lay, laid.get(i), axis, axis.shown(stretch(laid.get(i), date)), tracks.get(i)));
        }
        return cards;
    }

    private static Stretch stretch(Laid laid, LocalDate date) {
        return TimeAxis.on(date, laid.entry().start(), laid.entry().end());
    }

    private Landscape.Card card(Lay lay, Laid laid, TimeAxis axis, Stretch shown, Track track) {
        PlanPage.Entry entry = laid.entry();
        Placement placement = laid.placement();
        String pinned = placement == null ? null : Words.pinned(placement.held());
        List<String> notes = new ArrayList<>(entry.notes());
        notes.remove(pinned);
        if (entry.dose() != null) {
            notes.add(0, entry.dose());
        }
        boolean one = look.by() == LookAt.By.GROUP || laid.groups().isEmpty();
        return new Landscape.Card(
                mark(laid.id()) + (look.by() == LookAt.By.GROUP && laid.groups().size() < 2 ? "" : "." + lay.id()),
                laid.id(),
                kind(entry.kind()),
                placement == null ? "free" : demand(placement),
                axis.row(shown.from()),
                axis.rows(shown),
                track.track(),
                track.of(),
                Dates.clock(entry.start()),
                entry.end() == null ? "" : Dates.clock(entry.end()),
                entry.label(),
                one ? null : group(laid.groups()),
                look.by() == LookAt.By.PLACE ? null : entry.place(),
                notes,
                pinned,
                broken.contains(laid.id()));
    }

    private @Nullable String group(List<String> groups) {
        boolean onlyOne = scenario.groups().size() == 1;
        return onlyOne
                ? null
                : String.join(", ", groups.stream().map(names::group).toList());
    }

    private static Landscape.Kind kind(PlanPage.Kind kind) {
        return switch (kind) {
            case FIXTURE -> Landscape.Kind.FIXTURE;
            case FIXED -> Landscape.Kind.FIXED;
            case SESSION -> Landscape.Kind.SESSION;
        };
    }

    private String demand(Placement placement) {
        return catalogue
                .find(placement.family())
                .map(family -> Demands.classOf(family, false))
                .orElse(DayClass.LOW)
                .id();
    }
}
