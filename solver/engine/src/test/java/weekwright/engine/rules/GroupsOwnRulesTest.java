package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.engine.testing.Verdict;
import weekwright.model.plan.Finding;
import weekwright.model.rulebook.RuleLevel;

/** Rules and packs that one group has changed for itself hold for that group, and for nobody else. */
class GroupsOwnRulesTest {
    /** Two groups of whom each has a middle day and a session a day on six days. */
    private static Squad two() {
        Squad squad = squad().group("juniors");
        for (String group : List.of(Squad.ID, "juniors")) {
            squad.placed("small-sided-games", "2027-03-01T10:00").of(group);
            for (int day = 2; day <= 6; day++) {
                squad.placed("tempo-run", "2027-03-0" + day + "T10:00").of(group);
            }
        }
        return squad;
    }

    private static List<String> groups(Verdict verdict, String rule) {
        return verdict.of(rule).stream()
                .flatMap(finding -> finding.groups().stream())
                .sorted()
                .toList();
    }

    @Test
    void a_rule_that_one_group_has_switched_off_still_holds_for_the_other() {
        assertThat(groups(two().judged(), "no-middle-day")).containsExactly("juniors", Squad.ID);
        Verdict off =
                two().groupRule("no-middle-day", RuleLevel.OFF, null, Map.of()).judged();
        assertThat(groups(off, "no-middle-day")).containsExactly(Squad.ID);
        assertThat(off.judged().plan().softened()).containsExactly("no-middle-day");
        assertThat(groups(off, "softened")).containsExactly("juniors");
    }

    @Test
    void a_rule_that_one_group_has_softened_costs_that_group_less() {
        Verdict half = two().groupRule("no-middle-day", null, 0.5, Map.of()).judged();
        assertThat(half.of("no-middle-day"))
                .extracting(finding -> finding.groups().get(0) + " " + finding.cost())
                .containsExactlyInAnyOrder(Squad.ID + " 10.0", "juniors 5.0");
        assertThat(half.judged().plan().softened()).containsExactly("no-middle-day");
    }

    @Test
    void a_group_goes_before_the_scenario() {
        Verdict back = two().level("no-middle-day", RuleLevel.OFF)
                .groupRule("no-middle-day", RuleLevel.WANT, null, Map.of())
                .judged();
        assertThat(groups(back, "no-middle-day")).containsExactly("juniors");
        assertThat(groups(back, "softened"))
                .as("what the juniors have is the usual")
                .containsExactly(Squad.ID);
    }

    @Test
    void a_pack_that_one_group_has_switched_on_asks_nothing_of_the_other() {
        Verdict young = two().groupPack("youth").judged();
        assertThat(young.amounts("youth")).containsExactly(want(24, 1, 2));
        assertThat(groups(young, "youth")).containsExactly("juniors");
        assertThat(young.judged().plan().softened()).containsExactly("youth");
        assertThat(groups(two().pack("youth").judged(), "youth")).containsExactly("juniors", Squad.ID);
    }

    @Test
    void a_pack_of_the_scenario_may_be_switched_off_by_a_group() {
        Verdict grown = two().pack("youth")
                .groupRule("youth", RuleLevel.OFF, null, Map.of())
                .judged();
        assertThat(groups(grown, "youth")).containsExactly(Squad.ID);
    }

    /** Of a week or a day those are judged whose main group it is. */
    @Test
    void a_guest_is_judged_by_the_rules_of_the_main_group() {
        Squad guest = squad().heads(1)
                .athlete("ash")
                .athlete("birch", "juniors", Squad.ID)
                .group("juniors")
                .heads(1)
                .groupPack("youth");
        for (int day = 1; day <= 6; day++) {
            guest.placed("tempo-run", "2027-03-0" + day + "T10:00");
        }
        Finding youth = guest.judged().only("youth");
        assertThat(youth.groups()).containsExactly("juniors");
        assertThat(youth.heads()).isEqualTo(1);
    }

    /** A session is judged by the rules of the group that it is placed for. */
    @Test
    void a_session_is_judged_by_the_rules_of_its_own_group() {
        Squad marks = squad().athlete("ash")
                .placed("acceleration", "2027-03-02T10:00")
                .group("juniors")
                .athlete("birch", "juniors")
                .groupRule("marks-old", RuleLevel.OFF, null, Map.of())
                .placed("acceleration", "2027-03-02T10:00")
                .of("juniors");
        assertThat(groups(marks.judged(), "marks-old")).containsExactly(Squad.ID);
    }

    @Test
    void softened_says_which_rules_a_group_has_changed_and_costs_nothing() {
        Squad changed = two().level("no-middle-day", RuleLevel.OFF).groupPack("youth");
        for (RuleLevel level : List.of(RuleLevel.TOLD, RuleLevel.WANT, RuleLevel.MUST)) {
            List<Finding> told = changed.groupRule("softened", level, null, Map.of())
                    .judged()
                    .of("softened");
            assertThat(told).allMatch(finding -> finding.level() == RuleLevel.TOLD && finding.cost() == 0);
            assertThat(told).extracting(Finding::measured).containsExactly(1.0, level == RuleLevel.TOLD ? 2.0 : 3.0);
        }
        assertThat(groups(
                        changed.groupRule("softened", RuleLevel.OFF, null, Map.of())
                                .judged(),
                        "softened"))
                .containsExactly(Squad.ID);
        assertThat(two().judged().of("softened")).isEmpty();
    }
}
