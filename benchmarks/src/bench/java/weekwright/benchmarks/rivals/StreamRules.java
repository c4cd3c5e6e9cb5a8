package weekwright.benchmarks.rivals;

import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.sum;
import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.toList;
import static ai.timefold.solver.core.api.score.stream.Joiners.equal;
import static ai.timefold.solver.core.api.score.stream.Joiners.filtering;

import ai.timefold.solver.core.api.score.buildin.bendablelong.BendableLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.ConstraintProvider;
import ai.timefold.solver.core.api.score.stream.bi.BiConstraintStream;
import ai.timefold.solver.core.api.score.stream.quad.QuadConstraintStream;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.Priority;

/** The yardstick rules as constraint streams. Everybody comes to everything that is for them. */
public class StreamRules implements ConstraintProvider {
    private static final BendableLongScore MUST = score(Units.TENTHS, 0, 0, 0);
    private static final BendableLongScore KEY = score(0, 1, 0, 0);
    private static final BendableLongScore MAIN = score(0, 0, 1, 0);
    private static final BendableLongScore WANT = score(0, 0, 0, 1);

    private static final int VISITS = 2;
    private static final int NIGHT = 8 * 60;
    private static final int RUN = 4;

    private static BendableLongScore score(long must, long key, long main, long want) {
        return BendableLongScore.of(new long[] {must}, new long[] {key, main, want});
    }

    /** A cohort's block and its next one. */
    private record Blocks(Day earlier, Day later) {
        int gap() {
            return later.block().start() - earlier.block().end();
        }

        boolean different() {
            return (earlier.block().high() & later.block().high()) == 0;
        }
    }

    /** A part of the plan of a group: two days, or a week twice. */
    private record GroupDays(GroupInfo group, int first, int last) {
        int share(long units) {
            return Units.share(units, group.heads);
        }
    }

    @Override
    public Constraint[] defineConstraints(ConstraintFactory all) {
        return new Constraint[] {
            all.forEach(StreamSeat.class)
                    .penalizeLong(MUST, seat -> seat.alone().musts())
                    .asConstraint("fixed things"),
            all.forEach(StreamSeat.class)
                    .penalizeLong(WANT, seat -> seat.alone().tenths())
                    .asConstraint("fixed things and preferences"),
            sameDay(all).penalizeLong(MUST, (a, b) -> a.with(b).musts()).asConstraint("two on a day"),
            sameDay(all).penalizeLong(WANT, (a, b) -> a.with(b).tenths()).asConstraint("freshest first"),
            otherDays(all).penalizeLong(MUST, (a, b) -> a.with(b).musts()).asConstraint("quality again, floor"),
            otherDays(all).penalizeLong(WANT, (a, b) -> a.with(b).tenths()).asConstraint("quality again"),
            rooms(all),
            bookedRooms(all),
            leads(all),
            visits(all),
            nights(all),
            middleDays(all),
            blockFloor(all),
            blockGap(all),
            fourHighDays(all),
            freeDay(all),
            highDaysMost(all),
            highDaysLeast(all),
            highDaysTarget(all),
            aimMost(all),
            aimLeast(all, Priority.KEY),
            aimLeast(all, Priority.MAIN),
            aimTarget(all)
        };
    }

    private static BiConstraintStream<StreamSeat, StreamSeat> sameDay(ConstraintFactory all) {
        return all.forEachUniquePair(
                StreamSeat.class,
                equal(StreamSeat::group),
                equal(StreamSeat::day),
                filtering((a, b) -> AloneRules.sharesSomebody(a.at(), b.at())));
    }

    private static BiConstraintStream<StreamSeat, StreamSeat> otherDays(ConstraintFactory all) {
        return all.forEachUniquePair(
                StreamSeat.class, equal(StreamSeat::group), filtering(StreamRules::sameQualityOtherDay));
    }

    private static boolean sameQualityOtherDay(StreamSeat a, StreamSeat b) {
        return a.day() != b.day()
                && (a.session().family.high & b.session().family.high) != 0
                && AloneRules.sharesSomebody(a.at(), b.at());
    }

    private static Constraint rooms(ConstraintFactory all) {
        return all.forEach(StreamSeat.class)
                .filter(seat -> seat.facility() >= 0)
                .join(
                        StreamSeat.class,
                        equal(StreamSeat::day),
                        equal(StreamSeat::facility),
                        filtering((seat, other) -> Common.runsAtStartOf(other.at(), seat.at())))
                .groupBy((seat, other) -> seat, sum((seat, other) -> 1))
                .filter((seat, groups) -> groups > seat.common().roomAtStartOf(seat.at()))
                .penalizeLong(MUST, (seat, groups) -> 1)
                .asConstraint("room");
    }

    private static Constraint bookedRooms(ConstraintFactory all) {
        return all.forEach(Booked.class)
                .join(
                        StreamSeat.class,
                        equal(Booked::day, StreamSeat::day),
                        equal(Booked::facility, StreamSeat::facility),
                        filtering((booked, seat) -> Common.runsAtStartOf(seat.at(), booked.commitment())))
                .groupBy((booked, seat) -> booked, (booked, seat) -> seat.common(), sum((booked, seat) -> 1))
                .filter((booked, common, groups) -> groups > common.roomAtStartOf(booked.commitment()))
                .penalizeLong(MUST, (booked, common, groups) -> 1)
                .asConstraint("room at a commitment's start");
    }

    private static Constraint leads(ConstraintFactory all) {
        return all.forEach(StreamSeat.class)
                .groupBy(StreamSeat::common, StreamSeat::day, toList(StreamSeat::at))
                .penalizeLong(MUST, (common, day, placed) -> common.withoutLead(placed))
                .asConstraint("somebody to lead");
    }

    private static UniConstraintStream<Day> days(ConstraintFactory all) {
        return all.forEach(StreamSeat.class)
                .join(
                        CohortDay.class,
                        equal(StreamSeat::day, CohortDay::day),
                        filtering((seat, day) -> seat.at().has(day.cohort())))
                .groupBy((seat, day) -> day, toList((seat, day) -> seat.at()))
                .complement(CohortDay.class, day -> List.of())
                .map(CohortDay::with);
    }

    private static Constraint visits(ConstraintFactory all) {
        return days(all)
                .filter(day -> day.visits() > VISITS && day.of().fixedDay().visits() <= VISITS)
                .groupBy(day -> groupDays(day, day))
                .penalizeLong(MUST, days -> 1)
                .asConstraint("visits");
    }

    private static Constraint nights(ConstraintFactory all) {
        return days(all)
                .filter(day -> day.visits() > 0)
                .join(
                        days(all).filter(day -> day.visits() > 0),
                        equal(day -> day.of().cohort()),
                        equal(day -> day.of().day() + 1, day -> day.of().day()),
                        filtering((evening, morning) -> morning.firstStart() - evening.lastEnd() < NIGHT
                                && (evening.lastPlaced() || morning.firstPlaced())))
                .groupBy(StreamRules::groupDays)
                .penalizeLong(MUST, days -> 1)
                .asConstraint("night");
    }

    private static GroupDays groupDays(Day first, Day last) {
        return new GroupDays(first.of().group(), first.of().day(), last.of().day());
    }

    private static Constraint middleDays(ConstraintFactory all) {
        return days(all)
                .filter(day -> day.middle() && day.placed() && day.of().judgesMiddle())
                .groupBy(
                        day -> groupDays(day, day),
                        sum(day -> Units.MIDDLE_DAY
                                * (day.of().group().keepsDaysApart() ? 2 : 1)
                                * day.of().heads()))
                .penalizeLong(WANT, (days, units) -> days.share(units))
                .asConstraint("middle days");
    }

    private static UniConstraintStream<Blocks> blocks(ConstraintFactory all) {
        return days(all)
                .filter(day -> day.block().any())
                .groupBy(day -> day.of().cohort(), toList())
                .flattenLast(StreamRules::inTurn)
                .map((cohort, blocks) -> blocks)
                .filter(both ->
                        both.earlier().block().placed() || both.later().block().placed());
    }

    private static List<Blocks> inTurn(List<Day> days) {
        List<Day> sorted = days.stream()
                .sorted(Comparator.comparingInt(day -> day.of().day()))
                .toList();
        List<Blocks> blocks = new ArrayList<>();
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).of().day() - sorted.get(i - 1).of().day() <= CohortDay.EDGE) {
                blocks.add(new Blocks(sorted.get(i - 1), sorted.get(i)));
            }
        }
        return blocks;
    }

    private static Constraint blockFloor(ConstraintFactory all) {
        return blocks(all)
                .filter(both -> both.gap() < both.earlier().block().cross())
                .groupBy(both -> groupDays(both.earlier(), both.later()))
                .penalizeLong(MUST, days -> 1)
                .asConstraint("high blocks, floor");
    }

    private static Constraint blockGap(ConstraintFactory all) {
        return blocks(all)
                .filter(Blocks::different)
                .groupBy(
                        both -> groupDays(both.earlier(), both.later()),
                        sum(both -> Units.hours(both.later().of().wantedBetweenBlocks(), both.gap())
                                * both.later().of().heads()))
                .penalizeLong(WANT, (days, units) -> days.share(units))
                .asConstraint("high blocks");
    }

    private static Constraint fourHighDays(ConstraintFactory all) {
        return days(all)
                .filter(Day::highRunning)
                .groupBy(day -> day.of().cohort(), toList())
                .flattenLast(StreamRules::runs)
                .map((cohort, run) -> run)
                .groupBy(run -> run)
                .penalizeLong(MUST, run -> 1)
                .asConstraint("four high days");
    }

    private static List<GroupDays> runs(List<Day> days) {
        List<Day> sorted = days.stream()
                .sorted(Comparator.comparingInt(day -> day.of().day()))
                .toList();
        List<GroupDays> runs = new ArrayList<>();
        for (int i = RUN - 1; i < sorted.size(); i++) {
            List<Day> run = sorted.subList(i - RUN + 1, i + 1);
            GroupDays of = groupDays(run.get(0), run.get(RUN - 1));
            boolean fixed = run.stream().allMatch(day -> day.of().fixedDay().highRunning());
            if (of.last() - of.first() == RUN - 1 && of.last() >= 0 && !fixed) {
                runs.add(of);
            }
        }
        return runs;
    }

    /** Weeks of cohorts with their days off, high days, and high days that are ours. */
    private static QuadConstraintStream<CohortWeek, Integer, Integer, Integer> weeks(ConstraintFactory all) {
        return days(all)
                .join(
                        CohortWeek.class,
                        equal(day -> day.of().cohort(), CohortWeek::cohort),
                        equal(day -> day.of().week(), CohortWeek::week))
                .groupBy(
                        (day, week) -> week,
                        sum((day, week) -> day.busy() ? 0 : 1),
                        sum((day, week) -> day.high() ? 1 : 0),
                        sum((day, week) -> day.high() && !day.of().fixedDay().high() ? 1 : 0));
    }

    private static Constraint freeDay(ConstraintFactory all) {
        return weeks(all)
                .filter((week, free, high, ours) -> free < 1 && week.couldBeFree())
                .groupBy((week, free, high, ours) -> new GroupDays(week.group(), week.week(), week.week()))
                .penalizeLong(MUST, week -> 1)
                .asConstraint("free day");
    }

    private static Constraint highDaysMost(ConstraintFactory all) {
        return weeks(all)
                .filter((week, free, high, ours) -> week.tooManyHigh(high, ours))
                .groupBy((week, free, high, ours) -> new GroupDays(week.group(), week.week(), week.week()))
                .penalizeLong(MUST, week -> 1)
                .asConstraint("high days, most");
    }

    private static Constraint highDaysLeast(ConstraintFactory all) {
        return weeks(all)
                .groupBy(
                        (week, free, high, ours) -> new GroupDays(week.group(), week.week(), week.week()),
                        sum((week, free, high, ours) -> week.owed(high) * week.heads()))
                .penalizeLong(KEY, (week, units) -> week.share(units))
                .asConstraint("high days, least");
    }

    private static Constraint highDaysTarget(ConstraintFactory all) {
        return weeks(all)
                .groupBy(
                        (week, free, high, ours) -> new GroupDays(week.group(), week.week(), week.week()),
                        sum((week, free, high, ours) -> week.wanted(high, ours) * week.heads()))
                .penalizeLong(WANT, (week, units) -> week.share(units))
                .asConstraint("high days, target");
    }

    private static BiConstraintStream<AimWeek, List<Stimulus>> aims(ConstraintFactory all) {
        return all.forEach(StreamSeat.class)
                .groupBy(StreamSeat::aimWeek, toList(StreamSeat::at))
                .complement(AimWeek.class, aim -> List.of());
    }

    private static Constraint aimMost(ConstraintFactory all) {
        return aims(all)
                .filter((aim, placed) -> !placed.isEmpty() && placed.size() > aim.most())
                .penalizeLong(MUST, (aim, placed) -> 1)
                .asConstraint("aim, most");
    }

    private static int owed(AimWeek aim, List<Stimulus> placed) {
        return aim.owed((int) placed.stream().filter(at -> aim.counts(at.dose)).count());
    }

    private static Constraint aimLeast(ConstraintFactory all, Priority priority) {
        return aims(all)
                .filter((aim, placed) -> aim.priority() == priority)
                .penalizeLong(
                        priority == Priority.KEY ? KEY : MAIN, (aim, placed) -> (long) Units.TENTHS * owed(aim, placed))
                .asConstraint("aim, least: " + priority);
    }

    private static Constraint aimTarget(ConstraintFactory all) {
        return aims(all)
                .penalizeLong(
                        WANT,
                        (aim, placed) -> (long) Units.TENTHS
                                * aim.points()
                                * (aim.wanted(placed.size())
                                        + (aim.priority() == Priority.SPARE ? owed(aim, placed) : 0)))
                .asConstraint("aim, target");
    }
}
