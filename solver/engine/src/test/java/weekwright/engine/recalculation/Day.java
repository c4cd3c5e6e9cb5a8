package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import weekwright.model.catalogue.Family;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Pathway;

/**
 * One person's day.
 *
 * @param the all that there is
 * @param line all things of the person, of other days too: with the placements, or without them
 */
record Day(Case the, Person person, LocalDate date, List<Thing> line) {
    private static final Fraction HIGH_FROM = Fraction.of(65, 10);
    private static final Fraction LOW_TO = Fraction.of(55, 10);

    static Day of(Case the, Person person, LocalDate date) {
        return new Day(the, person, date, the.line(person));
    }

    /** The same day had we placed nothing. */
    Day withoutPlacements() {
        return new Day(
                the,
                person,
                date,
                line.stream().filter(thing -> !thing.placed()).toList());
    }

    Day on(LocalDate other) {
        return new Day(the, person, other, line);
    }

    /** Whatever starts on it, in order. */
    List<Thing> things() {
        return line.stream().filter(thing -> thing.date().equals(date)).toList();
    }

    /** What the body feels of it. */
    List<Thing> stimuli() {
        return things().stream().filter(thing -> thing.stimulates(person)).toList();
    }

    boolean hasPlacement() {
        return things().stream().anyMatch(Thing::placed);
    }

    boolean playsFixture() {
        return things().stream().anyMatch(thing -> thing.isPlayedBy(person));
    }

    /** Day demand D: the hardest session and 0.15 of the others, or the load over 110 where that is more. */
    Fraction demand() {
        List<Fraction> each =
                stimuli().stream().map(thing -> the.demand(person, thing)).toList();
        Fraction hardest = each.stream().reduce(Fraction.ZERO, Fraction::max);
        Fraction others = each.stream().reduce(Fraction.ZERO, Fraction::plus).minus(hardest);
        return hardest.plus(others.times(Fraction.of(15, 100))).max(load().dividedBy(Fraction.of(110)));
    }

    boolean isHigh() {
        return !demand().below(HIGH_FROM);
    }

    boolean isLow() {
        return !demand().above(LOW_TO);
    }

    boolean isMiddle() {
        return !isHigh() && !isLow();
    }

    /** High as the legs count it: a day whose hard work is upper body only is not. */
    boolean isHighForRuns() {
        List<Thing> hard = hard();
        return isHigh() && (hard.isEmpty() || !hard.stream().allMatch(thing -> Upper.only(thing.trains())));
    }

    private List<Thing> hard() {
        return stimuli().stream()
                .filter(thing -> the.demand(person, thing).above(LOW_TO))
                .toList();
    }

    /** Planned load in arbitrary units: rating times minutes. */
    Fraction load() {
        return stimuli().stream().map(this::load).reduce(Fraction.ZERO, Fraction::plus);
    }

    private Fraction load(Thing thing) {
        if (thing.isFixture()) {
            return thing.toll()
                    .rpe()
                    .times(thing.minutes() + (long) thing.warmUp())
                    .times(Fraction.of(thing.minutesPlayed(person), thing.minutes()));
        }
        long minutes = thing.minutes() - (long) thing.warmUp() + warmUpThatCounts(thing) - lentMinutes(thing);
        return thing.toll().rpe().times(Math.max(0, minutes));
    }

    /** Minutes of a practice in which the person does something else. */
    int lentMinutes(Thing practice) {
        return stimuli().stream()
                .filter(thing -> thing.isLentBy(practice))
                .mapToInt(Thing::minutes)
                .sum();
    }

    /** A session straight after another shares its warm-up: 5 minutes are left of its own, 10 for a first sprint or lift. */
    private long warmUpThatCounts(Thing thing) {
        List<Thing> planned = stimuli().stream().filter(Thing::isPlannedSession).toList();
        List<Thing> before = planned.subList(0, Math.max(0, planned.indexOf(thing)));
        List<Thing> onTheirOwn =
                before.stream().filter(one -> one.lentBy() == null).toList();
        if (onTheirOwn.isEmpty() || minutesBetween(onTheirOwn.get(onTheirOwn.size() - 1), thing) > 15) {
            return thing.warmUp();
        }
        boolean firstSprint = sprint(thing) && before.stream().noneMatch(Day::sprint);
        boolean firstLift = lift(thing) && before.stream().noneMatch(Day::lift);
        return Math.min(thing.warmUp(), firstSprint || firstLift ? 10 : 5);
    }

    private static long minutesBetween(Thing earlier, Thing later) {
        return Duration.between(earlier.end(), later.start()).toMinutes();
    }

    private static boolean sprint(Thing thing) {
        return thing.highOn(Pathway.MAX_VELOCITY_SPRINT) || thing.highOn(Pathway.ACCELERATION);
    }

    private static boolean lift(Thing thing) {
        Family family = thing.trains();
        return family.facility().equals(List.of(FacilityKind.GYM))
                && Stream.of(Pathway.KNEE_DOMINANT, Pathway.HIP_DOMINANT, Pathway.UPPER_PUSH, Pathway.UPPER_PULL)
                        .anyMatch(family.pathways()::containsKey);
    }

    /** The sessions that make it a high block: those above 5.5, or all where none is; none where it is no block. */
    List<Thing> block() {
        if (!isHigh() || playsFixture()) {
            return List.of();
        }
        List<Thing> hard = hard();
        return hard.isEmpty() ? stimuli() : hard;
    }

    boolean isFree() {
        return whatKeepsItFromBeingFree().isEmpty();
    }

    /** Sessions and fixtures that start on it, recovery apart, and fixtures whose long journey touches it. */
    List<Thing> whatKeepsItFromBeingFree() {
        return line.stream()
                .filter(thing -> thing.family() != null && !thing.isRecovery())
                .filter(thing -> thing.date().equals(date) || travelTouches(thing))
                .toList();
    }

    private boolean travelTouches(Thing fixture) {
        double limit = the.settings().get(person.mainGroup()).number("free-day", "travelMinutes");
        return Journeys.touch(fixture, date, Fraction.of(limit), the.scenario().zone());
    }
}
