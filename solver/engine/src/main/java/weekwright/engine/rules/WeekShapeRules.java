package weekwright.engine.rules;

import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Cohort;
import weekwright.model.catalogue.Demands;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Restriction;

/** High days, and low ground between them. */
final class WeekShapeRules {
    private WeekShapeRules() {}

    /** A day is high or low, not in between; the days round a fixture and novices are not judged. */
    static final class NoMiddleDay extends RuleOn<GroupView> {
        private static final int LOW = Demands.LOW_TO / 10;
        private static final int HIGH = Demands.HIGH_FROM / 10;

        private final double dearer = number("sprintOrOffSeasonFactor");

        NoMiddleDay(RuleSettings settings) {
            super("no-middle-day", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            int day = view.day();
            if (view.group().novice() || nearFixture(view, day)) {
                return;
            }
            int cost = (int) Math.round(pointsPerBreach() * (view.group().keepsDaysApart() ? dearer : 1));
            Breach breach = view.breach().days(day, day);
            for (int cohort : view.cohorts()) {
                DayState state = view.day(cohort, day);
                if (state.middle()) {
                    breach.add(cohort, view.heads(cohort), cost, hundredths(state), LOW, !state.placed);
                }
            }
            report(sink, view, breach);
        }

        /** Demand in hundredths, never rounded onto an edge: a middle day lies above low and below high. */
        private static int hundredths(DayState state) {
            return Math.min(HIGH - 1, Math.max(LOW + 1, (int) Math.round(state.demand() * 100)));
        }

        private static boolean nearFixture(GroupView view, int day) {
            return view.group().fixtureOn(day - 1)
                    || view.group().fixtureOn(day + 1)
                    || view.group().fixtureOn(day + 2);
        }
    }

    /** Nobody goes many days running without a free one. */
    static final class SixDaysRunning extends RuleOn<GroupView> {
        private final int most = (int) number("days");

        SixDaysRunning(RuleSettings settings) {
            super("six-days-running", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            int last = view.day();
            int first = last - most;
            Breach breach = view.breach().days(first, last);
            for (int cohort : view.cohorts()) {
                boolean busy = true;
                boolean fixed = true;
                for (int day = last; busy && day >= first; day--) {
                    busy = view.day(cohort, day).busy;
                    fixed &= view.fixedDay(cohort, day).busy;
                }
                if (busy) {
                    breach.add(cohort, view.heads(cohort), pointsPerBreach(), most + 1, most, fixed);
                }
            }
            report(sink, view, breach);
        }
    }

    /** What a group's rules about high days in a week have in common. */
    private abstract static class HighDays extends RuleOn<GroupView> {
        HighDays(String id, RuleSettings settings) {
            super(id, settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            int week = view.week();
            PerWeek usual = view.group().highDays(week);
            if (usual == null) {
                return;
            }
            PerWeek wanted = AimInfo.shortened(usual, view.calendar().daysIn(week));
            Breach breach =
                    view.breach().days(7 * week, 7 * week + view.calendar().daysIn(week) - 1);
            for (int cohort : view.cohorts()) {
                int high = 0;
                int ours = 0;
                for (int day = breach.firstDay(); day <= breach.lastDay(); day++) {
                    boolean itIs = view.day(cohort, day).high();
                    high += itIs ? 1 : 0;
                    ours += itIs && !view.fixedDay(cohort, day).high() ? 1 : 0;
                }
                judge(view, breach, cohort, wanted, high, ours);
            }
            report(sink, view, breach);
        }

        abstract void judge(GroupView view, Breach breach, int cohort, PerWeek wanted, int high, int ours);
    }

    /** No more high days in a week than the coach allows, for as far as what is placed makes them. */
    static final class HighDaysMost extends HighDays {
        HighDaysMost(RuleSettings settings) {
            super("high-days-most", settings);
        }

        @Override
        void judge(GroupView view, Breach breach, int cohort, PerWeek wanted, int high, int ours) {
            if (Math.min(high - wanted.most(), ours) > 0) {
                breach.add(cohort, view.heads(cohort), pointsPerBreach(), high, wanted.most());
            }
        }
    }

    /** Each week holds the least number of high days, the fixture included. */
    static final class HighDaysLeast extends HighDays {
        HighDaysLeast(RuleSettings settings) {
            super("high-days-least", settings);
        }

        @Override
        void judge(GroupView view, Breach breach, int cohort, PerWeek wanted, int high, int ours) {
            if (high < wanted.least() && !restricted(view, view.cohort(cohort))) {
                breach.add(
                        cohort,
                        view.heads(cohort),
                        (level() == RuleLevel.WANT ? pointsPerBreach() : POINT) * (wanted.least() - high),
                        high,
                        wanted.least());
            }
        }
    }

    /** Each week holds as many high days as the coach wants. */
    static final class HighDaysTarget extends HighDays {
        private final int shortOf = points("shortPoints");
        private final int over = points("overPoints");

        HighDaysTarget(RuleSettings settings) {
            super("high-days-target", settings);
        }

        @Override
        void judge(GroupView view, Breach breach, int cohort, PerWeek wanted, int high, int ours) {
            int missing = wanted.target() - high;
            int above = Math.min(-missing, ours);
            if (missing > 0 && !restricted(view, view.cohort(cohort))) {
                breach.add(cohort, view.heads(cohort), shortOf * missing, high, wanted.target());
            } else if (above > 0 && !restricted(view, view.cohort(cohort))) {
                breach.add(cohort, view.heads(cohort), over * above, high, wanted.target());
            }
        }
    }

    /** Whether a clinician's restriction holds on any day of the view's week. */
    private static boolean restricted(GroupView view, Cohort cohort) {
        int first = 7 * view.week();
        for (int day = first; day < first + view.calendar().daysIn(view.week()); day++) {
            for (Restriction restriction : cohort.restrictions()) {
                if (restriction.holdsOn(view.calendar().date(day))) {
                    return true;
                }
            }
        }
        return false;
    }
}
