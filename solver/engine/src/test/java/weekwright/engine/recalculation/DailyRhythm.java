package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.util.List;

/** Coming and going: visits of a day, and the night after it. */
final class DailyRhythm extends Judge {
    DailyRhythm(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        visitsPerDay();
        nightRest();
    }

    /** Nobody comes more than twice a day; what lies close together is one visit. */
    private void visitsPerDay() {
        forEachCohort(person -> {
            String group = person.mainGroup();
            long most = number("visits-per-day", "visits", group).roundedDown();
            for (LocalDate date : dates(person)) {
                Day day = Day.of(the, person, date);
                if (Visit.of(day).size() > most
                        && Visit.of(day.withoutPlacements()).size() <= most) {
                    must("visits-per-day", names(group, date), group, share(group));
                }
            }
        });
    }

    /** Eight hours from the last end of a day, the way home included, to the first start of the next. */
    void nightRest() {
        forEachCohort(person -> {
            String group = person.mainGroup();
            for (LocalDate date : dates(person)) {
                List<Thing> evening = last(takingTime(person, date));
                List<Thing> morning = first(takingTime(person, date.plusDays(1)));
                if (evening.isEmpty() || morning.isEmpty() || !(isOurs(evening) || isOurs(morning))) {
                    continue;
                }
                Fraction rest = Fraction.hours(
                        evening.get(0).occupiedTo(), morning.get(0).occupiedFrom());
                Fraction hoursShort = number("night-rest", "hours", group).minus(rest);
                if (hoursShort.positive()) {
                    mustHours("night-rest", names(group, date), group, hoursShort, share(group));
                }
                nightRestMargin(group, date, rest);
            }
        });
    }

    /** And better ten. */
    private void nightRestMargin(String group, LocalDate date, Fraction rest) {
        Fraction hoursShort = number("night-rest-margin", "hours", group).minus(rest.max(Fraction.ZERO));
        Fraction points = hoursShort.times(number("night-rest-margin", "pointsAnHour", group));
        want("night-rest-margin", names(group, date), group, points, share(group));
    }

    /** The things of a day that end last; more than one only where they end together. */
    private static List<Thing> last(List<Thing> things) {
        return things.stream()
                .filter(thing ->
                        things.stream().noneMatch(other -> other.occupiedTo().isAfter(thing.occupiedTo())))
                .toList();
    }

    private static List<Thing> first(List<Thing> things) {
        return things.stream()
                .filter(thing ->
                        things.stream().noneMatch(other -> other.occupiedFrom().isBefore(thing.occupiedFrom())))
                .toList();
    }

    private List<LocalDate> dates(Person person) {
        return the.line(person).stream().map(Thing::date).distinct().toList();
    }

    /** What takes the person there on a date: sessions and fixtures, the bench included. */
    private List<Thing> takingTime(Person person, LocalDate date) {
        return the.line(person).stream()
                .filter(thing -> thing.family() != null && thing.date().equals(date))
                .toList();
    }
}
