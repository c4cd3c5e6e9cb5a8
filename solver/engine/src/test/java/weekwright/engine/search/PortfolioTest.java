package weekwright.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Searcher.Found;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Solver;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;
import weekwright.scenarios.Yardstick;

/** What a search promises, whatever it finds. */
class PortfolioTest {
    /** Two groups; in the braces: the first group's facility, the second's, and how many groups the hall holds. */
    private static final String TWO_GROUPS = """
            { "weekwright": 1, "id": "two", "title": "Two groups", "zone": "Europe/Dublin",
              "firstDay": "2027-03-01", "days": 7, "gridMinutes": 30,
              "groups": [ %s, %s ],
              "facilities": [ { "id": "one", "label": "One", "offers": ["gym"], "room": %s },
                              { "id": "other", "label": "Other", "offers": ["field"], "room": { "groups": 1 } } ] %s }
            """;

    private static final String GROUP = """
            { "id": "%s", "label": "Squad", "kind": "field", "phase": "in-season", "level": "trained", "headcount": 10,
              "windows": [ { "days": ["MON", "TUE", "WED", "THU"], "from": "17:00", "to": "20:00" } ],
              "aims": [ { "family": "%s", "priority": "key", "perWeek": { "least": 2, "target": 2, "most": 2 } } ] }
            """;

    @ParameterizedTest
    @ValueSource(longs = {1, 7, 100, 1_000, 5_003, 20_000})
    void so_many_moves_mean_no_more_than_so_many(long moves) {
        Plan plan = propose(Scenarios.read("clash"), null, moves, 1);

        Solver solver = plan.solver();
        assertThat(solver.moves()).isPositive().isLessThanOrEqualTo(moves);
        assertThat(solver.stoppedBy()).isEqualTo("moves");
    }

    @Test
    void nothing_is_left_to_gain_where_nothing_is_broken() {
        Solver solver =
                propose(Scenarios.read("sprint-week"), null, 2_000_000, 1).solver();

        assertThat(solver.stoppedBy()).isEqualTo("nothing to gain");
        assertThat(solver.moves()).isLessThan(2_000_000);
    }

    @Test
    void nothing_is_left_to_gain_where_nothing_better_was_found_for_long() {
        Plan plan = propose(SquadGenerator.tiny(4), null, 5_000_000, 1);

        assertThat(plan.totals()).as("a week with something broken").isNotEqualTo(new Totals(0, 0, 0, 0));
        assertThat(plan.solver().stoppedBy()).isEqualTo("nothing to gain");
        assertThat(plan.solver().moves()).isLessThan(5_000_000);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_plan_is_never_worse_than_where_it_started_or_than_any_that_was_shown(long seed) {
        Scenario scenario = SquadGenerator.squad(seed, 1, 24, 1);
        Problem problem = ProblemBuilder.of(scenario);
        List<Totals> shown = new ArrayList<>();
        Progress progress = new Progress() {
            @Override
            public synchronized void better(Totals totals, int placed, int sessions, long moves, double seconds) {
                shown.add(totals);
            }

            @Override
            public boolean stop() {
                return false;
            }
        };
        Clocked watch = new Clocked(Budget.moves(4_000), progress, problem.sessions.size());

        Found found = new Portfolio(problem, null).search(Budget.moves(4_000), seed, 2, watch);

        Cost cost = Judge.of(problem, found.at()).total();
        assertThat(shown).isNotEmpty();
        assertThat(shown)
                .allSatisfy(totals -> assertThat(compare(cost.totals(), totals)).isNotPositive());
        Cost empty = Judge.of(problem, Construction.held(problem)).total();
        assertThat(cost.compareLevels(empty)).isNotPositive();
    }

    @Test
    void a_plan_from_a_plan_is_never_worse() {
        Scenario scenario = SquadGenerator.squad(2, 1, 20, 1);
        Plan poor = propose(scenario, null, 60, 1);
        Plan unread = without(poor);

        Plan better = propose(scenario, unread, 3_000, 2);

        Totals before = Engine.judge(scenario, poor).plan().totals();
        assertThat(compare(better.totals(), before)).isNotPositive();
    }

    @Test
    void groups_that_share_nothing_are_parts_of_their_own() throws DocumentException {
        Problem apart = ProblemBuilder.of(two("upper-strength", "tempo-run", "{ \"groups\": 1 }", ""));

        assertThat(Parts.of(apart, apart.sessions)).hasSize(2);
    }

    @Test
    void a_facility_with_limited_room_makes_one_part_of_two() throws DocumentException {
        Problem shared = ProblemBuilder.of(two("upper-strength", "heavy-lower-knee", "{ \"groups\": 1 }", ""));
        Problem roomy = ProblemBuilder.of(two("upper-strength", "heavy-lower-knee", "null", ""));

        assertThat(Parts.of(shared, shared.sessions)).hasSize(1);
        assertThat(Parts.of(roomy, roomy.sessions)).hasSize(2);
    }

    @Test
    void people_and_staff_in_common_make_one_part_of_two() throws DocumentException {
        String athlete = ", \"athletes\": [ { \"id\": \"a\", \"name\": \"A. Birch\", \"groups\": [\"g1\", \"g2\"] } ]";
        String coach = ", \"staff\": [ { \"id\": \"c\", \"name\": \"C. Alder\", \"leads\": [\"*\"], \"atOnce\": 1 } ]";

        for (String common : List.of(athlete, coach)) {
            Problem problem = ProblemBuilder.of(two("upper-strength", "tempo-run", "{ \"groups\": 1 }", common));
            assertThat(Parts.of(problem, problem.sessions)).as(common).hasSize(1);
        }
    }

    @Test
    void parts_searched_side_by_side_give_the_same_plan_on_any_number_of_threads() throws DocumentException {
        Problem problem = ProblemBuilder.of(two("upper-strength", "tempo-run", "{ \"groups\": 1 }", ""));
        List<List<Integer>> plans = new ArrayList<>();
        for (int threads : List.of(1, 2, 4)) {
            Clocked watch = new Clocked(Budget.moves(3_000), Progress.SILENT, problem.sessions.size());
            Found found = new Portfolio(problem, null).search(Budget.moves(3_000), 5, threads, watch);
            plans.add(starts(problem, found));
        }
        assertThat(plans.get(1)).isEqualTo(plans.get(0));
        assertThat(plans.get(2)).isEqualTo(plans.get(0));
    }

    @Test
    void a_search_that_is_stopped_at_once_hardly_looks_at_the_weeks_that_it_has_not_come_to() {
        Problem problem = ProblemBuilder.of(SquadGenerator.squad(10, 1, 28, 4));
        Progress stopped = new Progress() {
            @Override
            public void better(Totals totals, int placed, int sessions, long moves, double seconds) {}

            @Override
            public boolean stop() {
                return true;
            }
        };
        Clocked watch = new Clocked(Budget.seconds(60), stopped, problem.sessions.size());

        Found found = new Portfolio(problem, null).search(Budget.seconds(60), 1, 1, watch);

        int options = problem.sessions.stream()
                .mapToInt(session -> session.options.length)
                .max()
                .orElseThrow();
        assertThat(found.moves()).isLessThanOrEqualTo(options + 1);
        assertThat(found.settled()).isFalse();
        assertThat(Judge.of(problem, found.at()).total().must).isZero();
    }

    static List<Searcher> searchers() {
        return List.of(
                new RuinAndRecreate(),
                new TimefoldSearcher(),
                new Annealing(),
                new InTurn(new RuinAndRecreate(), new Annealing()));
    }

    @ParameterizedTest
    @MethodSource("searchers")
    void each_searcher_alone_makes_a_plan_of_nothing_and_the_same_again(Searcher searcher) {
        Problem problem = ProblemBuilder.of(Scenarios.read("one-match"));
        @SuppressWarnings("NullAway")
        Stimulus[] nothing = new Stimulus[problem.sessions.size()];

        Found found = searcher.search(problem, nothing, problem.sessions, 1, 20_000, Watch.NONE);
        Found again = searcher.search(problem, nothing, problem.sessions, 1, 20_000, Watch.NONE);

        Cost cost = Judge.of(problem, found.at()).total();
        assertThat(List.of(cost.must, cost.key, cost.main)).containsOnly(0L);
        assertThat(found.moves()).isLessThanOrEqualTo(20_000);
        assertThat(starts(problem, again)).isEqualTo(starts(problem, found));
    }

    @Test
    void our_cooling_is_as_good_as_that_of_timefold_in_as_many_moves() {
        Problem problem = ProblemBuilder.of(Yardstick.of(SquadGenerator.squad(10, 1, 28, 1)));
        Stimulus[] start = new Construction(problem, Watch.NONE).build();
        double ours = 0;
        double timefolds = 0;
        for (long seed = 1; seed <= 4; seed++) {
            ours += wishes(problem, new Annealing(), start, seed);
            timefolds += wishes(problem, new TimefoldSearcher(), start, seed);
        }
        assertThat(ours).isBetween(0.75 * timefolds, 1.25 * timefolds);
    }

    private static double wishes(Problem problem, Searcher searcher, Stimulus[] start, long seed) {
        Found found = searcher.search(problem, start, problem.sessions, seed, 30_000, Watch.NONE);
        return Judge.of(problem, found.at()).total().totals().want();
    }

    private static List<Integer> starts(Problem problem, Found found) {
        List<Integer> starts = new ArrayList<>();
        for (Session session : problem.sessions) {
            Stimulus at = found.at()[session.index];
            starts.add(at == null ? -1 : at.start);
        }
        return starts;
    }

    private static Scenario two(String first, String second, String room, String more) throws DocumentException {
        String text = TWO_GROUPS.formatted(GROUP.formatted("g1", first), GROUP.formatted("g2", second), room, more);
        return Documents.readScenario("two.json", text.getBytes(StandardCharsets.UTF_8));
    }

    /** The plan without the digest of its scenario, as if that had changed. */
    private static Plan without(Plan plan) {
        return new Plan(
                plan.weekwright(),
                plan.scenario(),
                null,
                null,
                null,
                plan.placements(),
                List.of(),
                plan.softened(),
                plan.totals(),
                plan.findings());
    }

    private static int compare(Totals a, Totals b) {
        return java.util.Comparator.comparingDouble(Totals::must)
                .thenComparingDouble(Totals::key)
                .thenComparingDouble(Totals::main)
                .thenComparingDouble(Totals::want)
                .compare(a, b);
    }

    private static Plan propose(Scenario scenario, Plan from, long moves, long seed) {
        return Engine.propose(new Proposal(scenario, from, Budget.moves(moves), seed, 2, null), Progress.SILENT)
                .plan();
    }
}
