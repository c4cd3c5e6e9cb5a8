package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Breach;
import weekwright.engine.rules.Judge;
import weekwright.engine.rules.JudgedRule;
import weekwright.engine.rules.Price;
import weekwright.engine.rules.Sink;
import weekwright.engine.rules.View;
import weekwright.model.rulebook.RuleLevel;

/**
 * Answers what a plan would be like if one session lay elsewhere: the session is really moved, what that touches is judged
 * anew, and the move is taken back. Thousands of questions take milliseconds.
 */
final class WhatIf {
    final Problem problem;
    final Judge judge;
    private final Cost before;
    private final List<List<Broken>> byPart = new ArrayList<>();
    private final @Nullable List<Broken>[] bySession;
    private final BrokenSink sink = new BrokenSink();
    private final int[] seen;
    private int question;

    /** What-ifs about a judge's plan as it stands; it must be settled, and is left as it was. */
    @SuppressWarnings("unchecked") // an array of lists
    WhatIf(Problem problem, Judge judge) {
        this.problem = problem;
        this.judge = judge;
        judge.keep();
        before = judge.total().copy();
        for (int part = 0; part < judge.parts(); part++) {
            byPart.add(part(part));
        }
        bySession = (List<Broken>[]) new List<?>[problem.sessions.size()];
        if (judge.mayOthersChange()) {
            problem.sessions.forEach(this::own);
        }
        seen = new int[judge.parts()];
    }

    /** What the plan costs as it stands. */
    Cost before() {
        return before;
    }

    /** What would be if a session lay at an option, or nowhere. */
    Effect of(Session session, @Nullable Stimulus to) {
        own(session);
        Cost change = moved(session, to);
        Effect effect = effect(session, change);
        judge.revert();
        return effect;
    }

    /** The same where it clears one of some breaches; else null, which is known much sooner. */
    @Nullable
    Effect clearing(Session session, @Nullable Stimulus to, Set<Key> wanted) {
        own(session);
        Cost change = moved(session, to);
        Effect effect = clears(session, wanted) ? effect(session, change) : null;
        judge.revert();
        return effect;
    }

    private Cost moved(Session session, @Nullable Stimulus to) {
        judge.move(session, to);
        Cost change = judge.settle().copy();
        change.subtract(before);
        return change;
    }

    private Effect effect(Session session, Cost change) {
        Effect effect = new Effect(change, new ArrayList<>(2), new ArrayList<>(2), new ArrayList<>(0));
        Set<Session> looked = looked(session);
        compare(together(looked, this::own), together(looked, this::ownNow), effect);
        question++;
        for (int part : judge.partsLookedAt()) {
            if (seen[part] != question) {
                seen[part] = question;
                compare(byPart.get(part), part(part), effect);
            }
        }
        return effect;
    }

    /** The session and all others to which other people come now that it has moved. */
    private Set<Session> looked(Session session) {
        Set<Session> looked = new LinkedHashSet<>(List.of(session));
        looked.addAll(judge.sessionsLookedAt());
        return looked;
    }

    /** What some sessions break by themselves, each pair of them once. */
    private static List<Broken> together(Set<Session> some, Function<Session, List<Broken>> own) {
        if (some.size() == 1) {
            return own.apply(some.iterator().next());
        }
        Map<Key, Broken> all = new LinkedHashMap<>();
        some.forEach(session -> own.apply(session).forEach(broken -> all.putIfAbsent(broken.key(), broken)));
        return List.copyOf(all.values());
    }

    /** Most parts hold none of the breaches wanted, and need not be looked at. */
    private boolean clears(Session session, Set<Key> wanted) {
        Set<Session> looked = looked(session);
        List<Broken> ownBefore = together(looked, this::own);
        if (anyOf(ownBefore, wanted) && anyGone(ownBefore, together(looked, this::ownNow), wanted)) {
            return true;
        }
        question++;
        for (int part : judge.partsLookedAt()) {
            boolean first = seen[part] != question;
            seen[part] = question;
            if (first && anyOf(byPart.get(part), wanted) && anyGone(byPart.get(part), part(part), wanted)) {
                return true;
            }
        }
        return false;
    }

    private static boolean anyOf(List<Broken> some, Set<Key> wanted) {
        for (Broken one : some) {
            if (wanted.contains(one.key())) {
                return true;
            }
        }
        return false;
    }

    private static boolean anyGone(List<Broken> before, List<Broken> after, Set<Key> wanted) {
        for (Broken then : before) {
            if (wanted.contains(then.key()) && find(after, then.key()) == null) {
                return true;
            }
        }
        return false;
    }

    /** Only the change of the totals. */
    Cost change(Session session, @Nullable Stimulus to) {
        Cost change = moved(session, to);
        judge.revert();
        return change;
    }

    /** All that is said of a session and of all that moving it to an option touches, with it there. */
    List<Fact> facts(Session session, @Nullable Stimulus to) {
        judge.move(session, to);
        judge.settle();
        FactSink facts = new FactSink(problem, judge);
        looked(session).forEach(one -> judge.explainSession(one, facts.in(Judge.OWN)));
        for (int part : Arrays.stream(judge.partsLookedAt()).distinct().toArray()) {
            judge.explainPart(part, facts.in(part));
        }
        judge.revert();
        return facts.facts();
    }

    private List<Broken> own(Session session) {
        List<Broken> known = bySession[session.index];
        if (known == null) {
            known = ownNow(session);
            bySession[session.index] = known;
        }
        return known;
    }

    private List<Broken> ownNow(Session session) {
        judge.explainSession(session, sink.in(Judge.OWN));
        return sink.taken();
    }

    private List<Broken> part(int part) {
        judge.explainPart(part, sink.in(part));
        return sink.taken();
    }

    private static void compare(List<Broken> before, List<Broken> after, Effect effect) {
        for (Broken now : after) {
            Broken then = find(before, now.key());
            if (then == null) {
                effect.broken().add(now);
            } else if (then.tenths() != now.tenths()) {
                effect.altered().add(new Effect.Altered(then, now));
            }
        }
        for (Broken then : before) {
            if (find(after, then.key()) == null) {
                effect.cleared().add(then);
            }
        }
    }

    private static @Nullable Broken find(List<Broken> some, Key key) {
        for (Broken one : some) {
            if (one.key().equals(key)) {
                return one;
            }
        }
        return null;
    }

    /** Keeps what counts, part by part. */
    private static final class BrokenSink implements Sink {
        private List<Broken> found = List.of();
        private int part;

        BrokenSink in(int number) {
            part = number;
            found = List.of();
            return this;
        }

        List<Broken> taken() {
            return found;
        }

        @Override
        public void breach(JudgedRule rule, View view, Breach breach, int groupHeads) {
            if (breach.isTold() || rule.level() == RuleLevel.TOLD) {
                return;
            }
            if (found.isEmpty()) {
                found = new ArrayList<>(2);
            }
            Key key = Key.of(part, rule, view, breach);
            while (find(found, key) != null) {
                key = key.next();
            }
            found.add(new Broken(key, rule, Price.tenths(rule, breach, groupHeads)));
        }
    }
}
