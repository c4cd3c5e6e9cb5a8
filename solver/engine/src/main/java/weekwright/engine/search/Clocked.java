package weekwright.engine.search;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Stimulus;

/** Watches a search by the clock, where seconds were given, and hands better plans on to whoever listens. */
public final class Clocked implements Watch {
    private final Budget budget;
    private final Progress progress;
    private final int sessions;
    private final long start = System.nanoTime();
    private final AtomicLong moves = new AtomicLong();
    private final AtomicBoolean stopped = new AtomicBoolean();
    private final Cost best = new Cost();
    private boolean any;
    private Consumer<@Nullable Stimulus[]> placements = at -> {};

    /** Starts the clock. */
    public Clocked(Budget budget, Progress progress, int sessions) {
        this.budget = budget;
        this.progress = progress;
        this.sessions = sessions;
    }

    /** Seconds since the start. */
    public double seconds() {
        return (System.nanoTime() - start) / 1e9;
    }

    /** Whether somebody asked to stop. */
    public boolean stoppedByHand() {
        return stopped.get();
    }

    @Override
    public synchronized void better(Incumbent found) {
        if (!any || found.cost().compareLevels(best) < 0) {
            any = true;
            best.set(found.cost());
            placements.accept(found.at());
            progress.better(best.totals(), found.placed(), sessions, moves.get(), seconds());
        }
    }

    /** Has every better plan handed over, before it is told: where each session lies, by session. */
    public void handOver(Consumer<@Nullable Stimulus[]> to) {
        placements = to;
    }

    @Override
    public boolean tried(long more) {
        return triedUntil(more, budget.seconds());
    }

    private boolean triedUntil(long more, double until) {
        moves.addAndGet(more);
        if (progress.stop()) {
            stopped.set(true);
        }
        return stopped.get() || late(until);
    }

    private boolean late(double until) {
        return secondsLeft(until) <= 0;
    }

    @Override
    public double secondsLeft() {
        return secondsLeft(budget.seconds());
    }

    private double secondsLeft(double until) {
        return budget.seconds() > 0 ? until - seconds() : Double.POSITIVE_INFINITY;
    }

    @Override
    public Watch forShare(double share) {
        return new Part(1, 1).forShare(share);
    }

    /**
     * The watch of one task among several that take turns.
     *
     * @param share of all the seconds that the task may use, from its first call on
     * @param latest share of all the seconds at which it ends in any case
     */
    Watch forTask(double share, double latest) {
        return new Part(share, latest);
    }

    /** A stretch of the time given, from the first time that it is asked about. */
    private final class Part implements Watch {
        private final double share;
        private final double latest;
        private double from = -1;

        Part(double share, double latest) {
            this.share = share;
            this.latest = latest;
        }

        @Override
        public void better(Incumbent found) {
            Clocked.this.better(found);
        }

        @Override
        public boolean tried(long more) {
            return triedUntil(more, end(1));
        }

        @Override
        public double secondsLeft() {
            return Clocked.this.secondsLeft(end(1));
        }

        private double end(double ofIt) {
            from = from < 0 ? seconds() : from;
            return Math.min(from + budget.seconds() * share * ofIt, budget.seconds() * latest);
        }

        @Override
        public Watch forShare(double ofIt) {
            Part whole = this;
            return new Watch() {
                @Override
                public void better(Incumbent found) {
                    whole.better(found);
                }

                @Override
                public boolean tried(long more) {
                    return triedUntil(more, end(ofIt));
                }

                @Override
                public double secondsLeft() {
                    return Clocked.this.secondsLeft(end(ofIt));
                }

                @Override
                public Watch forShare(double part) {
                    return whole.forShare(ofIt * part);
                }
            };
        }
    }
}
