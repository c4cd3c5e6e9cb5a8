package weekwright.desk.view.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import weekwright.desk.view.Names;
import weekwright.desk.view.Quayside;
import weekwright.model.load.LoadRatio;
import weekwright.model.plan.Finding;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Scenario;

/** Facts stay few: what says the same of several weeks, groups or sessions stands in one line. */
class GoodToKnowTest {
    private static final LocalDate MONDAY = LocalDate.parse("2027-03-01");

    private static final Scenario SCENARIO = Quayside.scenario(
            "Quayside", 28, List.of(Quayside.group("squad", "Match squad"), Quayside.group("young", "Under 15")));

    private static List<String> lines(Finding... told) {
        List<Finding> all = List.of(told);
        return new GoodToKnow(new Names(SCENARIO), all).lines(all);
    }

    private static Finding of(
            String rule,
            String group,
            int week,
            double measured,
            String unit,
            @Nullable String placement,
            String text) {
        return new Finding(
                rule,
                "Title",
                RuleLevel.TOLD,
                0,
                18,
                List.of(group),
                List.of(),
                placement == null ? List.of() : List.of(placement),
                List.of(),
                List.of(),
                List.of(),
                null,
                null,
                MONDAY.plusWeeks(week),
                null,
                measured,
                10,
                unit,
                text,
                null,
                null);
    }

    private static Finding load(String group, int week, double percent) {
        return of("week-load", group, week, percent, "%", null, "The load of " + group + " changes; so it is.");
    }

    private static Finding mark(String group, String session, String rest) {
        return of("marks-old", group, 0, 1, "athletes", "id", session + " needs " + rest);
    }

    @Test
    void a_fact_of_its_own_is_told_as_it_is() {
        assertThat(lines(load("squad", 0, 12.5))).containsExactly("The load of squad changes; so it is.");
        assertThat(lines(of("free-day", "squad", 0, 0, "days", null, ""))).containsExactly("Title");
    }

    @Test
    void weeks_of_one_group_follow_the_first_with_their_figures() {
        assertThat(lines(load("squad", 0, 12.5), load("squad", 1, -20), load("squad", 2, 11)))
                .containsExactly("The load of squad changes; so it is. Also from Mon 8 Mar −20 % and from Mon 15 Mar"
                        + " +11 %.");
    }

    @Test
    void groups_in_one_week_follow_by_their_names() {
        assertThat(lines(load("squad", 0, 12.5), load("young", 0, 16)))
                .containsExactly("The load of squad changes; so it is. Also Under 15 +16 %.");
        assertThat(lines(load("squad", 0, 12.5), load("young", 1, 16)))
                .containsExactly("The load of squad changes; so it is. Also Under 15 from Mon 8 Mar +16 %.");
    }

    @Test
    void of_very_many_the_rest_is_counted() {
        List<Finding> many = new ArrayList<>();
        for (int week = 0; week < 12; week++) {
            many.add(load("squad", week, 10 + week));
        }
        assertThat(lines(many.toArray(Finding[]::new)))
                .singleElement()
                .asString()
                .endsWith("from Mon 12 Apr +16 %, from Mon 19 Apr +17 % and 4 more.");
    }

    @Test
    void what_is_held_against_a_ratio_is_said_once_and_last() {
        Finding first = of("load-ratio", "squad", 0, 1.1, "times", null, "It is 1.10. " + LoadRatio.CAVEAT + " But.");
        Finding second = of("load-ratio", "squad", 1, 0.98, "times", null, "It is 0.98. " + LoadRatio.CAVEAT + " But.");
        assertThat(lines(first, second))
                .containsExactly("It is 1.10. Also from Mon 8 Mar 0.98. " + LoadRatio.CAVEAT + " But.");
    }

    @Test
    void sessions_of_which_the_same_is_said_are_told_together() {
        assertThat(lines(
                        mark("squad", "Match squad: Sprint (Tue 2 Mar 10:00)", "a time; Ash has none."),
                        mark("squad", "Match squad: Lift (Tue 2 Mar 12:00)", "a lift; Ash has none."),
                        mark("squad", "Match squad: Bounds (Wed 3 Mar 10:00)", "a time; Ash has none."),
                        mark("young", "Under 15: Sprint (Thu 4 Mar 10:00)", "a time; Ash has none.")))
                .containsExactly(
                        "Match squad: Sprint (Tue 2 Mar 10:00) needs a time; Ash has none. Also: Bounds (Wed 3 Mar"
                                + " 10:00); Under 15: Sprint (Thu 4 Mar 10:00).",
                        "Match squad: Lift (Tue 2 Mar 12:00) needs a lift; Ash has none.");
    }

    @Test
    void other_facts_follow_without_what_is_wanted() {
        Finding first =
                of("fixtures-close", "squad", 0, 70, "h", null, "B starts 70 h after A ends; under 72 h. Source: X.");
        Finding second =
                of("fixtures-close", "squad", 0, 60, "h", null, "C starts 60 h after B ends; under 72 h. Source: X.");
        assertThat(lines(first, second))
                .containsExactly(
                        "B starts 70 h after A ends; under 72 h. Source: X. Also: C starts 60 h after B ends.");
    }

    @Test
    void rules_that_were_changed_have_a_place_of_their_own() {
        assertThat(lines(of("softened", "squad", 0, 1, "rules", null, "Changed.")))
                .isEmpty();
    }
}
