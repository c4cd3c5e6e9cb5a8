package weekwright.engine.rules;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/**
 * What sessions cost by themselves: left out, at an option with what is fixed, and beside other sessions. What never changes
 * is worked out once. What is handed out belongs to this class, and nobody may change it.
 */
final class SessionCosts {
    private final Evaluator evaluator;
    private final CostSink sink = new CostSink();
    private final Cost pairs = new Cost();
    private final @Nullable Cost[] unplaced;
    private final Cost[][] byOption;
    /** The same of options that some sit out. */
    private final Map<Stimulus, Cost> byTurnout = new HashMap<>();

    SessionCosts(Problem problem, Evaluator evaluator) {
        this.evaluator = evaluator;
        unplaced = new @Nullable Cost[problem.sessions.size()];
        byOption = new Cost[problem.sessions.size()][];
        for (Session session : problem.sessions) {
            byOption[session.index] = new Cost[session.options.length];
        }
    }

    /** What a session costs that is left out. */
    Cost unplaced(Session session) {
        Cost cost = unplaced[session.index];
        if (cost == null) {
            cost = new Cost();
            evaluator.placement(session, null, sink.into(cost));
            unplaced[session.index] = cost;
        }
        return cost;
    }

    /** What an option costs by itself and with fixed things. */
    Cost alone(Session session, Stimulus at) {
        if (at.option < 0) {
            return workedOut(session, at);
        }
        if (at != at.base) {
            return byTurnout.computeIfAbsent(at, any -> workedOut(session, at));
        }
        @Nullable Cost[] known = Objects.requireNonNull(byOption[session.index]);
        Cost cost = known[at.option];
        if (cost == null) {
            cost = workedOut(session, at);
            known[at.option] = cost;
        }
        return cost;
    }

    private Cost workedOut(Session session, Stimulus at) {
        Cost cost = new Cost();
        evaluator.placement(session, at, sink.into(cost));
        evaluator.pairsWithFixed(at, sink);
        return cost;
    }

    /** What something placed costs with all else that is placed, until this is asked again. */
    Cost pairs(Stimulus at) {
        pairs.clear();
        evaluator.pairsWithPlaced(at, sink.into(pairs));
        return pairs;
    }
}
