package weekwright.engine.rules;

import weekwright.engine.problem.Cohort;
import weekwright.engine.problem.Problem;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Restriction;

/** Exposures that keep a quality alive. */
final class LoadRules {
    private LoadRules() {}

    /** Athletes sprint near their best speed every few days; days beyond cost, link by link. */
    static final class SpeedExposure extends RuleOn<GroupView> {
        private static final int NONE = Integer.MIN_VALUE;

        private final int days = (int) number("days");
        private final int perDay = points("pointsADay");
        private final int most = points("mostPoints");

        SpeedExposure(RuleSettings settings) {
            super("speed-exposure", settings);
        }

        @Override
        void judge(GroupView view, Sink sink) {
            int[] from = new int[view.cohorts().length];
            for (int i = 0; i < from.length; i++) {
                from[i] = lastBefore(view, view.cohorts()[i]);
            }
            int last = view.calendar().days() - 1;
            for (int day = 0; day <= last; day++) {
                judgeLinksEndingOn(view, sink, from, day, day == last);
            }
        }

        /** Cohorts whose links have the same two ends are told as one. */
        private void judgeLinksEndingOn(GroupView view, Sink sink, int[] from, int day, boolean end) {
            int[] cohorts = view.cohorts();
            int[] started = from.clone();
            for (int i = 0; i < cohorts.length; i++) {
                boolean exposed = exposed(view, cohorts[i], day);
                if (exposed) {
                    from[i] = day;
                } else if (!end) {
                    started[i] = NONE;
                }
            }
            for (int i = 0; i < cohorts.length; i++) {
                if (started[i] != NONE && day - started[i] > days) {
                    Breach breach = view.breach().days(started[i], day);
                    int start = started[i];
                    for (int j = i; j < cohorts.length; j++) {
                        if (started[j] == start) {
                            addUnlessBarred(view, breach, cohorts[j], start, day);
                            started[j] = NONE;
                        }
                    }
                    report(sink, view, breach);
                }
            }
        }

        private void addUnlessBarred(GroupView view, Breach breach, int cohort, int start, int day) {
            int beyond = day - start - days;
            if (!barred(view, view.cohort(cohort), start, day)) {
                breach.add(cohort, view.heads(cohort), Math.min(most, perDay * beyond), day - start, days);
            }
        }

        private static int lastBefore(GroupView view, int cohort) {
            for (int day = -1; day >= -Problem.EDGE; day--) {
                if (exposed(view, cohort, day)) {
                    return day;
                }
            }
            return 0;
        }

        private static boolean exposed(GroupView view, int cohort, int day) {
            return view.day(cohort, day).exposed;
        }

        private static boolean barred(GroupView view, Cohort cohort, int start, int end) {
            for (Restriction restriction : cohort.restrictions()) {
                if (restriction.pathways().contains(Pathway.MAX_VELOCITY_SPRINT)
                        && view.calendar().day(restriction.from()) <= end
                        && view.calendar().day(restriction.to()) >= start) {
                    return true;
                }
            }
            return false;
        }
    }
}
