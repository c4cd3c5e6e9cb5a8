package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.desk.app.Planner;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.Traded;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.answer.TradeOffs;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** What could go where not all can be had: looked for beside the work, told as the command tells it, tried and undone. */
class CouldGoTest {
    private static final long MOVES = 1_000;
    private static final String LOOK = "Look for what could go";
    /** Two sessions held at the same time. */
    private static final String HELD = """
            { "weekwright": 1, "scenario": "dunmarsh-clash", "placements": [
              { "group": "college-squad", "family": "mobility", "start": "2027-09-13T16:00", "pin": { "start": true } },
              { "group": "college-squad", "family": "trunk-and-balance", "start": "2027-09-13T16:15", "pin": { "start": true } } ] }
            """;

    @TempDir
    private Path place;

    private final Quick planner = new Quick();
    private Browser browser;

    /** The engine with fewer moves; notes its last answer. */
    private static final class Quick implements Planner {
        private volatile Traded last;

        @Override
        public Judged judge(Scenario scenario, Plan plan) {
            return Engine.judge(scenario, plan);
        }

        @Override
        public Judged propose(Proposal proposal, Progress progress) {
            return Engine.propose(fewer(proposal), progress);
        }

        @Override
        public Traded tradeOffs(Proposal proposal, Progress progress, Consumer<String> trying) {
            last = Engine.tradeOffs(fewer(proposal), progress, trying);
            return last;
        }

        private static Proposal fewer(Proposal asked) {
            return new Proposal(asked.scenario(), asked.from(), Budget.moves(MOVES), 1, 1, null);
        }
    }

    @BeforeEach
    void open() throws IOException {
        folder("clash", "clash", HELD);
        folder("easy", "one-match", null);
        browser = Browser.in(place, planner);
    }

    private void folder(String name, String demo, String plan) throws IOException {
        Path folder = Files.createDirectory(place.resolve(name));
        Files.write(folder.resolve("scenario.json"), Scenarios.bytes(demo));
        if (plan != null) {
            Files.writeString(folder.resolve("plan.json"), plan);
        }
    }

    @AfterEach
    void close() {
        browser.close();
    }

    private String answered() {
        assertThat(browser.post("/w/clash/could-go", "revision", "1", "look", "")
                        .statusCode())
                .isEqualTo(303);
        return browser.until("/w/clash", "What each would buy");
    }

    private Plan plan() throws Exception {
        Scenario scenario = Documents.readScenario("s", Files.readAllBytes(place.resolve("clash/scenario.json")));
        return Documents.readPlan("p", Files.readAllBytes(place.resolve("clash/plan.json")), scenario);
    }

    @Test
    void it_is_offered_where_not_all_that_is_asked_for_is_met_and_nowhere_else() {
        assertThat(browser.get("/w/clash").body()).contains(LOOK);
        assertThat(browser.get("/w/easy").body()).doesNotContain(LOOK);
        browser.post("/w/easy/search", "revision", "1", "seconds", "2");
        assertThat(browser.until("/w/easy", "Revision 2,")).doesNotContain(LOOK);
    }

    @Test
    void it_says_what_the_command_says() {
        String page = answered();

        TradeOffs answer = planner.last.answer();
        assertThat(answer.clashes()).isNotEmpty();
        assertThat(page)
                .contains(answer.text())
                .contains(
                        "The pin of Mobility (Mon 13 Sep 16:00) and the pin of Trunk, balance, stability (Mon 13 Sep 16:15)"
                                + " cannot both be had: Mobility (Mon 13 Sep 16:00) and Trunk, balance, stability (Mon 13 Sep 16:15)"
                                + " overlap by ")
                .contains("Unpin Mobility (Mon 13 Sep 16:00)", "mends 1 thing that must hold")
                .contains("Each was tried by a search of 1,000 moves");
        answer.couldGo().forEach(one -> assertThat(page).contains(one.steps().get(0)));
    }

    @Test
    void what_is_tried_comes_as_promised_and_can_be_undone() throws Exception {
        answered();
        TradeOffs answer = planner.last.answer();
        byte[] before = Files.readAllBytes(place.resolve("clash/plan.json"));

        assertThat(browser.post("/w/clash/could-go/try", "revision", "1", "look", "", "number", "0")
                        .statusCode())
                .isEqualTo(303);

        String step = answer.couldGo().get(0).steps().get(0);
        assertThat(browser.get("/w/clash").body())
                .contains(
                        "Revision 2,",
                        "Tried what could go: " + step.substring(0, 1).toLowerCase(java.util.Locale.ROOT)
                                + step.substring(1));
        Totals then = Objects.requireNonNull(plan().totals());
        assertThat(then.must())
                .isEqualTo(answer.totals().must()
                        + answer.couldGo().get(0).change().must());
        assertThat(then.key())
                .isEqualTo(
                        answer.totals().key() + answer.couldGo().get(0).change().key());

        browser.post("/w/clash/undo", "revision", "2", "look", "");
        // What was found belongs to the plan that is there again.
        assertThat(browser.get("/w/clash").body()).contains("Revision 3,", "What each would buy");
        assertThat(plan().placements()).isEqualTo(reread(before).placements());
        assertThat(browser.post("/w/clash/could-go/try", "revision", "3", "look", "", "number", "1")
                        .statusCode())
                .isEqualTo(303);
        assertThat(browser.get("/w/clash").body()).contains("Revision 4,");
    }

    private static Plan reread(byte[] plan) throws Exception {
        return Documents.readPlan("p", plan, Scenarios.read("clash"));
    }

    @Test
    void what_was_looked_for_in_another_plan_is_not_tried() {
        answered();
        browser.post("/w/clash/could-go/try", "revision", "1", "look", "", "number", "0");

        assertThat(browser.get("/w/clash").body())
                .doesNotContain("What each would buy")
                .containsAnyOf(
                        "The week has changed since this was looked for.", "Every wish is met", "nothing is broken");
        assertThat(browser.post("/w/clash/could-go/try", "revision", "1", "look", "", "number", "1")
                        .statusCode())
                .as("a revision that is no longer in force")
                .isEqualTo(409);
        assertThat(browser.post("/w/clash/could-go/try", "revision", "2", "look", "", "number", "1")
                        .body())
                .contains("looked for in another plan");
        assertThat(browser.post("/w/easy/could-go", "revision", "1", "look", "").body())
                .contains("there is no plan yet");
    }

    @Test
    void it_is_put_away_and_asked_again() {
        answered();
        browser.post("/w/clash/could-go/away", "look", "");
        assertThat(browser.get("/w/clash").body()).contains(LOOK).doesNotContain("What each would buy");
    }

    @Test
    void hostile_names_stay_names() throws IOException {
        Path folder = Files.createDirectory(place.resolve("hostile"));
        String script = "<script>hit()</script>";
        Files.writeString(
                folder.resolve("scenario.json"),
                new String(Scenarios.bytes("clash"), StandardCharsets.UTF_8)
                        .replace("\"College squad\"", "\"" + script + "\"")
                        .replace("\"Weights room\"", "\"" + script + "\""));
        Files.writeString(folder.resolve("plan.json"), HELD);

        browser.post("/w/hostile/could-go", "revision", "1", "look", "");

        assertThat(browser.until("/w/hostile", "What each would buy"))
                .doesNotContain(script)
                .contains("Have &lt;script&gt;hit()&lt;/script&gt; open on");
    }
}
