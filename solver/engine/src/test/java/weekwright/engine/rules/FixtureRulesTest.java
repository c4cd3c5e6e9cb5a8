package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.must;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Amount;
import weekwright.engine.testing.Squad;
import weekwright.model.plan.Finding;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.GroupKind;

/**
 * What a fixture asks of the days round it. The hours are expert proposals; those after a fixture are grounded in Silva et
 * al. 2018, Sports Med 48:539-583; Rhodes et al. 2019, Res Sports Med 27:339-350; West et al. 2014, JSCR 28:194-200; for
 * court sports Doeven et al. 2018, BMJ Open SEM 4:e000264. Before: the cup tie begins on Saturday at 10:00, so that 40
 * hours before is Thursday 18:00. After: it ends on Monday at 18:00, so that 40 hours after is Wednesday 10:00.
 */
class FixtureRulesTest {
    private static final String BEFORE = "before-fixture";
    private static final String BEFORE_MARGIN = "before-fixture-margin";
    private static final String AFTER = "after-fixture";
    private static final String AFTER_MARGIN = "after-fixture-margin";

    private static Squad beforeTheTie(String family, String start) {
        return squad().placed(family, start).fixture("cup-tie", "2027-03-06T10:00");
    }

    private static Squad microBeforeTheTie(String family, String start) {
        return squad().placed(family, start).dose(Dose.MICRO).fixture("cup-tie", "2027-03-06T10:00");
    }

    /** Expert proposal: 96 hours between heavy lower, which ends on Tuesday at 0:30, and a fixture on Saturday at 0:00. */
    @Test
    void before_fixture_margin_reaches_from_one_night_to_another() {
        assertThat(squad().fixture("cup-tie", "2027-03-06T00:00")
                        .placed("heavy-lower-knee", "2027-03-01T23:30")
                        .number(BEFORE_MARGIN, "toleranceHours", 0)
                        .found(BEFORE_MARGIN))
                .hasSize(1);
        assertThat(squad().fixture("cup-tie", "2027-03-06T00:00")
                        .commitment("club-night", "heavy-lower-knee", "2027-03-01T23:30")
                        .lasting(60)
                        .number(BEFORE_MARGIN, "toleranceHours", 0)
                        .found(BEFORE_MARGIN))
                .as("told, too")
                .containsExactly(told(95.5, 96));
    }

    @Test
    void before_fixture_maximal_speed_ends_forty_hours_before() {
        assertThat(beforeTheTie("max-velocity", "2027-03-04T16:50").found(BEFORE))
                .isEmpty();
        assertThat(beforeTheTie("max-velocity", "2027-03-04T16:55").found(BEFORE))
                .isEmpty();
        assertThat(beforeTheTie("max-velocity", "2027-03-04T17:00").found(BEFORE))
                .containsExactly(must(39.92, 40));
    }

    /** What overlaps the start is another rule's. */
    @Test
    void before_fixture_work_without_hours_of_its_own_may_end_at_any_time() {
        assertThat(beforeTheTie("mobility", "2027-03-06T09:50").found(BEFORE)).isEmpty();
    }

    @Test
    void before_fixture_heavy_lower_ends_sixty_four_hours_before() {
        assertThat(beforeTheTie("heavy-lower-knee", "2027-03-03T17:00").found(BEFORE))
                .isEmpty();
        assertThat(beforeTheTie("heavy-lower-knee", "2027-03-03T17:05").found(BEFORE))
                .containsExactly(must(63.92, 64));
    }

    /** A micro dose of maximal velocity takes 40 minutes, of heavy lower 30. */
    @Test
    void before_fixture_a_micro_dose_may_end_thirty_six_hours_before() {
        assertThat(microBeforeTheTie("max-velocity", "2027-03-04T21:20").found(BEFORE))
                .isEmpty();
        assertThat(microBeforeTheTie("max-velocity", "2027-03-04T21:25").found(BEFORE))
                .containsExactly(must(35.92, 36));
        assertThat(microBeforeTheTie("heavy-lower-knee", "2027-03-04T21:30").found(BEFORE))
                .isEmpty();
    }

    /** A micro dose of acceleration takes 35 minutes and has no hours of its own; its 40 are not scaled. */
    @Test
    void before_fixture_other_hours_do_not_shrink_with_the_dose() {
        assertThat(microBeforeTheTie("acceleration", "2027-03-04T17:25").found(BEFORE))
                .isEmpty();
        assertThat(microBeforeTheTie("acceleration", "2027-03-04T17:30").found(BEFORE))
                .containsExactly(must(39.92, 40));
    }

    @Test
    void before_fixture_a_minor_one_is_trained_through() {
        Squad squad = beforeTheTie("max-velocity", "2027-03-04T17:00").weight(FixtureWeight.MINOR);
        assertThat(squad.found(BEFORE)).isEmpty();
        assertThat(squad.found(BEFORE_MARGIN)).hasSize(1);
    }

    @Test
    void before_fixture_binds_only_those_who_play() {
        Squad squad =
                beforeTheTie("max-velocity", "2027-03-04T18:00").athlete("ash").expecting("ash", 0);
        assertThat(squad.judged().only(BEFORE).heads()).isEqualTo(9);
        assertThat(squad.heads(1).found(BEFORE)).isEmpty();
        // What is known of a fixture goes before what was expected.
        assertThat(squad.withPlayed("ash", 10).found(BEFORE)).containsExactly(must(38.92, 40));
    }

    @Test
    void before_fixture_each_fixture_to_come_counts_the_next_week_too() {
        Squad squad = squad().placed("max-velocity", "2027-03-06T16:55")
                .pinned()
                .fixture("cup-tie", "2027-03-08T09:00")
                .fixture("replay", "2027-03-08T09:30");
        assertThat(squad.found(BEFORE)).containsExactly(must(39, 40), must(39.5, 40));
    }

    @Test
    void before_fixture_what_was_fixed_by_others_is_told() {
        Squad history = squad().done("heavy-lower-knee", "2027-02-28T17:00").fixture("cup-tie", "2027-03-02T10:00");
        assertThat(history.found(BEFORE)).containsExactly(told(40, 64));
        Squad practice = squad().fixture("cup-tie", "2027-03-06T10:00").practice("captains-run", "2027-03-05T18:00");
        assertThat(practice.found(BEFORE)).containsExactly(told(14.58, 16));
        assertThat(practice.found(BEFORE_MARGIN)).containsExactly(told(14.58, 20));
    }

    @Test
    void before_fixture_counts_elapsed_hours_when_the_clocks_change() {
        Squad spring = squad().week("2027-03-22")
                .placed("max-velocity", "2027-03-26T16:55")
                .fixture("cup-tie", "2027-03-28T10:00");
        assertThat(spring.found(BEFORE)).containsExactly(must(39, 40));
        Squad autumn = squad().week("2027-10-25")
                .placed("max-velocity", "2027-10-29T17:55")
                .fixture("cup-tie", "2027-10-31T10:00");
        assertThat(autumn.found(BEFORE)).isEmpty();
    }

    @Test
    void before_fixture_as_a_want_costs_a_point_an_hour() {
        Squad squad = beforeTheTie("max-velocity", "2027-03-04T18:55");
        assertThat(squad.level(BEFORE, RuleLevel.WANT).found(BEFORE)).containsExactly(want(2, 38, 40));
        assertThat(squad.groupRule(BEFORE, null, 3.0, Map.of()).found(BEFORE)).containsExactly(want(6, 38, 40));
    }

    /** 72 hours are wanted after maximal velocity, 68 count: Wednesday 14:00. */
    @Test
    void before_fixture_margin_wants_seventy_two_hours_less_four() {
        assertThat(beforeTheTie("max-velocity", "2027-03-03T12:50").found(BEFORE_MARGIN))
                .isEmpty();
        assertThat(beforeTheTie("max-velocity", "2027-03-03T12:55").found(BEFORE_MARGIN))
                .isEmpty();
        assertThat(beforeTheTie("max-velocity", "2027-03-03T13:00").found(BEFORE_MARGIN))
                .containsExactly(want(0.1, 67.92, 68));
    }

    @Test
    void before_fixture_margin_a_micro_dose_wants_forty_eight_hours_less_four() {
        assertThat(microBeforeTheTie("max-velocity", "2027-03-04T13:20").found(BEFORE_MARGIN))
                .isEmpty();
        assertThat(microBeforeTheTie("max-velocity", "2027-03-04T14:20").found(BEFORE_MARGIN))
                .containsExactly(want(1, 43, 44));
    }

    @Test
    void before_fixture_margin_is_dearer_before_a_key_and_cheaper_before_a_minor_fixture() {
        Squad squad = beforeTheTie("max-velocity", "2027-03-03T16:55");
        assertThat(squad.found(BEFORE_MARGIN)).containsExactly(want(4, 64, 68));
        assertThat(squad.weight(FixtureWeight.KEY).found(BEFORE_MARGIN)).containsExactly(want(6, 64, 68));
        assertThat(squad.weight(FixtureWeight.MINOR).found(BEFORE_MARGIN)).containsExactly(want(2, 64, 68));
    }

    @Test
    void before_fixture_margin_an_hour_beyond_the_twelfth_costs_double() {
        assertThat(beforeTheTie("max-velocity", "2027-03-04T00:55").found(BEFORE_MARGIN))
                .containsExactly(want(12, 56, 68));
        assertThat(beforeTheTie("max-velocity", "2027-03-04T01:55").found(BEFORE_MARGIN))
                .containsExactly(want(14, 55, 68));
    }

    @Test
    void before_fixture_margin_is_shared_by_those_who_play() {
        Squad squad =
                beforeTheTie("max-velocity", "2027-03-03T16:55").athlete("ash").expecting("ash", 0);
        assertThat(squad.found(BEFORE_MARGIN)).containsExactly(want(3.6, 64, 68));
    }

    @Test
    void before_fixture_margin_its_numbers_can_be_changed() {
        Squad squad = beforeTheTie("max-velocity", "2027-03-03T16:55").weight(FixtureWeight.KEY);
        assertThat(squad.number(BEFORE_MARGIN, "keyFactor", 2).found(BEFORE_MARGIN))
                .containsExactly(want(8, 64, 68));
        assertThat(squad.groupNumber(BEFORE_MARGIN, "toleranceHours", 7).found(BEFORE_MARGIN))
                .containsExactly(want(2, 64, 65));
        assertThat(squad.groupNumber(BEFORE_MARGIN, "toleranceHours", 8).found(BEFORE_MARGIN))
                .isEmpty();
    }

    @Test
    void before_fixture_margin_counts_elapsed_hours_when_the_clocks_change() {
        Squad squad = squad().week("2027-03-22")
                .placed("max-velocity", "2027-03-25T12:55")
                .fixture("cup-tie", "2027-03-28T10:00");
        assertThat(squad.found(BEFORE_MARGIN)).containsExactly(want(1, 67, 68));
    }

    private static Squad afterTheTie(String family, String start) {
        return squad().fixture("cup-tie", "2027-03-01T16:15").placed(family, start);
    }

    private static List<Amount> afterTheTie(String rule, String family, String start) {
        return afterTheTie(family, start).found(rule);
    }

    @Test
    void after_fixture_maximal_speed_waits_sixty_four_hours() {
        assertThat(afterTheTie(AFTER, "max-velocity", "2027-03-04T09:55")).containsExactly(must(63.92, 64));
        assertThat(afterTheTie(AFTER, "max-velocity", "2027-03-04T10:00")).isEmpty();
        assertThat(afterTheTie(AFTER, "max-velocity", "2027-03-04T10:05")).isEmpty();
    }

    @Test
    void after_fixture_the_hinge_waits_sixty_four_hours_and_other_high_work_forty() {
        assertThat(afterTheTie(AFTER, "heavy-lower-hip", "2027-03-04T09:55")).containsExactly(must(63.92, 64));
        assertThat(afterTheTie(AFTER, "heavy-lower-hip", "2027-03-04T10:00")).isEmpty();
        assertThat(afterTheTie(AFTER, "heavy-lower-knee", "2027-03-03T09:55")).containsExactly(must(39.92, 40));
        assertThat(afterTheTie(AFTER, "heavy-lower-knee", "2027-03-03T10:00")).isEmpty();
        // Of several qualities the longest hours hold: full-body strength loads knee and hinge.
        assertThat(afterTheTie(AFTER, "full-body-strength", "2027-03-03T10:00")).containsExactly(must(40, 64));
    }

    @Test
    void after_fixture_upper_body_and_easy_running_wait_sixteen_hours() {
        assertThat(afterTheTie(AFTER, "upper-strength", "2027-03-02T09:55")).containsExactly(must(15.92, 16));
        assertThat(afterTheTie(AFTER, "upper-strength", "2027-03-02T10:00")).isEmpty();
        assertThat(afterTheTie(AFTER, "tempo-run", "2027-03-02T09:55")).containsExactly(must(15.92, 16));
        assertThat(afterTheTie(AFTER, "tempo-run", "2027-03-02T10:00")).isEmpty();
        assertThat(afterTheTie(AFTER, "trunk-and-balance", "2027-03-02T00:30")).isEmpty();
    }

    @Test
    void after_fixture_micro_speed_and_micro_lower_strength_wait_thirty_six_hours() {
        for (String family : List.of("max-velocity", "acceleration", "heavy-lower-hip", "heavy-lower-knee")) {
            Squad early = afterTheTie(family, "2027-03-03T05:55").dose(Dose.MICRO);
            assertThat(early.found(AFTER)).as(family).containsExactly(must(35.92, 36));
            Squad inTime = afterTheTie(family, "2027-03-03T06:00").dose(Dose.MICRO);
            assertThat(inTime.found(AFTER)).as(family).isEmpty();
        }
        // Repeated sprints are no micro speed, however short.
        assertThat(afterTheTie("repeated-sprint", "2027-03-03T09:00")
                        .dose(Dose.MICRO)
                        .found(AFTER))
                .containsExactly(must(39, 40));
    }

    /** Doeven et al. 2018, BMJ Open SEM 4:e000264 (court sports). */
    @Test
    void after_fixture_court_players_come_back_sooner() {
        assertThat(afterCourt("max-velocity", "2027-03-03T09:55").found(AFTER)).containsExactly(must(39.92, 40));
        assertThat(afterCourt("max-velocity", "2027-03-03T10:00").found(AFTER)).isEmpty();
        assertThat(afterCourt("acceleration", "2027-03-02T09:55").found(AFTER)).containsExactly(must(15.92, 16));
        assertThat(afterCourt("acceleration", "2027-03-02T10:00").found(AFTER)).isEmpty();
    }

    private static Squad afterCourt(String family, String start) {
        return squad().kind(GroupKind.COURT)
                .fixture("home-game", "court-fixture", "2027-03-01T16:15")
                .placed(family, start);
    }

    @Test
    void after_fixture_a_lifting_meet_spares_the_arms_as_well() {
        Squad squad = squad().fixture("open", "meet-lift", "2027-03-01T16:15");
        assertThat(squad.placed("heavy-upper-push", "2027-03-04T09:00").found(AFTER))
                .containsExactly(must(63, 64));
    }

    /** Ash alone, who played so many minutes of the cup tie. */
    private static Squad ashPlayed(int minutes, String family, String start) {
        return squad().heads(1)
                .athlete("ash")
                .fixture("cup-tie", "2027-03-01T16:15")
                .expecting("ash", minutes)
                .placed(family, start);
    }

    /** 64 - 16 = 48 hours: Wednesday 18:00; wanted 72 - 24 = 48, 44 count. */
    @Test
    void after_fixture_half_an_hour_to_an_hour_asks_sixteen_hours_less() {
        for (int minutes : new int[] {30, 60}) {
            assertThat(ashPlayed(minutes, "max-velocity", "2027-03-03T17:55").found(AFTER))
                    .containsExactly(must(47.92, 48));
            assertThat(ashPlayed(minutes, "max-velocity", "2027-03-03T18:00").found(AFTER))
                    .isEmpty();
        }
        assertThat(ashPlayed(61, "max-velocity", "2027-03-03T18:00").found(AFTER))
                .containsExactly(must(48, 64));
        assertThat(ashPlayed(30, "upper-strength", "2027-03-01T18:00").found(AFTER))
                .isEmpty();
    }

    @Test
    void after_fixture_under_half_an_hour_counts_as_an_acceleration_session() {
        assertThat(ashPlayed(29, "acceleration", "2027-03-03T09:55").found(AFTER))
                .containsExactly(must(39.92, 40));
        assertThat(ashPlayed(29, "acceleration", "2027-03-03T10:00").found(AFTER))
                .isEmpty();
        assertThat(ashPlayed(29, "max-velocity", "2027-03-02T09:55").found(AFTER))
                .containsExactly(must(15.92, 16));
        assertThat(ashPlayed(29, "max-velocity", "2027-03-02T10:00").found(AFTER))
                .isEmpty();
        assertThat(ashPlayed(29, "tempo-run", "2027-03-01T18:30").found(AFTER)).isEmpty();
    }

    @Test
    void after_fixture_whoever_did_not_play_may_train() {
        assertThat(ashPlayed(0, "max-velocity", "2027-03-01T18:30").found(AFTER))
                .isEmpty();
        Squad squad =
                afterTheTie("max-velocity", "2027-03-04T09:00").athlete("ash").athlete("birch");
        squad.fixture("friendly", "2027-03-01T16:15").expecting("ash", 0).expecting("birch", 45);
        assertThat(squad.judged().of(AFTER)).extracting(Finding::heads).containsExactly(10, 8);
    }

    @Test
    void after_fixture_those_who_played_more_and_less_are_one_breach_at_its_worst() {
        Squad squad = squad().athlete("ash")
                .fixture("cup-tie", "2027-03-01T16:15")
                .expecting("ash", 45)
                .placed("max-velocity", "2027-03-03T17:00");
        assertThat(squad.found(AFTER)).containsExactly(must(47, 64));
        // As a want: nine are 17 hours short, 12 + 2 x 5 = 22 each, Ash one hour; (9 x 22 + 1) / 10 = 19.9.
        assertThat(squad.level(AFTER, RuleLevel.WANT).found(AFTER)).containsExactly(want(19.9, 47, 64));
    }

    @Test
    void after_fixture_history_counts_for_those_who_were_there() {
        Squad squad = squad().athlete("ash")
                .done("fixture", "2027-02-28T16:15")
                .person("ash", 45, null)
                .placed("max-velocity", "2027-03-02T18:00");
        assertThat(squad.judged().only(AFTER).heads()).isEqualTo(9);
        assertThat(squad.heads(1).found(AFTER)).isEmpty();
        Squad absent = squad().athlete("ash")
                .heads(1)
                .done("fixture", "2027-02-28T16:15")
                .without("ash")
                .placed("max-velocity", "2027-03-01T10:00");
        assertThat(absent.found(AFTER)).isEmpty();
    }

    @Test
    void after_fixture_every_one_counts_and_pins_are_no_excuse() {
        Squad squad = squad().fixture("cup-tie", "2027-03-01T16:15")
                .fixture("replay", "2027-03-02T16:15")
                .placed("max-velocity", "2027-03-04T09:00")
                .pinned();
        assertThat(squad.found(AFTER)).containsExactly(must(63, 64), must(39, 64));
    }

    @Test
    void after_fixture_practice_too_soon_is_told() {
        Squad squad = squad().fixture("cup-tie", "2027-03-01T16:15").practice("early", "2027-03-02T09:00");
        assertThat(squad.found(AFTER)).containsExactly(told(15, 16));
        Squad speed = squad().fixture("cup-tie", "2027-03-01T16:15")
                .commitment("club-night", "max-velocity", "2027-03-04T11:00");
        assertThat(speed.found(AFTER_MARGIN)).containsExactly(told(65, 68));
    }

    @Test
    void after_fixture_counts_elapsed_hours_when_the_clocks_change() {
        Squad spring = squad().week("2027-03-22")
                .days(14)
                .fixture("cup-tie", "2027-03-27T16:15")
                .placed("heavy-lower-knee", "2027-03-29T10:00");
        assertThat(spring.found(AFTER)).containsExactly(must(39, 40));
        Squad autumn = squad().week("2027-10-25")
                .days(14)
                .fixture("cup-tie", "2027-10-30T16:15")
                .placed("heavy-lower-knee", "2027-11-01T09:00");
        assertThat(autumn.found(AFTER)).isEmpty();
    }

    @Test
    void after_fixture_the_hours_taken_off_can_be_changed() {
        Squad squad = ashPlayed(45, "max-velocity", "2027-03-03T18:00");
        assertThat(squad.number(AFTER, "partLessHours", 10).found(AFTER)).containsExactly(must(48, 54));
        assertThat(squad.groupNumber(AFTER, "partLessHours", 16).found(AFTER)).isEmpty();
    }

    /** 72 hours are wanted for speed and hinge, 48 for other high work; four less count. */
    @Test
    void after_fixture_margin_wants_seventy_two_and_forty_eight_hours_less_four() {
        assertThat(afterTheTie(AFTER_MARGIN, "max-velocity", "2027-03-04T13:55"))
                .containsExactly(want(0.1, 67.92, 68));
        assertThat(afterTheTie(AFTER_MARGIN, "max-velocity", "2027-03-04T14:00"))
                .isEmpty();
        assertThat(afterTheTie(AFTER_MARGIN, "heavy-lower-hip", "2027-03-04T12:00"))
                .containsExactly(want(2, 66, 68));
        assertThat(afterTheTie(AFTER_MARGIN, "acceleration", "2027-03-03T13:55"))
                .containsExactly(want(0.1, 43.92, 44));
        assertThat(afterTheTie(AFTER_MARGIN, "acceleration", "2027-03-03T14:00"))
                .isEmpty();
        assertThat(afterTheTie(AFTER_MARGIN, "upper-strength", "2027-03-01T18:00"))
                .isEmpty();
    }

    @Test
    void after_fixture_margin_an_hour_beyond_the_twelfth_costs_double() {
        assertThat(afterTheTie(AFTER_MARGIN, "max-velocity", "2027-03-04T02:00"))
                .containsExactly(want(12, 56, 68));
        assertThat(afterTheTie(AFTER_MARGIN, "max-velocity", "2027-03-04T01:00"))
                .containsExactly(want(14, 55, 68));
    }

    @Test
    void after_fixture_margin_asks_less_of_those_who_played_less() {
        assertThat(ashPlayed(60, "max-velocity", "2027-03-03T13:00").found(AFTER_MARGIN))
                .containsExactly(want(1, 43, 44));
        assertThat(ashPlayed(60, "max-velocity", "2027-03-03T14:00").found(AFTER_MARGIN))
                .isEmpty();
        assertThat(ashPlayed(29, "acceleration", "2027-03-03T13:00").found(AFTER_MARGIN))
                .containsExactly(want(1, 43, 44));
        assertThat(ashPlayed(29, "max-velocity", "2027-03-02T10:00").found(AFTER_MARGIN))
                .isEmpty();
        assertThat(ashPlayed(0, "max-velocity", "2027-03-02T10:00").found(AFTER_MARGIN))
                .isEmpty();
    }

    @Test
    void after_fixture_margin_is_shared_by_those_who_played() {
        Squad squad = squad().athlete("ash")
                .fixture("cup-tie", "2027-03-01T16:15")
                .expecting("ash", 0)
                .placed("max-velocity", "2027-03-04T10:00");
        assertThat(squad.found(AFTER_MARGIN)).containsExactly(want(3.6, 64, 68));
    }

    @Test
    void after_fixture_margin_its_numbers_can_be_changed() {
        Squad squad = ashPlayed(60, "max-velocity", "2027-03-03T13:00");
        assertThat(squad.number(AFTER_MARGIN, "partLessHours", 20).found(AFTER_MARGIN))
                .containsExactly(want(5, 43, 48));
        assertThat(squad.groupNumber(AFTER_MARGIN, "toleranceHours", 9).found(AFTER_MARGIN))
                .isEmpty();
    }

    @Test
    void after_fixture_margin_history_and_clock_changes_count() {
        Squad history = squad().done("fixture", "2027-02-28T16:15").placed("max-velocity", "2027-03-03T13:00");
        assertThat(history.found(AFTER_MARGIN)).containsExactly(want(1, 67, 68));
        Squad spring = squad().week("2027-03-22")
                .days(14)
                .fixture("cup-tie", "2027-03-27T16:15")
                .placed("max-velocity", "2027-03-30T14:00");
        assertThat(spring.found(AFTER_MARGIN)).containsExactly(want(1, 67, 68));
    }

    /** Kick-off on Saturday at 15:00; a primer takes half an hour. Expert proposal. */
    @Test
    void primer_end_three_hours_before() {
        assertThat(primer("2027-03-06T11:25").found("primer-end")).isEmpty();
        assertThat(primer("2027-03-06T11:30").found("primer-end")).isEmpty();
        assertThat(primer("2027-03-06T11:35").found("primer-end")).containsExactly(must(2.92, 3));
        assertThat(primer("2027-03-06T12:00")
                        .level("primer-end", RuleLevel.WANT)
                        .found("primer-end"))
                .containsExactly(want(0.5, 2.5, 3));
        assertThat(primer("2027-03-05T10:00").found("primer-end")).isEmpty();
    }

    private static Squad primer(String start) {
        return squad().placed("primer", start).fixture("cup-tie", "2027-03-06T15:00");
    }

    @Test
    void primer_end_also_before_a_minor_fixture_but_not_for_the_bench() {
        Squad squad = primer("2027-03-06T12:00").weight(FixtureWeight.MINOR).athlete("ash");
        assertThat(squad.found("primer-end")).containsExactly(must(2.5, 3));
        assertThat(squad.expecting("ash", 0).judged().only("primer-end").heads())
                .isEqualTo(9);
        assertThat(squad.heads(1).found("primer-end")).isEmpty();
    }

    @Test
    void primer_end_its_hours_can_be_changed_and_technique_is_no_primer() {
        Squad squad = primer("2027-03-06T11:30");
        assertThat(squad.number("primer-end", "hours", 4).found("primer-end")).containsExactly(must(3, 4));
        assertThat(squad.groupNumber("primer-end", "hours", 2).found("primer-end"))
                .isEmpty();
        Squad technique = squad().placed("technique", "2027-03-06T12:00").fixture("cup-tie", "2027-03-06T15:00");
        assertThat(technique.found("primer-end")).isEmpty();
    }

    @Test
    void primer_end_fixed_primers_are_told_and_elapsed_hours_count() {
        Squad fixed =
                squad().commitment("activation", "primer", "2027-03-06T12:00").fixture("cup-tie", "2027-03-06T15:00");
        assertThat(fixed.found("primer-end")).containsExactly(told(2, 3));
        Squad spring = squad().week("2027-03-22")
                .placed("primer", "2027-03-27T23:30")
                .fixture("night-run", "2027-03-28T03:30");
        assertThat(spring.found("primer-end")).containsExactly(must(2.5, 3));
    }

    private static Squad onTheEve(String family, String start) {
        return squad().placed(family, start).fixture("cup-tie", "2027-03-06T15:00");
    }

    /** Malone JJ et al. 2015, IJSPP 10:489-497; the points are an expert proposal. */
    @Test
    void day_before_light_only_low_work_practice_and_a_primer() {
        assertThat(onTheEve("small-sided-games", "2027-03-05T10:00").found("day-before-light"))
                .containsExactly(want(24, 1, 0));
        assertThat(onTheEve("heavy-lower-knee", "2027-03-05T10:00").found("day-before-light"))
                .containsExactly(want(24, 1, 0));
        for (String light : List.of("tempo-run", "upper-strength", "contact-practice", "primer", "technique")) {
            assertThat(onTheEve(light, "2027-03-05T10:00").found("day-before-light"))
                    .as(light)
                    .isEmpty();
        }
    }

    @Test
    void day_before_light_is_the_date_before_and_no_other() {
        assertThat(onTheEve("small-sided-games", "2027-03-04T22:00").found("day-before-light"))
                .isEmpty();
        assertThat(onTheEve("small-sided-games", "2027-03-05T00:00").found("day-before-light"))
                .hasSize(1);
        assertThat(onTheEve("small-sided-games", "2027-03-06T08:00").found("day-before-light"))
                .isEmpty();
        Squad spring = squad().week("2027-03-22")
                .placed("small-sided-games", "2027-03-27T20:00")
                .fixture("cup-tie", "2027-03-28T15:00");
        assertThat(spring.found("day-before-light")).hasSize(1);
    }

    @Test
    void day_before_light_a_smaller_dose_of_hard_work_is_still_hard_work() {
        assertThat(onTheEve("small-sided-games", "2027-03-05T10:00"))
                .extracting(squad -> squad.found("day-before-light"))
                .isEqualTo(List.of(want(24, 1, 0)));
        Squad micro = squad().placed("heavy-lower-knee", "2027-03-05T10:00")
                .dose(Dose.MICRO)
                .fixture("cup-tie", "2027-03-06T15:00");
        assertThat(micro.found("day-before-light")).containsExactly(want(24, 1, 0));
    }

    /** Upper-body work counts in full where strength is the sport: 6.0, no longer low. */
    @Test
    void day_before_light_lifters_rest_their_arms() {
        Squad lifters = squad().kind(GroupKind.STRENGTH)
                .placed("upper-strength", "2027-03-05T10:00")
                .fixture("open", "meet-lift", "2027-03-06T15:00");
        assertThat(lifters.found("day-before-light")).containsExactly(want(24, 1, 0));
    }

    @Test
    void day_before_light_each_session_counts_not_before_a_minor_fixture() {
        Squad squad = squad().placed("small-sided-games", "2027-03-05T10:00")
                .placed("heavy-lower-knee", "2027-03-05T15:00")
                .fixture("cup-tie", "2027-03-06T15:00");
        assertThat(squad.found("day-before-light")).containsExactly(want(24, 1, 0), want(24, 1, 0));
        assertThat(squad.weight(FixtureWeight.MINOR).found("day-before-light")).isEmpty();
    }

    @Test
    void day_before_light_is_shared_by_those_who_play_and_told_where_fixed() {
        Squad squad =
                onTheEve("small-sided-games", "2027-03-05T10:00").athlete("ash").expecting("ash", 0);
        assertThat(squad.found("day-before-light")).containsExactly(want(21.6, 1, 0));
        Squad practice = squad().commitment("games", "small-sided-games", "2027-03-05T10:00")
                .fixture("cup-tie", "2027-03-06T15:00");
        assertThat(practice.found("day-before-light")).containsExactly(told(1, 0));
        Squad history = squad().done("small-sided-games", "2027-02-28T10:00").fixture("cup-tie", "2027-03-01T15:00");
        assertThat(history.found("day-before-light")).containsExactly(told(1, 0));
    }

    @Test
    void day_before_light_its_points_can_be_changed() {
        Squad squad = onTheEve("small-sided-games", "2027-03-05T10:00").number("day-before-light", "points", 10);
        assertThat(squad.found("day-before-light")).containsExactly(want(10, 1, 0));
        assertThat(squad.groupRule("day-before-light", null, 0.5, Map.of()).found("day-before-light"))
                .containsExactly(want(5, 1, 0));
    }

    /** Technique of so many minutes, three AU each, on Wednesday, Thursday and Friday before a Saturday; 0 for none. */
    private static Squad technique(int wednesday, int thursday, int friday) {
        Squad squad = squad().fixture("cup-tie", "2027-03-06T15:00");
        int[] minutes = {wednesday, thursday, friday};
        for (int day = 0; day < minutes.length; day++) {
            if (minutes[day] > 0) {
                squad.placed("technique", "2027-03-0" + (3 + day) + "T10:00").lasting(minutes[day]);
            }
        }
        return squad;
    }

    private static List<Amount> loadFalls(int wednesday, int thursday, int friday) {
        return technique(wednesday, thursday, friday).found("load-falls-to-fixture");
    }

    @Test
    void load_falls_to_fixture_no_rise_from_day_to_day() {
        assertThat(loadFalls(60, 65, 40)).containsExactly(want(8, 195, 180));
        assertThat(loadFalls(60, 60, 40)).isEmpty();
        assertThat(loadFalls(60, 55, 40)).isEmpty();
        assertThat(loadFalls(90, 40, 45)).containsExactly(want(8, 135, 120));
        assertThat(loadFalls(90, 40, 40)).isEmpty();
        assertThat(technique(60, 65, 40).judged().only("load-falls-to-fixture").placements())
                .as("what lies on the two days")
                .containsExactly("squad/technique/2027-03-01/1", "squad/technique/2027-03-01/2");
    }

    /** Clemente et al. 2019, J Hum Kinet (authors from memory): 66 %. */
    @Test
    void load_falls_to_fixture_the_day_before_carries_at_most_two_thirds() {
        assertThat(loadFalls(60, 60, 45)).containsExactly(want(8, 135, 120));
        assertThat(loadFalls(60, 60, 40)).isEmpty();
        assertThat(loadFalls(60, 60, 35)).isEmpty();
    }

    @Test
    void load_falls_to_fixture_each_part_counts_for_itself() {
        assertThat(loadFalls(20, 40, 60)).containsExactly(want(8, 120, 60), want(8, 180, 40), want(8, 180, 120));
        assertThat(loadFalls(0, 0, 0)).isEmpty();
    }

    @Test
    void load_falls_to_fixture_rests_before_a_minor_fixture_and_soon_after_another() {
        Squad minor = squad().placed("technique", "2027-03-04T10:00")
                .fixture("friendly", "2027-03-06T15:00")
                .weight(FixtureWeight.MINOR);
        assertThat(minor.found("load-falls-to-fixture")).isEmpty();
        assertThat(technique(60, 65, 40).fixture("midweek", "2027-03-02T15:00").found("load-falls-to-fixture"))
                .isEmpty();
        assertThat(technique(60, 65, 40).fixture("opener", "2027-03-01T15:00").found("load-falls-to-fixture"))
                .containsExactly(want(8, 195, 180));
    }

    @Test
    void load_falls_to_fixture_judges_only_parts_that_lie_in_the_plan() {
        Squad wednesday = squad().fixture("cup-tie", "2027-03-03T15:00").placed("technique", "2027-03-02T10:00");
        assertThat(wednesday.found("load-falls-to-fixture")).containsExactly(want(8, 90, 0));
        Squad tuesdayAfter = squad().fixture("cup-tie", "2027-03-09T15:00").placed("technique", "2027-03-07T10:00");
        assertThat(tuesdayAfter.found("load-falls-to-fixture")).containsExactly(want(8, 90, 0));
        assertThat(tuesdayAfter.practice("monday", "2027-03-08T18:00").found("load-falls-to-fixture"))
                .as("Monday is the next plan's")
                .containsExactly(want(8, 90, 0));
        Squad thursday = squad().fixture("cup-tie", "2027-03-04T15:00")
                .placed("technique", "2027-03-01T10:00")
                .lasting(60)
                .placed("technique", "2027-03-02T10:00")
                .lasting(65);
        assertThat(thursday.found("load-falls-to-fixture"))
                .as("from the first day on")
                .containsExactly(want(8, 195, 180));
        Squad mondayAfter = squad().fixture("cup-tie", "2027-03-08T15:00").placed("technique", "2027-03-07T10:00");
        assertThat(mondayAfter.found("load-falls-to-fixture")).containsExactly(want(8, 90, 0), want(8, 90, 0));
    }

    /** Practice is 5 x 85 = 425 AU. */
    @Test
    void load_falls_to_fixture_practice_counts_and_alone_is_told() {
        Squad squad = squad().fixture("cup-tie", "2027-03-06T15:00").practice("late", "2027-03-04T18:00");
        assertThat(squad.found("load-falls-to-fixture")).containsExactly(told(425, 0));
        assertThat(squad.placed("technique", "2027-03-03T10:00").found("load-falls-to-fixture"))
                .containsExactly(want(8, 425, 90));
    }

    @Test
    void load_falls_to_fixture_is_shared_by_those_who_play() {
        Squad squad = squad().athlete("ash")
                .fixture("cup-tie", "2027-03-06T15:00")
                .expecting("ash", 0)
                .placed("technique", "2027-03-04T10:00");
        assertThat(squad.found("load-falls-to-fixture")).containsExactly(want(7.2, 90, 0));
    }

    @Test
    void load_falls_to_fixture_its_numbers_can_be_changed() {
        Squad squad = technique(60, 60, 45);
        assertThat(squad.number("load-falls-to-fixture", "lastDayThirds", 3).found("load-falls-to-fixture"))
                .isEmpty();
        assertThat(squad.number("load-falls-to-fixture", "points", 20).found("load-falls-to-fixture"))
                .containsExactly(want(20, 135, 120));
        assertThat(squad.groupNumber("load-falls-to-fixture", "points", 5).found("load-falls-to-fixture"))
                .containsExactly(want(5, 135, 120));
        Squad waived = technique(60, 60, 45).fixture("opener", "2027-03-01T15:00");
        assertThat(waived.number("load-falls-to-fixture", "waivedDays", 6).found("load-falls-to-fixture"))
                .isEmpty();
    }

    /** A fixture on Monday, and technique on some of the days after. Buchheit et al. 2023, IJSPP 18:293-299, observational. */
    private static Squad afterMonday(String... dates) {
        Squad squad = squad().athlete("ash").fixture("cup-tie", "2027-03-01T15:00");
        for (String date : dates) {
            squad.placed("technique", date + "T10:00");
        }
        return squad;
    }

    @Test
    void free_day_place_the_second_day_after_or_else_the_first() {
        assertThat(afterMonday("2027-03-02").found("free-day-place")).isEmpty();
        assertThat(afterMonday("2027-03-03").found("free-day-place")).containsExactly(want(4, 1, 0));
        assertThat(afterMonday("2027-03-02", "2027-03-03").found("free-day-place"))
                .containsExactly(want(12, 2, 0));
    }

    @Test
    void free_day_place_optional_recovery_does_not_spoil_it_but_a_long_way_does() {
        assertThat(afterMonday("2027-03-02")
                        .placed("mobility", "2027-03-03T10:00")
                        .found("free-day-place"))
                .isEmpty();
        // Home again on Tuesday at 00:15, two and a half hours on the road.
        Squad late = squad().fixture("away-tie", "2027-03-01T20:00").travelling(0, 150);
        assertThat(late.placed("technique", "2027-03-03T10:00").found("free-day-place"))
                .containsExactly(want(12, 2, 0));
    }

    @Test
    void free_day_place_rests_where_another_fixture_comes_first() {
        assertThat(afterMonday("2027-03-02", "2027-03-03")
                        .fixture("replay", "2027-03-03T15:00")
                        .found("free-day-place"))
                .isEmpty();
        assertThat(afterMonday("2027-03-02", "2027-03-03")
                        .fixture("replay", "2027-03-04T15:00")
                        .found("free-day-place"))
                .containsExactly(want(12, 2, 0));
    }

    @Test
    void free_day_place_also_after_a_minor_fixture_and_one_of_last_week() {
        Squad minor = squad().fixture("friendly", "2027-03-01T15:00").weight(FixtureWeight.MINOR);
        assertThat(minor.placed("technique", "2027-03-03T10:00").found("free-day-place"))
                .containsExactly(want(4, 1, 0));
        Squad lastSaturday = squad().done("fixture", "2027-02-27T15:00").placed("technique", "2027-03-01T10:00");
        assertThat(lastSaturday.found("free-day-place")).containsExactly(want(4, 1, 0));
        assertThat(lastSaturday.done("technique", "2027-02-28T10:00").found("free-day-place"))
                .containsExactly(want(12, 2, 0));
    }

    @Test
    void free_day_place_is_judged_where_the_second_day_lies_in_the_plan() {
        Squad squad = squad().fixture("cup-tie", "2027-03-06T15:00").placed("technique", "2027-03-07T10:00");
        assertThat(squad.found("free-day-place")).isEmpty();
        assertThat(squad.days(14).placed("technique", "2027-03-08T10:00").found("free-day-place"))
                .containsExactly(want(12, 2, 0));
    }

    /** The match is on Saturday, the plan ends on Sunday: what Monday's practice spoils is the next plan's. */
    @Test
    void free_day_place_what_is_fixed_after_the_plan_is_left_to_the_next() {
        Squad squad = squad().fixture("cup-tie", "2027-03-06T15:00").placed("technique", "2027-03-07T10:00");
        assertThat(squad.practice("monday", "2027-03-08T18:00").found("free-day-place"))
                .isEmpty();
    }

    @Test
    void free_day_place_is_told_where_nothing_placed_stands_in_the_way() {
        Squad squad = afterMonday().practice("team", "2027-03-03T18:00");
        assertThat(squad.found("free-day-place")).containsExactly(told(1, 0));
        assertThat(squad.placed("technique", "2027-03-02T10:00").found("free-day-place"))
                .containsExactly(want(12, 2, 0));
        Squad beside = afterMonday("2027-03-03").practice("team", "2027-03-03T18:00");
        assertThat(beside.found("free-day-place")).containsExactly(want(4, 1, 0));
    }

    @Test
    void free_day_place_is_shared_by_those_who_played() {
        Squad squad = squad().athlete("ash")
                .fixture("cup-tie", "2027-03-01T15:00")
                .expecting("ash", 0)
                .placed("technique", "2027-03-03T10:00");
        assertThat(squad.found("free-day-place")).containsExactly(want(3.6, 1, 0));
    }

    @Test
    void free_day_place_its_points_can_be_changed() {
        Squad squad = afterMonday("2027-03-03").number("free-day-place", "firstDayPoints", 7);
        assertThat(squad.found("free-day-place")).containsExactly(want(7, 1, 0));
        assertThat(squad.groupNumber("free-day-place", "firstDayPoints", 5).found("free-day-place"))
                .containsExactly(want(5, 1, 0));
        Squad both = afterMonday("2027-03-02", "2027-03-03").number("free-day-place", "elsewherePoints", 20);
        assertThat(both.found("free-day-place")).containsExactly(want(20, 2, 0));
    }

    /** Ash alone is in both groups: the squad plays on Saturday at 10:00, the eight sprinters do not. */
    private static Squad sprintersBeforeTheSquadsMatch() {
        return squad().group("sprinters")
                .heads(8)
                .quorum(1)
                .athlete("ash", Squad.ID, "sprinters")
                .placed("max-velocity", "2027-03-04T18:00")
                .of("sprinters")
                .fixture("cup-tie", "2027-03-06T10:00");
    }

    @Test
    void before_fixture_those_of_another_group_do_not_play_it() {
        Finding finding = sprintersBeforeTheSquadsMatch().judged().only("before-fixture");
        assertThat(finding.heads()).isEqualTo(1);
        assertThat(finding.athletes()).containsExactly("ash");
    }

    @Test
    void before_fixture_nobody_plays_where_the_only_one_of_both_groups_is_on_the_bench() {
        assertThat(sprintersBeforeTheSquadsMatch().expecting("ash", 0).found("before-fixture"))
                .isEmpty();
    }

    /** 66 hours after it where 68 count: two points for one of eight sprinters. */
    @Test
    void after_fixture_margin_those_of_another_group_did_not_play_it() {
        Squad squad = squad().group("sprinters")
                .heads(8)
                .athlete("ash", Squad.ID, "sprinters")
                .fixture("cup-tie", "2027-03-01T16:15")
                .placed("max-velocity", "2027-03-04T12:00")
                .of("sprinters");
        assertThat(squad.found("after-fixture-margin")).containsExactly(want(0.3, 66, 68));
    }

    /** The only one who trains on the Wednesday played on the Monday: four points for one of eight. */
    @Test
    void free_day_place_those_of_another_group_did_not_play_it() {
        Squad squad = squad().group("sprinters")
                .heads(8)
                .athlete("ash", "sprinters", Squad.ID)
                .fixture("cup-tie", "2027-03-01T15:00")
                .placed("technique", "2027-03-03T10:00")
                .of("sprinters");
        assertThat(squad.found("free-day-place")).containsExactly(want(0.5, 1, 0));
    }

    /** Ash plays for the squad on Monday and on Wednesday, and is a sprinter first. */
    @Test
    void free_day_place_rests_where_a_fixture_of_the_athletes_other_group_comes_first() {
        Squad squad = squad().group("sprinters")
                .athlete("ash", "sprinters", Squad.ID)
                .fixture("cup-tie", "2027-03-01T15:00")
                .fixture("replay", "2027-03-03T15:00")
                .placed("technique", "2027-03-02T10:00");
        assertThat(squad.found("free-day-place")).isEmpty();
    }

    /** The fixture before it lies on the same date: closer than five days. */
    @Test
    void load_falls_to_fixture_rests_before_the_second_fixture_of_a_day() {
        Squad squad = squad().fixture("heat", "2027-03-06T09:00")
                .fixture("final", "2027-03-06T15:00")
                .placed("technique", "2027-03-03T10:00")
                .placed("tempo-run", "2027-03-04T10:00");
        assertThat(squad.found("load-falls-to-fixture")).containsExactly(want(8, 160, 90));
    }

    /** No hours are asked for technique after a fixture, not even within a long one: being in two places is another rule's. */
    @Test
    void after_fixture_asks_nothing_where_no_hours_are_given() {
        Squad squad = squad().fixture("open", "meet-lift", "2027-03-02T10:00")
                .lasting(480)
                .placed("technique", "2027-03-02T12:00");
        assertThat(squad.found("after-fixture-margin")).isEmpty();
        assertThat(squad.found("after-fixture")).isEmpty();
    }

    /** Two and a half thirds of 180 AU are 150, and Friday carries 135. */
    @Test
    void load_falls_to_fixture_takes_parts_of_thirds() {
        Squad squad = squad().number("load-falls-to-fixture", "lastDayThirds", 2.5)
                .fixture("cup-tie", "2027-03-06T15:00")
                .placed("technique", "2027-03-03T10:00")
                .lasting(60)
                .placed("technique", "2027-03-04T10:00")
                .lasting(60)
                .placed("technique", "2027-03-05T10:00")
                .lasting(45);
        assertThat(squad.found("load-falls-to-fixture")).isEmpty();
    }
}
