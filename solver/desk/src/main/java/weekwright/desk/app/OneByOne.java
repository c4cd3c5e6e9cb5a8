package weekwright.desk.app;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Work that takes all processors: one piece at a time, the others wait in the order in which they were asked for. */
public final class OneByOne implements AutoCloseable {
    private static final long PATIENCE_MILLIS = 10_000;

    private final Deque<Piece> waiting = new ArrayDeque<>();
    private final Thread worker = new Thread(this::work, "searches");
    private @Nullable Piece running;
    private boolean closed;

    /** Nothing to do yet. */
    public OneByOne() {
        worker.setDaemon(true);
        worker.start();
    }

    /** A piece of work. */
    interface Piece {
        /** Does it; what goes wrong is told by the piece itself. */
        void work();

        /** Asks it to end with what it has. */
        void end();

        /** It will never be done. */
        void never();

        /** Whether it has not ended. */
        boolean isOn();
    }

    /** Adds a piece to those that wait. */
    synchronized void add(Piece piece) {
        if (closed) {
            piece.never();
            return;
        }
        waiting.add(piece);
        notifyAll();
    }

    /** How many pieces come before one that waits. */
    synchronized int before(Piece piece) {
        int place = new ArrayList<>(waiting).indexOf(piece);
        return place < 0 ? 0 : place + (running == null ? 0 : 1);
    }

    private void work() {
        for (Piece next = next(); next != null; next = next()) {
            next.work();
            done();
        }
    }

    private synchronized @Nullable Piece next() {
        while (waiting.isEmpty() && !closed) {
            try {
                wait();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return null;
            }
        }
        running = closed ? null : waiting.poll();
        return running;
    }

    private synchronized void done() {
        running = null;
    }

    /** Ends all work: what runs ends with what it has, what waits is never done. */
    @Override
    public void close() {
        synchronized (this) {
            closed = true;
            List.copyOf(waiting).forEach(Piece::never);
            waiting.clear();
            if (running != null) {
                running.end();
            }
            notifyAll();
        }
        try {
            worker.join(PATIENCE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
