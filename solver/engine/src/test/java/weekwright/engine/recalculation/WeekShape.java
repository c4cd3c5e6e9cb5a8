package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Phase;

/** High days, middle days and free days. The unit is a person's main group. */
final class WeekShape extends Judge {
    WeekShape(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        forEachCohort(person -> {
            Day any = Day.of(the, person, the.weeks().firstDay());
            Group group = the.mainGroup(person);
            fourHighDays(any, group.id());
            threeHighDays(any, group.id());
            sixDaysRunning(any, group.id());
            for (int week : the.weeks().numbers()) {
                List<Day> days = the.weeks().datesOf(week).stream().map(any::on).toList();
                freeDay(days, group.id(), week);
                judgeHighDays(days, group, week);
                days.forEach(day -> noMiddleDay(day, group));
            }
        });
    }

    /** Never four high days running. */
    private void fourHighDays(Day any, String group) {
        int length = (int) number("four-high-days", "days", group).roundedDown();
        for (List<Day> run : runs(any, length)) {
            if (isHighRunOfOurs(run)) {
                must("four-high-days", names(group, run.get(0).date()), group, share(group));
            }
        }
    }

    /** And better not three. */
    private void threeHighDays(Day any, String group) {
        int length = (int) number("three-high-days", "days", group).roundedDown();
        Fraction points = number("three-high-days", "points", group);
        for (List<Day> run : runs(any, length)) {
            if (isHighRunOfOurs(run)) {
                want("three-high-days", names(group, run.get(0).date()), group, points, share(group));
            }
        }
    }

    /** No more than six days running without a free one, wherever they began. */
    private void sixDaysRunning(Day any, String group) {
        int length = (int) number("six-days-running", "days", group).roundedDown() + 1;
        for (List<Day> run : runs(any, length)) {
            boolean ends = the.weeks().contains(run.get(length - 1).date());
            boolean ours = run.stream().anyMatch(day -> isOurs(day.whatKeepsItFromBeingFree()));
            if (ends && ours && run.stream().noneMatch(Day::isFree)) {
                Fraction points = number("six-days-running", "points", group);
                want("six-days-running", names(group, run.get(0).date()), group, points, share(group));
            }
        }
    }

    /** High all along, and not so without what we placed. */
    private static boolean isHighRunOfOurs(List<Day> run) {
        return run.stream().allMatch(Day::isHighForRuns)
                && !run.stream().map(Day::withoutPlacements).allMatch(Day::isHighForRuns);
    }

    /** Every run of days that touches the horizon. */
    private List<List<Day>> runs(Day any, int length) {
        LocalDate start = the.weeks().firstDay().minusDays(length - 1L);
        return LongStream.range(0, the.weeks().days() + length - 1L)
                .mapToObj(start::plusDays)
                .map(first -> IntStream.range(0, length)
                        .mapToObj(first::plusDays)
                        .map(any::on)
                        .toList())
                .toList();
    }

    /** Each whole week holds a free day. */
    private void freeDay(List<Day> days, String group, int week) {
        Fraction asked = number("free-day", "days", group);
        boolean missing = Fraction.of(days.stream().filter(Day::isFree).count()).below(asked);
        boolean missingAnyhow = Fraction.of(days.stream()
                        .map(Day::withoutPlacements)
                        .filter(Day::isFree)
                        .count())
                .below(asked);
        if (the.weeks().isWhole(week) && missing && !missingAnyhow) {
            must("free-day", names(group, week), group, share(group));
        }
    }

    private void judgeHighDays(List<Day> days, Group group, int week) {
        if (group.highDays() == null) {
            return;
        }
        PerWeek asked = the.weeks().share(group.highDays(), week);
        int high = (int) days.stream().filter(Day::isHigh).count();
        int ours = (int) days.stream()
                .filter(day -> day.isHigh() && !day.withoutPlacements().isHigh())
                .count();
        List<LocalDate> dates = days.stream().map(Day::date).toList();
        highDaysMost(group.id(), week, Math.min(high - asked.most(), ours));
        if (!the.roster().isRestrictedOn(days.get(0).person(), dates)) {
            highDaysLeast(group.id(), week, asked.least() - high);
            highDaysTarget(group.id(), week, asked.target() - high, Math.min(high - asked.target(), ours));
        }
    }

    /** No more high days than the group allows, through what we placed. */
    private void highDaysMost(String group, int week, int tooMany) {
        if (tooMany > 0) {
            must("high-days-most", names(group, week), group, share(group));
        }
    }

    /** Each week holds the least number of high days. */
    private void highDaysLeast(String group, int week, int missing) {
        if (missing > 0) {
            Fraction each =
                    isWant("high-days-least", group) ? number("high-days-least", "points", group) : Fraction.ONE;
            want("high-days-least", names(group, week), group, each.times(missing), share(group));
        }
    }

    /** And better the number wanted, neither fewer nor more. */
    private void highDaysTarget(String group, int week, int missing, int tooMany) {
        Fraction points = number("high-days-target", "shortPoints", group)
                .times(Math.max(0, missing))
                .plus(number("high-days-target", "overPoints", group).times(Math.max(0, tooMany)));
        want("high-days-target", names(group, week), group, points, share(group));
    }

    /** No day between low and high, save round a fixture of the group and for novices. */
    private void noMiddleDay(Day day, Group group) {
        boolean roundFixture = the.fixturesOf(group.id()).stream()
                .map(Thing::date)
                .anyMatch(date -> List.of(date.plusDays(1), date.minusDays(1), date.minusDays(2))
                        .contains(day.date()));
        if (day.isMiddle() && day.hasPlacement() && !roundFixture && group.level() != Level.NOVICE) {
            boolean dearer = group.kind() == GroupKind.SPRINT || group.phase() == Phase.OFF_SEASON;
            Fraction factor = dearer ? number("no-middle-day", "sprintOrOffSeasonFactor", group.id()) : Fraction.ONE;
            Fraction points = number("no-middle-day", "points", group.id()).times(factor);
            want("no-middle-day", names(group.id(), day.date()), group.id(), points, share(group.id()));
        }
    }
}
