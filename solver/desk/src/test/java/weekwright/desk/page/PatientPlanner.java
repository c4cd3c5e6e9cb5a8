package weekwright.desk.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import weekwright.desk.app.Planner;
import weekwright.engine.Engine;
import weekwright.engine.Onlooker;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;

/** Plans as the engine does, in few moves, but keeps the plan back until it is told to go on or to stop. */
final class PatientPlanner implements Planner {
    final List<String> asked = Collections.synchronizedList(new ArrayList<>());
    private final CountDownLatch go = new CountDownLatch(1);

    /** Lets all searches end. */
    void go() {
        go.countDown();
    }

    @Override
    public Judged judge(Scenario scenario, Plan plan) {
        return Engine.judge(scenario, plan);
    }

    @Override
    public Judged propose(Proposal proposal, Progress progress) {
        asked.add(proposal.scenario().title());
        Judged found = Engine.propose(
                new Proposal(proposal.scenario(), proposal.from(), Budget.moves(500), 1, 1, null), Progress.SILENT);
        if (progress instanceof Onlooker onlooker) {
            onlooker.plan(() -> found);
        }
        int placed = found.plan().placements().size();
        progress.better(new Totals(0, 0, 0, 12), placed - 1, placed, 100, 0.5);
        progress.better(new Totals(0, 0, 0, 2.5), placed, placed, 500, 1);
        try {
            while (!progress.stop() && !go.await(10, TimeUnit.MILLISECONDS)) {
                // Waits for either.
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return found;
    }
}
