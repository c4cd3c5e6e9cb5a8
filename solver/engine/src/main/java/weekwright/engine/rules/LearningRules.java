package weekwright.engine.rules;

import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.model.rulebook.RuleSettings;

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
            int earlier = first.family.order;
            int later = second.family.order;
            if (earlier != FamilyInfo.NO_ORDER && later != FamilyInfo.NO_ORDER && earlier > later) {
                boolean skill = second.learning && earlier >= tiringFrom;
                Breach breach = view.breach().days(first.day, first.day).detail(skill ? NEW_SKILL : 0);
                view.addCommon(breach, skill ? newSkill : pointsPerBreach(), earlier, later);
                report(sink, view, breach);
            }
        }

        private static boolean ofToday(Stimulus first, Stimulus second) {
            return first.kind != Stimulus.Kind.HISTORY && second.kind != Stimulus.Kind.HISTORY;
        }
    }
}
