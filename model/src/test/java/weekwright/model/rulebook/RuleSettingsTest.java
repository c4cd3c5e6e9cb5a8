package weekwright.model.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;
import weekwright.model.scenario.RuleSetting;

/** How a scenario and a group change the rules, and what is said of a change that cannot be. Expert proposal. */
class RuleSettingsTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Rulebook rulebook = Rulebook.builtIn();

    private static Map<String, RuleSetting> rules(String json) {
        return JSON.readValue(json, new TypeReference<Map<String, RuleSetting>>() {});
    }

    private RuleSettings settings(String scenario, String group) {
        return RuleSettings.of(rulebook, rules(scenario), rules(group));
    }

    private List<String> faults(String rule, String setting) {
        return rulebook.faults(rule, JSON.readValue(setting, RuleSetting.class));
    }

    @Test
    void what_nobody_changes_is_as_usual() {
        RuleSettings usual = settings("{}", "{}");
        assertThat(usual.level("night-rest")).isEqualTo(RuleLevel.MUST);
        assertThat(usual.weightMilli("no-middle-day")).isEqualTo(1_000);
        assertThat(usual.number("night-rest", "hours")).isEqualTo(8);
        assertThat(usual.keyed("pathway-gap", "hours", "max-velocity-sprint")).isEmpty();
        assertThat(usual.softened()).isEmpty();
    }

    @Test
    void a_scenario_changes_level_weight_and_numbers() {
        RuleSettings changed = settings("""
                { "no-middle-day": { "weight": 0.5 }, "load-spread": { "level": "off" },
                  "pathway-gap": { "hours": { "max-velocity-sprint": 60 } } }
                """, "{}");
        assertThat(changed.weightMilli("no-middle-day")).isEqualTo(500);
        assertThat(changed.level("load-spread")).isEqualTo(RuleLevel.OFF);
        assertThat(changed.keyed("pathway-gap", "hours", "max-velocity-sprint")).hasValue(60);
        assertThat(changed.keyed("pathway-gap", "hours", "hip-dominant")).isEmpty();
        assertThat(changed.softened()).containsExactly("load-spread", "no-middle-day", "pathway-gap");
    }

    @Test
    void a_group_goes_before_the_scenario_number_by_number() {
        RuleSettings changed = settings("""
                { "night-rest": { "level": "want", "weight": 2, "hours": 9, "pointsAnHour": 3 },
                  "pathway-gap": { "hours": { "max-velocity-sprint": 60, "hip-dominant": 66 } } }
                """, """
                { "night-rest": { "hours": 7.5 }, "pathway-gap": { "hours": { "hip-dominant": 54 } },
                  "four-high-days": { "level": "told" } }
                """);
        assertThat(changed.level("night-rest")).isEqualTo(RuleLevel.WANT);
        assertThat(changed.weightMilli("night-rest")).isEqualTo(2_000);
        assertThat(changed.number("night-rest", "hours")).isEqualTo(7.5);
        assertThat(changed.number("night-rest", "pointsAnHour")).isEqualTo(3);
        assertThat(changed.keyed("pathway-gap", "hours", "max-velocity-sprint")).hasValue(60);
        assertThat(changed.keyed("pathway-gap", "hours", "hip-dominant")).hasValue(54);
        assertThat(changed.level("four-high-days")).isEqualTo(RuleLevel.TOLD);
    }

    @Test
    void a_groups_level_and_weight_go_before_the_scenarios() {
        RuleSettings changed = settings(
                "{ \"no-middle-day\": { \"level\": \"off\", \"weight\": 3 } }",
                "{ \"no-middle-day\": { \"level\": \"want\", \"weight\": 1 } }");
        assertThat(changed.level("no-middle-day")).isEqualTo(RuleLevel.WANT);
        assertThat(changed.weightMilli("no-middle-day")).isEqualTo(1_000);
        assertThat(changed.softened()).isEmpty();
    }

    @Test
    void only_what_differs_is_listed_as_changed() {
        assertThat(settings("""
                                { "night-rest": { "level": "must", "weight": 1, "hours": 8 }, "primer-end": { "hours": 4 },
                                  "aim-most": { "level": "want" }, "pathway-gap": { "hours": {} } }
                                """, "{}").softened()).containsExactly("aim-most", "primer-end");
    }

    @Test
    void asking_for_what_is_not_there_names_the_nearest() {
        RuleSettings usual = settings("{}", "{}");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> usual.number("night-rest", "hour"))
                .withMessage("night-rest has no number \"hour\": did you mean hours?");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> usual.number("pathway-gap", "hours"))
                .withMessage("hours of pathway-gap is given by pathway: ask for it by one");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> settings("{ \"nite-rest\": {} }", "{}"))
                .withMessage("no rule is called \"nite-rest\": did you mean night-rest?");
    }

    @Test
    void a_sound_setting_has_no_faults() {
        assertThat(faults("night-rest", "{ \"level\": \"want\", \"weight\": 0.5, \"hours\": 7.5 }"))
                .isEmpty();
        assertThat(faults("no-middle-day", "{ \"weight\": 0 }")).isEmpty();
        assertThat(faults("pathway-gap", "{ \"hours\": { \"max-velocity-sprint\": 60 } }"))
                .isEmpty();
        assertThat(faults("aim-least", "{ \"level\": \"key\" }")).isEmpty();
    }

    @Test
    void an_unknown_rule_is_refused_with_the_nearest() {
        assertThat(faults("pathway-gp", "{}"))
                .containsExactly("no rule is called \"pathway-gp\": did you mean pathway-gap?");
    }

    @Test
    void an_unknown_number_is_refused_with_the_nearest() {
        assertThat(faults("night-rest", "{ \"huors\": 8, \"wieght\": 2 }"))
                .containsExactly(
                        "huors: night-rest has no number of this name; did you mean hours?",
                        "wieght: night-rest has no number of this name; did you mean weight?");
        assertThat(faults("pins", "{ \"minutes\": 8 }"))
                .containsExactly("minutes: pins has no number of this name; known are level, weight");
    }

    @Test
    void a_number_out_of_range_is_refused_with_the_range() {
        assertThat(faults("night-rest", "{ \"hours\": 16.5, \"pointsAnHour\": -1, \"weight\": 101 }"))
                .containsExactly(
                        "weight: 101 is outside 0 to 100",
                        "hours: 16.5 is out of range; give 0 to 16 h",
                        "pointsAnHour: -1 is out of range; give 0 to 50 points");
        assertThat(faults("night-rest", "{ \"hours\": 16, \"pointsAnHour\": 0, \"weight\": 100 }"))
                .isEmpty();
    }

    @Test
    void a_value_of_the_wrong_kind_is_refused() {
        assertThat(faults("night-rest", "{ \"hours\": \"8\", \"pointsAnHour\": null }"))
                .containsExactly(
                        "hours: \"8\" is not a number; give 0 to 16 h",
                        "pointsAnHour: null is not a number; give 0 to 50 points");
        assertThat(faults("night-rest", "{ \"hours\": { \"hip-dominant\": 8 } }"))
                .containsExactly("hours: {hip-dominant=8} is not a number; give 0 to 16 h");
        assertThat(faults("pathway-gap", "{ \"hours\": 60 }"))
                .containsExactly("hours: 60 is not a set of numbers by pathway; give 0 to 168 h for each, e.g."
                        + " { \"max-velocity-sprint\": 84 }");
    }

    @Test
    void numbers_by_pathway_are_looked_at_one_by_one() {
        assertThat(faults(
                        "pathway-gap",
                        "{ \"hours\": { \"hip-dominat\": 60, \"aerobic\": 169, \"acceleration\": [] } }"))
                .containsExactly(
                        "hours.hip-dominat: is no pathway; did you mean hip-dominant?",
                        "hours.aerobic: 169 is out of range; give 0 to 168 h",
                        "hours.acceleration: [] is not a number; give 0 to 168 h");
    }

    @Test
    void a_rule_takes_no_level_that_belongs_to_aims_and_pins_take_none() {
        assertThat(faults("night-rest", "{ \"level\": \"key\" }"))
                .containsExactly("level: key is the priority of an aim, not of a rule; give must, want, told or off");
        assertThat(faults("pins", "{ \"level\": \"off\" }"))
                .containsExactly("level: pins are always kept; take the pin off instead of setting off");
    }
}
