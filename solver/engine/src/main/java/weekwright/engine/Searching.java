package weekwright.engine;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.Solving;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.search.Clocked;
import weekwright.engine.search.Portfolio;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Totals;

/** Searches of one budget each, one after the other. */
final class Searching implements Solving {
    private final Proposal proposal;
    private final Progress progress;
    private final Consumer<String> trying;

    Searching(Proposal proposal, Progress progress, Consumer<String> trying) {
        this.proposal = proposal;
        this.progress = progress;
        this.trying = trying;
    }

    @Override
    public @Nullable Stimulus[] solve(Problem problem, boolean enough) {
        Clocked watch = new Clocked(proposal.budget(), new UntilMet(enough), problem.sessions.size());
        return new Portfolio(problem, null)
                .search(proposal.budget(), proposal.seed(), proposal.threads(), watch)
                .at();
    }

    @Override
    public long moves() {
        return proposal.budget().moves();
    }

    @Override
    public void trying(String what) {
        trying.accept(what);
    }

    @Override
    public boolean stop() {
        return progress.stop();
    }

    /** Stops a search when somebody says so, or when a plan is met that breaks no must and owes nothing. */
    private final class UntilMet implements Progress {
        private final boolean enough;
        private volatile boolean met;

        UntilMet(boolean enough) {
            this.enough = enough;
        }

        @Override
        public void better(Totals totals, int placed, int sessions, long moves, double seconds) {
            met |= enough && totals.must() == 0 && totals.key() == 0 && totals.main() == 0;
        }

        @Override
        public boolean stop() {
            return met || progress.stop();
        }
    }
}
