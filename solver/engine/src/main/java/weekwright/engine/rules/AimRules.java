package weekwright.engine.rules;

import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Calendar;
import weekwright.engine.problem.Stimulus;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Priority;

/** What the coach wants trained each week. */
final class AimRules {
    private AimRules() {}

    /** An aim of one priority reaches its least; a micro dose counts only where the aim says so. */
    static final class AimLeast extends RuleOn<AimView> {
        private final Priority priority;

        AimLeast(RuleSettings settings, Priority priority) {
            super("aim-least", settings, level(settings, priority));
            this.priority = priority;
        }

        @Override
        void judge(AimView view, Sink sink) {
            int missing = missing(view);
            if (missing > 0 && view.aim().aim.priority() == priority) {
                Breach breach = view.breach().week(view.week());
                breach.addAmount(
                        view.group().heads,
                        units(this) * missing,
                        view.countedForLeast(),
                        view.aim().least(view.week()));
                report(sink, view, breach);
            }
        }

        /** Units of cost of one missing session. */
        static int units(JudgedRule rule) {
            return rule.level() == RuleLevel.WANT ? rule.pointsPerBreach() : POINT;
        }

        /** The aim's priority is the level, unless the coach has set another for the rule. */
        private static RuleLevel level(RuleSettings settings, Priority priority) {
            RuleLevel set = settings.level("aim-least");
            return set == RuleLevel.KEY && priority == Priority.MAIN ? RuleLevel.MAIN : set;
        }

        static int missing(AimView view) {
            return view.aim().least(view.week()) - view.countedForLeast();
        }
    }

    /** What is placed never passes the most of an aim. */
    static final class AimMost extends RuleOn<AimView> {
        AimMost(RuleSettings settings) {
            super("aim-most", settings);
        }

        @Override
        void judge(AimView view, Sink sink) {
            int most = view.aim().most(view.week());
            if (view.placed() > 0 && view.counted() > most) {
                Breach breach = view.breach().week(view.week());
                breach.addAmount(view.group().heads, pointsPerBreach(), view.counted(), most);
                report(sink, view, breach);
            }
        }
    }

    /** An aim reaches its target; a spare one its least too. */
    static final class AimTarget extends RuleOn<AimView> {
        /** What is short is the least of a spare aim, and not its target. */
        static final int LEAST = 1;

        AimTarget(RuleSettings settings) {
            super("aim-target", settings);
        }

        @Override
        void judge(AimView view, Sink sink) {
            int least = view.aim().least(view.week());
            int target = view.aim().target(view.week());
            boolean spare = view.aim().aim.priority() == Priority.SPARE;
            int ofLeast = spare ? Math.max(0, AimLeast.missing(view)) : 0;
            int ofTarget = Math.max(0, target - Math.max(view.counted(), least));
            if (ofLeast + ofTarget == 0) {
                return;
            }
            Breach breach = view.breach().week(view.week());
            int cost = aimPoints(this, view.aim()) * (ofLeast + ofTarget);
            if (ofTarget > 0) {
                breach.addAmount(view.group().heads, cost, view.counted(), target);
            } else {
                breach.detail(LEAST).addAmount(view.group().heads, cost, view.countedForLeast(), least);
            }
            report(sink, view, breach);
        }
    }

    /** A session is done in full rather than in a smaller dose, except between crowded fixtures. */
    static final class DoseKept extends RuleOn<PlacementView> {
        private final double reduced = number("reducedShare");
        private final double micro = number("microShare");
        private final int apart = (int) number("waivedDays");

        DoseKept(RuleSettings settings) {
            super("dose-kept", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            AimInfo aim = view.session().aim;
            if (at == null || aim == null || at.dose.compareTo(aim.fullest) <= 0 || betweenFixtures(view, at)) {
                return;
            }
            double share = share(at.dose) - share(aim.fullest);
            Breach breach = view.breach();
            int cost = (int) Math.round(aimPoints(this, aim) * share);
            breach.addAmount(view.group().heads, cost, at.dose.thirds(), aim.fullest.thirds());
            report(sink, view, breach);
        }

        private double share(Dose dose) {
            return switch (dose) {
                case FULL -> 0;
                case REDUCED -> reduced;
                case MICRO -> micro;
            };
        }

        /** Whether it lies between two fixtures of its group that are fewer than so many days apart. */
        private boolean betweenFixtures(PlacementView view, Stimulus at) {
            Stimulus before = null;
            for (Stimulus fixture : view.group().fixtures()) {
                if (fixture.start > at.start) {
                    return before != null && fixture.day - before.day < apart;
                }
                before = fixture;
            }
            return false;
        }
    }

    /** The sessions of an aim in a week are spread over it. */
    static final class EvenSpread extends RuleOn<AimView> {
        private static final int DAY = 24 * 60;

        private final int perMinute = points("pointsAnHour") / 60;

        EvenSpread(RuleSettings settings) {
            super("even-spread", settings);
        }

        @Override
        void judge(AimView view, Sink sink) {
            if (view.placed() < 2 || view.aim().family.practice || view.aim().family.recovery) {
                return;
            }
            Calendar calendar = view.problem.calendar;
            int wanted = DAY * (calendar.daysIn(view.week()) / view.placed());
            for (int i = 1; i < view.placed(); i++) {
                Stimulus first = view.placement(i - 1);
                Stimulus second = view.placement(i);
                int apart = DAY * (second.day - first.day)
                        + calendar.clockMinutes(second.start)
                        - calendar.clockMinutes(first.start);
                if (apart < wanted) {
                    Breach breach = view.breach().days(first.day, second.day).about(first, second);
                    breach.addAmount(view.group().heads, perMinute * (wanted - apart), apart, wanted);
                    report(sink, view, breach);
                }
            }
        }
    }

    /** Points of one missing session of an aim, in units. */
    static int aimPoints(JudgedRule rule, AimInfo aim) {
        String name = switch (aim.aim.priority()) {
            case KEY -> "keyPoints";
            case MAIN -> "mainPoints";
            case SPARE -> "sparePoints";
        };
        return rule.pointsOf("aim-target", name);
    }
}
