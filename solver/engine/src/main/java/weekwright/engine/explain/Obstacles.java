package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import weekwright.engine.explain.Softening.Softer;
import weekwright.engine.problem.FacilityInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.problem.Stimulus.Kind;
import weekwright.engine.rules.Judge;

/**
 * Looks through all that a session could do for what would have to give: where one thing alone stands in the way, that thing
 * is noted.
 */
final class Obstacles {
    private static final String ONE_PLACE = "one-place-at-a-time";
    private static final Set<String> OF_HOURS =
            Set.of("before-fixture", "after-fixture", "pathway-gap-floor", "night-rest", "primer-end");

    private final Problem problem;
    private final WhatIf whatIf;
    private final MoreTime moreTime;
    private final Softening softening;

    /** More time that somebody could give. */
    final Set<Longer> longer = new LinkedHashSet<>();
    /** Days on which a closed place would have to be open: place, then day. */
    final Map<Integer, Set<Integer>> opened = new TreeMap<>();
    /** Commitments that could go, by their places in the list. */
    final Set<Integer> commitments = new LinkedHashSet<>();
    /** Rules that could ask for less, the smallest step of each. */
    final Map<String, Softer> softer = new LinkedHashMap<>();

    Obstacles(Problem problem) {
        this.problem = problem;
        whatIf = new WhatIf(problem, Judge.of(problem, Explanation.standing(problem)));
        moreTime = new MoreTime(problem);
        softening = new Softening(problem);
    }

    /** Notes what stands in the way of a session. */
    void look(Session session) {
        for (Stimulus option : problem.thinkable(session, Longer.MOST)) {
            Effect effect = whatIf.of(session, option);
            List<String> musts = effect.mustsBroken();
            if (musts.size() == 1) {
                note(session, option, effect, musts.get(0));
            }
        }
    }

    private void note(Session session, Stimulus at, Effect effect, String rule) {
        if (MoreTime.RULES.contains(rule)) {
            List<Way> ways = moreTime.opened(Way.to(session, at), rule);
            ways.forEach(way -> longer.add(Objects.requireNonNull(way.longer())));
            if (rule.equals("facility-open")) {
                noteClosed(at);
            }
        } else if (rule.equals(ONE_PLACE) || OF_HOURS.contains(rule)) {
            List<Fact> facts = broken(session, at, effect);
            if (facts.size() == 1) {
                note(facts.get(0));
            }
        }
    }

    private void noteClosed(Stimulus at) {
        FacilityInfo facility = problem.facilities.get(at.facility);
        if (facility.open.inside(at.start, at.end) == at.minutes()) {
            opened.computeIfAbsent(at.facility, place -> new LinkedHashSet<>()).add(at.day);
        }
    }

    private List<Fact> broken(Session session, Stimulus at, Effect effect) {
        List<Key> keys =
                effect.broken().stream().filter(Broken::must).map(Broken::key).toList();
        List<Fact> facts = new ArrayList<>();
        for (Fact fact : whatIf.facts(session, at)) {
            if (keys.contains(fact.key())) {
                facts.add(fact);
            }
        }
        return facts;
    }

    private void note(Fact fact) {
        if (fact.rule().id().equals(ONE_PLACE)) {
            fact.things().stream()
                    .filter(thing -> thing.kind == Kind.COMMITMENT)
                    .forEach(thing -> commitments.add(thing.index));
            return;
        }
        Softer one = softening.of(fact);
        if (one != null) {
            softer.merge(one.key(), one, (old, now) -> now.hours() < old.hours() ? now : old);
        }
    }
}
