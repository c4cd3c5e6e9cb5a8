package weekwright.engine.rules;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Share;

/**
 * The scopes whose costs are kept: a small part of the plan each, by number, so that every breach belongs to exactly one.
 * Placements, and pairs of things, are scopes too, but are worked out where a session moves.
 */
final class Scopes {
    private static final int NOT_JUDGED = -1;

    /** What kind of part a scope is. */
    enum Kind {
        DAY,
        NIGHT,
        RUN,
        STRETCH,
        WEEK,
        LOADS,
        AIM,
        TOP_UP,
        LINK,
        FIXTURE,
        TAPER,
        BOOKINGS,
        STAFF,
        LIFT,
        LEADS
    }

    /** A fixture, as one group's own cohorts see it. */
    record FixtureScope(Stimulus fixture, int group) {}

    /** An aim for those who did not play, and a fixture after which it is wanted up to a day. */
    record TopUpScope(AimInfo aim, Stimulus fixture, int lastDay) {}

    /** A group's line of exposures to a pathway. */
    record LineScope(int group, Pathway pathway) {}

    /** A scope by number: what it is about. */
    record Scope(Kind kind, int owner, int at) {}

    final List<FixtureScope> fixtures = new ArrayList<>();
    /** Fixtures before which a taper is wanted. */
    final List<FixtureScope> tapers = new ArrayList<>();

    final List<TopUpScope> topUps = new ArrayList<>();
    final List<LineScope> lines = new ArrayList<>();
    /** Days before the plan on which a run of days may begin. */
    final int runEdge;

    private final Problem problem;
    private final int days;
    private final int weeks;
    private final int runDays;
    private final int[] bases = new int[Kind.values().length + 1];
    private final List<Scope> scopes = new ArrayList<>();
    private final int[][][] fixturesNear;
    private final int[][][] tapersNear;
    private final int[][][] topUpsNear;
    private final int[][] lineOf;
    private final int[] stretches;
    private final boolean[] limited;
    private final boolean[] countsHours;
    private final boolean[] weighsLoads;
    /** Aims by which each cohort learns something new. */
    private final int[][] learning;

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
        fixtures.stream()
                .filter(of -> Fixtures.taperDays(problem, of.fixture()) > 0)
                .forEach(tapers::add);
        problem.aims.forEach(this::addTopUps);
        int groups = problem.groups.size();
        lineOf = new int[groups][Pathway.values().length];
        for (int group = 0; group < groups; group++) {
            addLines(group);
        }
        stretches = problem.groups.stream()
                .mapToInt(group -> (int) group.settings.number("six-days-running", "days"))
                .toArray();
        add(Kind.DAY, groups, days);
        add(Kind.NIGHT, groups, days + 1);
        add(Kind.RUN, groups, runDays);
        add(Kind.STRETCH, groups, days);
        add(Kind.WEEK, groups, weeks);
        add(Kind.LOADS, groups, weeks);
        add(Kind.AIM, problem.aims.size(), weeks);
        add(Kind.TOP_UP, topUps.size(), 1);
        add(Kind.LINK, lines.size(), days);
        add(Kind.FIXTURE, fixtures.size(), 1);
        add(Kind.TAPER, tapers.size(), 1);
        add(Kind.BOOKINGS, problem.facilities.size(), days);
        add(Kind.STAFF, 1, days);
        add(Kind.LIFT, problem.liftLines.size(), 1);
        add(Kind.LEADS, problem.aims.size(), weeks);
        bases[bases.length - 1] = scopes.size();
        fixturesNear = near(groups, this::fixturesNear);
        tapersNear = near(groups, this::tapersNear);
        topUpsNear = near(problem.aims.size(), this::topUpsNear);
        countsHours = costing("college-in-season", "college-out-of-season", "youth");
        weighsLoads = costing("week-load", "load-spread", "load-ratio");
        learning = problem.cohorts.stream()
                .map(cohort -> problem.aims.stream()
                        .filter(aim -> aim.aim.learning() && cohort.groups().contains(aim.group.index))
                        .mapToInt(aim -> aim.index)
                        .toArray())
                .toArray(int[][]::new);
        limited = new boolean[problem.facilities.size()];
        problem.facilities.forEach(facility -> limited[facility.index] = facility.limited());
    }

    /** For which groups any of some rules costs something: what is only told is not kept. */
    private boolean[] costing(String... rules) {
        boolean[] costing = new boolean[problem.groups.size()];
        for (GroupInfo group : problem.groups) {
            for (String rule : rules) {
                RuleLevel level = group.settings.level(rule);
                costing[group.index] |= level != RuleLevel.OFF && level != RuleLevel.TOLD;
            }
        }
        return costing;
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

    /** Numbers of the scopes that something of an owner reaches from a day. */
    private interface Near {
        int[] of(int owner, int day);
    }

    private int[][][] near(int owners, Near scopesOf) {
        int[][][] near = new int[owners][days][];
        for (int owner = 0; owner < owners; owner++) {
            for (int day = 0; day < days; day++) {
                near[owner][day] = scopesOf.of(owner, day);
            }
        }
        return near;
    }

    private int[] tapersNear(int group, int day) {
        int weeksBefore = (int) problem.groups.get(group).settings.number("taper", "weeks");
        return java.util.stream.IntStream.range(0, tapers.size())
                .filter(i -> tapers.get(i).group() == group)
                .filter(i -> {
                    Stimulus fixture = tapers.get(i).fixture();
                    int before = fixture.day - day;
                    return before > 0 && before <= Fixtures.taperDays(problem, fixture) + 7 * weeksBefore;
                })
                .toArray();
    }

    private void addTopUps(AimInfo aim) {
        if (aim.aim.whom() != Share.NOT_PLAYED) {
            return;
        }
        int within = (int) aim.group.settings.number("top-up", "days");
        for (Stimulus fixture : aim.group.fixtures()) {
            int last = fixture.day + within;
            if (last >= 0 && last < days) {
                topUps.add(new TopUpScope(aim, fixture, last));
            }
        }
    }

    private int[] topUpsNear(int aim, int day) {
        return java.util.stream.IntStream.range(0, topUps.size())
                .filter(i -> topUps.get(i).aim().index == aim)
                .filter(i -> day >= topUps.get(i).fixture().day
                        && day <= topUps.get(i).lastDay())
                .toArray();
    }

    /** Lines of a group: to maximal speed where any aim trains it, to others where an aim for all does. */
    private void addLines(int group) {
        for (Pathway pathway : Pathway.values()) {
            boolean speed = pathway == Pathway.MAX_VELOCITY_SPRINT;
            boolean judged = problem.aims.stream()
                    .filter(aim -> aim.group.index == group && (speed || aim.aim.whom() == Share.ALL))
                    .anyMatch(aim -> aim.family.family.high(pathway));
            lineOf[group][pathway.ordinal()] = judged ? lines.size() : NOT_JUDGED;
            if (judged) {
                lines.add(new LineScope(group, pathway));
            }
        }
    }

    private int[] fixturesNear(int group, int day) {
        return java.util.stream.IntStream.range(0, fixtures.size())
                .filter(i -> fixtures.get(i).group() == group)
                .filter(i -> {
                    int distance = day - fixtures.get(i).fixture().day;
                    return distance >= -3 && distance <= 2;
                })
                .toArray();
    }

    int count() {
        return scopes.size();
    }

    Scope scope(int number) {
        return scopes.get(number);
    }

    /** Marks the kept scopes that read what has changed of a cohort's day. */
    void dayChanged(int cohort, int day, DayState before, DayState now, DayBook book, Marks marks) {
        int group = problem.cohorts.get(cohort).mainGroup();
        if (!before.sameVisits(now) || before.dayClass != now.dayClass || before.placed != now.placed) {
            day(group, day, marks);
        }
        if (!before.sameEdges(now)) {
            nights(group, day, marks);
        }
        if (!before.sameHardWork(now)) {
            runs(group, day, marks);
        }
        boolean otherHours = countsHours[group] && !(before.sameMinutes(now) && before.sameBusiness(now));
        if (before.dayClass != now.dayClass || before.busy != now.busy || otherHours) {
            week(group, day, marks);
        }
        if (before.busy != now.busy) {
            stretches(group, day, marks);
        }
        if (before.tiringStart != now.tiringStart) {
            lessons(cohort, day, marks);
        }
        if (before.met != now.met || before.sprintThirds != now.sprintThirds) {
            int bits = (before.met ^ now.met) | (before.sprintThirds == now.sprintThirds ? 0 : DayState.SPRINTING);
            links(cohort, day, bits, book, marks);
        }
        if (before.load != now.load || before.placed != now.placed) {
            tapers(group, day, marks);
            loads(group, day, marks);
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

    /** Marks the weeks whose load is measured with a day: its own and all after it. */
    private void loads(int group, int day, Marks marks) {
        if (weighsLoads[group]) {
            for (int week = day / 7; week < weeks; week++) {
                marks.mark(number(Kind.LOADS, group, week, weeks));
            }
        }
    }

    private void stretches(int group, int day, Marks marks) {
        for (int last = day; last <= Math.min(days - 1, day + stretches[group]); last++) {
            marks.mark(number(Kind.STRETCH, group, last, days));
        }
    }

    /** Marks the links that end on a day and the next ones of the cohort, in the lines of some pathways. */
    private void links(int cohort, int day, int bits, DayBook book, Marks marks) {
        int group = problem.cohorts.get(cohort).mainGroup();
        for (int pathway = 0; bits >> pathway != 0; pathway++) {
            int line = lineOf[group][pathway];
            if ((bits >> pathway & 1) != 0 && line != NOT_JUDGED) {
                marks.mark(number(Kind.LINK, line, day, days));
                if (day < days - 1) {
                    int next = Links.next(book, cohort, day, lines.get(line).pathway(), days - 1);
                    marks.mark(number(Kind.LINK, line, next, days));
                }
            }
        }
    }

    /** Marks the aims for which a cohort learns something new, in the week of a day. */
    private void lessons(int cohort, int day, Marks marks) {
        for (int aim : learning[cohort]) {
            aim(aim, day, marks);
        }
    }

    private void tapers(int group, int day, Marks marks) {
        for (int taper : tapersNear[group][day]) {
            marks.mark(number(Kind.TAPER, taper, 0, 1));
        }
    }

    /** Marks the fixtures after which a placement of an aim may be the top-up. */
    void topUps(int aim, int day, Marks marks) {
        for (int topUp : topUpsNear[aim][day]) {
            marks.mark(number(Kind.TOP_UP, topUp, 0, 1));
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
