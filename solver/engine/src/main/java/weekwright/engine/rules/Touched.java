package weekwright.engine.rules;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Scopes.Marks;

/** What has to be looked at again because sessions have moved: days of cohorts first, then the scopes that are marked. */
final class Touched {
    private final Problem problem;
    private final Timelines timelines;
    private final Scopes scopes;
    final Marks marks;
    private final boolean[][] dirty;
    private final int[] cohorts;
    private final int[] days;
    private int count;

    Touched(Problem problem, Timelines timelines, Scopes scopes) {
        this.problem = problem;
        this.timelines = timelines;
        this.scopes = scopes;
        marks = new Marks(scopes.count());
        dirty = new boolean[problem.cohorts.size()][problem.calendar.days()];
        cohorts = new int[problem.cohorts.size() * problem.calendar.days()];
        days = new int[cohorts.length];
    }

    /** Something lies here now, or did until now. */
    void at(Stimulus at) {
        scopes.bookings(at, marks);
        if (!problem.staff.isEmpty()) {
            staff(at);
        }
        for (int cohort : at.cohorts) {
            day(cohort, at.day);
        }
    }

    /** A day of a cohort. */
    void day(int cohort, int day) {
        if (!dirty[cohort][day]) {
            dirty[cohort][day] = true;
            cohorts[count] = cohort;
            days[count++] = day;
        }
    }

    /** Sessions that run past midnight tie the staff of neighbouring days together. */
    private void staff(Stimulus at) {
        int last = problem.calendar.days() - 1;
        int first = at.day;
        while (first > 0 && timelines.runsOver(first - 1)) {
            first--;
        }
        for (int day = first; day <= last; day++) {
            scopes.staffOn(day, marks);
            boolean tied = timelines.runsOver(day) || (day == at.day && at.runsOver);
            if (day >= at.day && !tied) {
                return;
            }
        }
    }

    /** The aim, the lifts and the leads of a session that has moved. */
    void moved(Session session, @Nullable Stimulus from, @Nullable Stimulus to) {
        aim(session, from, to);
        lines(session, from, to);
    }

    private void aim(Session session, @Nullable Stimulus from, @Nullable Stimulus to) {
        boolean elsewhere = from == null || to == null || from.dose != to.dose || from.start != to.start;
        if (session.aim == null || !elsewhere) {
            return;
        }
        scopes.aim(session.aim.index, 7 * session.week, marks);
        if (from != null) {
            scopes.topUps(session.aim.index, from.day, marks);
        }
        if (to != null) {
            scopes.topUps(session.aim.index, to.day, marks);
        }
    }

    /** Another place alone changes nothing of lifts. */
    private void lines(Session session, @Nullable Stimulus from, @Nullable Stimulus to) {
        boolean same = from != null
                && to != null
                && from.start == to.start
                && from.dose == to.dose
                && from.variant == to.variant;
        if (!same) {
            scopes.lift(session.index, marks);
        }
        leads(session);
    }

    /** Others lead a session than before, or may. */
    void leads(Session session) {
        if (session.aim != null) {
            scopes.leads(session.aim, session.week, marks);
        }
    }

    /** Others come to a session than before: it counts for those who learn. */
    void turnout(Session session) {
        if (session.aim != null && session.aim.aim.learning()) {
            scopes.aim(session.aim.index, 7 * session.week, marks);
        }
    }

    /** Hands over each day of a cohort that was touched, and forgets it. */
    void forgetDays(Days each) {
        for (int i = 0; i < count; i++) {
            dirty[cohorts[i]][days[i]] = false;
            each.day(cohorts[i], days[i]);
        }
        count = 0;
    }

    /** Takes a day of a cohort. */
    interface Days {
        void day(int cohort, int day);
    }
}
