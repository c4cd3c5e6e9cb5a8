package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;

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

    /** All things: history, fixtures and commitments first, for who played decides on whose line some placements lie. */
    static List<Thing> of(Scenario scenario, Catalogue catalogue, Roster roster, Plan plan) {
        Things things = new Things(scenario, catalogue, roster);
        scenario.history().stream().filter(LogEntry::done).forEach(entry -> things.all.add(things.done(entry)));
        scenario.fixtures().forEach(fixture -> things.all.add(things.fixture(fixture)));
        scenario.commitments().forEach(commitment -> things.all.add(things.commitment(commitment)));
        List<String> ids = PlacementIds.of(scenario, plan);
        for (int i = 0; i < ids.size(); i++) {
            things.all.add(things.placement(ids.get(i), plan.placements().get(i)));
        }
        return List.copyOf(things.all);
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
                fixture ? start.minus(Duration.ofMinutes(family.warmUpMinutes())) : start,
                end,
                fixture ? family.minutes() : entry.minutes(),
                family.warmUpMinutes(),
                Fraction.of(entry.rpe() != null ? entry.rpe() : family.rpe()),
                Fraction.of(family.demand().neural()),
                Fraction.of(family.demand().tissue()),
                FixtureWeight.REGULAR,
                0,
                0,
                null,
                null,
                members.size(),
                present,
                played);
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
        int before = family.warmUpMinutes() + fixture.travel().outMinutes();
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
                start.minus(Duration.ofMinutes(before)),
                after(end, fixture.travel().backMinutes()),
                full,
                family.warmUpMinutes(),
                Fraction.of(family.rpe()),
                Fraction.of(family.demand().neural()),
                Fraction.of(family.demand().tissue()),
                fixture.weight(),
                fixture.travel().outMinutes(),
                fixture.travel().backMinutes(),
                null,
                null,
                members.size(),
                members,
                played);
    }

    private static Optional<Integer> minutesOf(Person person, List<Appearance> appearances) {
        return appearances.stream()
                .filter(appearance -> appearance.athlete().equals(person.name()))
                .map(Appearance::minutes)
                .findFirst();
    }

    private Thing commitment(Commitment commitment) {
        Family family = commitment.family() == null ? null : catalogue.family(commitment.family());
        Effort effort = commitment.effort();
        Instant start = commitment.start().instant(scenario.zone());
        Instant end = after(start, commitment.minutes());
        List<Person> present = roster.people().stream()
                .filter(person ->
                        person.in(commitment.groups()) || commitment.athletes().contains(person.name()))
                .filter(person -> family == null
                        || !roster.sitsOut(
                                person, family, Dose.FULL, commitment.start().date()))
                .toList();
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
                start,
                end,
                commitment.minutes(),
                family == null ? 0 : Math.min(family.warmUpMinutes(), commitment.minutes()),
                family == null ? Fraction.ZERO : effort == null ? Fraction.of(family.rpe()) : Fraction.of(effort.rpe()),
                family == null
                        ? Fraction.ZERO
                        : effort == null ? Fraction.of(family.demand().neural()) : Fraction.of(effort.demand()),
                family == null
                        ? Fraction.ZERO
                        : effort == null ? Fraction.of(family.demand().tissue()) : Fraction.of(effort.demand()),
                FixtureWeight.REGULAR,
                0,
                0,
                commitment.facility(),
                null,
                headsOf(commitment),
                present,
                Map.of());
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
        int minutes = wholeMinutes(placement, family, aim);
        Instant end = after(start, minutes);
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
                start,
                end,
                minutes,
                Math.min(family.warmUpMinutes(), minutes),
                Fraction.of(family.rpe()),
                Fraction.of(family.demand().neural()),
                Fraction.of(family.demand().tissue()),
                FixtureWeight.REGULAR,
                0,
                0,
                placement.facility(),
                placement.lead(),
                meant(placement.group(), aim, start).size(),
                participants(placement, family, aim, start),
                Map.of());
    }

    /** Warm-up and main part by dose and week, the main part rounded up to five minutes and at least ten. */
    private int wholeMinutes(Placement placement, Family family, @Nullable Aim aim) {
        if (aim == null && placement.minutes() != null) {
            return placement.minutes();
        }
        int week = Math.max(0, Weeks.of(scenario).numberOf(placement.start().date()));
        int main = aim != null && aim.minutes() != null ? aim.minutes() : family.minutes();
        Fraction factor = aim == null ? Fraction.ONE : Fraction.of(aim.weekFactor(week));
        Fraction dosed = Fraction.of(main)
                .times(Fraction.of(thirds(placement.dose()), 3))
                .times(factor);
        long fives = dosed.dividedBy(Fraction.of(5)).roundedUp();
        return family.warmUpMinutes() + (int) Math.max(10, 5 * fives);
    }

    private static int thirds(Dose dose) {
        return switch (dose) {
            case FULL -> 3;
            case REDUCED -> 2;
            case MICRO -> 1;
        };
    }

    /** The group, less those who sit it out; of an aim for those who played, or did not, only these. */
    private List<Person> participants(Placement placement, Family family, @Nullable Aim aim, Instant start) {
        return meant(placement.group(), aim, start).stream()
                .filter(person -> !roster.sitsOut(
                        person, family, placement.dose(), placement.start().date()))
                .toList();
    }

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

    private static Instant after(Instant start, int minutes) {
        return start.plus(Duration.ofMinutes(minutes));
    }
}
