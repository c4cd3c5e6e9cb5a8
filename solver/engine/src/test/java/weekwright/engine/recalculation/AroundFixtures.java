package weekwright.engine.recalculation;

import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weekwright.model.catalogue.Hours;
import weekwright.model.catalogue.Role;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FixtureWeight;

/** What a fixture asks of the days round it. */
final class AroundFixtures extends Judge {
    /** Fixtures closer than this leave no week in which the load could fall. */
    private static final int DAYS_OF_A_FULL_TURNAROUND = 5;

    AroundFixtures(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        forEachCohort(person -> {
            for (Thing fixture : the.fixtures()) {
                if (fixture.isPlayedBy(person)) {
                    judgePlacements(person, fixture);
                    loadFallsToFixture(person, fixture);
                    freeDayPlace(person, fixture);
                }
            }
        });
    }

    private void judgePlacements(Person person, Thing fixture) {
        for (Thing placement : the.placements()) {
            if (placement.holds(person)) {
                if (placement.start().isBefore(fixture.start())) {
                    beforeFixture(placement, fixture);
                    beforeFixtureMargin(placement, fixture);
                    primerEnd(placement, fixture);
                } else {
                    afterFixture(person, fixture, placement);
                    afterFixtureMargin(person, fixture, placement);
                }
                dayBeforeLight(placement, fixture);
            }
        }
    }

    private static Hours hoursBefore(Thing placement) {
        Hours micro = placement.trains().beforeFixtureMicroHours();
        return placement.dose() == Dose.MICRO && micro != null
                ? micro
                : placement.trains().beforeFixtureHours();
    }

    /** A session ends its hours before a fixture; minor ones are trained through. */
    private void beforeFixture(Thing placement, Thing fixture) {
        Fraction hoursShort = Fraction.of(hoursBefore(placement).must()).minus(placement.hoursTo(fixture));
        boolean asked = hoursBefore(placement).must() > 0 && fixture.weight() != FixtureWeight.MINOR;
        if (asked && hoursShort.positive()) {
            mustHours("before-fixture", pair(placement, fixture), placement.group(), hoursShort, share(placement));
        }
    }

    /** And better its preferred hours, dearer before a key fixture, cheaper before a minor one. */
    private void beforeFixtureMargin(Thing placement, Thing fixture) {
        String rule = "before-fixture-margin";
        String group = placement.group();
        Fraction factor = switch (fixture.weight()) {
            case KEY -> number(rule, "keyFactor", group);
            case REGULAR -> Fraction.ONE;
            case MINOR -> number(rule, "minorFactor", group);
        };
        Double wanted = hoursBefore(placement).want();
        if (wanted != null) {
            Fraction points = pointsForGap(rule, group, Fraction.of(wanted), placement.hoursTo(fixture));
            want(rule, pair(placement, fixture), group, points.times(factor), share(placement));
        }
    }

    /** A primer ends in time. */
    private void primerEnd(Thing placement, Thing fixture) {
        Fraction limit = number("primer-end", "hours", placement.group());
        Fraction hoursShort = limit.minus(placement.hoursTo(fixture));
        if (placement.isPrimer() && hoursShort.positive()) {
            mustHours("primer-end", pair(placement, fixture), placement.group(), hoursShort, share(placement));
        }
    }

    /** Those who played train a quality only after the hours that the fixture asks for it. */
    private void afterFixture(Person person, Thing fixture, Thing placement) {
        Fraction less = number("after-fixture", "partLessHours", placement.group());
        Fraction must = hoursAfter(person, fixture, placement)
                .map(hours -> lessForPart(Fraction.of(hours.must()), less, fixture, person))
                .orElse(Fraction.ZERO);
        Fraction hoursShort = must.minus(fixture.hoursTo(placement));
        if (hoursShort.positive() && must.positive()) {
            mustHours("after-fixture", pair(fixture, placement), placement.group(), hoursShort, share(placement));
        }
    }

    /** And better after its preferred hours. */
    private void afterFixtureMargin(Person person, Thing fixture, Thing placement) {
        String rule = "after-fixture-margin";
        String group = placement.group();
        Fraction less = number(rule, "partLessHours", group);
        Fraction wanted = hoursAfter(person, fixture, placement)
                .map(Hours::want)
                .map(want -> lessForPart(Fraction.of(want), less, fixture, person))
                .orElse(Fraction.ZERO);
        if (wanted.positive()) {
            Fraction points = pointsForGap(rule, group, wanted, fixture.hoursTo(placement));
            want(rule, pair(fixture, placement), group, points, share(placement));
        }
    }

    private static Fraction lessForPart(Fraction hours, Fraction less, Thing fixture, Person person) {
        return MinutesPlayed.of(fixture, person) == MinutesPlayed.PART
                ? hours.minus(less).max(Fraction.ZERO)
                : hours;
    }

    /** Under half an hour of play is like an acceleration session; else the fixture's own hours hold. */
    private Optional<Hours> hoursAfter(Person person, Thing fixture, Thing placement) {
        return MinutesPlayed.of(fixture, person) == MinutesPlayed.SHORT
                ? AfterHours.asAfterAcceleration(the.catalogue().family("acceleration"), placement)
                : AfterHours.of(fixture.trains(), placement);
    }

    /** The day before a fixture holds only low work, practice and primers. */
    private void dayBeforeLight(Thing placement, Thing fixture) {
        Role role = placement.trains().role();
        if (placement.date().plusDays(1).equals(fixture.date())
                && fixture.weight() != FixtureWeight.MINOR
                && role != Role.PRACTICE
                && role != Role.PRIMER
                && !the.isLowFamily(placement)) {
            Fraction points = number("day-before-light", "points", placement.group());
            want("day-before-light", pair(placement, fixture), placement.group(), points, share(placement));
        }
    }

    /** The load of the days before a fixture does not rise, and the last is at most two thirds of the third last. */
    private void loadFallsToFixture(Person person, Thing fixture) {
        if (fixture.weight() == FixtureWeight.MINOR || isCloseToThePrevious(person, fixture)) {
            return;
        }
        String group = person.mainGroup();
        Day third = Day.of(the, person, fixture.date().minusDays(3));
        Day second = third.on(fixture.date().minusDays(2));
        Day last = third.on(fixture.date().minusDays(1));
        Fraction allowed = third.load()
                .times(number("load-falls-to-fixture", "lastDayThirds", group))
                .dividedBy(Fraction.of(3));
        part(
                "rise to the second last day",
                person,
                fixture,
                third,
                second,
                second.load().above(third.load()));
        part("rise to the last day", person, fixture, second, last, last.load().above(second.load()));
        part("last day too heavy", person, fixture, third, last, last.load().above(allowed));
    }

    private void part(String part, Person person, Thing fixture, Day one, Day other, boolean fails) {
        boolean known = the.weeks().contains(one.date()) && the.weeks().contains(other.date());
        if (fails && known && (one.hasPlacement() || other.hasPlacement())) {
            String group = person.mainGroup();
            Fraction points = number("load-falls-to-fixture", "points", group);
            want("load-falls-to-fixture", names(fixture.key(), group, part), group, points, share(group));
        }
    }

    private boolean isCloseToThePrevious(Person person, Thing fixture) {
        return the.fixturesOf(person.mainGroup()).stream()
                .filter(other -> other.start().isBefore(fixture.start()))
                .max(Comparator.comparing(Thing::start))
                .map(other -> ChronoUnit.DAYS.between(other.date(), fixture.date()) < DAYS_OF_A_FULL_TURNAROUND)
                .orElse(false);
    }

    /** The second day after a fixture is free, or at least the first. */
    private void freeDayPlace(Person person, Thing fixture) {
        Day first = Day.of(the, person, fixture.date().plusDays(1));
        Day second = first.on(fixture.date().plusDays(2));
        boolean another = first.things().stream().anyMatch(Thing::isFixture)
                || second.things().stream().anyMatch(Thing::isFixture);
        if (!the.weeks().contains(second.date()) || another || second.isFree()) {
            return;
        }
        List<Thing> onSecond = second.whatKeepsItFromBeingFree();
        List<Thing> onFirst = first.whatKeepsItFromBeingFree();
        if (isOurs(onSecond) || isOurs(onFirst)) {
            String group = person.mainGroup();
            String which = first.isFree() ? "firstDayPoints" : "elsewherePoints";
            Fraction points = number("free-day-place", which, group);
            want("free-day-place", names(fixture.key(), group), group, points, share(group));
        }
    }

    private static String pair(Thing one, Thing other) {
        return names(one.key(), other.key());
    }

    private Fraction share(Thing placement) {
        return share(placement.group());
    }
}
