package weekwright.engine.rules;

import java.util.List;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.PerWeek;

/** What comes first while people are fresh, and how lifts rotate. */
final class LearningRules {
    private LearningRules() {}

    /** Within a day the freshest work comes first; a new skill never after work that tires. */
    static final class FreshestFirst extends RuleOn<PairView> {
        /** A new skill after tiring work. */
        static final int NEW_SKILL = 1;

        private final int newSkill = points("newSkillPoints");
        private final int tiringFrom = (int) number("tiringFromOrder");

        FreshestFirst(RuleSettings settings) {
            super("freshest-first", settings);
        }

        @Override
        void judge(PairView view, Sink sink) {
            Stimulus first = view.first();
            Stimulus second = view.second();
            if (first.day != second.day
                    || first.start == second.start
                    || first.family == null
                    || second.family == null
                    || lentTheStart(first, second)) {
                return;
            }
            int earlier = first.family.order;
            int later = second.family.order;
            if (earlier != FamilyInfo.NO_ORDER && later != FamilyInfo.NO_ORDER && earlier > later) {
                boolean skill = second.learning && earlier >= tiringFrom;
                Breach breach = view.breach().detail(skill ? NEW_SKILL : 0);
                view.addCommon(breach, skill ? newSkill : pointsPerBreach(), earlier, later);
                report(sink, view, breach);
            }
        }

        /** A practice that lends its start lets the other go first. */
        private static boolean lentTheStart(Stimulus practice, Stimulus session) {
            return session.lentBy == practice && practice.lends != null && practice.lends.atStart();
        }
    }

    /** A skill being learnt comes a few times a week, once a day and before anything tiring. */
    static final class LearnerFrequency extends RuleOn<AimView> {
        /** A lesson that is not fresh: its second on a day, or after something tiring; else the number of lessons is meant. */
        static final int LESSON = 1;

        private final int notFresh = points("freshPoints");
        private final int least = (int) number("least");
        private final int most = (int) number("most");

        LearnerFrequency(RuleSettings settings) {
            super("learner-frequency", settings);
        }

        @Override
        void judge(AimView view, Sink sink) {
            if (!view.aim().aim.learning()) {
                return;
            }
            int days = view.problem.calendar.daysIn(view.week());
            PerWeek wanted = AimInfo.shortened(new PerWeek(least, least, most), days);
            int count = view.counted();
            int limit = Math.min(wanted.most(), Math.max(wanted.least(), count));
            if (count != limit) {
                Breach breach = view.breach().week(view.week());
                breach.addAmount(view.group().heads, pointsPerBreach() * Math.abs(count - limit), count, limit);
                report(sink, view, breach);
            }
            for (int i = 0; i < view.placed(); i++) {
                lesson(view, sink, i);
            }
        }

        private void lesson(AimView view, Sink sink, int i) {
            Stimulus at = view.placement(i);
            boolean again = false;
            for (int before = 0; before < i; before++) {
                Stimulus earlier = view.placement(before);
                again |= earlier.day == at.day && earlier.start < at.start;
            }
            if (again || view.tired(at)) {
                Breach breach = view.breach().days(at.day, at.day).about(at).detail(LESSON);
                breach.addAmount(view.group().heads, notFresh, again ? 2 : 1, again ? 1 : 0);
                report(sink, view, breach);
            }
        }
    }

    /** The same lift is taken at full dose for a few weeks running and then changed: each week beyond costs. */
    static final class MaximumRepeated extends RuleOn<LiftView> {
        MaximumRepeated(RuleSettings settings) {
            super("maximum-repeated", settings);
        }

        @Override
        void judge(LiftView view, Sink sink) {
            LiftCount count = view.count();
            for (int i = 0; i < view.exposures().size(); i++) {
                Stimulus at = view.exposures().get(i);
                int weeks = count.step(at, view.variant(i)).weeksRunning();
                if (weeks > 0) {
                    view.show(List.of(at));
                    Breach breach = view.breach().days(at.day, at.day).detail(view.variant(i));
                    breach.addAmount(
                            view.group().heads,
                            pointsPerBreach(),
                            weeks,
                            view.limits().weeks());
                    report(sink, view, breach);
                }
            }
        }
    }

    /** A lift stays for a few exposures before another takes its place, and the lift that is tested comes back. */
    static final class VariantChurn extends RuleOn<LiftView> {
        /** The form in which the tested lift stays away too long; else the form is the variant that is left. */
        static final int TESTED = -1;

        private final int testedPoints = points("testedPoints");

        VariantChurn(RuleSettings settings) {
            super("variant-churn", settings);
        }

        /** Units of cost where the tested lift stays away too long. */
        int testedPoints() {
            return testedPoints;
        }

        @Override
        void judge(LiftView view, Sink sink) {
            LiftCount count = view.count();
            for (int i = 0; i < view.exposures().size(); i++) {
                Stimulus at = view.exposures().get(i);
                int since = count.lastTested();
                int left = count.step(at, view.variant(i)).leftAfter();
                if (left > 0) {
                    view.show(view.exposures().subList(i - left, i + 1));
                    Breach breach = view.breach().days(at.day, at.day).detail(view.variant(i - 1));
                    breach.addAmount(
                            view.group().heads,
                            pointsPerBreach(),
                            left,
                            view.limits().exposures());
                    report(sink, view, breach);
                }
                reportUntested(view, sink, count, since, at.day, List.of(at));
            }
            int since = count.lastTested();
            reportUntested(view, sink, count.end(view.lastDay()), since, view.lastDay(), List.of());
        }

        private void reportUntested(
                LiftView view, Sink sink, LiftCount count, int since, int day, List<Stimulus> back) {
            if (count.daysUntested() > 0) {
                view.show(back);
                Breach breach = view.breach().days(since, day).detail(TESTED);
                breach.addAmount(
                        view.group().heads,
                        testedPoints,
                        count.daysUntested(),
                        view.limits().testedDays());
                report(sink, view, breach);
            }
        }
    }
}
