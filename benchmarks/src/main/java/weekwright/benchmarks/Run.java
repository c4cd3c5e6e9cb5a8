package weekwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Clocked;
import weekwright.engine.search.Portfolio;
import weekwright.engine.search.Progress;
import weekwright.engine.search.Searcher;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;

/**
 * A search by itself: the problem is there, and nothing is explained afterwards.
 *
 * @param at where each session lies
 * @param moves moves tried
 * @param seconds seconds from the start of the search to its end
 */
@SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
record Run(Problem problem, @Nullable Stimulus[] at, long moves, double seconds) {

    /** Searches as the engine does for a coach. */
    static Run of(Problem problem, Budget budget, long seed, int threads, Progress progress) {
        long start = System.nanoTime();
        Clocked watch = new Clocked(budget, progress, problem.sessions.size());
        Searcher.Found found = new Portfolio(problem, null).search(budget, seed, threads, watch);
        return new Run(problem, found.at(), found.moves(), (System.nanoTime() - start) / 1e9);
    }

    /** What the engine's judge says of it. */
    Totals totals() {
        return Judge.of(problem, at).total().totals();
    }

    /** The plan as a document, with its totals and without findings. */
    Plan plan() {
        List<Placement> placements = new ArrayList<>();
        for (Session session : problem.sessions) {
            Stimulus there = at[session.index];
            if (there != null) {
                placements.add(placement(session, there));
            }
        }
        return new Plan(
                Scenario.VERSION,
                problem.scenario.id(),
                null,
                null,
                null,
                placements,
                List.of(),
                List.of(),
                totals(),
                List.of());
    }

    private Placement placement(Session session, Stimulus there) {
        String facility = there.facility < 0
                ? null
                : problem.facilities.get(there.facility).facility.id();
        return new Placement(
                session.id,
                session.group.group.id(),
                Objects.requireNonNull(there.family).family.id(),
                problem.calendar.moment(there.start),
                null,
                facility,
                null,
                there.dose,
                null,
                null);
    }
}
