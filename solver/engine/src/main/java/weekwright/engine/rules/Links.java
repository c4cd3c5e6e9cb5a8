package weekwright.engine.rules;

import weekwright.engine.problem.Cohort;
import weekwright.engine.problem.Problem;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Restriction;

/**
 * Lines of exposures to a pathway, link by link: from one day on which a cohort meets it to the next, and from the last to
 * the end of the plan. What looks like a rule over weeks is a sum over links.
 */
final class Links {
    /** The line has no exposure before its first day in the plan. */
    static final int UNKNOWN = Integer.MIN_VALUE;

    private static final int NONE = Integer.MAX_VALUE;

    /** Adds to a breach what a link costs one cohort, if anything. */
    interface Link {
        /**
         * A link of a cohort.
         *
         * @param start day of the exposure before, or the plan's first
         * @param end the view's day
         */
        void judge(Breach breach, int cohort, int start, int end);
    }

    private Links() {}

    /** Judges the links that end on the view's day; cohorts whose links have the same two ends are told as one. */
    static void judge(RuleOn<GroupView> rule, GroupView view, Sink sink, Link link) {
        int[] cohorts = view.cohorts();
        int[] starts = new int[cohorts.length];
        for (int i = 0; i < cohorts.length; i++) {
            starts[i] = ends(view, cohorts[i]) ? start(view, cohorts[i]) : NONE;
        }
        for (int i = 0; i < cohorts.length; i++) {
            if (starts[i] != NONE) {
                int start = starts[i];
                Breach breach = view.breach().days(start, view.day());
                for (int j = i; j < cohorts.length; j++) {
                    if (starts[j] == start) {
                        link.judge(breach, cohorts[j], start, view.day());
                        starts[j] = NONE;
                    }
                }
                rule.report(sink, view, breach);
            }
        }
    }

    private static int start(GroupView view, int cohort) {
        int before = before(view, cohort);
        return before == UNKNOWN ? 0 : before;
    }

    private static boolean ends(GroupView view, int cohort) {
        return view.day() == view.calendar().days() - 1 || met(view.day(cohort, view.day()), view.pathway());
    }

    /** The last day before the view's on which a cohort meets its pathway, or {@link #UNKNOWN}. */
    static int before(GroupView view, int cohort) {
        for (int day = view.day() - 1; day >= -Problem.EDGE; day--) {
            if (met(view.day(cohort, day), view.pathway())) {
                return day;
            }
        }
        return UNKNOWN;
    }

    /** Whether a pathway is met at high intensity on a day. */
    static boolean met(DayState day, Pathway pathway) {
        return (day.met >> pathway.ordinal() & 1) != 0;
    }

    /** Whether a clinician's restriction on the view's pathway holds on any day of a link. */
    static boolean barred(GroupView view, int cohort, int start, int end) {
        Cohort of = view.cohort(cohort);
        for (Restriction restriction : of.restrictions()) {
            if (restriction.pathways().contains(view.pathway())
                    && view.calendar().day(restriction.from()) <= end
                    && view.calendar().day(restriction.to()) >= start) {
                return true;
            }
        }
        return false;
    }

    /** The next day after one on which a cohort meets a pathway, or the plan's last. */
    static int next(DayBook book, int cohort, int day, Pathway pathway, int last) {
        int next = day + 1;
        while (next < last && !met(book.day(cohort, next), pathway)) {
            next++;
        }
        return next;
    }
}
