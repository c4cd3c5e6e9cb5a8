package weekwright.engine.explain;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * Which of the athletes listed take part in what: who is restricted by a clinician sits out, so does who has something else
 * to do, and some sessions are only for those who played or did not.
 *
 * @param sessions ids of athletes by id of a placed session
 * @param commitments ids of athletes by id of a commitment
 */
public record TakingPart(Map<String, Set<String>> sessions, Map<String, Set<String>> commitments) {
    public TakingPart {
        sessions = Map.copyOf(sessions);
        commitments = Map.copyOf(commitments);
    }

    /** Who takes part in what of a plan. */
    public static TakingPart of(Scenario scenario, Plan plan) {
        Problem problem = ProblemBuilder.of(scenario, plan, PlanUse.CHECK);
        Judge judge = Judge.of(problem, Explanation.standing(problem));
        Map<String, Set<String>> sessions = new HashMap<>();
        for (Session session : problem.sessions) {
            Stimulus at = judge.attended(session);
            if (at != null) {
                sessions.put(session.id, athletes(problem, at));
            }
        }
        Map<String, Set<String>> commitments = new HashMap<>();
        for (Stimulus fixed : problem.fixed) {
            if (fixed.kind == Stimulus.Kind.COMMITMENT) {
                commitments.put(scenario.commitments().get(fixed.index).id(), athletes(problem, fixed));
            }
        }
        return new TakingPart(sessions, commitments);
    }

    private static Set<String> athletes(Problem problem, Stimulus stimulus) {
        return Arrays.stream(stimulus.cohorts)
                .mapToObj(problem.cohorts::get)
                .flatMap(cohort -> cohort.athletes().stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Whether an athlete takes part in a placed session. */
    public boolean inSession(String session, String athlete) {
        return sessions.getOrDefault(session, Set.of()).contains(athlete);
    }

    /** Whether an athlete takes part in a commitment. */
    public boolean inCommitment(String commitment, String athlete) {
        return commitments.getOrDefault(commitment, Set.of()).contains(athlete);
    }
}
