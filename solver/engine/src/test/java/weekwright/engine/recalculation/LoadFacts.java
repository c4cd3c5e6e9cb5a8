package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/** Facts about load; they cost something only where a scenario wants them to. */
final class LoadFacts extends Judge {
    LoadFacts(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        forEachCohort(person -> {
            Group group = the.mainGroup(person);
            for (int week : the.weeks().numbers()) {
                List<Day> days = daysOf(person, week);
                boolean ours = days.stream().anyMatch(day -> the.weeks().contains(day.date()) && day.hasPlacement());
                if (the.weeks().isWhole(week) && ours) {
                    weekLoad(person, group.id(), week);
                    loadSpread(group.id(), week, days.stream().map(Day::load).toList());
                    loadRatio(person, group.id(), week);
                }
            }
        });
    }

    private List<Day> daysOf(Person person, int week) {
        return days(person, the.weeks().firstDateOf(week), 7);
    }

    private List<Day> days(Person person, LocalDate first, long days) {
        Day any = Day.of(the, person, first);
        return LongStream.range(0, days).mapToObj(first::plusDays).map(any::on).toList();
    }

    private void say(String rule, String group, int week) {
        want(rule, names(group, week), group, number(rule, "points", group), share(group));
    }

    /** A week against the mean of the last few of its kind, with a fixture or without. */
    private void weekLoad(Person person, String group, int week) {
        List<Fraction> before = IntStream.iterate(week - 1, earlier -> earlier >= -Scenario.EDGE_DAYS / 7, w -> w - 1)
                .filter(earlier -> hasFixture(group, earlier) == hasFixture(group, week))
                .mapToObj(earlier -> daysOf(person, earlier))
                .filter(LoadFacts::saysOfTraining)
                .map(LoadFacts::sum)
                .limit(4)
                .toList();
        if (before.isEmpty()) {
            return;
        }
        Fraction mean = before.stream().reduce(Fraction.ZERO, Fraction::plus).dividedBy(Fraction.of(before.size()));
        Fraction change = sum(daysOf(person, week)).minus(mean).times(100).dividedBy(mean);
        if (change.max(change.times(-1)).above(number("week-load", "notedPercent", group))) {
            say("week-load", group, week);
        }
    }

    /** A week of which only the fixtures are written down says nothing of its training. */
    private static boolean saysOfTraining(List<Day> days) {
        return days.stream()
                .anyMatch(day -> day.load().positive() && day.things().stream().noneMatch(Thing::isFixture));
    }

    private boolean hasFixture(String group, int week) {
        return the.fixturesOf(group).stream().anyMatch(fixture -> the.weeks().numberOf(fixture.date()) == week);
    }

    private static Fraction sum(Collection<Day> days) {
        return days.stream().map(Day::load).reduce(Fraction.ZERO, Fraction::plus);
    }

    /** Mean over sample standard deviation; compared as squares, which stay exact. */
    private void loadSpread(String group, int week, List<Fraction> loads) {
        Fraction total = loads.stream().reduce(Fraction.ZERO, Fraction::plus);
        Fraction mean = total.dividedBy(Fraction.of(loads.size()));
        Fraction variance = loads.stream()
                .map(load -> load.minus(mean))
                .map(off -> off.times(off))
                .reduce(Fraction.ZERO, Fraction::plus)
                .dividedBy(Fraction.of(loads.size() - 1L));
        Fraction limit = number("load-spread", "monotony", group);
        if (variance.positive() && mean.times(mean).above(limit.times(limit).times(variance))) {
            say("load-spread", group, week);
        }
    }

    /** The last days against more of them, where so many are known. */
    private void loadRatio(Person person, String group, int week) {
        long days = number("load-ratio", "longDays", group).roundedDown();
        LocalDate last = the.weeks().firstDateOf(week).plusDays(6);
        LocalDate first = last.minusDays(days - 1);
        boolean known = !first.isBefore(the.weeks().firstDay())
                || the.scenario().history().stream()
                        .filter(entry -> entry.group().equals(group) && !the.isFixture(entry))
                        .map(LogEntry::start)
                        .anyMatch(start -> !start.date().isAfter(first));
        if (known && sum(days(person, first, days)).positive()) {
            say("load-ratio", group, week);
        }
    }
}
