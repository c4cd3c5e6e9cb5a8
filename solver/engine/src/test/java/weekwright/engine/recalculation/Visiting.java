package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import weekwright.model.scenario.Group;

/** What a visit holds, and the time between two. */
final class Visiting extends Judge {
    private static final Set<String> NOT_COUNTED = Set.of("mobility", "warm-up", "technique", "trunk-and-balance");

    Visiting(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        forEachCohort(person -> {
            for (LocalDate date :
                    the.line(person).stream().map(Thing::date).distinct().toList()) {
                Day day = Day.of(the, person, date);
                shortWait(day);
                sizeOfVisits(day);
                minutesOfDay(day);
            }
        });
    }

    /** Nobody waits long between two visits of a day. */
    private void shortWait(Day day) {
        String group = day.person().mainGroup();
        List<Visit> visits = Visit.of(day);
        Fraction hours = Fraction.ZERO;
        for (int i = 0; i + 1 < visits.size(); i++) {
            Visit earlier = visits.get(i);
            Visit later = visits.get(i + 1);
            if (!earlier.hasFixture() && !later.hasFixture() && (earlier.hasPlacement() || later.hasPlacement())) {
                hours = hours.plus(Fraction.hours(earlier.end(), later.start()));
            }
        }
        Fraction points = hours.times(number("short-wait", "pointsAnHour", group));
        want("short-wait", names(group, day.date()), group, points, share(group));
    }

    /** A visit holds a few sessions at most. */
    private void sizeOfVisits(Day day) {
        String group = day.person().mainGroup();
        Fraction most = number("visit-size", "sessions", group);
        long tooLarge = Visit.of(day).stream()
                .map(visit ->
                        visit.things().stream().filter(Visiting::isCounted).toList())
                .filter(counted -> Fraction.of(counted.size()).above(most) && isOurs(counted))
                .count();
        Fraction points = number("visit-size", "points", group).times(tooLarge);
        want("visit-size", names(group, day.date(), "visits"), group, points, share(group));
    }

    /** And a day not too many minutes, fewer for the young. */
    private void minutesOfDay(Day day) {
        Group group = the.mainGroup(day.person());
        String most = Packs.isOn(the.scenario(), group, "youth") ? "youthMinutes" : "minutes";
        List<Thing> counted = day.things().stream()
                .filter(thing -> Visit.counts(thing) && isCounted(thing))
                .toList();
        long minutes = counted.stream()
                .mapToLong(thing -> Math.max(0, thing.mainMinutes() - day.lentMinutes(thing)))
                .sum();
        if (isOurs(counted) && Fraction.of(minutes).above(number("visit-size", most, group.id()))) {
            want(
                    "visit-size",
                    names(group.id(), day.date(), "minutes"),
                    group.id(),
                    number("visit-size", "points", group.id()),
                    share(group.id()));
        }
    }

    private static boolean isCounted(Thing thing) {
        return !thing.isFixture()
                && !thing.isRecovery()
                && !NOT_COUNTED.contains(thing.trains().id());
    }
}
