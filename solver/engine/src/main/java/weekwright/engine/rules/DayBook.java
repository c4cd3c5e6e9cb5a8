package weekwright.engine.rules;

import weekwright.engine.problem.Stimulus;

/** The days of all cohorts, as the plan stands. */
interface DayBook {
    /** A cohort's day. */
    DayState day(int cohort, int day);

    /** A cohort's day without anything placed. */
    DayState fixedDay(int cohort, int day);

    /** What a cohort does on a day, in order of start. */
    Stimulus[] things(int cohort, int day);
}
