package weekwright.engine.rules;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.Pathway;

/**
 * The scopes whose costs are kept: a small part of the plan each, by number, so that every breach belongs to exactly one.
 * Placements, and pairs of things, are scopes too, but are worked out where a session moves.
 */
final class Scopes {
    /** What kind of part a scope is. */
    enum Kind {
        DAY,
        NIGHT,
        RUN,
        WEEK,
        AIM,
        LINE,
        FIXTURE,
        BOOKINGS,
        STAFF,
        LIFT,
        LEADS
    }

    /** A fixture, as one group's own cohorts see it. */
    record FixtureScope(Stimulus fixture, int group) {}

    /** A scope by number: what it is about. */
    record Scope(Kind kind, int owner, int at) {}

    final List<FixtureScope> fixtures = new ArrayList<>();
    /** Days before the plan on which a run of days may begin. */
    final int runEdge;

    private final Problem problem;
    private final int days;
    private final int weeks;
    private final int runDays;
    private final int[] bases = new int[Kind.values().length + 1];
    private final List<Scope> scopes = new ArrayList<>();
    private final int[][][] fixturesNear;
    private final boolean[] lineJudged;
    private final boolean[] limited;

    Scopes(Problem problem) {
        this.problem = problem;
        days = problem.calendar.days();
        weeks = problem.calendar.weeks();
        runEdge = runEdge(problem);
        runDays = days + runEdge;
        for (Stimulus fixture : problem.fixtures) {
            for (int group = 0; group < problem.groups.size(); group++) {
                if (sees(group, fixture)) {
                    fixtures.add(new FixtureScope(fixture, group));
                }
            }
        }
        int groups = problem.groups.size();
        add(Kind.DAY, groups, days);
        add(Kind.NIGHT, groups, days + 1);
        add(Kind.RUN, groups, runDays);
        add(Kind.WEEK, groups, weeks);
        add(Kind.AIM, problem.aims.size(), weeks);
        add(Kind.LINE, groups, 1);
        add(Kind.FIXTURE, fixtures.size(), 1);
        add(Kind.BOOKINGS, problem.facilities.size(), days);
        add(Kind.STAFF, 1, days);
        add(Kind.LIFT, problem.liftLines.size(), 1);
        add(Kind.LEADS, problem.aims.size(), weeks);
        bases[bases.length - 1] = scopes.size();
        fixturesNear = near();
        lineJudged = lineJudged();
        limited = new boolean[problem.facilities.size()];
        problem.facilities.forEach(facility -> limited[facility.index] = facility.limited());
    }

    private static int runEdge(Problem problem) {
        int edge = Blocks.REACH;
        for (GroupInfo group : problem.groups) {
            for (String rule : List.of("three-high-days", "four-high-days")) {
                edge = Math.max(edge, (int) group.settings.number(rule, "days") - 1);
            }
        }
        return edge;
    }

    private boolean sees(int group, Stimulus fixture) {
        for (int cohort : problem.cohortsOfMainGroup[group]) {
            if (fixture.has(cohort)) {
                return true;
            }
        }
        return false;
    }

    private void add(Kind kind, int owners, int each) {
        bases[kind.ordinal()] = scopes.size();
        for (int owner = 0; owner < owners; owner++) {
            for (int at = 0; at < each; at++) {
                scopes.add(new Scope(kind, owner, at));
            }
        }
    }

    private int[][][] near() {
        int[][][] near = new int[problem.groups.size()][days][];
        for (int group = 0; group < problem.groups.size(); group++) {
            for (int day = 0; day < days; day++) {
                near[group][day] = near(group, day);
            }
        }
        return near;
    }

    private int[] near(int group, int day) {
        return java.util.stream.IntStream.range(0, fixtures.size())
                .filter(i -> fixtures.get(i).group() == group)
                .filter(i -> {
                    int distance = day - fixtures.get(i).fixture().day;
                    return distance >= -3 && distance <= 2;
                })
                .toArray();
    }

    private boolean[] lineJudged() {
        boolean[] judged = new boolean[problem.groups.size()];
        problem.aims.forEach(aim -> judged[aim.group.index] |= aim.family.family.high(Pathway.MAX_VELOCITY_SPRINT));
        return judged;
    }

    int count() {
        return scopes.size();
    }

    Scope scope(int number) {
        return scopes.get(number);
    }

    /** Whether a group's exposures to maximal velocity are judged: whether it has an aim that trains it. */
    boolean lineJudged(int group) {
        return lineJudged[group];
    }

    /** Marks the kept scopes that read what has changed of a group's day. */
    void dayChanged(int group, int day, DayState before, DayState now, Marks marks) {
        if (before.visits != now.visits || before.dayClass != now.dayClass || before.placed != now.placed) {
            day(group, day, marks);
        }
        if (!before.sameEdges(now)) {
            nights(group, day, marks);
        }
        if (!before.sameHardWork(now)) {
            runs(group, day, marks);
        }
        if (before.dayClass != now.dayClass || before.busy != now.busy) {
            week(group, day, marks);
        }
        if (before.exposed != now.exposed) {
            line(group, marks);
        }
        if (before.load != now.load || before.placed != now.placed || !before.sameBusiness(now)) {
            fixtures(group, day, marks);
        }
    }

    private void day(int group, int day, Marks marks) {
        marks.mark(number(Kind.DAY, group, day, days));
    }

    private void nights(int group, int day, Marks marks) {
        marks.mark(number(Kind.NIGHT, group, day, days + 1));
        marks.mark(number(Kind.NIGHT, group, day + 1, days + 1));
    }

    private void runs(int group, int day, Marks marks) {
        for (int first = day - runEdge; first <= day; first++) {
            marks.mark(number(Kind.RUN, group, first + runEdge, runDays));
        }
    }

    private void week(int group, int day, Marks marks) {
        marks.mark(number(Kind.WEEK, group, day / 7, weeks));
    }

    private void line(int group, Marks marks) {
        if (lineJudged[group]) {
            marks.mark(number(Kind.LINE, group, 0, 1));
        }
    }

    private void fixtures(int group, int day, Marks marks) {
        for (int fixture : fixturesNear[group][day]) {
            marks.mark(number(Kind.FIXTURE, fixture, 0, 1));
        }
    }

    /** Marks an aim in the week of a day. */
    void aim(int aim, int day, Marks marks) {
        marks.mark(number(Kind.AIM, aim, day / 7, weeks));
    }

    /** Marks the bookings that a placement may meet. */
    void bookings(Stimulus placed, Marks marks) {
        if (placed.facility >= 0 && limited[placed.facility]) {
            marks.mark(number(Kind.BOOKINGS, placed.facility, placed.day, days));
            if (placed.runsOver && placed.day + 1 < days) {
                marks.mark(number(Kind.BOOKINGS, placed.facility, placed.day + 1, days));
            }
        }
    }

    /** Marks the lift line of a session. */
    void lift(int session, Marks marks) {
        int line = problem.liftLine(session);
        if (line >= 0 && !problem.liftLines.get(line).group.novice()) {
            marks.mark(number(Kind.LIFT, line, 0, 1));
        }
    }

    /** Marks who leads the sessions of an aim in a week, where there may be several. */
    void leads(AimInfo aim, int week, Marks marks) {
        if (!problem.staff.isEmpty() && aim.sessions.get(week).size() > 1) {
            marks.mark(number(Kind.LEADS, aim.index, week, weeks));
        }
    }

    /** Marks a day's staff. */
    void staffOn(int day, Marks marks) {
        marks.mark(number(Kind.STAFF, 0, day, days));
    }

    private int number(Kind kind, int owner, int at, int each) {
        return bases[kind.ordinal()] + owner * each + at;
    }

    /** A set of scope numbers, in the order in which they were marked. */
    static final class Marks {
        private final boolean[] marked;
        private final int[] numbers;
        private int count;

        Marks(int size) {
            marked = new boolean[size];
            numbers = new int[size];
        }

        void mark(int number) {
            if (!marked[number]) {
                marked[number] = true;
                numbers[count++] = number;
            }
        }

        int count() {
            return count;
        }

        int at(int i) {
            return numbers[i];
        }

        void clear() {
            for (int i = 0; i < count; i++) {
                marked[numbers[i]] = false;
            }
            count = 0;
        }
    }
}
