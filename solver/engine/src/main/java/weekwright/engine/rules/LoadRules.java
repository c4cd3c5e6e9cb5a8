package weekwright.engine.rules;

import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Pathway;

/** Exposures that keep a quality alive. */
final class LoadRules {
    private static final Pathway SPEED = Pathway.MAX_VELOCITY_SPRINT;

    private LoadRules() {}

    /** Athletes sprint near their best speed every few days; days beyond cost, link by link. */
    static final class SpeedExposure extends RuleOn<GroupView> {
        private final int days = (int) number("days");
        private final int perDay = points("pointsADay");
        private final int most = points("mostPoints");

        SpeedExposure(RuleSettings settings) {
            super("speed-exposure", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            if (view.pathway() == SPEED) {
                Links.judge(this, view, sink, (breach, cohort, start, end) -> {
                    int beyond = end - start - days;
                    if (beyond > 0 && !Links.barred(view, cohort, start, end)) {
                        breach.add(cohort, view.heads(cohort), Math.min(most, perDay * beyond), end - start, days);
                    }
                });
            }
        }
    }

    /** Every other quality that has an aim is met every so many days. */
    static final class PathwayNeglected extends RuleOn<GroupView> {
        private final int days = (int) number("days");
        private final int perDay = points("pointsADay");

        PathwayNeglected(RuleSettings settings) {
            super("pathway-neglected", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            if (view.pathway() != SPEED) {
                Links.judge(this, view, sink, (breach, cohort, start, end) -> {
                    int beyond = end - start - days;
                    if (beyond > 0 && !Links.barred(view, cohort, start, end)) {
                        breach.detail(view.pathway().ordinal());
                        breach.add(cohort, view.heads(cohort), perDay * beyond, end - start, days);
                    }
                });
            }
        }
    }

    /** After a long time without it, maximal sprinting comes back in a small dose. */
    static final class ReturnDose extends RuleOn<GroupView> {
        private static final int THIRDS = 3;

        private final int days = (int) number("days");
        private final double share = number("share");

        ReturnDose(RuleSettings settings) {
            super("return-dose", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            if (view.pathway() != SPEED) {
                return;
            }
            int day = view.day();
            Breach breach = view.breach().days(day, day);
            for (int cohort : view.cohorts()) {
                int thirds = view.day(cohort, day).sprintThirds;
                int before = thirds > share * THIRDS ? Links.before(view, cohort) : Links.UNKNOWN;
                if (before != Links.UNKNOWN && day - before > days) {
                    int dose = percent((double) thirds / THIRDS);
                    breach.add(cohort, view.heads(cohort), pointsPerBreach(), dose, percent(share));
                    breach.detail(Math.max(breach.detail(), day - before));
                }
            }
            report(sink, view, breach);
        }

        private static int percent(double share) {
            return (int) Math.round(100 * share);
        }
    }
}
