package weekwright.engine.testing;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.Explanation;
import weekwright.engine.explain.Judged;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Judges a plan as one that is to stay close to another. Each family has at most one session a week in it. */
final class StayingClose {
    private StayingClose() {}

    static Judged judged(Scenario scenario, Plan plan, Plan before, @Nullable Moment now) {
        Problem problem = ProblemBuilder.close(scenario, before, now);
        @Nullable Stimulus[] at = new @Nullable Stimulus[problem.sessions.size()];
        for (Placement placement : plan.placements()) {
            for (Session session : problem.sessions) {
                for (Stimulus option : session.options) {
                    if (isAt(problem, session, option, placement)) {
                        at[session.index] = option;
                    }
                }
            }
        }
        return new Explanation(problem, at).judged(null, null);
    }

    private static boolean isAt(Problem problem, Session session, Stimulus option, Placement placement) {
        String facility = option.facility < 0
                ? null
                : problem.facilities.get(option.facility).facility.id();
        return session.family.family.id().equals(placement.family())
                && session.group.group.id().equals(placement.group())
                && option.start == problem.calendar.minute(placement.start())
                && option.dose == placement.dose()
                && Objects.equals(facility, placement.facility());
    }
}
