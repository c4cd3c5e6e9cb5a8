package weekwright.desk.page;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.util.JavalinBindException;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.server.handler.MinimumDataRateHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import weekwright.desk.app.Bargains;
import weekwright.desk.app.FileFault;
import weekwright.desk.app.OneByOne;
import weekwright.desk.app.Searches;
import weekwright.desk.app.Shelf;
import weekwright.desk.app.Trials;
import weekwright.desk.view.plan.PlanPages;

/** The page's server. It listens on this machine only. */
public final class Desk implements AutoCloseable {
    /** The only place where it listens. */
    private static final String LOOPBACK = "127.0.0.1";

    private static final String CACHE_LINES = "org.eclipse.jetty.util.referencesPerCacheLine";
    private static final int THREADS = 48;
    private static final int HEADER_BYTES = 16 * 1024;
    private static final int IDLE_MILLIS = 30_000;
    /** Whoever sends more slowly is not waited for. */
    private static final int LEAST_BYTES_A_SECOND = 512;

    private final Door door = new Door();
    private final Consumer<String> tell;
    private final OneByOne turns = new OneByOne();
    private final Searches searches;
    private final Bargains bargains;
    private final Events events;
    private final Rehearsal rehearsal;
    private final Javalin server;

    private Desk(Shelf shelf, int port, Consumer<String> tell) {
        this.tell = tell;
        searches = new Searches(shelf.planner().quick(), shelf.clock(), turns, PlanPages::verdict);
        bargains = new Bargains(shelf.planner(), turns);
        events = new Events(searches, bargains);
        Assets assets = new Assets();
        Templates templates = new Templates(assets.frame());
        rehearsal = new Rehearsal(shelf.planner().quick(), templates);
        server = Javalin.create(config -> {
            settings(config, port);
            routes(config, shelf, assets, templates);
        });
    }

    /**
     * Starts the page.
     *
     * @param port where it listens, or 0 for any that is free
     * @param tell hears each address that opens it; each opens once
     * @throws FileFault when it cannot listen there
     */
    public static Desk start(Shelf shelf, int port, Consumer<String> tell) {
        tellCacheLines();
        Desk desk = new Desk(shelf, port, tell);
        try {
            startQuietly(desk.server);
        } catch (JavalinBindException e) {
            throw new FileFault("Port " + port + " is taken by another program: give another, such as --port 0", e);
        }
        tell.accept(desk.address());
        return desk;
    }

    /** How many references the processor takes in at once, which the server would ask a whole set of management beans. */
    private static void tellCacheLines() {
        if (System.getProperty(CACHE_LINES) == null) {
            System.setProperty(CACHE_LINES, "16");
        }
    }

    /** Where it listens. */
    public int port() {
        return server.port();
    }

    /** What the library has to say of a port that is taken is said once, in a coach's words, by whoever asked for it. */
    private static void startQuietly(Javalin server) {
        Logger library = Logger.getLogger(Javalin.class.getName());
        Level before = library.getLevel();
        library.setLevel(Level.OFF);
        try {
            server.start();
        } finally {
            library.setLevel(before);
        }
    }

    /** The address that opens it once. */
    public String address() {
        return "http://" + LOOPBACK + ":" + port() + "/open/" + door.key();
    }

    /** Stops it; a search that is on ends with the best plan that it has, which is saved. */
    @Override
    public void close() {
        rehearsal.end();
        turns.close();
        events.close();
        server.stop();
    }

    private static void settings(JavalinConfig config, int port) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = Guards.FILES_BYTES;
        config.jetty.threadPool = new QueuedThreadPool(THREADS);
        config.jetty.modifyHttpConfiguration(Desk::http);
        config.jetty.modifyServer(server -> {
            server.setErrorHandler(silent());
            server.setHandler(new MinimumDataRateHandler(LEAST_BYTES_A_SECOND, 0));
        });
        config.jetty.addConnector((server, http) -> connector(server, http, port));
    }

    private static void http(HttpConfiguration http) {
        http.setSendServerVersion(false);
        http.setRequestHeaderSize(HEADER_BYTES);
    }

    private static ServerConnector connector(Server server, HttpConfiguration http, int port) {
        ServerConnector connector = new ServerConnector(server, 1, 1, new HttpConnectionFactory(http));
        connector.setHost(LOOPBACK);
        connector.setPort(port);
        connector.setIdleTimeout(IDLE_MILLIS);
        return connector;
    }

    /** What is refused before it reaches us is told without its particulars. */
    private static ErrorHandler silent() {
        ErrorHandler handler = new ErrorHandler();
        handler.setShowStacks(false);
        handler.setShowCauses(false);
        handler.setShowMessageInTitle(false);
        return handler;
    }

    private void routes(JavalinConfig config, Shelf shelf, Assets assets, Templates templates) {
        Guards guards = new Guards(door);
        config.routes.before(guards::check);
        config.routes.get("/assets/{digest}/{name}", assets::give);
        config.routes.get("/open/{key}", request -> {
            guards.open(request);
            tell.accept(address());
        });
        new StartRoutes(shelf, searches, templates, rehearsal).add(config.routes);
        WeekRoutes weeks = new WeekRoutes(shelf, searches, bargains, templates);
        weeks.add(config.routes);
        new NextRoutes(shelf, weeks, searches, templates).add(config.routes);
        new HoldRoutes(weeks, templates).add(config.routes);
        new SearchRoutes(weeks, searches, templates).add(config.routes);
        new CouldGoRoutes(weeks, bargains, templates).add(config.routes);
        new KnownRoutes(weeks, templates).add(config.routes);
        new WhatIfRoutes(weeks, templates, new Trials(shelf.planner(), shelf.clock())).add(config.routes);
        new RuleRoutes(weeks, templates).add(config.routes);
        new LoadRoutes(weeks, templates).add(config.routes);
        new LogRoutes(weeks, templates, shelf.clock()).add(config.routes);
        new TakeRoutes(weeks, templates).add(config.routes);
        new PaperRoutes(weeks, templates, shelf.clock()).add(config.routes);
        config.routes.sse("/w/{folder}/events", client -> events.listen(client, weeks.place(client.ctx())));
        new Faults(templates).add(config.routes);
    }
}
