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
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Searcher.Found;

/**
 * A search cut into tasks beforehand: each independent part of the problem with each member of the portfolio, with its own
 * seed and share of the moves. Threads decide when a task runs, never what it does, so that under a number of moves any
 * number of threads finds the same plan.
 */
public final class Portfolio {
    /** Share of the budget for the walks; the rest is for the last strict steps. */
    private static final double WALKS = 0.92;
    /** The last strict steps have at least so many moves for each option, if that is no more than a quarter of all. */
    private static final int LAST_STEPS = 2;
    /** Share of the walks that first looks only at what has to do with a change. */
    private static final double NEAR = 0.3;
    /** Share of the walks that at the end looks at one week of one squad after the other. */
    private static final double WEEKS = 0.4;

    private static final List<Searcher> MEMBERS = List.of(
            new InTurn(new RuinAndRecreate(), new TimefoldSearcher()),
            new InTurn(new RuinAndRecreate(), new Annealing()));

    private final Problem problem;
    private final List<Searcher> members;
    private final @Nullable Changes changes;
    private final Scale scale;

    /** A portfolio as it is used. */
    public Portfolio(Problem problem, @Nullable Changes changes) {
        this(problem, MEMBERS, changes);
    }

    /**
     * A portfolio of some searchers.
     *
     * @param changes what has changed since the plan to stay close to, or null where there is none
     */
    Portfolio(Problem problem, List<Searcher> members, @Nullable Changes changes) {
        this.problem = problem;
        this.members = members;
        this.changes = changes;
        scale = new Scale(problem);
    }

    /** Searches with all members and takes the last strict steps from the best plan. */
    public Found search(Budget budget, long seed, int threads, Clocked watch) {
        if (changes != null && changes.none()) {
            return new Found(changes.standing(), 0, true);
        }
        @Nullable Stimulus[] at = start(watch);
        List<Session> free =
                problem.sessions.stream().filter(MoveMaker::movable).toList();
        boolean byMoves = budget.moves() > 0;
        long last = byMoves ? lastSteps(budget.moves(), free) : Long.MAX_VALUE;
        long walks = byMoves ? budget.moves() - last : Long.MAX_VALUE;
        Stretch stretch = new Stretch(watch, seed, threads, walks);
        List<Session> near = changes == null ? List.of() : changes.near();
        boolean nearFirst = !near.isEmpty() && near.size() < problem.sessions.size();
        if (nearFirst) {
            at = stretch.walk(at, near.stream().filter(MoveMaker::movable).toList(), 0, NEAR * WALKS);
        }
        at = stretch.walkAndWeeks(at, free, nearFirst ? NEAR * WALKS : 0, WALKS);
        long left = byMoves ? budget.moves() - stretch.moves : Long.MAX_VALUE;
        Descent descent = new Descent(problem, at, free, left, watch);
        return new Found(descent.run(), stretch.moves + descent.moves(), stretch.settled && descent.settled());
    }

    private @Nullable Stimulus[] start(Clocked watch) {
        List<@Nullable Stimulus[]> plans = new ArrayList<>();
        plans.add(new Construction(problem, watch).build());
        plans.add(Construction.standing(problem));
        if (problem.sessions.stream().anyMatch(session -> session.start() != null)) {
            plans.add(Construction.held(problem));
            plans.add(new Construction(problem, watch).repaired());
        }
        @Nullable Stimulus[] start = best(plans);
        Incumbent first = new Incumbent(Judge.of(problem, start), scale);
        watch.better(first);
        return start;
    }

    private static long lastSteps(long moves, List<Session> free) {
        long options =
                free.stream().mapToLong(session -> session.options.length).sum();
        return Math.min(moves / 4, LAST_STEPS * options);
    }

    private @Nullable Stimulus[] best(List<@Nullable Stimulus[]> plans) {
        @Nullable Stimulus[] best = plans.get(0);
        Cost least = scale.cost(Judge.of(problem, best));
        for (@Nullable Stimulus[] plan : plans.subList(1, plans.size())) {
            Cost cost = scale.cost(Judge.of(problem, plan));
            if (cost.compareLevels(least) < 0) {
                best = plan;
                least = cost;
            }
        }
        return best;
    }

    /** A part of the problem with what it gets of a budget. */
    private record Share(List<Session> part, double ofAll) {}

    /** The walks, one stretch after the other. */
    private final class Stretch {
        private final Clocked watch;
        private final long seed;
        private final int threads;
        private final long walks;
        private long moves;
        private boolean settled = true;
        private int stretches;

        Stretch(Clocked watch, long seed, int threads, long walks) {
            this.watch = watch;
            this.seed = seed;
            this.threads = Math.max(1, threads);
            this.walks = walks;
        }

        /** Searches all parts of some sessions from a plan, between two shares of the budget. */
        @Nullable
        Stimulus[] walk(@Nullable Stimulus[] start, List<Session> free, double from, double to) {
            if (watch.tried(0)) {
                settled = false;
                return start;
            }
            double share = (to - from) / WALKS;
            long most = walks == Long.MAX_VALUE ? walks : (long) (walks * share);
            List<Share> parts = shares(free);
            List<Callable<Found>> tasks = new ArrayList<>();
            int running = Math.min(threads, parts.size() * members.size());
            for (int part = 0; part < parts.size(); part++) {
                double ofAll = parts.get(part).ofAll() / members.size();
                long its = most == Long.MAX_VALUE ? most : (long) (most * ofAll);
                for (int member = 0; member < members.size(); member++) {
                    long own = (seed * 31 + member * 7919L + part * 104_729L) * 3 + stretches;
                    Watch itsWatch = watch.forTask((to - from) * Math.min(1, ofAll * running), to);
                    Searcher searcher = members.get(member);
                    List<Session> sessions = parts.get(part).part();
                    tasks.add(() -> searcher.search(problem, start, sessions, own, its, itsWatch));
                }
            }
            stretches++;
            return merged(start, parts, run(tasks, running));
        }

        /**
         * Searches all sessions, and then one week of one squad after the other: what is still to be gained in a long or
         * crowded plan is mostly gained there, where few sessions are tried often.
         */
        @Nullable
        Stimulus[] walkAndWeeks(@Nullable Stimulus[] start, List<Session> free, double from, double to) {
            List<List<Session>> weeks = Parts.weeksOfPeople(problem, free);
            int number = weeks.size() > 1 ? weeks.size() : 0;
            double next = to - (number > 0 ? (to - from) * WEEKS : 0);
            double each = (to - next) / Math.max(1, number);
            @Nullable Stimulus[] at = walk(start, free, from, next);
            boolean allSettled = settled;
            for (int week = 0; week < number; week++) {
                at = walk(at, weeks.get(week), next + week * each, next + (week + 1) * each);
                allSettled &= settled;
            }
            settled = allSettled;
            return at;
        }

        private List<Share> shares(List<Session> free) {
            double all = Math.max(1, Searcher.options(free));
            return Parts.of(problem, free).stream()
                    .map(part -> new Share(part, Searcher.options(part) / all))
                    .toList();
        }

        private @Nullable Stimulus[] merged(@Nullable Stimulus[] start, List<Share> parts, List<Found> found) {
            @Nullable Stimulus[] at = start.clone();
            for (int part = 0; part < parts.size(); part++) {
                List<Found> its = found.subList(part * members.size(), (part + 1) * members.size());
                @Nullable
                Stimulus[] best =
                        best(new ArrayList<>(its.stream().map(Found::at).toList()));
                for (Session session : parts.get(part).part()) {
                    at[session.index] = best[session.index];
                }
            }
            moves += found.stream().mapToLong(Found::moves).sum();
            settled = found.stream().allMatch(Found::settled);
            return at;
        }
    }

    private static List<Found> run(List<Callable<Found>> tasks, int threads) {
        ExecutorService executor = Executors.newFixedThreadPool(Math.max(1, threads), task -> {
            Thread thread = new Thread(task, "search");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Found> found = new ArrayList<>();
            for (Future<Found> future : executor.invokeAll(tasks)) {
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
