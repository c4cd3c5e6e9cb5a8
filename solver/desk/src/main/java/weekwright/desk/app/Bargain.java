package weekwright.desk.app;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Workplace.Seen;
import weekwright.engine.explain.Traded;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Totals;

/** The search for what could go of an open folder, from the moment when it is asked for to long after its end. */
public final class Bargain implements Progress, OneByOne.Piece {
    /** How far it is. */
    public enum State {
        WAITING,
        RUNNING,
        /** Ended with an answer, or as much of it as was found. */
        ENDED,
        FAILED
    }

    /**
     * What it was like at one moment.
     *
     * @param tried how many things were tried so far, the one that is being tried included
     * @param trying what is being tried, in a few words
     * @param found the answer, or null before the end
     * @param message what went wrong, or an empty text
     */
    public record Standing(
            State state, int tried, String trying, @Nullable Traded found, String message) {
        /** Whether it has not ended. */
        public boolean isOn() {
            return state == State.WAITING || state == State.RUNNING;
        }
    }

    private final Seen from;
    private final Consumer<Bargain> work;
    private State state = State.WAITING;
    private int tried;
    private String trying = "";
    private @Nullable Traded found;
    private String message = "";
    private long changes;
    private volatile boolean stop;

    Bargain(Seen from, Consumer<Bargain> work) {
        this.from = from;
        this.work = work;
    }

    /** The revision that it was asked of. */
    Seen from() {
        return from;
    }

    /** Whether it was asked of what is seen: the same scenario and the same sessions, placed and held alike. */
    public boolean isOf(Seen seen) {
        return seen.revision().number() == from.revision().number()
                || (seen.scenario().equals(from.scenario())
                        && seen.judged()
                                .plan()
                                .placements()
                                .equals(from.judged().plan().placements())
                        && seen.judged()
                                .plan()
                                .leftOut()
                                .equals(from.judged().plan().leftOut()));
    }

    /** Counts up with everything that happens. */
    public synchronized long changes() {
        return changes;
    }

    /** What it is like now. */
    public synchronized Standing now() {
        return new Standing(state, tried, trying, found, message);
    }

    @Override
    public boolean isOn() {
        return now().isOn();
    }

    @Override
    public void work() {
        work.accept(this);
    }

    /** Asks it to end with what is known so far. */
    @Override
    public void end() {
        stop = true;
    }

    @Override
    public void never() {
        fails("The desk was closed.");
    }

    @Override
    public boolean stop() {
        return stop;
    }

    @Override
    public void better(Totals totals, int placed, int sessions, long moves, double seconds) {
        // What is told is what is tried, not how each search goes.
    }

    synchronized void begins() {
        state = State.RUNNING;
        changes++;
    }

    synchronized void tries(String what) {
        tried++;
        trying = what;
        changes++;
    }

    synchronized void ends(Traded answer) {
        found = answer;
        state = State.ENDED;
        changes++;
    }

    synchronized void fails(String why) {
        message = why;
        state = State.FAILED;
        changes++;
    }
}
