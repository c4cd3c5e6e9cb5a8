package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Share;

/** Primers, journeys, and those who did not play. */
final class FixtureWishes extends Judge {
    FixtureWishes(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        forEachCohort(person -> {
            for (Thing placement : the.placements()) {
                if (placement.holds(person)) {
                    primerWindow(person, placement);
                    travelDayLight(person, placement);
                }
            }
        });
        for (Group group : the.scenario().groups()) {
            for (Aim aim : group.aims()) {
                if (aim.whom() == Share.NOT_PLAYED) {
                    the.fixturesOf(group.id()).forEach(fixture -> topUp(group, aim, fixture));
                }
            }
        }
    }

    /**
     * A primer ends some hours before the next fixture, not too few and not too many. It is nothing to those who will sit
     * on the bench of that one, nor, where none follows, to those who have played none of the plan's.
     */
    private void primerWindow(Person person, Thing placement) {
        if (!placement.isPrimer()) {
            return;
        }
        String group = placement.group();
        Optional<Thing> next = the.fixtures().stream()
                .filter(fixture -> fixture.kind() == Thing.Kind.FIXTURE && fixture.holds(person))
                .filter(fixture -> fixture.start().isAfter(placement.start()))
                .min(Comparator.comparing(Thing::start));
        boolean concerned = next.map(fixture -> fixture.isPlayedBy(person)).orElseGet(() -> playsAny(person));
        boolean inside = next.map(placement::hoursTo)
                .filter(hours -> !hours.below(number("primer-window", "fromHours", group))
                        && !hours.above(number("primer-window", "toHours", group)))
                .isPresent();
        if (concerned && !inside) {
            want("primer-window", placement.key(), group, number("primer-window", "points", group), share(group));
        }
    }

    private boolean playsAny(Person person) {
        return the.fixtures().stream()
                .anyMatch(fixture -> fixture.kind() == Thing.Kind.FIXTURE && fixture.isPlayedBy(person));
    }

    /** A day of long travel holds only low work, for the bench too. */
    private void travelDayLight(Person person, Thing placement) {
        String group = placement.group();
        Fraction limit = number("travel-day-light", "travelMinutes", group);
        boolean travels = the.fixtures().stream()
                .filter(fixture -> fixture.holds(person))
                .anyMatch(fixture -> Journeys.touch(
                        fixture, placement.date(), limit, the.scenario().zone()));
        if (travels && !the.isLowFamily(placement)) {
            want("travel-day-light", placement.key(), group, number("travel-day-light", "points", group), share(group));
        }
    }

    /** Those who did not play get their session by the end of the day after. */
    private void topUp(Group group, Aim aim, Thing fixture) {
        long days = number("top-up", "days", group.id()).roundedDown();
        LocalDate last = fixture.date().plusDays(days);
        boolean inPlan = LongStream.rangeClosed(1, days)
                .mapToObj(fixture.date()::plusDays)
                .allMatch(the.weeks()::contains);
        boolean somebody = the.roster().members(List.of(group.id())).stream()
                .anyMatch(person -> person.athlete() != null && fixture.minutesPlayed(person) == 0);
        boolean served = the.placements().stream()
                .filter(placement -> placement.group().equals(group.id()) && aim.equals(placement.aim()))
                .anyMatch(placement ->
                        !Duration.between(fixture.end(), placement.start()).isNegative()
                                && !placement.date().isAfter(last));
        if (inPlan && somebody && !served) {
            want(
                    "top-up",
                    names(fixture.key(), group.id(), aim.key()),
                    group.id(),
                    number("top-up", "points", group.id()),
                    Fraction.ONE);
        }
    }
}
