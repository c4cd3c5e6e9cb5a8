package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Hours;
import weekwright.model.catalogue.Role;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;

/**
 * A week of one squad of equals, with all that a proof needs: everywhere that a session may lie, what two sessions cost
 * each other on different days, and every day that can be made of them. Stated from how-rules-are-read.md; the things
 * themselves (instants, loads, demands) are the second calculation's, and no judge of the engine is asked.
 */
final class ProofWeek {
    private static final int FRESH_POINTS = 8;
    private static final int NEW_SKILL_POINTS = 16;
    private static final int TIRING_FROM_ORDER = 3;
    private static final int MIDDLE_POINTS = 10;
    private static final int PREFERRED_POINTS = 2;
    private static final int TOLERANCE_MINUTES = 4 * 60;
    private static final int BEYOND_MINUTES = 12 * 60;
    private static final int NIGHT_MINUTES = 8 * 60;
    private static final int ONE_VISIT_MINUTES = 30;

    /** A place for a session, and what it costs by itself and with what is fixed, in tenths. */
    record Option(int index, Aim aim, Placement placement, Thing thing, int cost) {}

    /** A high block: first start and last end in epoch minutes, hours to the next in minutes, qualities as bits. */
    record Block(long start, long end, long crossMinutes, int high, boolean ours) {}

    /** A day as it can be made of options. */
    record Made(
            List<Option> options,
            int cost,
            boolean high,
            boolean highWithout,
            boolean highRunning,
            boolean busy,
            @Nullable Block block) {}

    final Scenario scenario;
    final Group group;
    final List<Option> options = new ArrayList<>();
    private final Case the;
    private final Person person;
    private final List<Thing> fixed;

    ProofWeek(Scenario scenario) {
        this.scenario = scenario;
        group = scenario.groups().get(0);
        boolean plain = scenario.groups().size() == 1
                && scenario.staff().isEmpty()
                && scenario.days() == 7
                && scenario.athletes().stream()
                        .allMatch(athlete -> athlete.restrictions().isEmpty())
                && group.aims().stream().allMatch(aim -> aim.whom() == Share.ALL);
        if (!plain) {
            throw new IllegalArgumentException("a proof is for one week of one squad of equals without staff");
        }
        Map<String, Placement> thinkable = thinkable();
        Plan all = plan(List.copyOf(thinkable.values()));
        the = Case.of(scenario, Catalogue.builtIn(), Rulebook.builtIn(), all);
        person = the.people().get(0);
        fixed = the.things().stream().filter(thing -> !thing.placed()).toList();
        for (Thing thing : the.placements()) {
            Placement placement = Objects.requireNonNull(thinkable.get(thing.key()));
            if (possible(thing)) {
                options.add(new Option(
                        options.size(), Objects.requireNonNull(thing.aim()), placement, thing, aloneCost(thing)));
            }
        }
    }

    /** A plan of some placements and nothing else. */
    Plan plan(List<Placement> placements) {
        return new Plan(1, scenario.id(), null, null, null, placements, List.of(), List.of(), null, List.of());
    }

    private Map<String, Placement> thinkable() {
        Catalogue catalogue = Catalogue.builtIn().with(scenario.catalogue());
        Map<String, Placement> all = new LinkedHashMap<>();
        for (Aim aim : group.aims()) {
            Family family = catalogue.family(aim.family());
            int number = 1;
            for (LocalDate date : dates()) {
                for (int minute = 0; minute < 24 * 60; minute += scenario.gridMinutes()) {
                    if (!free(date, minute)) {
                        continue;
                    }
                    for (String facility : facilities(family)) {
                        for (Dose dose : aim.doses()) {
                            String id = group.id() + "/" + aim.key() + "/" + scenario.firstDay() + "/" + number++;
                            Moment start = Moment.of(date.atStartOfDay().plusMinutes(minute));
                            String place = facility.isEmpty() ? null : facility;
                            all.put(
                                    id,
                                    new Placement(
                                            id, group.id(), aim.family(), start, null, place, null, dose, null, null));
                        }
                    }
                }
            }
        }
        return all;
    }

    /** Whether the group has time at a start; how long, {@link #possible} asks. Without this all else would take hours. */
    private boolean free(LocalDate date, int minute) {
        return group.windows().isEmpty()
                || group.windows().stream()
                        .filter(window -> window.holdsOn(date))
                        .anyMatch(window -> window.from().minutes() <= minute
                                && minute < window.to().minutes());
    }

    private List<String> facilities(Family family) {
        if (family.facility().isEmpty()) {
            return List.of("");
        }
        return scenario.facilities().stream()
                .filter(facility -> facility.offers().stream().anyMatch(family.facility()::contains))
                .filter(facility -> family.straightMetres() == null
                        || facility.straightMetres() == null
                        || facility.straightMetres() >= family.straightMetres())
                .map(Facility::id)
                .toList();
    }

    List<LocalDate> dates() {
        return Stream.iterate(scenario.firstDay(), date -> date.plusDays(1))
                .limit(scenario.days())
                .toList();
    }

    /** Whether an option breaks no must by itself or with what is fixed. */
    private boolean possible(Thing thing) {
        boolean inside = PlaceAndTime.minutesOutside(thing, group.windows(), group.away(), scenario.zone()) == 0;
        boolean open = scenario.facilities().stream()
                .filter(facility -> facility.id().equals(thing.facility()))
                .allMatch(facility ->
                        PlaceAndTime.minutesOutside(thing, facility.open(), facility.closed(), scenario.zone()) == 0);
        return inside && open && fixed.stream().allMatch(other -> fits(thing, other));
    }

    private boolean fits(Thing thing, Thing other) {
        if (other.isFixture() && !allowedRound(thing, other)) {
            return false;
        }
        return other.start().isBefore(thing.start()) ? fitsInOrder(other, thing) : fitsInOrder(thing, other);
    }

    /** Musts of two things, the earlier first, that do not ask what else the day holds. */
    boolean fitsInOrder(Thing earlier, Thing later) {
        boolean now = !earlier.past() && !later.past();
        long between = minutes(Duration.between(earlier.occupiedTo(), later.occupiedFrom()));
        if (now && between < transfer(earlier, later)) {
            return false;
        }
        boolean nextDay = earlier.date().plusDays(1).equals(later.date());
        if (nextDay && earlier.family() != null && later.family() != null && between < NIGHT_MINUTES) {
            return false;
        }
        if (!earlier.isSession() || !later.isSession()) {
            return true;
        }
        if (earlier.date().equals(later.date())) {
            return !earlier.trains().id().equals(later.trains().id())
                    || List.of(Role.RECOVERY, Role.PRACTICE)
                            .contains(earlier.trains().role());
        }
        return shared(earlier, later) == 0
                || gap(earlier, later)
                        >= dosed(earlier, earlier.trains().againHours().must());
    }

    private boolean allowedRound(Thing thing, Thing fixture) {
        if (fixture.start().isBefore(thing.start())) {
            double hours =
                    AfterHours.of(fixture.trains(), thing).map(Hours::must).orElse(0.0);
            return gap(fixture, thing) >= hours * 60;
        }
        Hours micro = thing.trains().beforeFixtureMicroHours();
        Hours asked = thing.dose() == Dose.MICRO && micro != null
                ? micro
                : thing.trains().beforeFixtureHours();
        boolean judged = fixture.weight() != FixtureWeight.MINOR && asked != null;
        boolean inTime = !judged || gap(thing, fixture) >= asked.must() * 60;
        return inTime && (!thing.isPrimer() || gap(thing, fixture) >= 3 * 60);
    }

    private int transfer(Thing one, Thing other) {
        return one.facility() == null
                        || other.facility() == null
                        || one.facility().equals(other.facility())
                ? 0
                : scenario.transfers().stream()
                        .filter(transfer -> transfer.between().containsAll(List.of(one.facility(), other.facility())))
                        .mapToInt(transfer -> transfer.minutes())
                        .findFirst()
                        .orElse(0);
    }

    private int aloneCost(Thing thing) {
        int cost = 0;
        Aim aim = Objects.requireNonNull(thing.aim());
        if (aim.prefer() != null) {
            cost += outsidePreferred(thing, aim) ? 10 * PREFERRED_POINTS : 0;
            List<String> places = aim.prefer().facilities();
            cost += !places.isEmpty() && !places.contains(thing.facility()) ? 10 * PREFERRED_POINTS : 0;
        }
        for (Thing other : fixed) {
            boolean earlier = other.start().isBefore(thing.start());
            cost += earlier ? pathwayGap(other, thing) : pathwayGap(thing, other);
        }
        return cost;
    }

    private boolean outsidePreferred(Thing thing, Aim aim) {
        int from = thing.start().atZone(scenario.zone()).getHour() * 60
                + thing.start().atZone(scenario.zone()).getMinute();
        var prefer = Objects.requireNonNull(aim.prefer());
        return (prefer.from() != null && from < prefer.from().minutes())
                || (prefer.to() != null && from + thing.minutes() > prefer.to().minutes());
    }

    /** What the same quality on two days costs where the hours wanted are missed, in tenths. */
    int pathwayGap(Thing earlier, Thing later) {
        boolean apart =
                earlier.isSession() && later.isSession() && !earlier.date().equals(later.date());
        Double want = apart && shared(earlier, later) != 0
                ? earlier.trains().againHours().want()
                : null;
        return want == null ? 0 : hourPoints(dosed(earlier, want), gap(earlier, later));
    }

    /** Points for a gap below the hours wanted: one an hour to twelve hours short, two beyond; in tenths, half up. */
    static int hourPoints(double wantedMinutes, long gapMinutes) {
        long shortBy = Math.max(0, Math.round(wantedMinutes) - TOLERANCE_MINUTES - gapMinutes);
        long weighed = shortBy + Math.max(0, shortBy - BEYOND_MINUTES);
        return (int) ((10 * weighed + 30) / 60);
    }

    /** Every day that can be made of the options of a date without breaking a must, the empty one first. */
    List<Made> days(LocalDate date) {
        List<Option> own = options.stream()
                .filter(option -> option.thing().date().equals(date))
                .sorted(Comparator.comparing(Option::thing, Thing.IN_TIME))
                .toList();
        List<Made> made = new ArrayList<>();
        extend(date, own, 0, new ArrayList<>(), made);
        return made;
    }

    private void extend(LocalDate date, List<Option> own, int from, List<Option> chosen, List<Made> made) {
        Made day = made(date, chosen);
        if (chosen.isEmpty() || visits(date, chosen) <= 2) {
            made.add(day);
        }
        for (int i = from; i < own.size(); i++) {
            Option next = own.get(i);
            boolean fits = chosen.stream().allMatch(option -> fitsInOrder(option.thing(), next.thing()));
            long same =
                    chosen.stream().filter(option -> option.aim() == next.aim()).count();
            if (fits && same < next.aim().perWeek().most()) {
                chosen.add(next);
                extend(date, own, i + 1, chosen, made);
                chosen.remove(chosen.size() - 1);
            }
        }
    }

    private int visits(LocalDate date, List<Option> chosen) {
        List<Thing> things = line(chosen).stream()
                .filter(thing -> thing.date().equals(date) && thing.family() != null)
                .sorted(Comparator.comparing(Thing::occupiedFrom))
                .toList();
        int visits = 0;
        long until = Long.MIN_VALUE / 2;
        for (Thing thing : things) {
            visits += minute(thing.occupiedFrom()) - until > ONE_VISIT_MINUTES ? 1 : 0;
            until = Math.max(until, minute(thing.occupiedTo()));
        }
        return visits;
    }

    private List<Thing> line(List<Option> chosen) {
        return Stream.concat(fixed.stream(), chosen.stream().map(Option::thing))
                .sorted(Thing.IN_TIME)
                .toList();
    }

    private Made made(LocalDate date, List<Option> chosen) {
        Day day = new Day(the, person, date, line(chosen));
        boolean middle = day.isMiddle() && !chosen.isEmpty() && middleIsJudged(date);
        return new Made(
                List.copyOf(chosen),
                (middle ? 10 * MIDDLE_POINTS : 0) + inversions(day),
                day.isHigh(),
                day.withoutPlacements().isHigh(),
                day.isHighForRuns(),
                !day.isFree(),
                block(day));
    }

    /** A day of which only what is fixed is known. */
    Made fixedDay(LocalDate date) {
        return made(date, List.of());
    }

    private boolean middleIsJudged(LocalDate date) {
        return the.fixturesOf(group.id()).stream()
                .map(fixture -> ChronoUnit.DAYS.between(fixture.date(), date))
                .noneMatch(days -> days == 1 || days == -1 || days == -2);
    }

    private static int inversions(Day day) {
        List<Thing> planned =
                day.things().stream().filter(Thing::isPlannedSession).toList();
        int tenths = 0;
        for (Thing earlier : planned) {
            for (Thing later : planned) {
                Integer first = earlier.trains().order();
                Integer second = later.trains().order();
                boolean inOrder = earlier.start().isBefore(later.start()) && (earlier.placed() || later.placed());
                if (inOrder && first != null && second != null && first > second) {
                    boolean newSkill = later.aim() != null && later.aim().learning() && first >= TIRING_FROM_ORDER;
                    tenths += 10 * (newSkill ? NEW_SKILL_POINTS : FRESH_POINTS);
                }
            }
        }
        return tenths;
    }

    private static @Nullable Block block(Day day) {
        List<Thing> sessions = day.block();
        if (sessions.isEmpty()) {
            return null;
        }
        long cross = 0;
        int high = 0;
        for (Thing session : sessions) {
            cross = Math.max(cross, dosed(session, session.trains().crossHours().must()));
            high |= high(session);
        }
        return new Block(
                sessions.stream().mapToLong(s -> minute(s.start())).min().orElseThrow(),
                sessions.stream().mapToLong(s -> minute(s.end())).max().orElseThrow(),
                cross,
                high,
                sessions.stream().anyMatch(Thing::placed));
    }

    /** Whether the plan week of a date holds a fixture of the group. */
    boolean fixtureInWeekOf(LocalDate date) {
        int week = the.weeks().numberOf(date);
        return the.fixturesOf(group.id()).stream().anyMatch(f -> the.weeks().numberOf(f.date()) == week);
    }

    /** Commitments of a family in the week. */
    int commitments(String family) {
        return (int) scenario.commitments().stream()
                .filter(one -> family.equals(one.family()) && one.groups().contains(group.id()))
                .filter(one -> dates().contains(one.start().date()))
                .count();
    }

    private static long dosed(Thing earlier, double hours) {
        return Math.round(hours * 60 * (earlier.dose() == Dose.MICRO ? 0.6 : 1));
    }

    private static int shared(Thing one, Thing other) {
        return high(one) & high(other);
    }

    private static int high(Thing thing) {
        return thing.highPathways().stream().mapToInt(p -> 1 << p.ordinal()).sum();
    }

    private static long gap(Thing earlier, Thing later) {
        return minutes(Duration.between(earlier.end(), later.start()));
    }

    private static long minutes(Duration duration) {
        return duration.toMinutes();
    }

    private static long minute(java.time.Instant instant) {
        return instant.getEpochSecond() / 60;
    }
}
