package weekwright.engine.search;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.BookingView;
import weekwright.engine.rules.Breach;
import weekwright.engine.rules.GroupView;
import weekwright.engine.rules.Judge;
import weekwright.engine.rules.JudgedRule;
import weekwright.engine.rules.PairView;
import weekwright.engine.rules.PlacementView;
import weekwright.engine.rules.View;
import weekwright.model.document.Documents;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;

/**
 * What has changed since a plan was made, as far as the plan shows it: sessions that the coach holds, sessions that break a
 * must where they stand, and sessions that the plan does not know of.
 */
public final class Changes {
    /** Days within which two sessions may share a pair, a run of days or a block. */
    private static final int REACH = 5;

    private final Problem problem;
    private final boolean[] changed;
    private final boolean sameScenario;

    private Changes(Problem problem, Plan plan) {
        this.problem = problem;
        changed = new boolean[problem.sessions.size()];
        sameScenario = Documents.digest(problem.scenario).equals(plan.scenarioDigest());
        Set<String> leftOut = plan.leftOut().stream().map(LeftOut::id).collect(Collectors.toSet());
        for (Session session : problem.sessions) {
            changed[session.index] = !session.pin.isNone();
        }
        problem.aims.forEach(aim -> noteUnknown(aim, leftOut));
        Judge.of(problem, Construction.standing(problem)).explain(this::note);
    }

    /** What has changed since the plan that the problem was built from. */
    public static Changes since(Plan plan, Problem problem) {
        return new Changes(problem, plan);
    }

    /** Of the sessions that an aim wants in a week, those that the plan neither places nor names as left out. */
    private void noteUnknown(AimInfo aim, Set<String> leftOut) {
        for (int week = 0; week < problem.calendar.weeks(); week++) {
            List<Session> unknown = aim.sessions.get(week).stream()
                    .filter(session -> session.before == null && !leftOut.contains(session.id))
                    .toList();
            int known = aim.sessions.get(week).size() - unknown.size();
            unknown.stream()
                    .limit(Math.max(0, aim.wanted(week) - known))
                    .filter(session -> session.options.length > 0)
                    .forEach(session -> changed[session.index] = true);
        }
    }

    private void note(JudgedRule rule, View view, Breach breach, int heads) {
        if (rule.level() != RuleLevel.MUST || breach.isTold()) {
            return;
        }
        if (view instanceof PlacementView placement) {
            changed[placement.session().index] = true;
        } else if (view instanceof PairView pair) {
            note(pair.first());
            note(pair.second());
        } else if (view instanceof BookingView booking) {
            booking.running().forEach(this::note);
        } else if (view instanceof GroupView group) {
            noteDays(group.group().index, breach.firstDay(), breach.lastDay());
        } else {
            problem.sessions.stream()
                    .filter(session -> session.group == view.group())
                    .forEach(session -> changed[session.index] = true);
        }
    }

    private void note(Stimulus thing) {
        if (thing.placed()) {
            changed[thing.index] = true;
        }
    }

    private void noteDays(int group, int first, int last) {
        for (Session session : problem.sessions) {
            Stimulus at = session.before;
            if (at != null && shares(group, session.group.index) && at.day >= first && at.day <= last) {
                changed[session.index] = true;
            }
        }
    }

    /** Whether the scenario is the one that the plan was made for, and nothing in the plan has changed. */
    boolean none() {
        return sameScenario && changedSessions().isEmpty();
    }

    /** The sessions that changed and all that share something that is judged with one of them. */
    List<Session> near() {
        List<Session> from = changedSessions();
        return problem.sessions.stream()
                .filter(session -> from.stream().anyMatch(other -> together(session, other)))
                .toList();
    }

    private List<Session> changedSessions() {
        return problem.sessions.stream()
                .filter(session -> changed[session.index])
                .toList();
    }

    private boolean together(Session a, Session b) {
        if (a == b) {
            return true;
        }
        Stimulus atA = a.before;
        Stimulus atB = b.before;
        if (shares(a.group.index, b.group.index)) {
            return a.week == b.week || (atA != null && atB != null && Math.abs(atA.day - atB.day) <= REACH);
        }
        return atA != null && atB != null && atA.day == atB.day && (samePlace(atA, atB) || sameLead(a, b));
    }

    private boolean samePlace(Stimulus a, Stimulus b) {
        return a.facility >= 0
                && a.facility == b.facility
                && problem.facilities.get(a.facility).limited();
    }

    private boolean sameLead(Session a, Session b) {
        return problem.staff.stream()
                .anyMatch(member -> problem.mayLead(member.index, a.index) && problem.mayLead(member.index, b.index));
    }

    private boolean shares(int group, int other) {
        return Arrays.stream(problem.related[group]).anyMatch(related -> related == other);
    }

    /** Where sessions stand in the plan that was read. */
    @Nullable
    Stimulus[] standing() {
        return Construction.standing(problem);
    }
}
