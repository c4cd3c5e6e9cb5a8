package weekwright.engine.rules;

import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Pathway;

/** Rest that is wanted within a day and from one to the next. */
final class RestRules {
    private RestRules() {}

    /** A long night lies between one day's last thing and the next day's first. */
    static final class NightRestMargin extends RuleOn<GroupView> {
        private final int wanted = minutes("hours");
        private final int perMinute = points("pointsAnHour") / 60;

        NightRestMargin(RuleSettings settings) {
            super("night-rest-margin", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            int day = view.day();
            Breach breach = view.breach().days(day, day + 1);
            for (int cohort : view.cohorts()) {
                DayState evening = view.day(cohort, day);
                DayState morning = view.day(cohort, day + 1);
                if (evening.lastPlaced || morning.firstPlaced) {
                    int rest = morning.firstStart - evening.lastEnd;
                    int missing = wanted - Math.max(0, rest);
                    if (missing > 0) {
                        breach.add(cohort, view.heads(cohort), perMinute * missing, rest, wanted);
                    }
                }
            }
            report(sink, view, breach);
        }
    }

    /** Lifting and hard endurance work on one day have hours between them, more where the lifting is for power. */
    static final class StrengthEnduranceApart extends RuleOn<PairView> {
        private final int wanted = minutes("hours");
        private final int wantedForPower = minutes("powerHours");
        private final int perMinute = points("pointsAnHour") / 60;

        StrengthEnduranceApart(RuleSettings settings) {
            super("strength-endurance-apart", settings);
        }

        @Override
        void judge(PairView view, Sink sink) {
            Stimulus first = view.first();
            Stimulus second = view.second();
            boolean withFixture = first.isFixture() || second.isFixture();
            if (first.day != second.day || !view.onePlaced() || withFixture || !mixed(view)) {
                return;
            }
            int limit = forPower(view, first) || forPower(view, second) ? wantedForPower : wanted;
            int missing = limit - Math.max(0, view.gap());
            if (missing > 0) {
                Breach breach = view.breach();
                view.addCommon(breach, perMinute * missing, view.gap(), limit);
                report(sink, view, breach);
            }
        }

        private static boolean mixed(PairView view) {
            FamilyInfo first = view.first().family;
            FamilyInfo second = view.second().family;
            return first != null
                    && second != null
                    && ((first.lift && endurance(second)) || (endurance(first) && second.lift));
        }

        private static boolean endurance(FamilyInfo family) {
            return family.family.high(Pathway.AEROBIC) && !family.sprint;
        }

        private static boolean forPower(PairView view, Stimulus thing) {
            AimInfo aim = thing.placed() ? view.problem.sessions.get(thing.index).aim : null;
            return aim != null && aim.aim.power();
        }
    }
}
