package weekwright.desk.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Workplace.Seen;
import weekwright.engine.Onlooker;
import weekwright.engine.explain.Judged;
import weekwright.model.answer.Comparison;
import weekwright.model.plan.Totals;

/** A search for a plan of an open folder, from the moment when it is asked for to long after its end. */
public final class Search implements Onlooker, OneByOne.Piece {
    /** How far a search is. */
    public enum State {
        WAITING,
        RUNNING,
        /** Ended, its plan saved. */
        SAVED,
        /** Ended; there was nothing to save. */
        SAME,
        /** Ended; the week had changed meanwhile, and its plan is kept beside. */
        LATE,
        /** Ended without a plan, as the coach wished. */
        DROPPED,
        FAILED
    }

    /** The best plan at a moment of the search. */
    public record Point(double seconds, Totals totals, int placed, int sessions) {}

    /** What a search was like at one moment. */
    public record Standing(
            State state,
            double seconds,
            List<Point> points,
            @Nullable Judged drawn,
            String message,
            @Nullable Integer revision,
            @Nullable Comparison comparison,
            long changes) {
        /** Whether it has not ended. */
        public boolean isOn() {
            return state == State.WAITING || state == State.RUNNING;
        }
    }

    /**
     * A folder and its last search as they were at one moment.
     *
     * @param search what the search was like, or null where there was none
     */
    public record Glance(Seen seen, @Nullable Standing search) {}

    /** The plan is drawn anew when somebody looks, not at every step. */
    private @Nullable Supplier<Judged> latest;

    private final Workplace place;
    private final Seen from;
    private final double seconds;
    private final boolean afresh;
    private final Consumer<Search> work;
    private final List<Point> points = new ArrayList<>();
    private State state = State.WAITING;
    private volatile boolean stop;
    private boolean drop;
    private String message = "";
    private @Nullable Integer revision;
    private @Nullable Comparison comparison;
    private @Nullable Judged drawn;
    private long changes;

    Search(Workplace place, Seen from, double seconds, boolean afresh, long after, Consumer<Search> work) {
        changes = after;
        this.place = place;
        this.from = from;
        this.seconds = seconds;
        this.afresh = afresh;
        this.work = work;
    }

    /** Whether it keeps only what is pinned, and does not stay close to the rest. */
    boolean isAfresh() {
        return afresh;
    }

    Workplace place() {
        return place;
    }

    /** The revision that it starts from. */
    public Seen from() {
        return from;
    }

    /** How many seconds it may take. */
    public double seconds() {
        return seconds;
    }

    /**
     * Counts up with everything that happens, and on from the search before, so that somebody who asks again sees whether
     * there is news.
     */
    public synchronized long changes() {
        return changes;
    }

    /** Whether it has not ended. */
    @Override
    public synchronized boolean isOn() {
        return state == State.WAITING || state == State.RUNNING;
    }

    /** What it is like now, with the best plan so far drawn. */
    public synchronized Standing now() {
        Supplier<Judged> newest = latest;
        if (newest != null) {
            latest = null;
            drawn = newest.get();
        }
        return new Standing(state, seconds, List.copyOf(points), drawn, message, revision, comparison, changes);
    }

    /** What it is like now beside the folder at the same moment: what it saves is never seen before its end is. */
    synchronized Glance glance() {
        return new Glance(place.now(), now());
    }

    @Override
    public void work() {
        work.accept(this);
    }

    @Override
    public void never() {
        becomes(State.DROPPED, "The desk was closed.");
    }

    /** Asks it to end with the best plan so far. */
    @Override
    public void end() {
        stop = true;
    }

    /** Asks it to end and to leave the plan as it was. */
    public synchronized void drop() {
        drop = true;
        stop = true;
    }

    synchronized boolean isDropped() {
        return drop;
    }

    @Override
    public synchronized void plan(Supplier<Judged> plan) {
        latest = plan;
    }

    @Override
    public synchronized void better(Totals totals, int placed, int sessions, long moves, double after) {
        points.add(new Point(after, totals, placed, sessions));
        changes++;
    }

    @Override
    public boolean stop() {
        return stop;
    }

    synchronized void becomes(State now, String said) {
        state = now;
        message = said;
        changes++;
    }

    synchronized void ends(State now, String said, @Nullable Integer number, @Nullable Comparison compared) {
        revision = number;
        comparison = compared;
        becomes(now, said);
    }
}
