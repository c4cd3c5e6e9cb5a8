package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.catalogue.Variant;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** Carries a way out on the documents themselves, and judges what comes of it from nothing. */
final class Rewriting {
    private static final Pin OUT = new Pin(false, false, false, false, false, false, true, List.of());

    private final Problem problem;
    private final Plan plan;
    private final Cost before;
    private final Set<Subject> brokenBefore;
    private final Map<Way, Outcome> known = new HashMap<>();

    /**
     * How it stands then.
     *
     * @param change change of the totals
     * @param broken what counts as broken
     */
    record Outcome(Cost change, Set<Subject> broken) {}

    /** Ways of a plan whose leads and lifts are written, as the problem was built from it. */
    Rewriting(Problem problem, Plan plan, Cost before, List<Fact> facts) {
        this.problem = problem;
        this.plan = plan;
        this.before = before;
        brokenBefore = broken(problem, facts);
    }

    private static Set<Subject> broken(Problem problem, List<Fact> facts) {
        return facts.stream()
                .filter(fact -> fact.level() != RuleLevel.TOLD)
                .map(fact -> Subject.of(problem, fact))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    int judged() {
        return known.size();
    }

    /** What comes of a way; null where the documents cannot say it. */
    @Nullable
    Outcome outcome(Way way) {
        Outcome outcome = known.get(way);
        if (outcome == null) {
            Remedied rewritten = rewritten(way);
            if (rewritten == null) {
                return null;
            }
            outcome = judged(rewritten);
            known.put(way, outcome);
        }
        return outcome;
    }

    /** Ids of the rules newly broken. */
    List<String> adds(Outcome outcome) {
        TreeSet<String> adds = new TreeSet<>();
        outcome.broken().stream()
                .filter(subject -> !brokenBefore.contains(subject))
                .forEach(subject -> adds.add(subject.rule()));
        return List.copyOf(adds);
    }

    /** Whether a finding is not there any more, nor its like elsewhere. */
    boolean clears(Fact fact, Outcome outcome) {
        return !outcome.broken().contains(Subject.of(problem, fact))
                && !adds(outcome).contains(fact.rule().id());
    }

    private Outcome judged(Remedied rewritten) {
        Problem then = ProblemBuilder.of(rewritten.scenario(), rewritten.plan(), PlanUse.CHECK);
        Judge judge = Judge.of(then, Explanation.standing(then));
        Cost change = judge.total().copy();
        change.subtract(before);
        return new Outcome(change, broken(then, FactSink.all(then, judge)));
    }

    /** The documents after a way; null where they cannot say it. */
    @Nullable
    Remedied rewritten(Way way) {
        AimInfo dropped = way.dropped();
        Longer longer = way.longer();
        Scenario scenario =
                dropped != null ? without(dropped) : longer == null ? problem.scenario : longer.given(problem);
        return scenario == null
                ? null
                : new Remedied(scenario, dropped != null ? withoutSessions(dropped) : moved(way));
    }

    private Scenario without(AimInfo aim) {
        Group group = aim.group.group;
        List<Aim> others = group.aims().stream()
                .filter(other -> !other.key().equals(aim.aim.key()))
                .toList();
        return Amended.with(problem.scenario, group.withAims(others));
    }

    private Plan withoutSessions(AimInfo aim) {
        Set<String> gone = problem.sessions.stream()
                .filter(session -> session.aim == aim)
                .map(session -> session.id)
                .collect(Collectors.toSet());
        return Plans.with(
                plan,
                plan.placements().stream()
                        .filter(placement -> !gone.contains(Objects.requireNonNull(placement.id())))
                        .toList(),
                plan.leftOut().stream()
                        .filter(left -> !gone.contains(left.id()))
                        .toList());
    }

    private Plan moved(Way way) {
        Session session = Objects.requireNonNull(way.session());
        List<Placement> placements = new ArrayList<>(plan.placements());
        Placement was = placements.stream()
                .filter(placement -> session.id.equals(placement.id()))
                .findFirst()
                .orElse(null);
        placements.remove(was);
        Stimulus to = way.to();
        List<LeftOut> leftOut = new ArrayList<>(plan.leftOut());
        leftOut.removeIf(left -> left.id().equals(session.id));
        if (to != null) {
            placements.add(placed(session, to, was).chosenInstead(was));
        } else if (session.aim != null) {
            leftOut.add(new LeftOut(session.id, "target", RuleLevel.WANT, 0, OUT, 0, List.of(), null, ""));
        }
        return Plans.with(plan, placements, leftOut);
    }

    private Placement placed(Session session, Stimulus at, @Nullable Placement was) {
        List<Variant> variants = session.family.family.variants();
        return new Placement(
                session.id,
                session.group.group.id(),
                session.family.family.id(),
                problem.calendar.moment(at.start),
                session.aim == null ? at.minutes() : null,
                at.facility < 0
                        ? null
                        : problem.facilities.get(at.facility).facility.id(),
                at.lead >= 0 ? problem.staff.get(at.lead).member.id() : was == null ? null : was.lead(),
                at.dose,
                at.variant >= 0 ? variants.get(at.variant).id() : was == null ? null : was.variant(),
                null);
    }
}
