package weekwright.engine.rules;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Calendar;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.Pathway;

/** The days of a group's own cohorts: those whose main group it is. */
public final class GroupView extends View {
    private final DayBook days;
    private GroupInfo group;
    private int day;
    private int week;
    private Pathway pathway = Pathway.MAX_VELOCITY_SPRINT;
    private @Nullable Stimulus fixture;

    GroupView(Problem problem, DayBook days) {
        super(problem);
        this.days = days;
        group = problem.groups.get(0);
    }

    GroupView of(GroupInfo of) {
        group = of;
        return this;
    }

    GroupView onDay(int number) {
        day = number;
        return this;
    }

    GroupView inWeek(int number) {
        week = number;
        return this;
    }

    GroupView on(Pathway quality) {
        pathway = quality;
        return this;
    }

    GroupView of(GroupInfo of, Stimulus around) {
        group = of;
        fixture = around;
        return this;
    }

    @Override
    public GroupInfo group() {
        return group;
    }

    /** The day looked at, or the first of a run of days. */
    public int day() {
        return day;
    }

    /** The plan week looked at. */
    public int week() {
        return week;
    }

    /** The fixture looked at. */
    public Stimulus fixture() {
        return java.util.Objects.requireNonNull(fixture);
    }

    /** The pathway whose line is looked at. */
    public Pathway pathway() {
        return pathway;
    }

    /** Cohorts whose main group this is. */
    int[] cohorts() {
        return problem.cohortsOfMainGroup[group.index];
    }

    /** A cohort's day; before and after the plan what is fixed. */
    DayState day(int cohort, int number) {
        return days.day(cohort, number);
    }

    /** A cohort's day without anything placed. */
    DayState fixedDay(int cohort, int number) {
        return days.fixedDay(cohort, number);
    }

    /** A cohort's load from one day up to another, in tenths. */
    long load(int cohort, int from, int to) {
        long load = 0;
        for (int number = from; number < to; number++) {
            load += day(cohort, number).load;
        }
        return load;
    }

    /** Whether anything placed lies from one day up to another. */
    boolean placedBetween(int cohort, int from, int to) {
        for (int number = from; number < to; number++) {
            if (day(cohort, number).placed) {
                return true;
            }
        }
        return false;
    }

    /** Whether a cohort has a fixture on a day, on the bench too. */
    boolean fixtureOf(int cohort, int number) {
        for (Stimulus fixed : problem.fixed(cohort, number)) {
            if (fixed.isFixture()) {
                return true;
            }
        }
        return false;
    }

    Calendar calendar() {
        return problem.calendar;
    }
}
