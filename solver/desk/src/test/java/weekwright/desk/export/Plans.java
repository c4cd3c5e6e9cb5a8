package weekwright.desk.export;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.UnaryOperator;
import weekwright.engine.Engine;
import weekwright.engine.explain.Judged;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** A small week and plans of it, for tests. */
final class Plans {
    static final String SPEED = place("max-velocity", "2027-02-10T09:00", "track");
    static final String HEAVY = place("heavy-lower-knee", "2027-02-09T12:00", "gym");
    static final String UPPER = place("upper-strength", "2027-02-10T10:30", "gym");

    private Plans() {}

    static Scenario week() {
        return Scenarios.read("one-match");
    }

    /** The demo week with its text changed. */
    static Scenario week(UnaryOperator<String> change) {
        String text = new String(Scenarios.bytes("one-match"), StandardCharsets.UTF_8);
        String changed = change.apply(text);
        if (changed.equals(text)) {
            throw new IllegalArgumentException("nothing is changed in the week");
        }
        return scenario(changed);
    }

    static Scenario scenario(String json) {
        try {
            return Documents.readScenario("test.json", json.getBytes(StandardCharsets.UTF_8));
        } catch (DocumentException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** A placement of the first squad. */
    static String place(String family, String start, String facility) {
        return "{ \"group\": \"first-squad\", \"family\": \"" + family + "\", \"start\": \"" + start
                + "\", \"facility\": \"" + facility + "\", \"lead\": \"c1\" }";
    }

    static Judged judged(Scenario scenario, String... placements) {
        String json = "{ \"weekwright\": 1, \"scenario\": \"" + scenario.id() + "\", \"placements\": "
                + List.of(placements) + " }";
        try {
            return Engine.judge(
                    scenario, Documents.readPlan("plan.json", json.getBytes(StandardCharsets.UTF_8), scenario));
        } catch (DocumentException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
