package weekwright.desk.store;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** A very small squad for tests; all names are invented. */
final class Harbour {
    static final String SCENARIO = """
            {
              "weekwright": 1, "id": "harbour", "title": "Harbour squad", "zone": "Europe/Dublin", "firstDay": "2027-03-01", "days": 7,
              "groups": [ { "id": "crew", "label": "Crew",
                "aims": [ { "family": "tempo-run", "perWeek": { "least": 1, "target": 1, "most": 2 }, "priority": "main" } ] } ],
              "athletes": [ { "id": "a1", "name": "Isla Larkmoor", "groups": ["crew"] }, { "id": "a2", "name": "T. Venn", "groups": ["crew"] } ]
            }
            """;

    static final String LOG = """
            { "weekwright": 1, "scenario": "harbour", "entries": [
              { "group": "crew", "family": "tempo-run", "start": "2027-03-02T16:00", "minutes": 40, "rpe": 5,
                "except": ["a1"], "people": [ { "athlete": "a2", "rpe": 6, "note": "ran with Isla Larkmoor's group" } ] } ] }
            """;

    private Harbour() {}

    static Scenario scenario() {
        return scenario("Harbour squad");
    }

    static Scenario scenario(String title) {
        try {
            return Documents.readScenario("scenario.json", bytes(SCENARIO.replace("Harbour squad", title)));
        } catch (DocumentException e) {
            throw new AssertionError(e);
        }
    }

    /** A plan whose one session lies on an hour, counted from Monday 06:00, that is free each day until 20:00. */
    static String planText(int hour) {
        return """
                { "weekwright": 1, "scenario": "harbour", "placements": [
                  { "id": "crew/tempo-run/2027-03-01/1", "group": "crew", "family": "tempo-run", "start": "2027-03-0%dT%02d:00", "minutes": 40 } ] }
                """.formatted(1 + hour / 14 % 7, 6 + hour % 14);
    }

    static Plan plan(int hour) {
        try {
            return Documents.readPlan("plan.json", bytes(planText(hour)), scenario());
        } catch (DocumentException e) {
            throw new AssertionError(e);
        }
    }

    /** The squad with a plan. */
    static Contents week(int hour) {
        return new Contents(scenario(), plan(hour), null);
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static Map<String, byte[]> file(String name, String text) {
        return Map.of(name, bytes(text));
    }

    static List<String> labels(Store store) {
        return store.history().stream()
                .map(revision -> revision.number() + " " + revision.label() + (revision.beside() ? " (beside)" : ""))
                .toList();
    }
}
