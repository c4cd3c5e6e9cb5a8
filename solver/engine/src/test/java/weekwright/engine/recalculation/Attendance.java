package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Athlete;

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
                    boolean yields = isFew(cohort.size(), placement) && isKeptAway(person, placement, attended);
                    (yields ? satOut : attended).add(placement);
                });
        return satOut;
    }

    /** At most the share of those whom a session is for that its group can do without. */
    private boolean isFew(int heads, Thing placement) {
        Fraction quorum = Fraction.of(the.group(placement.group()).quorum());
        Fraction share = Fraction.of(heads, placement.who().meant().size());
        return !share.above(Fraction.ONE.minus(quorum));
    }

    /** Whether few of those whom the placement is for have the other thing to do. */
    private boolean isTheirsAlone(Thing thing, Thing placement) {
        Set<String> both = new LinkedHashSet<>(placement.who().meant());
        both.retainAll(thing.who().meant());
        return isFew(both.size(), placement);
    }

    private boolean isKeptAway(Person person, Thing placement, List<Thing> attended) {
        List<Thing> theirs = attended.stream()
                .filter(thing -> isTheirsAlone(thing, placement))
                .toList();
        return isOutsideOwnTimes(person, placement)
                || theirs.stream().anyMatch(thing -> clashes(person, placement, thing))
                || tooManyVisits(person, placement, attended, theirs)
                || tooManyHighDays(person, placement, attended, theirs)
                || noFreeDay(person, placement, attended, theirs);
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
        Day without = new Day(the, person, placement.date(), attended);
        return isMust(rule, placement.group())
                && Visit.of(with(placement, without)).size() > most
                && Visit.of(without).size() <= most
                && without.things().stream().anyMatch(thing -> Visit.counts(thing) && theirs.contains(thing));
    }

    private boolean tooManyHighDays(Person person, Thing placement, List<Thing> attended, List<Thing> theirs) {
        String rule = "four-high-days";
        int length = (int) the.settings().get(person.mainGroup()).number(rule, "days");
        Day without = new Day(the, person, placement.date(), attended);
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
        Day without = new Day(the, person, placement.date(), attended);
        Day with = with(placement, without);
        return isMust(rule, placement.group())
                && the.weeks().isWhole(week)
                && dates.stream().filter(date -> with.on(date).isFree()).count() < asked
                && dates.stream().filter(date -> without.on(date).isFree()).count() >= asked
                && dates.stream()
                        .flatMap(date -> without.on(date).whatKeepsItFromBeingFree().stream())
                        .anyMatch(theirs::contains);
    }

    private static Day with(Thing placement, Day without) {
        List<Thing> line = new ArrayList<>(without.line());
        line.add(placement);
        line.sort(Thing.IN_TIME);
        return new Day(without.the(), without.person(), without.date(), line);
    }
}
