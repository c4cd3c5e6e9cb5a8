package weekwright.desk.view.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.plan.Entries;
import weekwright.desk.view.plan.Entries.Laid;
import weekwright.desk.view.plan.PlanPage;
import weekwright.desk.view.week.Lay.Hill;
import weekwright.desk.view.week.TimeAxis.Stretch;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.PersonPicture;
import weekwright.model.catalogue.DayClass;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Room;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Window;

/** The lanes of a plan: by group, by place or by athlete. */
public final class Lays {
    /** The lane of what needs no place. */
    static final String ANYWHERE = "anywhere";

    private static final int MINUTES_OF_A_POINT = 60;

    private final Scenario scenario;
    private final Entries entries;

    Lays(Scenario scenario, Entries entries) {
        this.scenario = scenario;
        this.entries = entries;
    }

    /** A lane a group. */
    List<Lay> byGroup(Judged judged) {
        return scenario.groups().stream()
                .map(group -> new Lay(
                        group.id(),
                        group.label(),
                        null,
                        entries.all().stream()
                                .filter(laid -> laid.groups().contains(group.id()))
                                .toList(),
                        hills(judged.days().stream().filter(day -> day.group().equals(group.id()))),
                        hours(group)))
                .toList();
    }

    private static List<Hill> hills(Stream<DayPicture> days) {
        return days.sorted(Comparator.comparing(DayPicture::date))
                .map(day -> new Hill(
                        day.date(),
                        day.matchDay(),
                        day.demand(),
                        day.dayClass().id(),
                        day.dayClass().id(),
                        day.dayClass() == DayClass.FREE ? "" : Dates.decimal(day.demand()),
                        day.load() == 0 ? "" : "load " + Dates.grouped(Math.round(day.load())) + " AU"))
                .toList();
    }

    private OpenHours hours(Group group) {
        List<Fixture> fixtures = scenario.fixtures().stream()
                .filter(fixture -> fixture.groups().contains(group.id()))
                .toList();
        return new OpenHours(group.windows(), group.away(), "Away", fixtures);
    }

    /** A lane a place, and one for what needs none. */
    List<Lay> byPlace() {
        List<Lay> lays = new ArrayList<>();
        for (Facility place : scenario.facilities()) {
            lays.add(place(
                    place.id(),
                    place.label(),
                    room(place.room()),
                    place.id(),
                    new OpenHours(place.open(), place.closed(), "Closed", List.of())));
        }
        Lay anywhere =
                place(ANYWHERE, "Anywhere", null, null, new OpenHours(List.of(), List.of(), "Closed", List.of()));
        if (!anywhere.laid().isEmpty()) {
            lays.add(anywhere);
        }
        return lays;
    }

    private Lay place(String id, String label, @Nullable String note, @Nullable String facility, OpenHours hours) {
        List<Laid> laid = entries.all().stream()
                .filter(one -> one.entry().kind() != PlanPage.Kind.FIXTURE)
                .filter(one -> Objects.equals(one.facility(), facility))
                .toList();
        List<Hill> days = dates().map(date -> inUse(date, laid)).toList();
        return new Lay(id, label, note, laid, days, hours);
    }

    private static @Nullable String room(@Nullable Room room) {
        if (room == null || room.groups() == null) {
            return null;
        }
        return "room for " + room.groups() + (room.groups() == 1 ? " group" : " groups");
    }

    private Stream<LocalDate> dates() {
        return scenario.firstDay().datesUntil(scenario.lastDay().plusDays(1));
    }

    private static Hill inUse(LocalDate date, List<Laid> laid) {
        int minutes = laid.stream()
                .map(one -> TimeAxis.on(date, one.entry().start(), one.entry().end()))
                .filter(stretch -> !stretch.isEmpty())
                .mapToInt(stretch -> stretch.to() - stretch.from())
                .sum();
        boolean free = minutes == 0;
        return new Hill(
                date,
                null,
                (double) minutes / MINUTES_OF_A_POINT,
                free ? "free" : "use",
                free ? "not used" : "in use",
                "",
                free ? "" : Dates.hours(minutes));
    }

    /** A lane an athlete who is known by name. */
    List<Lay> byAthlete(List<PersonPicture> people) {
        return people.stream().map(this::person).toList();
    }

    private Lay person(PersonPicture person) {
        Athlete athlete = scenario.athletes().stream()
                .filter(one -> one.id().equals(person.athlete()))
                .findFirst()
                .orElseThrow();
        List<Laid> laid = entries.all().stream()
                .filter(one -> takesPart(one, person, athlete))
                .toList();
        List<Group> groups = scenario.groups().stream()
                .filter(group -> athlete.groups().contains(group.id()))
                .toList();
        List<Window> windows = !athlete.windows().isEmpty()
                ? athlete.windows()
                : groups.isEmpty() ? List.of() : groups.get(0).windows();
        List<Fixture> fixtures = scenario.fixtures().stream()
                .filter(fixture -> fixture.groups().stream().anyMatch(athlete.groups()::contains))
                .toList();
        String note = String.join(", ", groups.stream().map(Group::label).toList());
        return new Lay(
                athlete.id(),
                athlete.name(),
                note,
                laid,
                hills(person.days().stream()),
                new OpenHours(windows, athlete.away(), "Away", fixtures));
    }

    private static boolean takesPart(Laid laid, PersonPicture person, Athlete athlete) {
        return laid.placement() != null
                ? person.sessions().contains(laid.id())
                : laid.athletes().contains(athlete.id())
                        || laid.groups().stream().anyMatch(athlete.groups()::contains);
    }

    /** All stretches that must be seen on a lane's axis. */
    static List<Stretch> stretches(Lay lay, LocalDate first, LocalDate last) {
        List<Stretch> all = new ArrayList<>();
        for (LocalDate date : first.datesUntil(last.plusDays(1)).toList()) {
            all.addAll(lay.shut().open(date));
            lay.laid().stream()
                    .map(laid ->
                            TimeAxis.on(date, laid.entry().start(), laid.entry().end()))
                    .filter(stretch -> !stretch.isEmpty())
                    .forEach(all::add);
        }
        return all;
    }
}
