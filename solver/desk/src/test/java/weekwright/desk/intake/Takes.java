package weekwright.desk.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;

/** Files and a small squad to take them into. */
final class Takes {
    private Takes() {}

    /** A file that lies with the tests. */
    static byte[] file(String name) {
        try (InputStream in = Takes.class.getResourceAsStream(name)) {
            return Objects.requireNonNull(in, name).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Four weeks of March in Dublin; the clocks go forward on the 28th. */
    static Scenario march() {
        return squad("2027-03-01", 28);
    }

    static Scenario squad(String firstDay, int days, String... fixtures) {
        return scenario("""
                { "weekwright": 1, "id": "quayside", "title": "Quayside", "zone": "Europe/Dublin", "firstDay": "%s", "days": %d,
                  "groups": [ { "id": "squad", "label": "First squad" } ],
                  "athletes": [ { "id": "a01", "name": "R. Ashlane", "groups": ["squad"] },
                                { "id": "a02", "name": "T. Brockweir", "groups": ["squad"], "level": "trained" } ],
                  "facilities": [ { "id": "hall", "label": "Town hall", "offers": ["hall"] } ],
                  "fixtures": %s }
                """.replace("%s\", \"days", firstDay + "\", \"days")
                .replace("%d", String.valueOf(days))
                .replace("\"fixtures\": %s", "\"fixtures\": " + List.of(fixtures)));
    }

    static Scenario scenario(String json) {
        try {
            return Documents.readScenario("test.json", json.getBytes(StandardCharsets.UTF_8));
        } catch (DocumentException e) {
            throw new IllegalArgumentException(e);
        }
    }

    static String fixture(String id, String label, String start) {
        return "{ \"id\": \"" + id + "\", \"label\": \"" + label + "\", \"groups\": [\"squad\"], \"start\": \"" + start
                + "\", \"minutes\": 105 }";
    }

    static Preview fixtures(String file, Scenario scenario, Answers answers) {
        return Intake.preview(file(file), scenario, Wanted.FIXTURES, answers);
    }

    static Preview fixtures(String file) {
        return fixtures(file, march(), Answers.NONE);
    }

    /** Rows as lines: verdict, text, remarks. */
    static List<String> rows(Preview preview) {
        return preview.rows().stream()
                .map(row -> row.verdict().word() + ": " + row.text()
                        + (row.remarks().isEmpty() ? "" : " | " + String.join("; ", row.remarks())))
                .toList();
    }

    static List<String> starts(Scenario scenario) {
        return scenario.fixtures().stream()
                .map(Fixture::start)
                .map(Object::toString)
                .toList();
    }
}
