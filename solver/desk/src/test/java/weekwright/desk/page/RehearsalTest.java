package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.app.Planner;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** What the first real week needs is loaded while a coach reads the first page, and nobody sees anything of it. */
class RehearsalTest {
    @TempDir
    private Path place;

    /** Plans until it is told to stop. */
    private static final class Endless implements Planner {
        final AtomicInteger begun = new AtomicInteger();
        final CountDownLatch first = new CountDownLatch(1);
        final CountDownLatch stopped = new CountDownLatch(1);

        @Override
        public Judged judge(Scenario scenario, Plan plan) {
            return Engine.judge(scenario, plan);
        }

        @Override
        public Judged propose(Proposal proposal, Progress progress) {
            begun.incrementAndGet();
            first.countDown();
            while (!progress.stop()) {
                Thread.onSpinWait();
            }
            stopped.countDown();
            return Engine.propose(proposal, progress);
        }
    }

    private final Endless planner = new Endless();
    private Browser browser;

    @AfterEach
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private void readFirstPage() throws InterruptedException {
        browser = Browser.in(place, planner);
        browser.get("/");
        browser.get("/");
        assertThat(planner.first.await(20, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void the_first_page_is_rehearsed_on_once_and_writes_nothing() throws Exception {
        readFirstPage();
        browser.get("/");

        assertThat(planner.begun).hasValue(1);
        assertThat(place).isEmptyDirectory();
    }

    @Test
    void a_week_that_is_begun_ends_it() throws Exception {
        readFirstPage();

        browser.post("/begin/demo", "demo", "one-match", "folder", "mine");

        assertThat(planner.stopped.await(20, TimeUnit.SECONDS)).isTrue();
        assertThat(browser.get("/w/mine").statusCode()).isEqualTo(200);
    }

    @Test
    void a_desk_that_is_closed_ends_it() throws Exception {
        readFirstPage();

        browser.close();

        assertThat(planner.stopped.await(20, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void what_is_drawn_can_be_drawn() {
        Templates templates = new Templates(new Assets().frame());
        Rehearsal rehearsal = new Rehearsal(Planner.ENGINE.quick(), templates);

        assertThat(rehearsal.drawn()).hasSize(2).allMatch(page -> page.contains("card session"));
    }
}
