package weekwright.engine.search;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import weekwright.engine.problem.Cost;

/** Watches a search by the clock, where seconds were given, and hands better plans on to whoever listens. */
public final class Clocked implements Watch {
    /** Share of the seconds that the walks may use; the rest is for the last strict steps. */
    private static final double WALKS = 0.92;

    private final Budget budget;
    private final Progress progress;
    private final int sessions;
    private final long start = System.nanoTime();
    private final AtomicLong moves = new AtomicLong();
    private final AtomicBoolean stopped = new AtomicBoolean();
    private final Cost best = new Cost();
    private boolean any;

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
    public synchronized void better(Cost total, int placed, long its) {
        if (!any || total.compareLevels(best) < 0) {
            any = true;
            best.set(total);
            progress.better(total.totals(), placed, sessions, moves.get(), seconds());
        }
    }

    @Override
    public boolean tried(long more) {
        return triedUntil(more, 1);
    }

    private boolean triedUntil(long more, double share) {
        moves.addAndGet(more);
        if (progress.stop()) {
            stopped.set(true);
        }
        boolean late = budget.seconds() > 0 && seconds() >= budget.seconds() * share;
        return stopped.get() || late;
    }

    @Override
    public Watch forShare(double share) {
        return new Part(0, WALKS, share);
    }

    /** The watch of a member: with one thread the members share the time one after the other. */
    Watch forMember(int member, int threads) {
        if (threads >= Portfolio.MEMBERS) {
            return new Part(0, WALKS, 1);
        }
        double each = WALKS / Portfolio.MEMBERS;
        return new Part(member * each, (member + 1) * each, 1);
    }

    /** The watch of the last strict steps. */
    Watch forLastSteps() {
        return new Part(WALKS, 1, 1);
    }

    /** A stretch of the time given. */
    private final class Part implements Watch {
        private final double from;
        private final double to;
        private final double share;

        Part(double from, double to, double share) {
            this.from = from;
            this.to = to;
            this.share = share;
        }

        @Override
        public void better(Cost total, int placed, long its) {
            Clocked.this.better(total, placed, its);
        }

        @Override
        public boolean tried(long more) {
            return triedUntil(more, from + (to - from) * share);
        }

        @Override
        public Watch forShare(double part) {
            return new Part(from, to, part);
        }
    }
}
