package weekwright.desk.page;

import io.javalin.http.sse.SseClient;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import weekwright.desk.app.Bargain;
import weekwright.desk.app.Bargains;
import weekwright.desk.app.FileFault;
import weekwright.desk.app.Search;
import weekwright.desk.app.Searches;
import weekwright.desk.app.Workplace;

/**
 * Tells open pages that there is something new, and nothing else: they then ask for it. Who loses a word of it loses
 * nothing, as the next says the same.
 */
final class Events implements AutoCloseable {
    private static final int MOST = 100;
    private static final int TICK_MILLIS = 200;
    /** Ticks after which the folder is looked at for what others have changed in it. */
    private static final int LOOK_EVERY = 10;
    /** Ticks after which a silent line is tried, so that lost ones are noticed. */
    private static final int TRY_EVERY = 50;

    private static final int TOO_MANY = 503;

    private final Searches searches;
    private final Bargains bargains;
    private final List<Ear> ears = new CopyOnWriteArrayList<>();
    private final Thread clockwork = new Thread(this::run, "events");
    private volatile boolean closed;
    private int ticks;

    Events(Searches searches, Bargains bargains) {
        this.searches = searches;
        this.bargains = bargains;
        clockwork.setDaemon(true);
        clockwork.start();
    }

    /** An open page, and what it was told last. */
    private static final class Ear {
        private final SseClient client;
        private final Workplace place;
        private int revision;
        private long search;
        private long couldGo;

        Ear(SseClient client, Workplace place) {
            this.client = client;
            this.place = place;
        }
    }

    /** Has a page told of its folder from now on. */
    void listen(SseClient client, Workplace place) {
        if (ears.size() >= MOST) {
            client.ctx().status(TOO_MANY);
            return;
        }
        Ear ear = new Ear(client, place);
        client.keepAlive();
        client.onClose(() -> ears.remove(ear));
        ears.add(ear);
    }

    private void run() {
        while (!closed) {
            ticks++;
            // An ear that is lost while it is told takes itself off the list: nothing is removed on the way.
            ears.removeAll(ears.stream().filter(ear -> !reached(ear)).toList());
            try {
                Thread.sleep(TICK_MILLIS);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    private boolean reached(Ear ear) {
        if (ear.client.terminated()) {
            return false;
        }
        try {
            tell(ear);
            return true;
        } catch (RuntimeException lost) {
            return false;
        }
    }

    private void tell(Ear ear) {
        // Looked at before the revision, so that whoever hears that a search has ended hears of what it saved, too.
        long search = searches.of(ear.place).map(Search::changes).orElse(0L);
        int revision = ticks % LOOK_EVERY == 0 ? looked(ear.place) : ear.place.latest();
        if (revision > ear.revision) {
            ear.revision = revision;
            ear.client.sendEvent("revision", Integer.toString(revision));
        }
        if (search != ear.search) {
            ear.search = search;
            ear.client.sendEvent("search", Long.toString(search));
        }
        long couldGo = bargains.of(ear.place).map(Bargain::changes).orElse(0L);
        if (couldGo != ear.couldGo) {
            ear.couldGo = couldGo;
            ear.client.sendEvent("could-go", Long.toString(couldGo));
        }
        if (ticks % TRY_EVERY == 0) {
            ear.client.sendComment("still here");
        }
    }

    /** What was changed in the files by others becomes a revision, too. */
    private static int looked(Workplace place) {
        try {
            return place.now().revision().number();
        } catch (FileFault fault) {
            // The page says so when the coach does something.
            return place.latest();
        }
    }

    @Override
    public void close() {
        closed = true;
        clockwork.interrupt();
        ears.forEach(ear -> ear.client.close());
    }
}
