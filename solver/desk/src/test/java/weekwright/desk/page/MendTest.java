package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.Planned;
import weekwright.model.document.Documents;
import weekwright.model.plan.CheapestOption;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Remedy;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** What would help is done at the press of a button, what is left out is put in its place, and older plans lie beside. */
class MendTest {
    @TempDir
    private Path place;

    private Browser browser;
    private Scenario scenario;
    private Plan plan;

    @BeforeEach
    void open() throws Exception {
        scenario = Scenarios.read("clash");
        plan = Planned.week(place, "week", scenario, 200);
        browser = Browser.in(place);
    }

    @AfterEach
    void close() {
        browser.close();
    }

    private int finding(boolean withRemedy) {
        return IntStream.range(0, plan.findings().size())
                .filter(i -> (plan.findings().get(i).remedy() != null) == withRemedy)
                .findFirst()
                .orElseThrow();
    }

    /** A finding that one session elsewhere would help with. */
    private int moving() {
        return IntStream.range(0, plan.findings().size())
                .filter(i -> movesOnly(plan.findings().get(i).remedy()))
                .findFirst()
                .orElseThrow();
    }

    private static boolean movesOnly(@Nullable Remedy remedy) {
        return remedy != null && remedy.steps().stream().noneMatch(step -> step.startsWith("Drop "));
    }

    private HttpResponse<String> mend(int finding, int revision) {
        return browser.post("/w/week/mend", "finding", "" + finding, "revision", "" + revision, "look", "");
    }

    private Plan saved() throws Exception {
        byte[] written = Files.readAllBytes(place.resolve("week/plan.json"));
        return Documents.readPlan("plan.json", written, saved("week/scenario.json"));
    }

    private Scenario saved(String file) throws Exception {
        return Documents.readScenario(file, Files.readAllBytes(place.resolve(file)));
    }

    @Test
    void what_would_help_is_done_exactly_as_it_was_said_and_can_be_undone() throws Exception {
        Remedy remedy =
                Objects.requireNonNull(plan.findings().get(finding(true)).remedy());
        assertThat(browser.get("/w/week").body()).contains("/w/week/remedies?week=1&amp;by=group&revision=1");
        assertThat(browser.get("/w/week/remedies?revision=1").body()).contains("What would help: ", ">Try it</button>");
        assertThat(browser.get("/w/week").body())
                .as("once found, it is shown at once")
                .contains("What would help: ", ">Try it</button>");

        assertThat(mend(finding(true), 1).statusCode()).isEqualTo(303);

        assertThat(browser.get("/w/week").body()).contains("Revision 2,", "Done what helps: ");
        assertThat(saved().totals()).isEqualTo(sum(Objects.requireNonNull(plan.totals()), remedy.change()));
        browser.post("/w/week/undo", "revision", "2", "look", "");
        assertThat(saved()).isEqualTo(plan);
    }

    private static Totals sum(Totals a, Totals b) {
        return new Totals(
                a.must() + b.must(),
                a.key() + b.key(),
                a.main() + b.main(),
                Math.round((a.want() + b.want()) * 10) / 10.0);
    }

    @Test
    void what_was_asked_for_too_late_is_refused() throws Exception {
        mend(finding(true), 1);
        Plan second = saved();

        HttpResponse<String> late = mend(finding(true), 1);

        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("The week has changed meanwhile");
        assertThat(saved()).isEqualTo(second);
    }

    @Test
    void where_nothing_would_help_nothing_is_done() throws Exception {
        assertThat(mend(finding(false), 1).statusCode()).isEqualTo(422);
        assertThat(mend(999, 1).statusCode()).isEqualTo(422);
        assertThat(browser.post("/w/week/mend", "revision", "1").statusCode()).isEqualTo(400);
        assertThat(saved()).isEqualTo(plan);
    }

    @Test
    void what_is_left_out_says_what_stands_in_the_way_and_is_put_where_it_costs_least() throws Exception {
        LeftOut left = plan.leftOut().stream()
                .filter(one -> one.cheapest() != null && one.cheapest().change().must() <= 0)
                .findFirst()
                .orElseThrow();
        CheapestOption best = Objects.requireNonNull(left.cheapest());
        assertThat(browser.get("/w/week").body()).contains("Look for a place", "Put it on ");

        browser.post(
                "/w/week/move",
                "session",
                left.id(),
                "start",
                best.start().toString(),
                "facility",
                Objects.requireNonNullElse(best.facility(), ""),
                "dose",
                best.dose().id(),
                "revision",
                "1",
                "look",
                "");

        assertThat(saved().placements())
                .anyMatch(placed ->
                        left.id().equals(placed.id()) && placed.start().equals(best.start()));
        assertThat(saved().totals()).isEqualTo(sum(Objects.requireNonNull(plan.totals()), best.change()));
    }

    @Test
    void an_older_plan_is_held_beside_the_one_in_force_and_taken_up() throws Exception {
        mend(moving(), 1);
        assertThat(browser.get("/w/week/history").body()).contains("What differs from revision 1");

        String page = browser.get("/w/week/history/1").body();

        assertThat(page).contains("Revision 2, in force", "Sessions that differ", "Take up revision 1");
        assertThat(browser.get("/w/week/history/7").statusCode()).isEqualTo(404);
        assertThat(browser.get("/w/week/history/..%2f1").statusCode()).isEqualTo(404);
        browser.post("/w/week/restore", "revision", "2", "number", "1");
        assertThat(saved()).isEqualTo(plan);
    }
}
