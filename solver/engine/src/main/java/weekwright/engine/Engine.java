package weekwright.engine;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.Explanation;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.People;
import weekwright.engine.explain.PersonPicture;
import weekwright.engine.explain.Remedied;
import weekwright.engine.explain.TradeOffSearch;
import weekwright.engine.explain.Traded;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Changes;
import weekwright.engine.search.Clocked;
import weekwright.engine.search.Portfolio;
import weekwright.engine.search.Progress;
import weekwright.engine.search.Searcher.Found;
import weekwright.model.answer.WhyNot;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Solver;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Judges plans and proposes them. Documents must have been read without fault. */
public final class Engine {
    /** The version written into plans. */
    public static final String VERSION = "0.1.0";

    private Engine() {}

    /** Judges a plan as it stands, whoever made it. */
    public static Judged judge(Scenario scenario, Plan plan) {
        return explained(scenario, plan).judged(plan.published(), plan.solver());
    }

    /** Judges a plan as {@link #judge} does; no remedy is looked for, which saves time where nobody would read it. */
    public static Judged judgeWithoutRemedies(Scenario scenario, Plan plan) {
        return explained(scenario, plan).judgedWithoutRemedies(plan.published(), plan.solver());
    }

    /**
     * Does what would help with a finding: the documents then, not judged yet; null where nothing would.
     *
     * @param plan a judged plan
     * @param finding number of the finding in it, from 0
     */
    public static @Nullable Remedied remedied(Scenario scenario, Plan plan, int finding) {
        return Explanation.remedied(scenario, plan, finding);
    }

    private static Explanation explained(Scenario scenario, Plan plan) {
        Problem problem = ProblemBuilder.of(scenario, plan, PlanUse.CHECK);
        Problem free = ProblemBuilder.of(scenario, plan, PlanUse.START);
        return new Explanation(problem, standing(problem), free);
    }

    /** What a plan means for each athlete who is known by name. */
    public static List<PersonPicture> people(Scenario scenario, Plan plan) {
        Problem problem = ProblemBuilder.of(scenario, plan, PlanUse.CHECK);
        return new People(problem, standing(problem)).all();
    }

    /**
     * Says of one session what every other time, place and dose would do, the rest of the plan staying; leads and lifts
     * that nobody holds are chosen anew each time.
     *
     * @param session id of a session of the plan or of one left out
     * @param day the only day to look at, or null for all of its week
     * @throws IllegalArgumentException when there is no such session
     */
    public static WhyNot whyNot(Scenario scenario, Plan plan, String session, @Nullable LocalDate day) {
        return Questions.of(scenario, plan).whyNot(session, day);
    }

    /** A plan as a picture only: where all lies and what the days ask, with nothing found or left out. */
    public static Judged drawn(Scenario scenario, Plan plan) {
        Problem problem = ProblemBuilder.of(scenario, plan, PlanUse.CHECK);
        return new Explanation(problem, standing(problem)).drawn();
    }

    /** Proposes a plan: the best found within the budget, or until it is told to stop. */
    public static Judged propose(Proposal proposal, Progress progress) {
        return proposed(proposal, progress, true);
    }

    /** Proposes a plan as {@link #propose} does; no remedy is looked for, so that it is there as soon as it is found. */
    public static Judged proposeWithoutRemedies(Proposal proposal, Progress progress) {
        return proposed(proposal, progress, false);
    }

    private static Judged proposed(Proposal proposal, Progress progress, boolean withRemedies) {
        Plan from = proposal.from();
        Problem problem = from == null
                ? ProblemBuilder.of(proposal.scenario())
                : ProblemBuilder.close(proposal.scenario(), from, proposal.now());
        Clocked watch = new Clocked(proposal.budget(), progress, problem.sessions.size());
        if (progress instanceof Onlooker onlooker) {
            watch.handOver(at -> onlooker.plan(() -> new Explanation(problem, at).drawn()));
        }
        Changes changes = from == null ? null : Changes.since(from, problem);
        Found found =
                new Portfolio(problem, changes).search(proposal.budget(), proposal.seed(), proposal.threads(), watch);
        boolean clean = Judge.of(problem, found.at()).total().clean();
        Solver solver = solver(proposal, found, clean, watch);
        // The plan is judged as a reader will judge it: moving away from the plan before costs nothing any more.
        Problem plain = from == null ? problem : ProblemBuilder.of(proposal.scenario(), from, PlanUse.START);
        @Nullable Stimulus[] at = from == null ? found.at() : Explanation.sameIn(plain, found.at());
        Explanation explained = new Explanation(plain, at);
        Moment published = from == null ? null : from.published();
        return withRemedies ? explained.judged(published, solver) : explained.judgedWithoutRemedies(published, solver);
    }

    /**
     * What of a scenario cannot all be had, and what could go, each really searched for and with the plan that was found.
     *
     * @param proposal what is asked for; its budget is that of each search, in moves
     * @param progress may say to stop; then the answer is as much as was found
     * @param trying hears what is tried next
     */
    public static Traded tradeOffs(Proposal proposal, Progress progress, Consumer<String> trying) {
        return new TradeOffSearch(proposal.scenario(), proposal.from(), new Searching(proposal, progress, trying))
                .answer();
    }

    private static Solver solver(Proposal proposal, Found found, boolean clean, Clocked watch) {
        boolean byMoves = proposal.budget().moves() > 0;
        boolean nothingToGain = clean || found.settled();
        String stoppedBy =
                watch.stoppedByHand() ? "hand" : nothingToGain ? "nothing to gain" : byMoves ? "moves" : "time";
        Double seconds = byMoves ? null : Math.round(watch.seconds() * 10) / 10.0;
        return new Solver(
                proposal.seed(), found.moves(), seconds, byMoves ? null : proposal.threads(), stoppedBy, VERSION);
    }

    private static @Nullable Stimulus[] standing(Problem problem) {
        @Nullable Stimulus[] at = new @Nullable Stimulus[problem.sessions.size()];
        for (Session session : problem.sessions) {
            at[session.index] = session.before;
        }
        return at;
    }
}
