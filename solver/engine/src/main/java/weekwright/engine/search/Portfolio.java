package weekwright.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Searcher.Found;

/**
 * A search cut into two members beforehand, each with its own seed and share of the moves. Threads decide when a member
 * runs, never what it does, so that under a number of moves any number of threads finds the same plan.
 */
public final class Portfolio {
    /** Members of the portfolio. */
    static final int MEMBERS = 2;

    private final Problem problem;
    private final Searcher searcher;

    /** A portfolio of one kind of searcher. */
    public Portfolio(Problem problem, Searcher searcher) {
        this.problem = problem;
        this.searcher = searcher;
    }

    /** Searches with two members and takes the last strict steps from the better plan. */
    public Found search(Budget budget, long seed, int threads, Clocked watch) {
        Construction construction = new Construction(problem, watch);
        @Nullable
        Stimulus[] start =
                best(List.of(construction.build(), Construction.standing(problem), Construction.held(problem)));
        Incumbent first = new Incumbent(Judge.of(problem, start));
        watch.better(first.cost(), first.placed(), 0);
        long share = budget.moves() == 0 ? Long.MAX_VALUE : Math.max(1, budget.moves() / MEMBERS);
        List<Callable<Found>> members = new ArrayList<>();
        for (int member = 0; member < MEMBERS; member++) {
            long own = seed * 31 + member * 7919L;
            Watch its = watch.forMember(member, threads);
            members.add(() -> searcher.search(problem, start, own, share, its));
        }
        List<Found> found = run(members, threads);
        List<@Nullable Stimulus[]> plans =
                new ArrayList<>(found.stream().map(Found::at).toList());
        plans.add(start);
        Descent descent = new Descent(problem, best(plans), watch.forLastSteps());
        @Nullable Stimulus[] last = descent.run();
        long moves = found.stream().mapToLong(Found::moves).sum() + descent.moves();
        return new Found(last, moves);
    }

    private @Nullable Stimulus[] best(List<@Nullable Stimulus[]> plans) {
        @Nullable Stimulus[] best = plans.get(0);
        Cost least = Judge.of(problem, best).total();
        for (@Nullable Stimulus[] plan : plans.subList(1, plans.size())) {
            Cost cost = Judge.of(problem, plan).total();
            if (cost.compareLevels(least) < 0) {
                best = plan;
                least = cost;
            }
        }
        return best;
    }

    private static List<Found> run(List<Callable<Found>> members, int threads) {
        ExecutorService executor = Executors.newFixedThreadPool(Math.max(1, Math.min(threads, MEMBERS)), task -> {
            Thread thread = new Thread(task, "search");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Found> found = new ArrayList<>();
            for (Future<Found> future : executor.invokeAll(members)) {
                found.add(future.get());
            }
            return found;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the search was interrupted", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a search failed", e.getCause());
        } finally {
            executor.shutdownNow();
        }
    }
}
