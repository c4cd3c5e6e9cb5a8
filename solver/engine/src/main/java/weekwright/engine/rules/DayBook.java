package weekwright.engine.rules;

/** The days of all cohorts, as the plan stands. */
interface DayBook {
    /** A cohort's day. */
    DayState day(int cohort, int day);

    /** A cohort's day without anything placed. */
    DayState fixedDay(int cohort, int day);
}
