package weekwright.desk.app;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Traded;
import weekwright.engine.problem.Session;
import weekwright.engine.search.Progress;
import weekwright.model.answer.WhyNot;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** Answers a coach's questions about a plan. */
public final class Asking {
    private Asking() {}

    /**
     * Why a session does not lie elsewhere.
     *
     * @param id the session's id
     * @param day the only day to look at, as it was given, or null for its whole week
     * @throws InputFault when there is no such session, or the day is none of its week
     */
    public static WhyNot whyNot(Scenario scenario, Plan plan, String id, @Nullable String day) {
        Session session = Sessions.named(id, scenario, plan);
        LocalDate first = Sessions.firstDay(session, scenario);
        LocalDate only = day == null ? null : Sessions.inWeek(session, Sessions.date("--day", day, first), scenario);
        return Engine.whyNot(scenario, plan, id, only);
    }

    /**
     * What cannot all be had, and what could go, with the plan that was found for each.
     *
     * @param proposal what is asked for, with the plan to start from, if any; its budget is that of each search, in moves
     * @param progress may say to stop; then the answer is as much as was found
     * @param trying hears what is tried next
     */
    public static Traded tradeOffs(Proposal proposal, Progress progress, Consumer<String> trying) {
        return Engine.tradeOffs(proposal, progress, trying);
    }
}
