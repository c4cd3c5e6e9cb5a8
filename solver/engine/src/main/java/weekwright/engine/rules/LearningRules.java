package weekwright.engine.rules;

import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.model.catalogue.Demands;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.PerWeek;

/** What comes first while people are fresh. */
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
                    || !ofToday(first, second)) {
                return;
            }
            if (speaksOf(view)) {
                int earlier = first.family.order;
                int later = second.family.order;
                boolean skill = second.learning && earlier >= tiringFrom;
                Breach breach = view.breach().days(first.day, first.day).detail(skill ? NEW_SKILL : 0);
                view.addCommon(breach, skill ? newSkill : pointsPerBreach(), earlier, later);
                report(sink, view, breach);
            }
        }

        /** Whether both have a place in the order of a day, and the earlier is not the fresher. */
        static boolean speaksOf(PairView view) {
            int earlier = order(view.first());
            int later = order(view.second());
            return earlier != FamilyInfo.NO_ORDER && later != FamilyInfo.NO_ORDER && earlier > later;
        }

        private static int order(Stimulus thing) {
            return thing.family == null ? FamilyInfo.NO_ORDER : thing.family.order;
        }

        private static boolean ofToday(Stimulus first, Stimulus second) {
            return first.kind != Stimulus.Kind.HISTORY && second.kind != Stimulus.Kind.HISTORY;
        }
    }

    /** A skill being learnt comes a few times a week. */
    static final class LearnerFrequency extends RuleOn<AimView> {
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
                Breach breach = view.breach().days(7 * view.week(), 7 * view.week() + days - 1);
                breach.addAmount(view.group().heads, pointsPerBreach() * Math.abs(count - limit), count, limit);
                report(sink, view, breach);
            }
        }
    }

    /** A skill being learnt comes before anything tiring, and once a day. */
    static final class LearnerFresh extends RuleOn<PairView> {
        /** Something tiring comes before it. */
        static final int TIRED = 1;
        /** It comes twice on one day. */
        static final int TWICE = 2;

        private final int cost = points("freshPoints");

        LearnerFresh(RuleSettings settings) {
            super("learner-frequency", settings);
        }

        @Override
        void judge(PairView view, Sink sink) {
            Stimulus first = view.first();
            Stimulus second = view.second();
            if (!second.learning || first.day != second.day || first.start == second.start || first.family == null) {
                return;
            }
            if (lessonsOfOneSkill(view)) {
                Breach breach = view.breach().detail(TWICE);
                view.addCommon(breach, cost, 2, 1);
                report(sink, view, breach);
            } else if (first.kind != Stimulus.Kind.HISTORY && !FreshestFirst.speaksOf(view)) {
                Breach breach = view.breach().detail(TIRED);
                for (int cohort : first.cohorts) {
                    if (second.has(cohort) && first.demandFor(cohort) > Demands.LOW_TO) {
                        breach.add(cohort, view.heads(cohort), cost, 1, 0);
                    }
                }
                report(sink, view, breach);
            }
        }

        /** Two placements of one aim whose family may come twice a day: of others it is a must that it does not. */
        private static boolean lessonsOfOneSkill(PairView view) {
            FamilyInfo family = view.second().family;
            boolean mayComeTwice = family != null && (family.practice || family.recovery);
            return mayComeTwice
                    && view.first().placed()
                    && view.problem.sessions.get(view.first().index).aim
                            == view.problem.sessions.get(view.second().index).aim;
        }
    }
}
