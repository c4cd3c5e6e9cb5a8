package weekwright.engine.problem;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Scenario;

/** All that the judge and the search need to know, in lists whose order is that of the documents. */
public final class Problem {
    /** Days before and after the plan on which things are known: history and later fixtures. */
    public static final int EDGE = Scenario.EDGE_DAYS + 4;

    private static final Stimulus[] NOTHING = {};

    /** What it was built from. */
    public final Scenario scenario;
    /** Turns moments into minutes and days. */
    public final Calendar calendar;
    /** Groups of the scenario. */
    public final List<GroupInfo> groups;
    /** Sets of people for whom all is the same. */
    public final List<Cohort> cohorts;
    /** Facilities of the scenario. */
    public final List<FacilityInfo> facilities;
    /** Who can lead. */
    public final List<StaffInfo> staff;
    /** Aims of all groups, group by group. */
    public final List<AimInfo> aims;
    /** All that may be placed. */
    public final List<Session> sessions;
    /** Where lifts rotate. */
    public final List<LiftLine> liftLines;
    /** Commitments, fixtures and history, in order of time. */
    public final List<Stimulus> fixed;
    /** Fixtures to come and in the history, in order of time. */
    public final List<Stimulus> fixtures;
    /** Cohorts of a group, in order. */
    public final int[][] cohortsOfGroup;
    /** Cohorts whose main group it is, in order. */
    public final int[][] cohortsOfMainGroup;
    /** Groups that share people with a group, itself included. */
    public final int[][] related;
    /** What a plan is to stay close to, or null. */
    public final @Nullable StayClose stayClose;

    /** The family whose hours hold after a short appearance in a fixture: acceleration. */
    public final FamilyInfo shortAppearance;

    /** Who may have to miss something. */
    public final MayMiss mayMiss;

    private final Audiences audiences;
    private final Options options;
    private final boolean[][] mayLead;
    private final int[][] travelMinutes;
    private final int[] knownFrom;
    private final int[][] transferMinutes;
    private final Stimulus[][][] fixedByCohortDay;
    private final int[] lineOf;
    private final Map<String, Athlete> athletes;

    Problem(ProblemBuilder builder) {
        scenario = builder.scenario;
        calendar = builder.calendar;
        groups = List.copyOf(builder.groups);
        cohorts = List.copyOf(builder.people.cohorts);
        facilities = List.copyOf(builder.facilities);
        staff = List.copyOf(builder.staff);
        aims = List.copyOf(builder.aims);
        sessions = List.copyOf(builder.sessions);
        fixed = builder.fixed.stream().sorted(Stimulus::inOrder).toList();
        fixtures = fixed.stream().filter(Stimulus::isFixture).toList();
        stayClose = builder.stayClose;
        liftLines = LiftLine.of(this);
        athletes = scenario.athletes().stream().collect(Collectors.toUnmodifiableMap(Athlete::id, Function.identity()));
        lineOf = new int[sessions.size()];
        java.util.Arrays.fill(lineOf, -1);
        liftLines.forEach(line -> line.sessions.forEach(session -> lineOf[session.index] = line.index));
        audiences = builder.audiences;
        options = new Options(builder);
        mayLead = new boolean[staff.size()][sessions.size()];
        for (StaffInfo member : staff) {
            sessions.forEach(
                    session -> mayLead[member.index][session.index] = member.member.leads(session.family.family.id()));
        }
        transferMinutes = builder.transferMinutes();
        shortAppearance = builder.family("acceleration");
        cohortsOfGroup = new int[groups.size()][];
        cohortsOfMainGroup = new int[groups.size()][];
        related = new int[groups.size()][];
        for (GroupInfo group : groups) {
            int at = group.index;
            cohortsOfGroup[at] = builder.people.of(List.of(at));
            cohortsOfMainGroup[at] = cohorts.stream()
                    .filter(cohort -> cohort.mainGroup() == at)
                    .mapToInt(Cohort::index)
                    .toArray();
            related[at] = cohorts.stream()
                    .filter(cohort -> cohort.groups().contains(at))
                    .flatMapToInt(cohort -> cohort.groups().stream().mapToInt(Integer::intValue))
                    .distinct()
                    .sorted()
                    .toArray();
        }
        options.meetAudiences();
        audiences.compare(cohorts, groups);
        mayMiss = new MayMiss(this, audiences);
        travelMinutes = longestLegs();
        knownFrom = cohorts.stream()
                .mapToInt(cohort -> firstKnownDay(cohort, builder))
                .toArray();
        fixedByCohortDay = new Stimulus[cohorts.size()][calendar.days() + 2 * EDGE][];
        for (Cohort cohort : cohorts) {
            for (int day = -EDGE; day < calendar.days() + EDGE; day++) {
                fixedByCohortDay[cohort.index()][day + EDGE] = fixedOn(cohort.index(), day);
            }
        }
    }

    private int firstKnownDay(Cohort cohort, ProblemBuilder builder) {
        return scenario.history().stream()
                .filter(entry -> groups.get(cohort.mainGroup()).group.id().equals(entry.group()))
                .filter(entry -> !builder.family(entry.family()).fixture)
                .mapToInt(entry -> calendar.day(entry.start().date()))
                .reduce(0, Math::min);
    }

    private int[][] longestLegs() {
        int[][] days = new int[cohorts.size()][calendar.days() + 2 * EDGE];
        for (Stimulus fixture : fixtures) {
            int warmUp = fixture.family == null ? 0 : fixture.family.family.warmUpMinutes();
            noteTravel(days, fixture, fixture.occupiedStart, fixture.start - warmUp);
            noteTravel(days, fixture, fixture.end, fixture.occupiedEnd);
        }
        return days;
    }

    private void noteTravel(int[][] days, Stimulus fixture, int from, int to) {
        for (int day = calendar.dayOf(from); day <= calendar.dayOf(to - 1); day++) {
            for (int cohort : fixture.cohorts) {
                int at = day + EDGE;
                if (at >= 0 && at < days[cohort].length) {
                    days[cohort][at] = Math.max(days[cohort][at], to - from);
                }
            }
        }
    }

    /** Whether a leg of a fixture's travel that is too long for a free day of a cohort touches one of some days. */
    public boolean longTravel(Stimulus fixture, int cohort, int firstDay, int lastDay) {
        int warmUp = fixture.family == null ? 0 : fixture.family.family.warmUpMinutes();
        return longLeg(fixture.occupiedStart, fixture.start - warmUp, cohort, firstDay, lastDay)
                || longLeg(fixture.end, fixture.occupiedEnd, cohort, firstDay, lastDay);
    }

    private boolean longLeg(int from, int to, int cohort, int firstDay, int lastDay) {
        return to - from > longTravelMinutes(cohort)
                && calendar.dayOf(from) <= lastDay
                && calendar.dayOf(to - 1) >= firstDay;
    }

    private int longTravelMinutes(int cohort) {
        return groups.get(cohorts.get(cohort).mainGroup()).longTravelMinutes;
    }

    /** Whether a leg of travel too long for a free day touches a cohort's day. */
    public boolean longTravel(int cohort, int day) {
        return travelMinutes(cohort, day) > longTravelMinutes(cohort);
    }

    /** Minutes of the longest leg of travel that touches a cohort's day; 0 where none does. */
    public int travelMinutes(int cohort, int day) {
        int at = day + EDGE;
        return at < 0 || at >= travelMinutes[cohort].length ? 0 : travelMinutes[cohort][at];
    }

    /**
     * The first day of which training is written down for a cohort: of its main group's earliest session in the history,
     * missed or done, or the plan's first. Fixtures alone say nothing of the training between them.
     */
    public int knownFrom(int cohort) {
        return knownFrom[cohort];
    }

    /**
     * An athlete by id.
     *
     * @throws IllegalArgumentException when there is none
     */
    public Athlete athlete(String id) {
        Athlete athlete = athletes.get(id);
        if (athlete == null) {
            throw new IllegalArgumentException("no athlete is called \"" + id + "\"");
        }
        return athlete;
    }

    /** Groups that a booking brings to a facility: one a session, a commitment's own number, none for single athletes. */
    public int groupsIn(Stimulus booking) {
        return booking.kind == Stimulus.Kind.COMMITMENT
                ? scenario.commitments().get(booking.index).groups().size()
                : 1;
    }

    /** People that a booking brings to a facility. */
    public int bookedHeads(Stimulus booking) {
        if (booking.kind == Stimulus.Kind.COMMITMENT) {
            List<String> ids = scenario.commitments().get(booking.index).groups();
            return ids.isEmpty()
                    ? scenario.commitments().get(booking.index).athletes().size()
                    : groups.stream()
                            .filter(group -> ids.contains(group.group.id()))
                            .mapToInt(group -> group.heads)
                            .sum();
        }
        AimInfo aim = sessions.get(booking.index).aim;
        boolean all = aim == null || aim.aim.whom() == weekwright.model.scenario.Share.ALL;
        return all ? groups.get(booking.group).heads : heads(booking.meant);
    }

    private Stimulus[] fixedOn(int cohort, int day) {
        Stimulus[] found = fixed.stream()
                .filter(stimulus -> stimulus.day == day && stimulus.has(cohort))
                .toArray(Stimulus[]::new);
        return found.length == 0 ? NOTHING : found;
    }

    /** What is fixed for a cohort on a day, in order of start. */
    public Stimulus[] fixed(int cohort, int day) {
        int at = day + EDGE;
        return at < 0 || at >= fixedByCohortDay[cohort].length ? NOTHING : fixedByCohortDay[cohort][at];
    }

    /** Minutes that people need between two places; 0 where one of them is nowhere in particular. */
    public int transferMinutes(int from, int to) {
        return from < 0 || to < 0 ? 0 : transferMinutes[from][to];
    }

    /**
     * Everywhere a session could lie by its group's free time and the kind of place it needs, whether the place is open or
     * not: what a coach would look through to see what stands in the way.
     */
    public List<Stimulus> thinkable(Session session) {
        return options.thinkable(session, 0);
    }

    /** The same, were the group free so many minutes longer at either end of its hours. */
    public List<Stimulus> thinkable(Session session, int longer) {
        return options.thinkable(session, longer);
    }

    /** Whether those of a session's people whom a thing is for are so few that the session can do without them. */
    public boolean alone(Stimulus thing, Stimulus session) {
        return audiences.alone(thing.audience, session.audience);
    }

    /** The fewest of so many people who must come to a group's session: at least one. */
    public int fewestToCome(GroupInfo group, int heads) {
        return Math.max(1, heads - Audiences.most(group.group.quorum(), heads));
    }

    /** The lift line of a session, by its place in {@link #liftLines}, or -1 where its family has no variants. */
    public int liftLine(int session) {
        return lineOf[session];
    }

    /** Whether a staff member may lead a session. */
    public boolean mayLead(int member, int session) {
        return mayLead[member][session];
    }

    /** Heads of some cohorts. */
    public int heads(int[] some) {
        int heads = 0;
        for (int cohort : some) {
            heads += cohorts.get(cohort).heads();
        }
        return heads;
    }
}
