package weekwright.desk.page;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import weekwright.desk.app.Planner;
import weekwright.desk.app.Proposals;
import weekwright.desk.store.Revision;
import weekwright.desk.view.search.Course;
import weekwright.desk.view.search.Underway;
import weekwright.desk.view.week.LookAt;
import weekwright.desk.view.week.Open;
import weekwright.desk.view.week.WeekPages;
import weekwright.engine.Onlooker;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/**
 * While a coach reads the first page, plans and draws an invented week in memory and keeps nothing of it: what the first
 * real week needs of Java is loaded by then. It ends as soon as a week is begun or the desk is closed.
 */
final class Rehearsal implements Onlooker {
    private static final String DEMO = "one-match";
    private static final long MOVES = 500;
    /** The browser draws the first page meanwhile. */
    private static final int PAUSE_MILLIS = 300;

    private static final Revision REVISION = new Revision(1, Instant.EPOCH, DEMO, 1, false, Map.of());

    private final Planner planner;
    private final Templates templates;
    private final AtomicBoolean begun = new AtomicBoolean();
    private volatile boolean over;

    Rehearsal(Planner planner, Templates templates) {
        this.planner = planner;
        this.templates = templates;
    }

    /** Begins, in a thread of its own; only once. */
    void begin() {
        if (begun.compareAndSet(false, true)) {
            Thread thread = new Thread(this::run, "rehearsal");
            thread.setDaemon(true);
            thread.start();
        }
    }

    /** Ends it; it never begins after that. */
    void end() {
        begun.set(true);
        over = true;
    }

    private void run() {
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException e) {
            return;
        }
        if (!over) {
            drawn();
        }
    }

    /** The pages of an invented week while its first plan is looked for, and with the plan. */
    List<String> drawn() {
        Scenario scenario = Scenarios.read(DEMO);
        Judged found = planner.propose(Proposals.of(scenario, null, MOVES), this);
        return List.of(drawn(scenario, found, Course.RUNNING), drawn(scenario, found, Course.ENDED));
    }

    private String drawn(Scenario scenario, Judged found, String state) {
        boolean planned = state.equals(Course.ENDED);
        Open open = new Open(scenario, REVISION, planned, () -> found, () -> found, List::of);
        Course course = new Course(state, 0, 0, List.of(), found, "", null, 0);
        LookAt look = new LookAt(1, LookAt.By.GROUP);
        return templates.text("week.jte", WeekPages.of("", open, new Underway(course, null), look, List.of()));
    }

    @Override
    public void plan(Supplier<Judged> drawn) {
        // Nobody sees it.
    }

    @Override
    public void better(Totals totals, int placed, int sessions, long moves, double seconds) {
        // Nobody sees it.
    }

    @Override
    public boolean stop() {
        return over;
    }
}
