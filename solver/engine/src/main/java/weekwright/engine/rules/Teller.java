package weekwright.engine.rules;

import java.util.List;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/** Tells what a plan breaks, by the same rules that say what it costs. */
final class Teller {
    private final Problem problem;
    private final Timelines timelines;
    private final Scopes scopes;
    /** The one that says what things cost. */
    private final Evaluator costs;
    /** The one that asks for facts at no cost, too; made when somebody wants to hear them. */
    private @Nullable Evaluator facts;

    Teller(Problem problem, Timelines timelines, Scopes scopes, Evaluator costs) {
        this.problem = problem;
        this.timelines = timelines;
        this.scopes = scopes;
        this.costs = costs;
    }

    private Evaluator facts() {
        if (facts == null) {
            facts = new Evaluator(problem, timelines, scopes, true);
        }
        return facts;
    }

    /** All that is broken, with what is only told: the sinks are asked for by part. */
    void all(IntFunction<? extends Sink> sinks) {
        Evaluator teller = facts();
        for (Session session : problem.sessions) {
            Sink own = sinks.apply(Judge.OWN);
            session(teller, session, own, (rule, view, breach, heads) -> {
                // Each pair is seen from both sides: it is told by the later of the two.
                if (((PairView) view).second() == timelines.at(session.index)) {
                    own.breach(rule, view, breach, heads);
                }
            });
        }
        for (int part = 0; part < scopes.count(); part++) {
            teller.scope(part, sinks.apply(part));
        }
        teller.facts(sinks.apply(Judge.FIXED));
    }

    /** What is broken in one part, without what is only told. */
    void part(int part, Sink sink) {
        costs.scope(part, sink);
    }

    /** What a session breaks where it stands, or by not being placed, without what is only told. */
    void session(Session session, Sink sink) {
        session(costs, session, sink, sink);
    }

    private void session(Evaluator by, Session session, Sink sink, Sink pairs) {
        Stimulus at = timelines.at(session.index);
        by.placement(session, at, sink);
        by.pins(session, at, sink);
        if (at != null) {
            by.pairsWithFixed(at, sink);
            by.pairsWithPlaced(at, pairs);
        }
    }

    /** What fixed things break among themselves; what lies in the past altogether is passed over. */
    void fixed(Sink sink) {
        for (int i = 0; i < problem.fixed.size(); i++) {
            for (int j = i + 1; j < problem.fixed.size(); j++) {
                Stimulus a = problem.fixed.get(i);
                Stimulus b = problem.fixed.get(j);
                boolean past = a.kind == Stimulus.Kind.HISTORY && b.kind == Stimulus.Kind.HISTORY;
                if (!past && b.day - a.day <= costs.pairReach && Evaluator.shareSomebody(a, b)) {
                    facts().pair(a, b, sink);
                }
            }
        }
    }

    /** Ids of the rules in force for a group. */
    List<String> rulesInForce(int group) {
        return facts().rules(group).ids();
    }
}
