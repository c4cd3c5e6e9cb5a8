package weekwright.engine.rules;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Absence.Why;
import weekwright.model.rulebook.RuleSettings;

/** Who comes, and whether they are enough. */
final class AttendanceRules {
    private AttendanceRules() {}

    /** A session is held for as many of its group as it needs; whoever a clinician keeps away is not counted. */
    static final class Quorum extends RuleOn<PlacementView> {
        Quorum(RuleSettings settings) {
            super("quorum", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            if (at == null) {
                return;
            }
            int come = view.problem.heads(at.cohorts);
            int needed = view.problem.fewestToCome(view.group(), view.problem.heads(at.base.cohorts));
            if (come < needed) {
                PlaceAndTimeRules.reportWhole(this, view, sink, come, needed, 0);
            }
        }
    }

    /** A session lies where all of its group can come. */
    static final class EverybodyComes extends RuleOn<PlacementView> {
        EverybodyComes(RuleSettings settings) {
            super("attendance", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            if (at != null && at != at.base) {
                Breach breach = view.breach();
                int missing = view.problem.heads(at.base.cohorts) - view.problem.heads(at.cohorts);
                for (int cohort : at.base.cohorts) {
                    if (!at.has(cohort)) {
                        breach.add(cohort, view.heads(cohort), pointsPerBreach(), missing, 0);
                    }
                }
                report(sink, view, breach);
            }
        }
    }

    /** Who sits a session out: one fact for those whom a clinician keeps away, one for those with something else to do. */
    static final class SitsOut extends RuleOn<PlacementView> {
        /** By a clinician's word. */
        static final int RESTRICTED = 0;
        /** For one reason that all of them have: this and {@link Why#ordinal}. */
        static final int WHY = 1;
        /** For reasons of their own. */
        static final int SEVERAL = -1;

        SitsOut(RuleSettings settings) {
            super("sits-out", settings);
        }

        @Override
        void judge(PlacementView view, Sink sink) {
            Stimulus at = view.at();
            if (at != null) {
                Breach restricted = view.breach().detail(RESTRICTED);
                tell(view, sink, restricted, at.meant, at.base);
                Breach others = view.breach().detail(SEVERAL);
                tellWhy(view, others, at);
                tell(view, sink, others, at.base.cohorts, at);
            }
        }

        private void tell(PlacementView view, Sink sink, Breach breach, int[] some, Stimulus who) {
            int heads = 0;
            List<String> names = new ArrayList<>();
            for (int cohort : some) {
                if (!who.has(cohort)) {
                    heads += view.heads(cohort);
                    names.addAll(view.cohort(cohort).athletes());
                    breach.add(cohort, view.heads(cohort), pointsPerBreach(), heads, 0);
                }
            }
            report(sink, view, breach.named(names));
        }

        /** The reason, where all have the same. */
        private static void tellWhy(PlacementView view, Breach breach, Stimulus at) {
            Absence common = null;
            for (int cohort : at.base.cohorts) {
                Absence absence = at.has(cohort) ? null : view.absence(cohort);
                if (absence != null && common != null && !common.equals(absence)) {
                    return;
                }
                common = absence == null ? common : absence;
            }
            if (common != null) {
                breach.detail(WHY + common.why().ordinal()).about(common.first());
            }
        }
    }
}
