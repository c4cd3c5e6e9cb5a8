package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.LongStream;
import weekwright.model.scenario.Fixture;

/** Less volume before the fixtures that are trained for. */
final class Tapering extends Judge {
    private static final String RULE = "taper";
    private static final Fraction MOST_POINTS_OF_PERCENTAGE = Fraction.of(100);

    Tapering(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        for (Fixture fixture : the.scenario().fixtures()) {
            if (fixture.taperDays() != null) {
                forEachCohort(person -> {
                    if (thing(fixture).isPlayedBy(person)) {
                        taper(person, fixture, fixture.taperDays());
                    }
                });
            }
        }
    }

    private Thing thing(Fixture fixture) {
        return the.fixtures().stream()
                .filter(thing -> thing.key().equals("fixture " + fixture.id()))
                .findFirst()
                .orElseThrow();
    }

    /** The mean load of the taper's days is so much below that of the weeks before them. */
    private void taper(Person person, Fixture fixture, int days) {
        String group = person.mainGroup();
        long before = 7 * number(RULE, "weeks", group).roundedDown();
        List<Day> taper = days(person, fixture.start().date().minusDays(days), days).stream()
                .filter(day -> !day.date().isAfter(the.weeks().lastDay()))
                .toList();
        List<Day> base = days(person, fixture.start().date().minusDays(days + before), before);
        boolean known = !base.get(0).date().isBefore(knownFrom(group));
        boolean inPlan = taper.stream().map(Day::date).anyMatch(the.weeks()::contains);
        boolean ours =
                taper.stream().anyMatch(Day::hasPlacement) || base.stream().anyMatch(Day::hasPlacement);
        Fraction mean = mean(base);
        if (known && inPlan && ours && mean.positive()) {
            Fraction fall = mean.minus(mean(taper)).times(100).dividedBy(mean);
            Fraction percent = Fraction.of(fall.times(10).roundedHalfUp(), 10);
            Fraction outside = number(RULE, "leastPercent", group)
                    .minus(percent)
                    .max(percent.minus(number(RULE, "mostPercent", group)))
                    .max(Fraction.ZERO)
                    .min(MOST_POINTS_OF_PERCENTAGE);
            Fraction points = outside.times(number(RULE, "pointsAPercent", group));
            want(RULE, names(fixture.id(), group), group, points, share(group));
        }
    }

    private LocalDate knownFrom(String group) {
        return the.scenario().history().stream()
                .filter(entry -> entry.group().equals(group) && !the.isFixture(entry))
                .map(entry -> entry.start().date())
                .min(LocalDate::compareTo)
                .orElse(the.weeks().firstDay());
    }

    private List<Day> days(Person person, LocalDate first, long days) {
        Day any = Day.of(the, person, first);
        return LongStream.range(0, days).mapToObj(first::plusDays).map(any::on).toList();
    }

    private static Fraction mean(List<Day> days) {
        return days.stream()
                .map(Day::load)
                .reduce(Fraction.ZERO, Fraction::plus)
                .dividedBy(Fraction.of(days.size()));
    }
}
