package weekwright.engine.rules;

import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Absence.Why;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.PerWeek;

/**
 * What a day, a run of days and a week must not hold too much of: the numbers of a person's main group, and which of the
 * rules are musts for a group whose session is in question. Each asks whether the session makes the difference, and whether
 * one of the other things that count is theirs alone.
 */
final class DayMusts {
    /** Days within which all lies that these rules look at: a run is of seven at most, and journeys touch a week's edge. */
    static final int REACH = 9;

    private static final int WEEK = 7;

    private final GroupInfo group;
    private final int visits;
    private final int running;
    private final int freeDays;
    private final boolean visitsMust;
    private final boolean runningMust;
    private final boolean highDaysMust;
    private final boolean freeDayMust;
    private final boolean hardWorkMust;

    DayMusts(GroupInfo group) {
        this.group = group;
        visits = (int) group.settings.number("visits-per-day", "visits");
        running = (int) group.settings.number("four-high-days", "days");
        freeDays = (int) group.settings.number("free-day", "days");
        visitsMust = must("visits-per-day");
        runningMust = must("four-high-days");
        highDaysMust = must("high-days-most");
        freeDayMust = must("free-day");
        hardWorkMust = must("high-block-floor");
    }

    private boolean must(String rule) {
        return group.settings.level(rule) == RuleLevel.MUST;
    }

    /**
     * What there would be too much of with a session, or null.
     *
     * @param asking which rules are musts for the session's group
     * @param alone whether a thing is theirs alone
     */
    @Nullable
    Why tooMuch(SoFar days, Stimulus session, DayMusts asking, Predicate<Stimulus> alone) {
        DayState without = days.day(session.day);
        DayState with = days.with(session);
        if (asking.visitsMust && tooManyVisits(days, session, without, with, alone)) {
            return Why.VISITS;
        }
        if (asking.freeDayMust && noFreeDay(days, session, without, with, alone)) {
            return Why.FREE_DAY;
        }
        if (!with.high()) {
            return null;
        }
        if (asking.runningMust && tooManyRunning(days, session, without, with, alone)) {
            return Why.HIGH_DAYS_RUNNING;
        }
        if (asking.highDaysMust && tooManyHigh(days, session, without, with, alone)) {
            return Why.HIGH_DAYS;
        }
        return asking.hardWorkMust && hardWorkTooNear(days, session, without, with, alone) ? Why.HARD_WORK : null;
    }

    private boolean tooManyVisits(
            SoFar days, Stimulus session, DayState without, DayState with, Predicate<Stimulus> alone) {
        return with.visits > visits
                && without.visits <= visits
                && days.any(session.day, session.day, thing -> thing.family != null && alone.test(thing));
    }

    private boolean noFreeDay(
            SoFar days, Stimulus session, DayState without, DayState with, Predicate<Stimulus> alone) {
        int first = WEEK * Math.floorDiv(session.day, WEEK);
        int last = first + WEEK - 1;
        if (!with.busy || without.busy || days.problem().calendar.daysIn(first / WEEK) < WEEK) {
            return false;
        }
        int free = 0;
        for (int day = first; day <= last; day++) {
            free += days.day(day).busy ? 0 : 1;
        }
        return free == freeDays
                && (days.any(first, last, thing -> busies(thing) && alone.test(thing))
                        || days.anyJourney(first, last, alone));
    }

    private static boolean busies(Stimulus thing) {
        return thing.family != null && !thing.family.recovery;
    }

    private boolean tooManyRunning(
            SoFar days, Stimulus session, DayState without, DayState with, Predicate<Stimulus> alone) {
        if (!with.highRunning() || without.highRunning()) {
            return false;
        }
        for (int first = session.day - running + 1; first <= session.day; first++) {
            int last = first + running - 1;
            if (othersHigh(days, first, last, session.day) && felt(days, first, last, alone)) {
                return true;
            }
        }
        return false;
    }

    private static boolean othersHigh(SoFar days, int first, int last, int but) {
        for (int day = first; day <= last; day++) {
            if (day != but && !days.day(day).highRunning()) {
                return false;
            }
        }
        return true;
    }

    private static boolean felt(SoFar days, int first, int last, Predicate<Stimulus> alone) {
        return days.any(first, last, thing -> days.felt(thing) && alone.test(thing));
    }

    private boolean tooManyHigh(
            SoFar days, Stimulus session, DayState without, DayState with, Predicate<Stimulus> alone) {
        int week = Math.floorDiv(session.day, WEEK);
        PerWeek usual = group.highDays(week);
        if (usual == null) {
            return false;
        }
        int daysIn = days.problem().calendar.daysIn(week);
        int most = AimInfo.shortened(usual, daysIn).most();
        int high = 0;
        int ours = 0;
        boolean theirs = false;
        for (int day = WEEK * week; day < WEEK * week + daysIn; day++) {
            boolean its = day == session.day;
            if ((its ? with : days.day(day)).high()) {
                high++;
                ours += days.fixedDay(day).high() ? 0 : 1;
                theirs |= felt(days, day, day, alone);
            }
        }
        boolean fixed = days.fixedDay(session.day).high();
        boolean now = Math.min(high - most, ours) > 0;
        boolean before = without.high() ? now : Math.min(high - 1 - most, ours - (fixed ? 0 : 1)) > 0;
        return now && !before && theirs;
    }

    private boolean hardWorkTooNear(
            SoFar days, Stimulus session, DayState without, DayState with, Predicate<Stimulus> alone) {
        return with.block()
                && (tooNear(days, session, -1, without, with, alone)
                        || tooNear(days, session, 1, without, with, alone));
    }

    /** Looks at the next block on one side. */
    private static boolean tooNear(
            SoFar days, Stimulus session, int step, DayState without, DayState with, Predicate<Stimulus> alone) {
        for (int apart = 1; apart <= Blocks.REACH; apart++) {
            int day = session.day + step * apart;
            DayState other = days.day(day);
            if (other.block()) {
                boolean now = step < 0 ? Blocks.tooNear(other, with) : Blocks.tooNear(with, other);
                boolean before =
                        without.block() && (step < 0 ? Blocks.tooNear(other, without) : Blocks.tooNear(without, other));
                return now && !before && (felt(days, day, day, alone) || felt(days, session.day, session.day, alone));
            }
        }
        return false;
    }
}
