package weekwright.engine.rules;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Pathway;

/** Hours and days that must pass, or should, before the like or another hard day comes again. */
final class RecoveryRules {

    private RecoveryRules() {}

    /** The same pathway at high intensity comes again only after the earlier session's hours; a family once a day. */
    static final class PathwayGapFloor extends RuleOn<PairView> {
        /** The same family twice on one day. */
        static final int TWICE_A_DAY = 1;

        private final int[] byPathway = hoursByPathway(this);
        private final HourWant hours;

        PathwayGapFloor(RuleSettings settings) {
            super("pathway-gap-floor", settings);
            hours = new HourWant(settings, id());
        }

        @Override
        void judge(PairView view, Sink sink) {
            FamilyInfo family = view.first().family;
            boolean sameDay = view.first().day == view.second().day;
            int shared = sharedHigh(view);
            if (family == null || (sameDay ? !onceADay(family, view.second().family) : shared == 0)) {
                return;
            }
            int limit = limit(view, family, shared);
            if (sameDay || (limit > 0 && view.gap() < limit)) {
                Breach breach = view.breach().detail(sameDay ? TWICE_A_DAY : 0);
                view.addCommon(breach, hours.cost(Math.max(0, limit - view.gap())), view.gap(), limit);
                report(sink, view, breach);
            }
        }

        /** Recovery may be had again, and practices are the coach's own. */
        private static boolean onceADay(FamilyInfo family, @Nullable FamilyInfo again) {
            return family == again && !family.fixture && !family.recovery && !family.practice;
        }

        private int limit(PairView view, FamilyInfo family, int shared) {
            int limit = 0;
            for (int pathway = 0; shared >> pathway != 0; pathway++) {
                if ((shared >> pathway & 1) != 0) {
                    limit = Math.max(limit, byPathway[pathway] >= 0 ? byPathway[pathway] : family.againMust);
                }
            }
            return limit * view.first().dose.hoursTenths() / 10;
        }
    }

    /** The same pathway at high intensity waits for the hours that are wanted. */
    static final class PathwayGap extends RuleOn<PairView> {
        private final HourWant hours;
        private final int[] byPathway = hoursByPathway(this);
        private final int sprintOrStrength = minutes("sprintStrengthHours");

        PathwayGap(RuleSettings settings) {
            super("pathway-gap", settings);
            hours = new HourWant(settings, id());
        }

        @Override
        void judge(PairView view, Sink sink) {
            int shared = sharedHigh(view);
            FamilyInfo family = view.first().family;
            if (shared == 0 || family == null || view.first().day == view.second().day) {
                return;
            }
            int limit = hours.counted(wanted(view, family, shared));
            if (view.gap() < limit) {
                Breach breach = view.breach();
                view.addCommon(breach, hours.cost(limit - view.gap()), view.gap(), limit);
                report(sink, view, breach);
            }
        }

        private int wanted(PairView view, FamilyInfo family, int shared) {
            int wanted = 0;
            for (int pathway = 0; shared >> pathway != 0; pathway++) {
                if ((shared >> pathway & 1) != 0) {
                    wanted = Math.max(wanted, wanted(view.group(), family, pathway));
                }
            }
            return wanted * view.first().dose.hoursTenths() / 10;
        }

        private int wanted(GroupInfo group, FamilyInfo family, int pathway) {
            if (byPathway[pathway] >= 0) {
                return byPathway[pathway];
            }
            boolean speedOrStrength = family.order == SPEED || family.order == STRENGTH;
            return group.sprintOrStrength() && speedOrStrength && (MAIN_LIFTS_AND_SPEED >> pathway & 1) != 0
                    ? Math.min(sprintOrStrength, family.againWant)
                    : family.againWant;
        }

        private static final int SPEED = 1;
        private static final int STRENGTH = 4;
        private static final int MAIN_LIFTS_AND_SPEED = 1 << Pathway.MAX_VELOCITY_SPRINT.ordinal()
                | 1 << Pathway.KNEE_DOMINANT.ordinal()
                | 1 << Pathway.HIP_DOMINANT.ordinal();
    }

    /** From one high day's work to the next high day's lie the hours of the hardest thing in the earlier. */
    static final class HighBlockFloor extends RuleOn<GroupView> {
        private final HourWant hours;

        HighBlockFloor(RuleSettings settings) {
            super("high-block-floor", settings);
            hours = new HourWant(settings, id());
        }

        @Override
        void judge(GroupView view, Sink sink) {
            Blocks.judge(this, view, sink, (earlier, later, day) -> earlier.blockCross, false, hours);
        }
    }

    /** High days of different qualities lie a day apart in weeks with a fixture, two in others. */
    static final class HighBlockGap extends RuleOn<GroupView> {
        private final HourWant hours;
        private final int withFixture = minutes("fixtureWeekHours");
        private final int without = minutes("otherWeekHours");

        HighBlockGap(RuleSettings settings) {
            super("high-block-gap", settings);
            hours = new HourWant(settings, id());
        }

        @Override
        void judge(GroupView view, Sink sink) {
            Blocks.judge(
                    this,
                    view,
                    sink,
                    (earlier, later, day) -> hours.counted(view.group().fixtureInWeekOf(day) ? withFixture : without),
                    true,
                    hours);
        }
    }

    /** So many high days never follow one another. */
    static final class HighDaysRunning extends RuleOn<GroupView> {
        private final int running = (int) number("days");

        HighDaysRunning(String id, RuleSettings settings) {
            super(id, settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            int first = view.day();
            int last = first + running - 1;
            if (last < 0) {
                return;
            }
            Breach breach = view.breach().days(first, last);
            for (int cohort : view.cohorts()) {
                if (allHigh(view, cohort, first, last)) {
                    boolean fixed = allHighFixed(view, cohort, first, last);
                    breach.add(cohort, view.heads(cohort), pointsPerBreach(), running, running - 1, fixed);
                }
            }
            report(sink, view, breach);
        }

        private static boolean allHigh(GroupView view, int cohort, int first, int last) {
            for (int day = first; day <= last; day++) {
                if (!view.day(cohort, day).highRunning()) {
                    return false;
                }
            }
            return true;
        }

        private static boolean allHighFixed(GroupView view, int cohort, int first, int last) {
            for (int day = first; day <= last; day++) {
                if (!view.fixedDay(cohort, day).highRunning()) {
                    return false;
                }
            }
            return true;
        }
    }

    /** Everybody has a day off in each week. */
    static final class FreeDay extends RuleOn<GroupView> {
        private final int least = (int) number("days");

        FreeDay(RuleSettings settings) {
            super("free-day", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            int first = 7 * view.week();
            if (view.calendar().daysIn(view.week()) < 7) {
                return;
            }
            Breach breach = view.breach().week(view.week());
            for (int cohort : view.cohorts()) {
                int free = 0;
                int couldBe = 0;
                for (int day = first; day < first + 7; day++) {
                    free += view.day(cohort, day).busy ? 0 : 1;
                    couldBe += view.fixedDay(cohort, day).busy ? 0 : 1;
                }
                if (free < least) {
                    breach.add(cohort, view.heads(cohort), pointsPerBreach(), free, least, couldBe < least);
                }
            }
            report(sink, view, breach);
        }
    }

    /** Pathways that two stimuli both meet at high intensity; none where one is a fixture. */
    private static int sharedHigh(PairView view) {
        FamilyInfo first = view.first().family;
        FamilyInfo second = view.second().family;
        if (first == null || second == null || first.fixture || second.fixture) {
            return 0;
        }
        return first.high & second.high;
    }

    /** The rule's own hours by pathway, in minutes; -1 where the families' hold. */
    private static int[] hoursByPathway(JudgedRule rule) {
        int[] minutes = new int[Pathway.values().length];
        for (Pathway pathway : Pathway.values()) {
            var hours = rule.settings().keyed(rule.id(), "hours", pathway.id());
            minutes[pathway.ordinal()] = hours.isPresent() ? (int) Math.round(hours.getAsDouble() * 60) : -1;
        }
        return minutes;
    }
}
