package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.Rulebook;

class CheckCommandTest {
    /** Heavy lower on Friday noon, the day before the match: it must end 48 h or more before (expert proposal). */
    private static final String TOO_LATE = """
            { "weekwright": 1, "scenario": "kilmarrow-one-match", "placements": [
              { "group": "first-squad", "family": "heavy-lower-knee", "start": "2027-02-12T13:00", "facility": "gym" } ] }
            """;

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();

    @Test
    void a_plan_written_by_hand_is_judged_and_its_breaches_are_said() {
        int code = trial.in(bytes(TOO_LATE)).run("check", "demo:one-match", "-");

        assertThat(code).isEqualTo(3);
        assertThat(trial.out()).contains("broken that must hold; ").contains("What must hold and does not\n");
        assertThat(trial.out()).contains("13:00–14:00  Heavy lower, knee-dominant");
        assertThat(trial.err()).isEmpty();
    }

    @Test
    void json_gives_the_plan_its_findings_and_the_rules_kept() {
        trial.in(bytes(TOO_LATE)).run("check", "demo:one-match", "-", "--json");

        JsonNode checked = JsonMapper.shared().readTree(trial.out());
        List<String> kept =
                checked.get("kept").valueStream().map(JsonNode::asString).toList();
        List<String> broken = checked.get("findings")
                .valueStream()
                .map(finding -> finding.get("rule").asString())
                .toList();
        assertThat(broken).contains("before-fixture");
        assertThat(kept).contains("facility-fits").doesNotContainAnyElementsOf(broken);
        assertThat(kept)
                .isSubsetOf(Rulebook.builtIn().rules().stream().map(Rule::id).toList());
        assertThat(checked.get("totals").get("must").asDouble()).isPositive();
    }

    @Test
    void what_check_prints_can_be_checked_again_and_stands_the_same() {
        trial.in(bytes(TOO_LATE)).run("check", "demo:one-match", "-", "--json");
        String first = trial.out();

        assertThat(trial.in(bytes(first)).run("check", "demo:one-match", "-", "--json"))
                .isEqualTo(3);

        assertThat(part(trial.out(), "totals")).isEqualTo(part(first, "totals"));
        assertThat(part(trial.out(), "findings")).isEqualTo(part(first, "findings"));
        assertThat(part(trial.out(), "kept")).isEqualTo(part(first, "kept"));
    }

    @Test
    void a_proposed_plan_is_checked_with_the_same_totals() {
        Path plan = folder.resolve("plan.json");
        trial.run("propose", "demo:one-match", "--moves", "200", "-o", plan.toString(), "--json");
        String proposed = trial.out();

        trial.run("check", "demo:one-match", plan.toString(), "--json");

        assertThat(part(trial.out(), "totals")).isEqualTo(part(proposed, "totals"));
        assertThat(part(trial.out(), "findings")).isEqualTo(part(proposed, "findings"));
    }

    @Test
    void only_one_document_can_come_from_standard_input() {
        assertThat(trial.run("check", "-", "-")).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("only one of SCENARIO and PLAN can come from standard input\n");
    }

    @Test
    void a_plan_that_cannot_be_used_is_refused_with_its_place() throws Exception {
        Path plan = Files.writeString(folder.resolve("plan.json"), TOO_LATE.replace("\"gym\"", "\"gim\""));

        assertThat(trial.run("check", "demo:one-match", plan.toString())).isEqualTo(2);

        assertThat(trial.err()).hasLineCount(1).startsWith(plan + ": placements[0].facility, line 2:");
        assertThat(trial.out()).isEmpty();
    }

    @Test
    void a_missing_argument_is_bad_usage() {
        assertThat(trial.run("check", "demo:one-match")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo(
                        "PLAN is missing: name one after the scenario, or a folder that has one (propose FOLDER makes it)\n");
    }

    private static JsonNode part(String json, String name) {
        return JsonMapper.shared().readTree(json).required(name);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
