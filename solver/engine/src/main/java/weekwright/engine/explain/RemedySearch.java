package weekwright.engine.explain;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.StaffInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * Tries what would clear the findings of a plan, and keeps of all single changes the cheapest. What the plan alone can
 * change is tried by moving a session in a kept judge, for all findings at once; what only the coach can change, by
 * judging the documents anew.
 */
final class RemedySearch {
    /** Ways tried for a plan, so that it is judged while one waits; the dearest findings come first. */
    static final int MOST_WAYS = 10_000;

    private static final int ONE_MUST = 10;
    private static final String LEAD_FREE = "lead-free";
    private static final Set<String> OF_LEADS = Set.of(LEAD_FREE, "same-lead");
    private static final Set<String> OF_LIFTS = Set.of("maximum-repeated", "variant-churn");

    private final Problem problem;
    private final Judge judge;
    private final WhatIf whatIf;
    private final CoachsWays coach;
    private final MoreTime moreTime;
    private final Rewriting rewriting;
    private final List<Fact> facts;
    private final Map<Key, Sought> sought = new LinkedHashMap<>();
    private final Map<Session, Integer> visited = new HashMap<>();
    private int ways;

    RemedySearch(Scenario scenario, Plan plan) {
        problem = ProblemBuilder.of(scenario, plan, PlanUse.CHECK);
        judge = Judge.of(problem, Explanation.standing(problem));
        whatIf = new WhatIf(problem, judge);
        facts = Findings.inOrder(FactSink.all(problem, judge)).toList();
        Concerned concerned = new Concerned(problem, judge);
        facts.stream()
                .filter(Remedies::wanted)
                .forEach(fact -> sought.put(fact.key(), new Sought(fact, concerned.by(fact))));
        moreTime = new MoreTime(problem);
        rewriting = new Rewriting(problem, plan, whatIf.before(), facts);
        coach = new CoachsWays(problem, judge, rewriting);
    }

    /** What would help, by what it would help with. */
    Map<Subject, Help> found() {
        RemedyWords words = new RemedyWords(problem, judge);
        Map<Subject, Help> helps = new HashMap<>();
        best().forEach((one, found) -> helps.putIfAbsent(
                Subject.of(problem, one.fact),
                found.map(way -> new Help(words.remedy(way), null)).orElseGet(() -> Help.no(words.why(one)))));
        return helps;
    }

    /**
     * The documents after what would help was done; null where nothing was found.
     *
     * @param finding number of a finding of the plan, from 0
     */
    @Nullable
    Remedied carriedOut(int finding) {
        Subject asked = Subject.of(problem, facts.get(finding));
        return best().entrySet().stream()
                .filter(one -> Subject.of(problem, one.getKey().fact).equals(asked))
                .findFirst()
                .flatMap(Map.Entry::getValue)
                .map(found -> rewriting.rewritten(found.way()))
                .orElse(null);
    }

    /** The cheapest change for each finding that is worth one. */
    private Map<Sought, Optional<Found>> best() {
        sought.values().forEach(this::look);
        Map<Sought, Optional<Found>> best = new LinkedHashMap<>();
        for (Sought one : sought.values()) {
            Found found = coach.better(one);
            if (found == null && !one.isWish()) {
                found = coach.withoutAim(one);
            }
            best.put(one, Optional.ofNullable(found));
        }
        return best;
    }

    private void look(Sought one) {
        one.concerned.forEach(session -> visit(session, one));
        one.concerned.stream()
                .filter(session -> MoreTime.RULES.contains(one.rule()) && judge.at(session) != null)
                .forEach(session -> stay(session, one));
    }

    /** Tries all that a session could do, unless that was done for a dearer finding. */
    private void visit(Session session, Sought one) {
        Integer known = visited.get(session);
        if (known == null) {
            List<Stimulus> options = problem.thinkable(session, Longer.MOST);
            boolean tooMany = ways + options.size() > MOST_WAYS;
            known = tooMany ? 0 : tried(session, options);
            visited.put(session, known);
        }
        one.tried += known;
        one.untried += known == 0 ? 1 : 0;
    }

    private int tried(Session session, List<Stimulus> options) {
        int before = ways;
        Stimulus now = judge.at(session);
        for (Stimulus option : options) {
            if (now == null || !same(now, option)) {
                tryOut(session, option);
            }
        }
        if (now != null) {
            tryOut(session, null);
            otherLeads(session, now);
            otherLifts(session, now);
        }
        return ways - before;
    }

    private static boolean same(Stimulus a, Stimulus b) {
        return a.start == b.start && a.end == b.end && a.facility == b.facility && a.dose == b.dose;
    }

    private void tryOut(Session session, @Nullable Stimulus to) {
        Effect effect = note(Way.to(session, to));
        if (to != null && effect != null && effect.mustsBroken().equals(List.of(LEAD_FREE))) {
            leads(session, to).forEach(member -> note(Way.to(session, to.with(member.index, -1))));
        }
    }

    /** Others who may lead a session and work then. */
    private List<StaffInfo> leads(Session session, Stimulus at) {
        return problem.staff.stream()
                .filter(member -> member.index != session.heldLead
                        && problem.mayLead(member.index, session.index)
                        && member.works(at.start, at.end))
                .toList();
    }

    private void otherLeads(Session session, Stimulus now) {
        if (concerns(session, OF_LEADS)) {
            leads(session, now).forEach(member -> note(Way.to(session, now.with(member.index, -1))));
        }
    }

    private void otherLifts(Session session, Stimulus now) {
        int lifts = session.family.family.variants().size();
        for (int lift = 0; lift < lifts && concerns(session, OF_LIFTS); lift++) {
            if (lift != session.heldVariant) {
                note(Way.to(session, now.with(-1, lift)));
            }
        }
    }

    private boolean concerns(Session session, Set<String> rules) {
        return sought.values().stream().anyMatch(one -> rules.contains(one.rule()) && one.concerned.contains(session));
    }

    /** Judges a way and tells the findings that it clears; null where it clears none. */
    private @Nullable Effect note(Way way) {
        ways++;
        Effect effect = whatIf.clearing(Objects.requireNonNull(way.session()), way.to(), sought.keySet());
        if (effect == null) {
            return null;
        }
        Set<String> broken = new HashSet<>(effect.breaks());
        for (Broken cleared : effect.cleared()) {
            Sought one = sought.get(cleared.key());
            if (one != null && !broken.contains(one.rule())) {
                note(way, effect, one);
            }
        }
        return effect;
    }

    private void note(Way way, Effect effect, Sought one) {
        one.clearing++;
        List<String> musts = effect.mustsBroken();
        if (musts.isEmpty()) {
            one.offer(found(way, effect.change(), effect.breaks()));
            return;
        }
        one.blocked(musts);
        boolean single = effect.broken().stream().filter(Broken::must).count() == 1;
        if (single && MoreTime.RULES.contains(musts.get(0))) {
            Cost opened = effect.change().copy();
            opened.must -= ONE_MUST;
            moreTime.opened(way, musts.get(0)).forEach(open -> one.offerOfCoach(found(open, opened, List.of())));
        }
    }

    /** A session stays where it breaks a rule of hours, if somebody gives the time. */
    private void stay(Session session, Sought one) {
        Cost mended = new Cost();
        mended.must = -ONE_MUST;
        moreTime.opened(Way.to(session, judge.at(session)), one.rule())
                .forEach(open -> one.offerOfCoach(found(open, mended, List.of())));
    }

    private Found found(Way way, Cost change, List<String> adds) {
        Session session = Objects.requireNonNull(way.session());
        return Found.of(problem.calendar, way, change, adds, judge.at(session));
    }
}
