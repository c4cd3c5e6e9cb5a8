package weekwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.benchmarks.rivals.CpSearch;
import weekwright.benchmarks.rivals.StreamSearch;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;

/** Somebody who looks for a plan within a time. */
interface Rival {
    /** Threads where a rival can use several. */
    int THREADS = 2;

    /** All that are compared, ours first. */
    List<Rival> ALL = List.of(new Ours(THREADS), new Ours(1), new Streams(), new CpSat());

    /**
     * What was found.
     *
     * @param plan null where no plan was found in the time
     * @param bound wants that any plan as good above them costs at least; 0 where nothing is known
     */
    record Found(@Nullable Plan plan, double bound) {
        /** Totals of the plan, or null. */
        @Nullable
        Totals totals() {
            return plan == null ? null : plan.totals();
        }
    }

    /** What it is called in tables. */
    String name();

    /** Whether it can take up a problem. */
    boolean fits(Problem problem);

    /** Its best plan after so many seconds, the preparation included. */
    Found best(Scenario scenario, double seconds, long seed);

    /** The engine as a coach has it. */
    record Ours(int threads) implements Rival {
        @Override
        public String name() {
            return threads == 1 ? "ours, one thread" : "ours";
        }

        @Override
        public boolean fits(Problem problem) {
            return true;
        }

        @Override
        public Found best(Scenario scenario, double seconds, long seed) {
            Proposal proposal = new Proposal(scenario, null, Budget.seconds(seconds), seed, threads, null);
            return new Found(Engine.propose(proposal, Progress.SILENT).plan(), 0);
        }
    }

    /** Timefold with constraint streams; its freely available edition searches on one thread. */
    record Streams() implements Rival {
        @Override
        public String name() {
            return "Timefold as it comes, streams";
        }

        @Override
        public boolean fits(Problem problem) {
            return true;
        }

        @Override
        public Found best(Scenario scenario, double seconds, long seed) {
            Problem problem = ProblemBuilder.of(scenario);
            return new Found(plan(problem, new StreamSearch(problem).best(seconds, seed)), 0);
        }
    }

    /** CP-SAT with two workers, for a single squad. */
    record CpSat() implements Rival {
        /** Sessions beyond which preparing the model alone takes longer than any of the times compared. */
        private static final int MOST_SESSIONS = 150;

        @Override
        public String name() {
            return "CP-SAT";
        }

        @Override
        public boolean fits(Problem problem) {
            return problem.groups.size() == 1 && problem.sessions.size() <= MOST_SESSIONS;
        }

        @Override
        public Found best(Scenario scenario, double seconds, long seed) {
            Problem problem = ProblemBuilder.of(scenario);
            CpSearch.Found found = new CpSearch(problem).best(seconds, seed, THREADS);
            return found.claimed() == null
                    ? new Found(null, found.bound())
                    : new Found(plan(problem, found.at()), found.bound());
        }
    }

    /** A plan document of where sessions lie, with what the engine's judge says of it. */
    private static Plan plan(Problem problem, @Nullable Stimulus[] at) {
        List<Placement> placements = new ArrayList<>();
        for (Session session : problem.sessions) {
            Stimulus there = at[session.index];
            if (there != null) {
                placements.add(placement(problem, session, there));
            }
        }
        Totals totals = Judge.of(problem, at).total().totals();
        return new Plan(
                Scenario.VERSION,
                problem.scenario.id(),
                null,
                null,
                null,
                placements,
                List.of(),
                List.of(),
                totals,
                List.of());
    }

    private static Placement placement(Problem problem, Session session, Stimulus at) {
        String facility = at.facility < 0
                ? null
                : problem.facilities.get(at.facility).facility.id();
        return new Placement(
                session.id,
                session.group.group.id(),
                Objects.requireNonNull(at.family).family.id(),
                problem.calendar.moment(at.start),
                null,
                facility,
                null,
                at.dose,
                null,
                null);
    }
}
