package weekwright.engine.rules;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.FacilityInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.LiftLine;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Scopes.Scope;

/** Shows each scope to the judges that it concerns; what they find goes to a sink. */
final class Evaluator {
    /** Minutes within which things of different days may still be in each other's way. */
    private static final int NEAR = 12 * 60;

    /** Days between two things beyond which no rule about a pair reaches. */
    final int pairReach;

    private final Problem problem;
    private final Timelines timelines;
    private final Scopes scopes;
    private final List<GroupRules> rules = new ArrayList<>();
    private final GroupView groupView;
    private final Lifts lifts;
    private final Stimulus[][][] fixedBookings;

    /**
     * Shows the scopes of a plan.
     *
     * @param told whether rules that are only told are asked, too
     */
    Evaluator(Problem problem, Timelines timelines, Scopes scopes, boolean told) {
        this.problem = problem;
        this.timelines = timelines;
        this.scopes = scopes;
        for (GroupInfo group : problem.groups) {
            rules.add(new GroupRules(group.settings, told));
        }
        pairReach = PairReach.days(problem);
        groupView = new GroupView(problem, timelines);
        lifts = new Lifts(problem);
        fixedBookings = fixedBookings();
    }

    private Stimulus[][][] fixedBookings() {
        Stimulus[][][] bookings = new Stimulus[problem.facilities.size()][problem.calendar.days() + 1][];
        for (FacilityInfo facility : problem.facilities) {
            for (int day = -1; day < problem.calendar.days(); day++) {
                int on = day;
                bookings[facility.index][day + 1] = problem.fixed.stream()
                        .filter(fixed -> fixed.kind == Stimulus.Kind.COMMITMENT
                                && fixed.facility == facility.index
                                && fixed.day == on)
                        .toArray(Stimulus[]::new);
            }
        }
        return bookings;
    }

    /** Rules of a group. */
    GroupRules rules(int group) {
        return rules.get(group);
    }

    /** A placement by itself, or that a session is not placed. */
    void placement(Session session, @Nullable Stimulus at, Sink sink) {
        PlacementView view = new PlacementView(problem, timelines.attendance, session).of(session, at);
        for (RuleOn<PlacementView> rule : rules.get(session.group.index).placement) {
            rule.judge(view, sink);
        }
    }

    /** What is told of a session's pins. */
    void pins(Session session, @Nullable Stimulus at, Sink sink) {
        judge(
                rules.get(session.group.index).pins,
                new PlacementView(problem, timelines.attendance, session).of(session, at),
                sink);
    }

    /** A placement with everything fixed that is near it in time and shares people with it. */
    void pairsWithFixed(Stimulus placed, Sink sink) {
        for (Stimulus fixed : problem.fixed) {
            if (Math.abs(fixed.day - placed.day) <= pairReach && shareSomebody(placed, fixed)) {
                pair(placed, fixed, sink);
            }
        }
    }

    /** A placement with every other session placed near it that shares people with it. */
    void pairsWithPlaced(Stimulus placed, Sink sink) {
        int highOfPlaced = placed.family == null ? 0 : placed.family.high;
        for (int group : problem.related[placed.group]) {
            for (int day = placed.day - pairReach; day <= placed.day + pairReach; day++) {
                for (int i = timelines.byGroup.count(group, day) - 1; i >= 0; i--) {
                    Stimulus other = timelines.byGroup.at(group, day, i);
                    if (other != placed && (day == placed.day || concerns(placed, other, highOfPlaced))) {
                        pair(placed, other, sink);
                    }
                }
            }
        }
    }

    private static boolean concerns(Stimulus placed, Stimulus other, int highOfPlaced) {
        boolean sharesHigh = other.family != null && (other.family.high & highOfPlaced) != 0;
        int gap = Math.max(other.start - placed.end, placed.start - other.end);
        return sharesHigh || gap < NEAR;
    }

    private final PairView[] pairView = new PairView[1];
    private final AimView[] aimViews = new AimView[1];

    /** Two things that share people. */
    void pair(Stimulus a, Stimulus b, Sink sink) {
        if (pairView[0] == null) {
            pairView[0] = new PairView(problem, a, problem.groups.get(0));
        }
        PairView view = pairView[0].of(a, b);
        for (RuleOn<PairView> rule : rules.get(view.group().index).pair) {
            rule.judge(view, sink);
        }
    }

    static boolean shareSomebody(Stimulus a, Stimulus b) {
        for (int cohort : a.cohorts) {
            if (b.has(cohort)) {
                return true;
            }
        }
        return false;
    }

    /** A kept scope, by its number. */
    void scope(int number, Sink sink) {
        Scope scope = scopes.scope(number);
        switch (scope.kind()) {
            case DAY -> judge(rules.get(scope.owner()).day, group(scope).onDay(scope.at()), sink);
            case NIGHT -> judge(rules.get(scope.owner()).night, group(scope).onDay(scope.at() - 1), sink);
            case RUN -> judge(rules.get(scope.owner()).run, group(scope).onDay(scope.at() - scopes.runEdge), sink);
            case STRETCH -> judge(rules.get(scope.owner()).stretch, group(scope).onDay(scope.at()), sink);
            case WEEK -> judge(rules.get(scope.owner()).week, group(scope).inWeek(scope.at()), sink);
            case LOADS -> judge(rules.get(scope.owner()).loads, group(scope).inWeek(scope.at()), sink);
            case LINK -> link(scope, sink);
            case FIXTURE -> {
                Scopes.FixtureScope of = scopes.fixtures.get(scope.owner());
                judge(rules.get(of.group()).fixture, fixture(of), sink);
            }
            case TAPER -> {
                Scopes.FixtureScope of = scopes.tapers.get(scope.owner());
                judge(rules.get(of.group()).taper, fixture(of), sink);
            }
            case TOP_UP -> topUp(scopes.topUps.get(scope.owner()), sink);
            case AIM -> aim(problem.aims.get(scope.owner()), scope.at(), sink);
            case BOOKINGS -> bookings(problem.facilities.get(scope.owner()), scope.at(), sink);
            case STAFF -> staff(scope.at(), sink);
            case LIFT -> lift(problem.liftLines.get(scope.owner()), sink);
            case LEADS -> leads(problem.aims.get(scope.owner()), scope.at(), sink);
        }
    }

    private GroupView group(Scope scope) {
        return groupView.of(problem.groups.get(scope.owner()));
    }

    private static <V extends View> void judge(List<RuleOn<V>> judges, V view, Sink sink) {
        for (RuleOn<V> rule : judges) {
            rule.judge(view, sink);
        }
    }

    /** What is told of fixtures and of groups as such. */
    void facts(Sink sink) {
        for (Scopes.FixtureScope of : scopes.fixtures) {
            judge(rules.get(of.group()).fixtureFacts, fixture(of), sink);
        }
        for (GroupInfo group : problem.groups) {
            judge(rules.get(group.index).groupFacts, groupView.of(group), sink);
        }
    }

    private void link(Scope scope, Sink sink) {
        Scopes.LineScope line = scopes.lines.get(scope.owner());
        GroupView view = groupView.of(problem.groups.get(line.group())).onDay(scope.at());
        judge(rules.get(line.group()).link, view.on(line.pathway()), sink);
    }

    private GroupView fixture(Scopes.FixtureScope fixture) {
        return groupView.of(problem.groups.get(fixture.group()), fixture.fixture());
    }

    private void aim(AimInfo aim, int week, Sink sink) {
        judge(rules.get(aim.group.index).aim, aimView(aim).of(aim, week), sink);
    }

    private void topUp(Scopes.TopUpScope of, Sink sink) {
        AimView view = aimView(of.aim()).after(of.aim(), of.fixture(), of.lastDay());
        judge(rules.get(of.aim().group.index).topUp, view, sink);
    }

    private AimView aimView(AimInfo any) {
        if (aimViews[0] == null) {
            aimViews[0] = new AimView(problem, timelines, any);
        }
        return aimViews[0];
    }

    private void bookings(FacilityInfo facility, int day, Sink sink) {
        if (!facility.limited()) {
            return;
        }
        List<Stimulus> near = new ArrayList<>();
        for (int of = day - 1; of <= day; of++) {
            near.addAll(List.of(fixedBookings[facility.index][of + 1]));
            for (int i = 0; i < timelines.byFacility.count(facility.index, of); i++) {
                near.add(timelines.byFacility.at(facility.index, of, i));
            }
        }
        near.sort(Stimulus::inOrder);
        BookingView view = new BookingView(problem, facility);
        for (int i = 0; i < near.size(); i++) {
            if (near.get(i).day == day) {
                booking(view.of(facility), near, i, sink);
            }
        }
    }

    private void booking(BookingView view, List<Stimulus> near, int at, Sink sink) {
        for (int i = 0; i <= at; i++) {
            if (i == at || near.get(i).end > near.get(at).start) {
                view.running().add(near.get(i));
            }
        }
        judge(rules.get(view.group().index).booking, view, sink);
    }

    private void staff(int day, Sink sink) {
        StaffDay staff = timelines.staff(day);
        for (int i = 0; i < staff.sessions().length; i++) {
            if (staff.missing()[i]) {
                Session session = problem.sessions.get(staff.sessions()[i].index);
                PlacementView view =
                        new PlacementView(problem, timelines.attendance, session).of(session, staff.sessions()[i]);
                judge(rules.get(session.group.index).lead, view, sink);
            }
        }
    }

    /** Who leads on a day; days that sessions run over from belong together. */
    StaffDay staffDay(int day) {
        int first = day;
        while (first > 0 && timelines.runsOver(first - 1)) {
            first--;
        }
        int last = day;
        while (timelines.runsOver(last)) {
            last++;
        }
        Stimulus[] inOrder = timelines.placedFrom(first, last);
        return StaffDay.of(Leads.of(problem, inOrder), inOrder, day);
    }

    private void lift(LiftLine line, Sink sink) {
        if (line.group.novice()) {
            return;
        }
        Stimulus[] placed = timelines.placed(line.sessions);
        judge(
                rules.get(line.group.index).lift,
                new LiftView(problem, lifts, line, placed, lifts.fill(line, placed)),
                sink);
    }

    private void leads(AimInfo aim, int week, Sink sink) {
        if (problem.staff.isEmpty() || aim.sessions.get(week).size() < 2) {
            return;
        }
        Stimulus[] placed = timelines.placed(aim.sessions.get(week));
        for (int i = 1; i < placed.length; i++) {
            int first = timelines.staff(placed[i - 1].day).lead(placed[i - 1].index);
            int second = timelines.staff(placed[i].day).lead(placed[i].index);
            LeadsView view = new LeadsView(problem, aim, placed[i - 1], placed[i], first, second);
            judge(rules.get(aim.group.index).leads, view, sink);
        }
    }
}
