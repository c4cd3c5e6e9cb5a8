package weekwright.engine.rules;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cohort;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/** Where every session lies, and what each day asks of each cohort. */
final class Timelines implements DayBook {
    final Problem problem;
    /** Sessions placed, by group and day. */
    final DayLists byGroup;
    /** Sessions placed, by facility and day. */
    final DayLists byFacility;

    /** Sessions placed, by day, where anybody is there to lead them. */
    private final DayLists led;

    /** Who comes to what. */
    final Attendance attendance;

    private final @Nullable Stimulus[] at;
    private final DayState[][] days;
    private final DayState[][] fixedDays;
    private final Visiting[] visiting;
    private final int[] overnight;
    private final StaffDay[] staffDays;
    private Stimulus[] scratch = new Stimulus[16];

    Timelines(Problem problem) {
        this.problem = problem;
        int length = problem.calendar.days();
        byGroup = new DayLists(problem.groups.size(), length);
        byFacility = new DayLists(problem.facilities.size(), length);
        led = new DayLists(1, length);
        overnight = new int[length];
        staffDays = new StaffDay[length];
        Arrays.fill(staffDays, StaffDay.EMPTY);
        at = new @Nullable Stimulus[problem.sessions.size()];
        visiting = problem.cohorts.stream()
                .map(cohort -> Visiting.of(problem.groups.get(cohort.mainGroup()).settings))
                .toArray(Visiting[]::new);
        days = new DayState[problem.cohorts.size()][length];
        fixedDays = new DayState[problem.cohorts.size()][length + 2 * Problem.EDGE];
        for (Cohort cohort : problem.cohorts) {
            fillFixed(cohort.index(), length);
        }
        attendance = new Attendance(problem, this, visiting);
    }

    private void fillFixed(int cohort, int length) {
        for (int day = -Problem.EDGE; day < length + Problem.EDGE; day++) {
            DayState state = workedOut(cohort, day, new DayState());
            fixedDays[cohort][day + Problem.EDGE] = state;
            if (day >= 0 && day < length) {
                days[cohort][day] = state;
            }
        }
    }

    /** Where a session lies, with those who come to it, or null. */
    @Nullable
    Stimulus at(int session) {
        return at[session];
    }

    /** Puts a session somewhere or nowhere, without working out the days anew. */
    void put(int session, @Nullable Stimulus to) {
        Stimulus from = at[session];
        if (from != null) {
            overnight[from.day] -= from.runsOver ? 1 : 0;
            byGroup.remove(from.group, from);
            if (!problem.staff.isEmpty()) {
                led.remove(0, from);
            }
            if (takesRoom(from)) {
                byFacility.remove(from.facility, from);
            }
        }
        at[session] = to;
        if (to != null) {
            overnight[to.day] += to.runsOver ? 1 : 0;
            byGroup.add(to.group, to);
            if (!problem.staff.isEmpty()) {
                led.add(0, to);
            }
            if (takesRoom(to)) {
                byFacility.add(to.facility, to);
            }
        }
        attendance.put(from, to);
    }

    private static boolean takesRoom(Stimulus session) {
        return session.facility >= 0 && !session.isGuest();
    }

    @Override
    public DayState day(int cohort, int day) {
        return day >= 0 && day < days[cohort].length ? days[cohort][day] : fixedDay(cohort, day);
    }

    @Override
    public DayState fixedDay(int cohort, int day) {
        int index = Math.min(Math.max(0, day + Problem.EDGE), fixedDays[cohort].length - 1);
        return fixedDays[cohort][index];
    }

    /** Takes over a day that was worked out before. */
    void setDay(int cohort, int day, DayState state) {
        days[cohort][day] = state;
    }

    /** Who leads the sessions of a day, as it was last worked out. */
    StaffDay staff(int day) {
        return staffDays[day];
    }

    /** Takes over who leads the sessions of a day. */
    void setStaff(int day, StaffDay staff) {
        staffDays[day] = staff;
    }

    /** Works a day out from what lies on it now. */
    DayState workedOut(int cohort, int day, DayState into) {
        int count = gather(cohort, day);
        into.of(scratch, count, cohort, visiting[cohort]);
        into.busy |= problem.longTravel(cohort, day);
        return into;
    }

    /** What a cohort does on a day, in order of start. */
    Stimulus[] things(int cohort, int day) {
        return Arrays.copyOf(scratch, gather(cohort, day));
    }

    private int gather(int cohort, int day) {
        int count = 0;
        for (int group : problem.cohorts.get(cohort).groups()) {
            for (int i = byGroup.count(group, day) - 1; i >= 0; i--) {
                Stimulus placed = byGroup.at(group, day, i);
                if (placed.has(cohort)) {
                    count = insert(placed, count);
                }
            }
        }
        for (Stimulus fixed : problem.fixed(cohort, day)) {
            count = insert(fixed, count);
        }
        return count;
    }

    private int insert(Stimulus thing, int count) {
        if (count == scratch.length) {
            scratch = Arrays.copyOf(scratch, 2 * count);
        }
        int place = count;
        while (place > 0 && Stimulus.inOrder(thing, scratch[place - 1]) < 0) {
            scratch[place] = scratch[place - 1];
            place--;
        }
        scratch[place] = thing;
        return count + 1;
    }

    /** Sessions placed on some days that staff may have to lead, in order of start. */
    Stimulus[] placedFrom(int first, int last) {
        return led.from(0, first, last);
    }

    /** Those of some sessions that are placed, in order of start. */
    Stimulus[] placed(Iterable<Session> sessions) {
        int count = 0;
        for (Session session : sessions) {
            Stimulus where = at[session.index];
            count = where == null ? count : insert(where, count);
        }
        return Arrays.copyOf(scratch, count);
    }

    /** Whether a session placed on a day runs into the next. */
    boolean runsOver(int day) {
        return day < overnight.length && overnight[day] > 0;
    }
}
