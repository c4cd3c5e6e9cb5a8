package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.Travel;

/** Turns the documents into things with instants and people. */
final class Things {
    private final Scenario scenario;
    private final Catalogue catalogue;
    private final Roster roster;
    private final List<Thing> all = new ArrayList<>();

    private Things(Scenario scenario, Catalogue catalogue, Roster roster) {
        this.scenario = scenario;
        this.catalogue = catalogue;
        this.roster = roster;
    }

    /**
     * All things in order of time. The placements are read last, for who played decides on whose line some of them lie.
     */
    static List<Thing> of(Scenario scenario, Catalogue catalogue, Roster roster, Plan plan) {
        Things things = new Things(scenario, catalogue, roster);
        scenario.history().stream().filter(LogEntry::done).forEach(entry -> things.all.add(things.done(entry)));
        scenario.fixtures().forEach(fixture -> things.all.add(things.fixture(fixture)));
        scenario.commitments().stream()
                .sorted(Comparator.comparingInt(commitment -> whose(scenario, commitment)))
                .forEach(commitment -> things.all.add(things.commitment(commitment)));
        List<String> ids = PlacementIds.of(scenario, plan);
        for (int i = 0; i < ids.size(); i++) {
            things.all.add(things.placement(ids.get(i), plan.placements().get(i)));
        }
        return things.all.stream().sorted(Thing.IN_TIME).toList();
    }

    /** Place of the first group named for it in the scenario's list, or -1: of what comes at one time the first has its say. */
    private static int whose(Scenario scenario, Commitment commitment) {
        return commitment.groups().isEmpty()
                ? -1
                : scenario.groups().stream()
                        .map(Group::id)
                        .toList()
                        .indexOf(commitment.groups().get(0));
    }

    private Thing done(LogEntry entry) {
        Family family = catalogue.family(entry.family());
        boolean fixture = family.role() == Role.FIXTURE;
        List<Person> members = roster.members(List.of(entry.group()));
        List<Person> present = fixture
                ? members
                : members.stream()
                        .filter(person -> !entry.except().contains(person.name()))
                        .toList();
        Map<String, Integer> played = new LinkedHashMap<>();
        if (fixture) {
            members.forEach(person -> played.put(person.name(), minutesPlayed(entry, family, person)));
        }
        Instant start = entry.start().instant(scenario.zone());
        Instant end = after(start, entry.minutes());
        return new Thing(
                fixture ? Thing.Kind.PAST_FIXTURE : Thing.Kind.PAST_SESSION,
                "history " + all.size(),
                all.size(),
                List.of(entry.group()),
                family,
                null,
                entry.dose(),
                start,
                end,
                entry.start().date(),
                fixture ? family.minutes() : entry.minutes(),
                family.warmUpMinutes(),
                Thing.Toll.of(family, entry.rpe() != null ? entry.rpe() : family.rpe()),
                FixtureWeight.REGULAR,
                Travel.NONE,
                null,
                null,
                who(members, members, present),
                played,
                entry.variant(),
                null,
                null);
    }

    private static Thing.Who who(List<Person> meant, List<Person> allowed, List<Person> present) {
        return new Thing.Who(meant.size(), names(meant), names(allowed), names(present));
    }

    private static int minutesPlayed(LogEntry entry, Family family, Person person) {
        if (entry.except().contains(person.name())) {
            return 0;
        }
        return entry.people().stream()
                .filter(report -> report.athlete().equals(person.name()))
                .map(PersonEntry::minutes)
                .filter(minutes -> minutes != null)
                .findFirst()
                .orElse(family.minutes());
    }

    private Thing fixture(Fixture fixture) {
        Family family = catalogue.family(fixture.family());
        List<Person> members = roster.members(fixture.groups());
        int full = fixture.playMinutes() != null ? fixture.playMinutes() : family.minutes();
        Map<String, Integer> played = new LinkedHashMap<>();
        for (Person person : members) {
            played.put(
                    person.name(),
                    minutesOf(person, fixture.played())
                            .or(() -> minutesOf(person, fixture.expected()))
                            .orElse(full));
        }
        Instant start = fixture.start().instant(scenario.zone());
        Instant end = after(start, fixture.minutes());
        return new Thing(
                Thing.Kind.FIXTURE,
                "fixture " + fixture.id(),
                all.size(),
                fixture.groups(),
                family,
                null,
                Dose.FULL,
                start,
                end,
                fixture.start().date(),
                full,
                family.warmUpMinutes(),
                Thing.Toll.of(family, family.rpe()),
                fixture.weight(),
                fixture.travel(),
                null,
                null,
                Thing.Who.all(names(members)),
                played,
                null,
                null,
                null);
    }

    private static Optional<Integer> minutesOf(Person person, List<Appearance> appearances) {
        return appearances.stream()
                .filter(appearance -> appearance.athlete().equals(person.name()))
                .map(Appearance::minutes)
                .findFirst();
    }

    private Thing commitment(Commitment commitment) {
        Family family = commitment.family() == null ? null : catalogue.family(commitment.family());
        Instant start = commitment.start().instant(scenario.zone());
        Instant end = after(start, commitment.minutes());
        List<Person> meant = roster.people().stream()
                .filter(person ->
                        person.in(commitment.groups()) || commitment.athletes().contains(person.name()))
                .toList();
        Set<String> present = names(meant.stream()
                .filter(person -> family == null || !roster.sitsOut(person, family, Dose.FULL, date(commitment)))
                .toList());
        return new Thing(
                Thing.Kind.COMMITMENT,
                "commitment " + commitment.id(),
                all.size(),
                commitment.groups(),
                family,
                null,
                Dose.FULL,
                start,
                end,
                commitment.start().date(),
                commitment.minutes(),
                family == null ? 0 : Math.min(family.warmUpMinutes(), commitment.minutes()),
                toll(commitment, family),
                FixtureWeight.REGULAR,
                Travel.NONE,
                commitment.facility(),
                null,
                new Thing.Who(headsOf(commitment), names(meant), present, present),
                Map.of(),
                null,
                commitment.lends(),
                null);
    }

    private static LocalDate date(Commitment commitment) {
        return commitment.start().date();
    }

    /** The effort named sets rating, neural and tissue demand; else they are the family's. */
    private static Thing.Toll toll(Commitment commitment, @Nullable Family family) {
        Effort effort = commitment.effort();
        if (family == null) {
            return new Thing.Toll(Fraction.ZERO, Fraction.ZERO, Fraction.ZERO);
        }
        return effort == null
                ? Thing.Toll.of(family, family.rpe())
                : new Thing.Toll(
                        Fraction.of((long) effort.rpe()), Fraction.of((long) effort.demand()), Fraction.of((long)
                                effort.demand()));
    }

    private int headsOf(Commitment commitment) {
        return commitment.groups().isEmpty()
                ? commitment.athletes().size()
                : (int) commitment.groups().stream().mapToLong(roster::heads).sum();
    }

    private Thing placement(String id, Placement placement) {
        Family family = catalogue.family(placement.family());
        Aim aim = PlacementIds.aimOf(scenario, placement);
        Instant start = placement.start().instant(scenario.zone());
        int main = mainMinutes(placement, family, aim);
        Integer given = aim == null ? placement.minutes() : null;
        int mainIfLent = given == null ? main : given;
        String lentBy = lender(placement, start, mainIfLent);
        int warmUp = lentBy == null ? warmUp(placement, family, aim) : 0;
        int minutes = lentBy == null ? main + warmUp : mainIfLent;
        Instant end = after(start, minutes);
        List<Person> meant = meant(placement.group(), aim, start);
        List<Person> allowed = meant.stream()
                .filter(person -> !roster.sitsOut(
                        person, family, placement.dose(), placement.start().date()))
                .toList();
        return new Thing(
                Thing.Kind.PLACEMENT,
                id,
                all.size(),
                List.of(placement.group()),
                family,
                aim,
                placement.dose(),
                start,
                end,
                placement.start().date(),
                minutes,
                warmUp,
                Thing.Toll.of(family, family.rpe()),
                FixtureWeight.REGULAR,
                Travel.NONE,
                placement.facility(),
                placement.lead(),
                who(meant, allowed, allowed),
                Map.of(),
                placement.variant(),
                null,
                lentBy);
    }

    /** The practice in whose lent minutes a micro session's main part lies, or null. */
    private @Nullable String lender(Placement placement, Instant start, int main) {
        Instant end = after(start, main);
        return all.stream()
                .filter(thing -> thing.lends() != null && thing.family() != null)
                .filter(thing -> thing.groups().contains(placement.group()))
                .filter(thing -> placement.dose() == Dose.MICRO && main > 0)
                .filter(thing -> !start.isBefore(LentMinutes.from(thing)) && !end.isAfter(LentMinutes.to(thing)))
                .map(Thing::key)
                .findFirst()
                .orElse(null);
    }

    /** The family's warm-up; of an extra session with minutes of its own no more than these. */
    private static int warmUp(Placement placement, Family family, @Nullable Aim aim) {
        return aim == null && placement.minutes() != null
                ? Math.min(family.warmUpMinutes(), placement.minutes())
                : family.warmUpMinutes();
    }

    /** The main part by dose and week, rounded up to five minutes and at least ten; none where a family has none. */
    private int mainMinutes(Placement placement, Family family, @Nullable Aim aim) {
        if (aim == null && placement.minutes() != null) {
            return placement.minutes() - warmUp(placement, family, null);
        }
        int week = Math.max(0, Weeks.of(scenario).numberOf(placement.start().date()));
        int main = aim != null && aim.minutes() != null ? aim.minutes() : family.minutes();
        if (main == 0) {
            return 0;
        }
        Fraction factor = aim == null ? Fraction.ONE : Fraction.of(aim.weekFactor(week));
        Fraction dosed = Fraction.of(main)
                .times(Fraction.of(thirds(placement.dose()), 3))
                .times(factor);
        long fives = dosed.dividedBy(Fraction.of(5)).roundedUp();
        return (int) Math.max(10, 5 * fives);
    }

    private static int thirds(Dose dose) {
        return switch (dose) {
            case FULL -> 3;
            case REDUCED -> 2;
            case MICRO -> 1;
        };
    }

    /** The group; of an aim for those who played the last fixture, or did not, only these. */
    private List<Person> meant(String group, @Nullable Aim aim, Instant start) {
        List<Person> members = roster.members(List.of(group));
        if (aim == null || aim.whom() == Share.ALL) {
            return members;
        }
        boolean wanted = aim.whom() == Share.PLAYED;
        return members.stream()
                .filter(person -> playedLast(person, group, start) == wanted)
                .toList();
    }

    private boolean playedLast(Person person, String group, Instant before) {
        return all.stream()
                .filter(thing -> thing.isFixture() && thing.groups().contains(group))
                .filter(thing -> thing.start().isBefore(before))
                .max(Comparator.comparing(Thing::start))
                .map(thing -> thing.minutesPlayed(person) > 0)
                .orElse(true);
    }

    private static Set<String> names(List<Person> people) {
        return people.stream().map(Person::name).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Instant after(Instant start, int minutes) {
        return start.plus(Duration.ofMinutes(minutes));
    }
}
