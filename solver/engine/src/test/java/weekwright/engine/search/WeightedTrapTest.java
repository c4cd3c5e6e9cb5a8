package weekwright.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/**
 * The trap of searching on one weighted sum: one short night (a must) makes room for two key sessions, so the sum likes it
 * better than leaving them out. The plan that is kept is compared by levels and must not break the night's rest.
 */
class WeightedTrapTest {
    private static final String WEEK = """
            { "weekwright": 1, "id": "trap", "title": "A late evening and an early morning", "zone": "Europe/Dublin",
              "firstDay": "2027-03-01", "days": 2, "gridMinutes": 30,
              "groups": [ { "id": "g", "label": "Squad", "kind": "field", "phase": "in-season", "level": "trained", "headcount": 10,
                "windows": [ { "days": ["MON"], "from": "21:30", "to": "22:30" }, { "days": ["TUE"], "from": "05:30", "to": "06:30" } ],
                "aims": [ { "family": "mobility", "minutes": 30, "priority": "key", "doses": ["full"],
                            "perWeek": { "least": 14, "target": 14, "most": 14 } } ] } ] }
            """;

    @Test
    void one_broken_must_is_never_bought_with_two_key_sessions() throws DocumentException {
        Problem problem = ProblemBuilder.of(week());
        Cost shortNight = total(problem, List.of(0, 1, 2, 3));
        Cost leftOut = total(problem, List.of(0, 1));
        assertThat(shortNight.must).as("night's rest of 7 h").isEqualTo(10);
        assertThat(leftOut.must).isZero();
        assertThat(shortNight.mustSlope + shortNight.restSlope)
                .as("the weighted sum likes the short night better")
                .isLessThan(leftOut.mustSlope + leftOut.restSlope);
        assertThat(leftOut.compareLevels(shortNight))
                .as("by levels it is worse")
                .isNegative();

        for (long seed = 1; seed <= 3; seed++) {
            Clocked watch = new Clocked(Budget.moves(6_000), Progress.SILENT, problem.sessions.size());
            Searcher.Found found = new Portfolio(problem, null).search(Budget.moves(6_000), seed, 2, watch);
            Cost kept = Judge.of(problem, found.at()).total();
            assertThat(kept.must).as("must, seed %d", seed).isZero();
            assertThat(kept.key).as("two key sessions left out, seed %d", seed).isEqualTo(20);
        }
    }

    /** Of 14 half hours a week 4 are owed in two days: two in the evening and two in the morning, 7 h apart. */
    private static Scenario week() throws DocumentException {
        return Documents.readScenario("trap.json", WEEK.getBytes(StandardCharsets.UTF_8));
    }

    private static Cost total(Problem problem, List<Integer> hours) {
        Stimulus[] at = new Stimulus[problem.sessions.size()];
        List<Stimulus> starts = new ArrayList<>();
        for (Stimulus option : problem.sessions.get(0).options) {
            if (starts.isEmpty() || option.start >= starts.get(starts.size() - 1).end) {
                starts.add(option);
            }
        }
        for (int i = 0; i < hours.size(); i++) {
            Session session = problem.sessions.get(i);
            for (Stimulus option : session.options) {
                if (option.start == starts.get(hours.get(i)).start) {
                    at[i] = option;
                }
            }
        }
        return Judge.of(problem, at).total();
    }
}
