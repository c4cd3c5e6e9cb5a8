package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.PerWeek;

/** Who comes to which placement: a few people with something else to do sit a session out, many do not. */
final class Attendance {
    private final Case the;

    /** @param the everything, with everybody present whom no clinician keeps away */
    Attendance(Case the) {
        this.the = the;
    }

    /** The same things, attended by those who come. */
    List<Thing> things() {
        Map<String, Set<String>> absent = new LinkedHashMap<>();
        for (List<Person> cohort : the.cohorts()) {
            for (Thing placement : satOutBy(cohort)) {
                cohort.forEach(person -> absent.computeIfAbsent(placement.key(), key -> new LinkedHashSet<>())
                        .add(person.name()));
            }
        }
        return the.things().stream()
                .map(thing -> thing.placed() ? without(absent.getOrDefault(thing.key(), Set.of()), thing) : thing)
                .toList();
    }

    private static Thing without(Set<String> absent, Thing placement) {
        Set<String> present = new LinkedHashSet<>(placement.present());
        present.removeAll(absent);
        return placement.attendedBy(present);
    }

    /** Main group first, then in order of time; what is fixed is attended always. */
    private List<Thing> satOutBy(List<Person> cohort) {
        Person person = cohort.get(0);
        List<Thing> attended = new ArrayList<>(
                the.line(person).stream().filter(thing -> !thing.placed()).toList());
        List<Thing> satOut = new ArrayList<>();
        the.line(person).stream()
                .filter(Thing::placed)
                .sorted(Comparator.comparing(
                                (Thing placement) -> person.groups().indexOf(placement.group()))
                        .thenComparing(Thing.IN_TIME))
                .forEach(placement -> {
                    boolean yields = isOutsideOwnTimes(person, placement) || isKeptAway(person, placement, attended);
                    (yields ? satOut : attended).add(placement);
                });
        return satOut;
    }

    /** Whether those of the placement's people who have the other thing to do are no more than it can do without. */
    private boolean isTheirsAlone(Thing thing, Thing placement) {
        Set<String> both = new LinkedHashSet<>(placement.who().meant());
        both.retainAll(thing.who().meant());
        Fraction quorum = Fraction.of(the.group(placement.group()).quorum());
        Fraction share = Fraction.of(both.size(), placement.who().meant().size());
        return !share.above(Fraction.ONE.minus(quorum));
    }

    private boolean isKeptAway(Person person, Thing placement, List<Thing> attended) {
        List<Thing> theirs = attended.stream()
                .filter(thing -> isTheirsAlone(thing, placement))
                .toList();
        return theirs.stream().anyMatch(thing -> clashes(person, placement, thing))
                || tooManyVisits(person, placement, attended, theirs)
                || tooManyHighDays(person, placement, attended, theirs)
                || tooManyHighDaysInTheWeek(person, placement, attended, theirs)
                || noFreeDay(person, placement, attended, theirs)
                || hardWorkTooNear(person, placement, attended, theirs);
    }

    private boolean isOutsideOwnTimes(Person person, Thing placement) {
        Athlete athlete = person.athlete();
        return athlete != null
                && PlaceAndTime.minutesOutside(
                                placement,
                                athlete.windows(),
                                athlete.away(),
                                the.scenario().zone())
                        > 0;
    }

    /** Whether the two alone break a must about pairs for this one person. */
    private boolean clashes(Person person, Thing placement, Thing thing) {
        Case pair = the.only(
                person, List.of(placement, thing).stream().sorted(Thing.IN_TIME).toList());
        Ledger ledger = new Ledger(the.settings());
        new PlaceAndTime(pair, ledger).onePlaceAtATime();
        new DailyRhythm(pair, ledger).nightRest();
        new Recovery(pair, ledger).judge();
        new AroundFixtures(pair, ledger).judge();
        return List.of(
                        "one-place-at-a-time",
                        "night-rest",
                        "pathway-gap-floor",
                        "before-fixture",
                        "after-fixture",
                        "primer-end")
                .stream()
                .anyMatch(rule -> isMust(rule, placement.group()) && ledger.holds(rule));
    }

    private boolean isMust(String rule, String group) {
        return the.settings().get(group).level(rule) == RuleLevel.MUST;
    }

    private boolean tooManyVisits(Person person, Thing placement, List<Thing> attended, List<Thing> theirs) {
        String rule = "visits-per-day";
        String group = person.mainGroup();
        int most = (int) the.settings().get(group).number(rule, "visits");
        Day without = day(person, placement.date(), attended);
        return isMust(rule, placement.group())
                && Visit.of(with(placement, without)).size() > most
                && Visit.of(without).size() <= most
                && without.things().stream().anyMatch(thing -> Visit.counts(thing) && theirs.contains(thing));
    }

    private boolean tooManyHighDays(Person person, Thing placement, List<Thing> attended, List<Thing> theirs) {
        String rule = "four-high-days";
        int length = (int) the.settings().get(person.mainGroup()).number(rule, "days");
        Day without = day(person, placement.date(), attended);
        Day with = with(placement, without);
        return isMust(rule, placement.group())
                && IntStream.range(0, length)
                        .mapToObj(back -> placement.date().minusDays(back))
                        .anyMatch(first -> isHighRun(with, first, length)
                                && !isHighRun(without, first, length)
                                && IntStream.range(0, length)
                                        .mapToObj(first::plusDays)
                                        .flatMap(date -> without.on(date).stimuli().stream())
                                        .anyMatch(theirs::contains));
    }

    private static boolean isHighRun(Day any, LocalDate first, int length) {
        return IntStream.range(0, length).mapToObj(first::plusDays).map(any::on).allMatch(Day::isHighForRuns);
    }

    private boolean noFreeDay(Person person, Thing placement, List<Thing> attended, List<Thing> theirs) {
        String rule = "free-day";
        int week = the.weeks().numberOf(placement.date());
        int asked = (int) the.settings().get(person.mainGroup()).number(rule, "days");
        List<LocalDate> dates = the.weeks().datesOf(week);
        Day without = day(person, placement.date(), attended);
        Day with = with(placement, without);
        return isMust(rule, placement.group())
                && the.weeks().isWhole(week)
                && dates.stream().filter(date -> with.on(date).isFree()).count() < asked
                && dates.stream().filter(date -> without.on(date).isFree()).count() >= asked
                && dates.stream()
                        .flatMap(date -> without.on(date).whatKeepsItFromBeingFree().stream())
                        .anyMatch(theirs::contains);
    }

    /** More high days than the coach allows the main group, as far as what is placed makes them. */
    private boolean tooManyHighDaysInTheWeek(Person person, Thing placement, List<Thing> attended, List<Thing> theirs) {
        PerWeek wanted = the.mainGroup(person).highDays();
        int week = the.weeks().numberOf(placement.date());
        if (wanted == null || !isMust("high-days-most", placement.group())) {
            return false;
        }
        long most = the.weeks().share(wanted, week).most();
        Day without = day(person, placement.date(), attended);
        Day with = with(placement, without);
        List<LocalDate> dates = the.weeks().datesOf(week);
        return isTooMuch(with, dates, most)
                && !isTooMuch(without, dates, most)
                && dates.stream()
                        .map(with::on)
                        .filter(Day::isHigh)
                        .flatMap(day -> day.stimuli().stream())
                        .anyMatch(theirs::contains);
    }

    private static boolean isTooMuch(Day any, List<LocalDate> dates, long most) {
        List<Day> high = dates.stream().map(any::on).filter(Day::isHigh).toList();
        long ours =
                high.stream().filter(day -> !day.withoutPlacements().isHigh()).count();
        return Math.min(high.size() - most, ours) > 0;
    }

    /** The hours from the hard work of the day before to that of this day, and from this day's to the next one's. */
    private boolean hardWorkTooNear(Person person, Thing placement, List<Thing> attended, List<Thing> theirs) {
        Day without = day(person, placement.date(), attended);
        Day with = with(placement, without);
        return isMust("high-block-floor", placement.group())
                && Stream.of(blockBefore(with), blockAfter(with))
                        .flatMap(Optional::stream)
                        .anyMatch(other -> isTooNear(with, other)
                                && !isTooNear(without, other)
                                && Stream.of(without, other)
                                        .flatMap(day -> day.stimuli().stream())
                                        .anyMatch(theirs::contains));
    }

    private static Optional<Day> blockBefore(Day day) {
        return IntStream.rangeClosed(1, Recovery.DAYS_TO_THE_NEXT_BLOCK)
                .mapToObj(back -> day.on(day.date().minusDays(back)))
                .filter(other -> !other.block().isEmpty())
                .findFirst();
    }

    private static Optional<Day> blockAfter(Day day) {
        return IntStream.rangeClosed(1, Recovery.DAYS_TO_THE_NEXT_BLOCK)
                .mapToObj(ahead -> day.on(day.date().plusDays(ahead)))
                .filter(other -> !other.block().isEmpty())
                .findFirst();
    }

    private static boolean isTooNear(Day day, Day other) {
        boolean before = other.date().isBefore(day.date());
        Recovery.Block earlier = new Recovery.Block(before ? other.date() : day.date(), (before ? other : day).block());
        Recovery.Block later = new Recovery.Block(before ? day.date() : other.date(), (before ? day : other).block());
        return !earlier.sessions().isEmpty()
                && !later.sessions().isEmpty()
                && (Judge.isOurs(earlier.sessions()) || Judge.isOurs(later.sessions()))
                && earlier.hoursTo(later).below(earlier.crossHours());
    }

    private Day day(Person person, LocalDate date, List<Thing> attended) {
        return new Day(
                the, person, date, attended.stream().sorted(Thing.IN_TIME).toList());
    }

    private static Day with(Thing placement, Day without) {
        List<Thing> line = new ArrayList<>(without.line());
        line.add(placement);
        line.sort(Thing.IN_TIME);
        return new Day(without.the(), without.person(), without.date(), line);
    }
}
