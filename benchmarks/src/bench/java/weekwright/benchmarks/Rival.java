package weekwright.benchmarks;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.benchmarks.rivals.CpSearch;
import weekwright.benchmarks.rivals.StreamSearch;
import weekwright.engine.problem.Problem;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Totals;

/** Somebody who looks for a plan within a time. */
interface Rival {
    /** Threads where a rival can use several. */
    int THREADS = 2;

    /** All that are compared, ours first. */
    List<Rival> ALL = List.of(new Ours(THREADS), new Ours(1), new Streams(), new CpSat());

    /**
     * What was found.
     *
     * @param run null where no plan was found in the time
     * @param bound wants that any plan as good above them costs at least; 0 where nothing is known
     */
    record Found(@Nullable Run run, double bound) {
        /** Totals of the plan, or null. */
        @Nullable
        Totals totals() {
            return run == null ? null : run.totals();
        }
    }

    /** What it is called in tables. */
    String name();

    /** Whether it can take up a problem. */
    boolean fits(Problem problem);

    /** Its best plan after so many seconds; all are given the problem, and prepare the rest within the time. */
    Found best(Problem problem, double seconds, long seed);

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
        public Found best(Problem problem, double seconds, long seed) {
            return new Found(Run.of(problem, Budget.seconds(seconds), seed, threads, Progress.SILENT), 0);
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
        public Found best(Problem problem, double seconds, long seed) {
            return new Found(new Run(problem, new StreamSearch(problem).best(seconds, seed), 0, seconds), 0);
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
        public Found best(Problem problem, double seconds, long seed) {
            CpSearch.Found found = new CpSearch(problem).best(seconds, seed, THREADS);
            return found.claimed() == null
                    ? new Found(null, found.bound())
                    : new Found(new Run(problem, found.at(), 0, seconds), found.bound());
        }
    }
}
