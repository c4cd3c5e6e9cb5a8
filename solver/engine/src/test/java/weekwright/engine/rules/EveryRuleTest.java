package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.engine.testing.Amount;
import weekwright.engine.testing.RuleExamples;
import weekwright.engine.testing.Squad;
import weekwright.engine.testing.Verdict;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Weekday;

/** What holds of every rule that is judged, each shown by a plan that breaks it. */
class EveryRuleTest {
    /** What nobody here can mend (PinsAtOddsTest, FixtureFactsTest, GroupsOwnRulesTest). */
    private static final List<String> ALWAYS_TOLD =
            List.of("pins", "fixtures-close", "rest-between-fixtures", "softened");

    private static final Map<String, RuleSetting> PACKS_ON = Rulebook.builtIn().rules().stream()
            .filter(rule -> rule.level() == RuleLevel.OFF)
            .collect(Collectors.toMap(Rule::id, rule -> new RuleSetting(RuleLevel.WANT, null, Map.of())));

    static Collection<String> rules() {
        return RuleExamples.rules();
    }

    /** The rule's own example, beside a group that misses what it is owed and what is wanted. */
    private static Squad example(String rule) {
        return RuleExamples.of(rule)
                .group("bystanders")
                .window("10:00", "11:00", Weekday.MON)
                .aim("tempo-run", 0, 1, 1)
                .aim("trunk-and-balance", 1, 1, 1);
    }

    @Test
    void the_rulebook_the_judges_and_the_examples_name_the_same_rules() {
        List<String> judged = Rulebook.builtIn().rules().stream()
                .filter(Rule::judged)
                .map(Rule::id)
                .toList();
        GroupRules bound = new GroupRules(RuleSettings.of(Rulebook.builtIn(), PACKS_ON, Map.of()));
        assertThat(bound.ids()).containsExactlyInAnyOrderElementsOf(judged);
        assertThat(judged).containsAll(ALWAYS_TOLD);
        List<String> costly =
                judged.stream().filter(rule -> !ALWAYS_TOLD.contains(rule)).toList();
        assertThat(rules()).containsExactlyInAnyOrderElementsOf(costly);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void switched_off_a_rule_says_nothing_and_all_else_stays(String rule) {
        Verdict on = example(rule).judged();
        Verdict off = example(rule).level(rule, RuleLevel.OFF).judged();
        assertThat(on.of(rule)).isNotEmpty().noneMatch(finding -> finding.level() == RuleLevel.TOLD);
        assertThat(alone(others(off, "softened")))
                .isEqualTo(alone(others(on, rule).stream()
                        .filter(finding -> !finding.rule().equals("softened"))
                        .toList()))
                .isNotEmpty();
        assertThat(off.totals()).isEqualTo(sum(others(on, rule)));
        assertThat(off.judged().kept()).doesNotContain(rule);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void the_totals_are_the_sum_of_the_findings(String rule) {
        Verdict verdict = example(rule).judged();
        assertThat(verdict.totals()).isEqualTo(sum(verdict.findings()));
        assertThat(verdict.judged().kept())
                .doesNotContainAnyElementsOf(
                        verdict.findings().stream().map(Finding::rule).toList());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void told_a_rule_says_the_same_at_no_cost(String rule) {
        List<Amount> usual = example(rule).found(rule);
        assertThat(example(rule).level(rule, RuleLevel.TOLD).found(rule))
                .containsExactlyInAnyOrderElementsOf(usual.stream()
                        .map(amount -> Amount.told(amount.measured(), amount.limit()))
                        .toList());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void as_a_must_a_breach_is_one_whatever_its_amount(String rule) {
        Squad must = example(rule).rule(rule, RuleLevel.MUST, 0.5, Map.of());
        assertThat(must.found(rule))
                .containsExactlyInAnyOrderElementsOf(example(rule).found(rule).stream()
                        .map(amount -> Amount.must(amount.measured(), amount.limit()))
                        .toList());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void as_a_want_a_breach_has_its_points_times_the_weight(String rule) {
        List<Amount> whole = example(rule).level(rule, RuleLevel.WANT).found(rule);
        List<Amount> triple =
                example(rule).rule(rule, RuleLevel.WANT, 3.0, Map.of()).found(rule);
        assertThat(whole).isNotEmpty().allMatch(amount -> amount.level() == RuleLevel.WANT && amount.cost() > 0);
        for (int i = 0; i < whole.size(); i++) {
            assertThat(triple.get(i).cost())
                    .isCloseTo(3 * whole.get(i).cost(), org.assertj.core.data.Offset.offset(0.2));
        }
        assertThat(example(rule).rule(rule, RuleLevel.WANT, 0.0, Map.of()).found(rule))
                .allMatch(amount -> amount.cost() == 0);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void a_group_may_set_it_as_the_scenario_may(String rule) {
        Verdict byScenario =
                example(rule).rule(rule, RuleLevel.WANT, 2.0, Map.of()).judged();
        Verdict byGroups = example(rule)
                .level(rule, RuleLevel.OFF)
                .everyGroupRule(rule, new RuleSetting(RuleLevel.WANT, 2.0, Map.of()))
                .judged();
        assertThat(alone(byGroups.findings())).isEqualTo(alone(byScenario.findings()));
        assertThat(byGroups.of("softened"))
                .hasSameSizeAs(example(rule).scenario().groups());
        assertThat(byGroups.judged().plan().softened()).contains(rule);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void a_pin_is_no_excuse(String rule) {
        assertThat(alone(example(rule).allPinned().judged().findings()))
                .isEqualTo(alone(example(rule).judged().findings()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void the_order_of_lists_and_the_names_of_things_change_no_figure(String rule) {
        Verdict usual = example(rule).judged();
        for (Squad other : List.of(
                example(rule).backwards(),
                example(rule).underOtherNames(),
                example(rule).backwards().underOtherNames())) {
            Verdict verdict = other.judged();
            assertThat(verdict.totals()).isEqualTo(usual.totals());
            assertThat(figures(verdict)).containsExactlyInAnyOrderElementsOf(figures(usual));
        }
    }

    private static List<String> figures(Verdict verdict) {
        return verdict.findings().stream()
                .map(finding -> finding.rule()
                        + Amount.of(finding)
                        + finding.heads()
                        + finding.day()
                        + finding.week()
                        + finding.placements().size())
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void each_finding_is_titled_measured_worded_and_has_a_remedy_or_says_why_not(String rule) {
        for (Finding finding : example(rule).judged().findings()) {
            Rule its = Rulebook.builtIn().rule(finding.rule());
            assertThat(finding.title()).isEqualTo(its.title());
            assertThat(finding.unit()).isEqualTo(its.unit());
            assertThat(finding.heads()).isPositive();
            assertThat(finding.groups()).hasSize(1);
            assertThat(finding.text()).matches("[A-Z0-9].*[^ ]\\.").doesNotContain("  ", "null", "..");
            assertThat(finding.remedy() == null).isEqualTo(finding.noRemedy() != null);
            assertThat(
                            finding.remedy() == null
                                    ? finding.noRemedy()
                                    : finding.remedy().text())
                    .matches("[A-Z0-9].*[^ ]\\.")
                    .doesNotContain("  ", "null", "..");
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void the_example_is_a_sound_document(String rule) throws DocumentException {
        Scenario scenario = example(rule).scenario();
        Scenario read = Documents.readScenario("scenario.json", bytes(Documents.write(scenario)));
        assertThat(read).isEqualTo(scenario);
        assertThat(Documents.readPlan(
                                "plan.json", bytes(Documents.write(example(rule).plan())), read)
                        .placements())
                .hasSameSizeAs(example(rule).plan().placements());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Findings without what would help with them, which is a matter of the whole plan. */
    private static List<Finding> alone(List<Finding> findings) {
        return findings.stream().map(EveryRuleTest::alone).toList();
    }

    private static Finding alone(Finding finding) {
        return new Finding(
                finding.rule(),
                finding.title(),
                finding.level(),
                finding.cost(),
                finding.heads(),
                finding.groups(),
                finding.athletes(),
                finding.placements(),
                finding.fixtures(),
                finding.commitments(),
                finding.history(),
                finding.facility(),
                finding.staff(),
                finding.week(),
                finding.day(),
                finding.measured(),
                finding.limit(),
                finding.unit(),
                finding.text(),
                null,
                null);
    }

    private static List<Finding> others(Verdict verdict, String rule) {
        return verdict.findings().stream()
                .filter(finding -> !finding.rule().equals(rule))
                .toList();
    }

    private static Totals sum(List<Finding> findings) {
        Map<RuleLevel, Long> tenths = findings.stream()
                .collect(Collectors.groupingBy(
                        Finding::level, Collectors.summingLong(finding -> Math.round(finding.cost() * 10))));
        return new Totals(
                tenths.getOrDefault(RuleLevel.MUST, 0L) / 10.0,
                tenths.getOrDefault(RuleLevel.KEY, 0L) / 10.0,
                tenths.getOrDefault(RuleLevel.MAIN, 0L) / 10.0,
                tenths.getOrDefault(RuleLevel.WANT, 0L) / 10.0);
    }
}
