package weekwright.model.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.model.document.Examples.Broken;

/**
 * Each way to break a document is told in one line: where, what is wrong, what would be right. Ranges that no rule or
 * published table gives (1440 minutes, 1000 heads, 200 characters) are expert proposals.
 */
class BrokenDocumentsTest {
    static List<Broken> scenarios() {
        return Examples.brokenScenarios();
    }

    static List<Broken> plans() {
        return Examples.brokenPlans();
    }

    static List<Broken> logs() {
        return Examples.brokenLogs();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void aBrokenScenario(Broken broken) {
        assertThat(said(() -> Documents.readScenario("week.json", Examples.bytes(broken.text()))))
                .isEqualTo(broken.faults());
    }

    @ParameterizedTest
    @MethodSource("plans")
    void aBrokenPlan(Broken broken) {
        assertThat(said(() -> Documents.readPlan("plan.json", Examples.bytes(broken.text()), Examples.scenario())))
                .isEqualTo(broken.faults());
    }

    @ParameterizedTest
    @MethodSource("logs")
    void aBrokenLog(Broken broken) {
        assertThat(said(() -> Documents.readLog("log.json", Examples.bytes(broken.text()), Examples.scenario())))
                .isEqualTo(broken.faults());
    }

    @Test
    void aPlanInTheHandOfAScenarioIsSaid() {
        assertThat(said(() -> Documents.readScenario("plan.json", Examples.bytes(Examples.text("plan.json")))))
                .containsExactly("plan.json: line 1:1: this is a plan, not a scenario. Give the file of the scenario.");
    }

    @Test
    void aScenarioInTheHandOfAPlanIsSaid() {
        byte[] scenario = Examples.bytes(Examples.text("scenario.json"));
        assertThat(said(() -> Documents.readPlan("week.json", scenario, Examples.scenario())))
                .containsExactly("week.json: line 1:1: this is a scenario, not a plan. Give the file of the plan.");
        assertThat(said(() -> Documents.readLog("week.json", scenario, Examples.scenario())))
                .containsExactly("week.json: line 1:1: this is a scenario, not a log. Give the file of the log.");
    }

    @Test
    void aListIsNoDocument() {
        assertThat(said(() -> Documents.readScenario("list.json", Examples.bytes("[ ]"))))
                .containsExactly(
                        "list.json: line 1:1: a scenario is a set of fields in { }, not a list. Begin with { and end with }.");
    }

    @Test
    void aLabelMayHave200Characters() throws DocumentException {
        String longest = Examples.changed(Examples.text("scenario.json"), "R. Ash", "é".repeat(200));
        assertThat(Documents.readScenario("week.json", Examples.bytes(longest))
                        .athletes()
                        .get(0)
                        .name())
                .hasSize(200);
        String longer = Examples.changed(Examples.text("scenario.json"), "R. Ash", "é".repeat(201));
        assertThat(said(() -> Documents.readScenario("week.json", Examples.bytes(longer))))
                .containsExactly(
                        "week.json: athletes[0].name, line 19:28: the text has 201 characters. Give 1 to 200 characters, or leave the field out where it is not needed.");
    }

    @Test
    void columnsCountCharactersNotBytes() {
        String text = Examples.changed(Examples.text("scenario.json"), "R. Ash\", \"groups\"", "Ü. Äsçh\", \"grups\"");
        assertThat(said(() -> Documents.readScenario("week.json", Examples.bytes(text))))
                .containsExactly(
                        "week.json: athletes[0].grups, line 19:39: no field is called \"grups\" here. Did you mean \"groups\"?");
    }

    @Test
    void linesAreCountedWhateverEndsThem() {
        String text = Examples.changed(Examples.text("scenario.json"), "\"packs\": [ ]", "\"packs\": [ 1 ]");
        for (String end : List.of("\n", "\r\n", "\r")) {
            assertThat(said(() -> Documents.readScenario("week.json", Examples.bytes(text.replace("\n", end)))))
                    .containsExactly(
                            "week.json: packs[0], line 45:14: 1 is not a text. Give an id, such as \"match-squad\".");
        }
    }

    @Test
    void problemsCarryTheirParts() {
        String text = Examples.changed(Examples.text("scenario.json"), "\"days\": 7", "\"days\": 85");
        DocumentException fault = catchThrowableOfType(
                DocumentException.class, () -> Documents.readScenario("week.json", Examples.bytes(text)));
        assertThat(fault.problems())
                .containsExactly(new Problem(
                        "week.json", "days", 7, 11, "85 is too large", "Give a whole number from 1 to 84."));
        assertThat(fault).hasMessage("week.json: days, line 7:11: 85 is too large. Give a whole number from 1 to 84.");
    }

    /** What a reader says of a document that it refuses. */
    static List<String> said(org.assertj.core.api.ThrowableAssert.ThrowingCallable reading) {
        DocumentException fault = catchThrowableOfType(DocumentException.class, reading);
        assertThat(fault).as("the document must be refused").isNotNull();
        return fault.problems().stream().map(Problem::toString).toList();
    }
}
