package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.testing.Squad;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Weekday;

/** Days and weeks that any coach knows to be good, or to be just about legal: as they are judged, and as they are found. */
class GoodDaysTest {
    // Source: 48 to 72 h between maximal sprint sessions, Haugen et al. 2019, Sports Med Open 5:44, Table 2: the same
    // hour
    // on alternate days carries no fine.
    @Test
    void sprinting_and_lifting_on_monday_wednesday_and_friday_at_the_same_hours_is_clean() {
        Squad sprinters = squad().kind(GroupKind.SPRINT)
                .highDays(3, 3, 3)
                .aim("max-velocity", 3, 3, 3)
                .aim("heavy-lower-knee", 3, 3, 3);
        for (String day : List.of("2027-03-01", "2027-03-03", "2027-03-05")) {
            sprinters.placed("max-velocity", day + "T16:00").placed("heavy-lower-knee", day + "T17:30");
        }

        assertThat(sprinters.judged().totals()).isEqualTo(new Totals(0, 0, 0, 0));
    }

    // Source: 72 h until a maximal sprint or heavy squat session is fully recovered from, Thomas et al. 2018, MSSE
    // 50:2526-2535; sessions spread over the week, common practice, no source.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void two_high_days_of_a_week_lie_72_hours_and_more_apart(long seed) {
        Squad sprinters = squad().kind(GroupKind.SPRINT)
                .window("15:00", "19:00", Weekday.MON, Weekday.TUE, Weekday.WED, Weekday.THU, Weekday.FRI)
                .highDays(1, 2, 3)
                .aim("max-velocity", 2, 2, 2)
                .aim("heavy-lower-knee", 2, 2, 2)
                .aim("tempo-run", 1, 2, 2);
        SolvedWeek week = SolvedWeek.of(sprinters.scenario(), seed);

        assertThat(week.days(Squad.ID, DayClass.HIGH)).hasSize(2);
        assertThat(week.mostHighRunning(Squad.ID)).isEqualTo(1);
        List<Placement> speed = week.placed("max-velocity");
        assertThat(Duration.between(week.start(speed.get(0)), week.start(speed.get(1))))
                .isGreaterThanOrEqualTo(Duration.ofHours(72));
    }

    // Source: a textbook day and its mixtures are common practice, no source; freshest work first, expert proposal.
    @ParameterizedTest
    @CsvSource({
        "max-velocity intensive-plyometrics heavy-lower-knee",
        "resisted-acceleration heavy-lower-knee",
        "weightlifting-power heavy-lower-knee",
        "max-velocity intensive-plyometrics"
    })
    void sprints_jumps_and_weights_in_one_visit_are_legal(String families) {
        Squad group = squad().kind(GroupKind.SPRINT);
        LocalDateTime start = LocalDateTime.parse("2027-03-02T15:00");
        for (String family : families.split(" ")) {
            group.aim(family, 1, 1, 1).placed(family, start.toString());
            start = start.plusMinutes(75);
        }

        assertThat(group.judged().findings())
                .filteredOn(finding -> finding.level() == RuleLevel.MUST)
                .isEmpty();
    }

    // Source: as above: where there is one afternoon only, all of it lies there, sprints first and weights last.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void with_one_afternoon_only_the_textbook_day_is_found(long seed) {
        Squad group = squad().kind(GroupKind.SPRINT)
                .window("15:00", "19:00", Weekday.TUE)
                .highDays(0, 1, 1)
                .aim("heavy-lower-knee", 1, 1, 1)
                .aim("intensive-plyometrics", 1, 1, 1)
                .aim("max-velocity", 1, 1, 1);
        SolvedWeek week = SolvedWeek.of(group.scenario(), seed);

        assertThat(week.totals().must()).isZero();
        assertThat(week.plan().placements())
                .extracting(Placement::family)
                .containsExactly("max-velocity", "intensive-plyometrics", "heavy-lower-knee");
    }

    // Source: 40 h after a match, expert proposal grounded in Silva et al. 2018, Sports Med 48:539-583; worked by hand:
    // Tuesday 19:45 and 110 minutes, 40 h on, is Thursday 13:35; the hours short of 48 - 4 cost a point each.
    @ParameterizedTest
    @CsvSource({"2027-03-04T13:30, must", "2027-03-04T13:35, want 4.0"})
    void between_saturday_and_tuesday_and_saturday_other_high_work_begins_on_thursday_at_13_35(
            String start, String expected) {
        Squad group = squad().done("fixture", "2027-02-27T15:00")
                .fixture("midweek", "2027-03-02T19:45")
                .lasting(110)
                .fixture("saturday", "2027-03-06T15:00")
                .lasting(110)
                .aim("acceleration", 0, 1, 1)
                .placed("acceleration", start);

        List<String> found = new ArrayList<>();
        for (Finding finding : group.judged().findings()) {
            if (finding.rule().equals("after-fixture")) {
                found.add("must");
            } else if (finding.rule().equals("after-fixture-margin") && expected.startsWith("want")) {
                found.add("want " + finding.cost());
            }
        }
        assertThat(found).containsExactly(expected);
    }
}
