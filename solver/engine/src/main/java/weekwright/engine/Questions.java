package weekwright.engine;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.WhyNots;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.answer.WhyNot;
import weekwright.model.answer.WhyNotOption;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** A plan kept ready for questions about its sessions: what would be if one lay elsewhere. Safe to ask from any thread. */
public final class Questions {
    private final Problem problem;
    private final WhyNots whyNots;

    private Questions(Problem problem) {
        this.problem = problem;
        @Nullable Stimulus[] at = new @Nullable Stimulus[problem.sessions.size()];
        for (Session session : problem.sessions) {
            at[session.index] = session.before;
        }
        whyNots = new WhyNots(problem, at);
    }

    /** Questions about a plan as it stands. */
    public static Questions of(Scenario scenario, Plan plan) {
        return new Questions(ProblemBuilder.of(scenario, plan, PlanUse.START));
    }

    /** Whether there is a session of that id, placed or left out. */
    public boolean knows(String session) {
        return find(session).isPresent();
    }

    private Optional<Session> find(String session) {
        return problem.sessions.stream()
                .filter(known -> known.id.equals(session))
                .findFirst();
    }

    private Session named(String session) {
        return find(session)
                .orElseThrow(() -> new IllegalArgumentException("no session is called \"" + session + "\""));
    }

    /**
     * Every start, place and dose of a session with what it would do, in order of time; pins are passed over.
     *
     * @throws IllegalArgumentException when there is no such session
     */
    public synchronized List<WhyNotOption> options(String session) {
        return whyNots.weighed(named(session));
    }

    /**
     * What a session would do at a time, place and dose, in words; null where that is none of its options.
     *
     * @param facility id of the place, or null
     * @throws IllegalArgumentException when there is no such session
     */
    public synchronized @Nullable String said(String session, Moment start, @Nullable String facility, Dose dose) {
        return whyNots.said(named(session), start, facility, dose);
    }

    /**
     * Why a session does not lie elsewhere, day by day.
     *
     * @param day the only day to look at, or null for all of its week
     * @throws IllegalArgumentException when there is no such session
     */
    public synchronized WhyNot whyNot(String session, @Nullable LocalDate day) {
        return whyNots.of(named(session), day == null ? null : problem.calendar.day(day));
    }
}
