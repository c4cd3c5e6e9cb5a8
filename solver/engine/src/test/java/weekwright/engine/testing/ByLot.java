package weekwright.engine.testing;

import java.util.Random;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/** Sessions and where they go, drawn by lot. */
public final class ByLot {
    private ByLot() {}

    /** One of the sessions of a problem. */
    public static Session session(Problem problem, Random random) {
        return problem.sessions.get(random.nextInt(problem.sessions.size()));
    }

    /** One of a session's options, or null: left out. */
    public static Stimulus option(Session session, Random random) {
        int at = random.nextInt(session.options.length + 1);
        return at == session.options.length ? null : session.options[at];
    }
}
