package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.scenarios.JudgedWeek;
import weekwright.scenarios.Scenarios;

/**
 * Five weeks of one squad, from good to bad, as a good coach would put them in order (expert proposal). Their points were
 * worked by hand from the rules beforehand: about 0, 4, 25, 36 to 38 and 88.
 */
class JudgedWeeksTest {
    @Test
    void the_five_weeks_are_judged_in_the_order_of_a_good_coach() {
        List<Double> wants =
                Scenarios.weeks().stream().map(week -> totals(week).want()).toList();

        assertThat(wants).isSortedAccordingTo(Comparator.naturalOrder());
        assertThat(wants).containsExactly(0.0, 4.0, 25.3, 36.2, 88.3);
    }

    @Test
    void the_good_week_breaks_nothing_at_all() {
        Plan good = judged(Scenarios.week('a'));

        assertThat(good.totals()).isEqualTo(new Totals(0, 0, 0, 0));
        assertThat(good.findings()).allMatch(finding -> finding.cost() == 0);
    }

    @Test
    void each_week_costs_rule_by_rule_what_was_worked_by_hand() {
        for (JudgedWeek week : Scenarios.weeks()) {
            Plan plan = judged(week);
            for (var worked : week.worked()) {
                assertThat(plan.findings())
                        .as("week %s: %s, %s", week.letter(), worked.rule(), worked.how())
                        .anyMatch(finding -> finding.rule().equals(worked.rule())
                                && Math.abs(finding.cost() - worked.points()) < 0.05);
            }
        }
    }

    private static Totals totals(JudgedWeek week) {
        return judged(week).totals();
    }

    private static Plan judged(JudgedWeek week) {
        return Engine.judge(week.scenario(), week.plan()).plan();
    }
}
