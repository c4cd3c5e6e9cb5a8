package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.must;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Weekday;

/**
 * Where and when a session can be at all. Technique takes 30 minutes, acceleration 55, maximal velocity 65, heavy lower
 * 60, trunk 25. Common practice, no source, but for visits and the night: expert proposals.
 */
class PlaceAndTimeRulesTest {
    private static final String ONE_PLACE = "one-place-at-a-time";

    @Test
    void one_place_at_a_time_sessions_may_follow_at_once_but_not_overlap() {
        assertThat(afterTechnique("2027-03-02T10:25").found(ONE_PLACE)).containsExactly(must(-5, 0));
        assertThat(afterTechnique("2027-03-02T10:30").found(ONE_PLACE)).isEmpty();
        assertThat(afterTechnique("2027-03-02T10:35").found(ONE_PLACE)).isEmpty();
    }

    /** Technique from 10:00 to 10:30, and trunk work. */
    private static Squad afterTechnique(String start) {
        return squad().placed("technique", "2027-03-02T10:00").placed("trunk-and-balance", start);
    }

    @Test
    void one_place_at_a_time_sessions_of_the_same_start_are_in_two_places() {
        assertThat(afterTechnique("2027-03-02T10:00").found(ONE_PLACE)).containsExactly(must(-25, 0));
    }

    @Test
    void one_place_at_a_time_leaves_time_for_the_way_between_places() {
        Squad squad = squad().transfer("weights-room", "turf-pitch", 10);
        assertThat(thenSpeed(squad, "2027-03-02T11:05").found(ONE_PLACE)).containsExactly(must(5, 10));
        Squad inTime = squad().transfer("turf-pitch", "weights-room", 10);
        assertThat(thenSpeed(inTime, "2027-03-02T11:10").found(ONE_PLACE)).isEmpty();
    }

    /** Heavy lower from 10:00 to 11:00 in the weights room, then acceleration on the turf. */
    private static Squad thenSpeed(Squad squad, String start) {
        return squad.placed("heavy-lower-knee", "2027-03-02T10:00").placed("acceleration", start);
    }

    @Test
    void one_place_at_a_time_needs_no_way_from_nowhere_in_particular() {
        Squad squad = squad().transfer("weights-room", "turf-pitch", 10)
                .placed("heavy-lower-knee", "2027-03-02T10:00")
                .placed("technique", "2027-03-02T11:00");
        assertThat(squad.found(ONE_PLACE)).isEmpty();
    }

    /** Kick-off Saturday 15:00: 25 minutes of warm-up and 75 on the road make it 13:20. */
    @Test
    void one_place_at_a_time_counts_the_way_to_a_fixture_and_its_warm_up() {
        assertThat(onMatchDay("2027-03-06T12:55").found(ONE_PLACE)).containsExactly(must(-5, 0));
        assertThat(onMatchDay("2027-03-06T12:50").found(ONE_PLACE)).isEmpty();
    }

    /** The final whistle is at 16:45, and the squad is home at 18:00. */
    @Test
    void one_place_at_a_time_counts_the_way_home_from_a_fixture() {
        assertThat(onMatchDay("2027-03-06T17:55").found(ONE_PLACE)).containsExactly(must(-5, 0));
        assertThat(onMatchDay("2027-03-06T18:00").found(ONE_PLACE)).isEmpty();
    }

    private static Squad onMatchDay(String technique) {
        return squad().fixture("cup-tie", "2027-03-06T15:00").travelling(75, 75).placed("technique", technique);
    }

    @Test
    void one_place_at_a_time_binds_the_bench_as_well() {
        Squad squad = onMatchDay("2027-03-06T15:00").heads(1).athlete("ash");
        assertThat(squad.fixture("second", "2027-03-07T15:00")
                        .expecting("ash", 0)
                        .placed("technique", "2027-03-07T15:00")
                        .found(ONE_PLACE))
                .hasSize(2);
    }

    @Test
    void one_place_at_a_time_an_athletes_own_shift_touches_that_athlete_alone() {
        Squad squad = squad().quorum(1)
                .athlete("ash")
                .commitment("shift", null, "2027-03-02T09:00")
                .only("ash")
                .lasting(75)
                .placed("technique", "2027-03-02T10:10");
        assertThat(squad.found(ONE_PLACE)).containsExactly(must(-5, 0));
        assertThat(squad.judged().only(ONE_PLACE).heads()).isEqualTo(1);
        // As a want it costs 24 points for each head concerned of ten (expert proposal).
        assertThat(squad.level(ONE_PLACE, RuleLevel.WANT).found(ONE_PLACE)).containsExactly(want(2.4, -5, 0));
    }

    @Test
    void one_place_at_a_time_whoever_sits_out_is_elsewhere() {
        Squad squad = squad().heads(1)
                .athlete("ash")
                .restricted(RestrictionLimit.LIGHT, "2027-03-02", "2027-03-02", Pathway.ACCELERATION)
                .commitment("study", null, "2027-03-02T10:00")
                .placed("acceleration", "2027-03-02T10:00");
        assertThat(squad.found(ONE_PLACE)).isEmpty();
    }

    @Test
    void one_place_at_a_time_two_fixed_things_are_only_told() {
        Squad squad = squad().fixture("cup-tie", "2027-03-06T15:00").practice("practice", "2027-03-06T13:30");
        assertThat(squad.found(ONE_PLACE)).containsExactly(told(-20, 0));
        assertThat(squad.judged().totals().must()).isZero();
    }

    @Test
    void one_place_at_a_time_holds_across_groups_for_whoever_is_in_both() {
        Squad squad = squad().group("sprinters")
                .quorum(1)
                .athlete("ash", Squad.ID, "sprinters")
                .placed("technique", "2027-03-02T10:00")
                .placed("trunk-and-balance", "2027-03-02T10:20")
                .of("sprinters");
        assertThat(squad.found(ONE_PLACE)).containsExactly(must(-10, 0));
        assertThat(squad.judged().only(ONE_PLACE).heads()).isEqualTo(1);
    }

    /** Dublin's clocks go from 01:00 to 02:00 on 28 March: technique from 00:35 ends at 02:05 by the clock. */
    @Test
    void one_place_at_a_time_counts_elapsed_minutes_when_the_clocks_change() {
        assertThat(inTheShortNight("2027-03-28T02:00").found(ONE_PLACE)).containsExactly(must(-5, 0));
        assertThat(inTheShortNight("2027-03-28T02:05").found(ONE_PLACE)).isEmpty();
    }

    private static Squad inTheShortNight(String trunk) {
        return squad().week("2027-03-22")
                .placed("technique", "2027-03-28T00:35")
                .placed("trunk-and-balance", trunk);
    }

    @Test
    void inside_window_counts_the_minutes_before_it_opens_and_after_it_closes() {
        assertThat(inTheAfternoon("2027-03-02T15:55").found("inside-window")).containsExactly(must(5, 0));
        assertThat(inTheAfternoon("2027-03-02T16:00").found("inside-window")).isEmpty();
        assertThat(inTheAfternoon("2027-03-02T20:30").found("inside-window")).isEmpty();
        assertThat(inTheAfternoon("2027-03-02T20:35").found("inside-window")).containsExactly(must(5, 0));
    }

    private static Squad inTheAfternoon(String technique) {
        return squad().window("16:00", "18:00").window("18:00", "21:00").placed("technique", technique);
    }

    @Test
    void inside_window_a_day_without_one_is_outside_for_the_whole_session() {
        Squad squad = squad().window("16:00", "21:00", Weekday.MON).placed("technique", "2027-03-02T17:00");
        assertThat(squad.found("inside-window")).containsExactly(must(30, 0));
    }

    @Test
    void inside_window_never_while_the_group_is_away() {
        Squad squad = inTheAfternoon("2027-03-02T15:55").away("2027-03-02T16:20", "2027-03-02T19:00");
        assertThat(squad.found("inside-window")).containsExactly(must(10, 0));
        Squad back = inTheAfternoon("2027-03-02T19:00").away("2027-03-02T16:20", "2027-03-02T19:00");
        assertThat(back.found("inside-window")).isEmpty();
    }

    /** 60 minutes from 00:30 end at 02:30 by the clock where it jumps from 01:00 to 02:00, and at 01:30 the day before. */
    @Test
    void inside_window_follows_the_clock_when_it_changes() {
        Squad squad = squad().week("2027-03-22").window("00:00", "02:15");
        assertThat(squad.placed("heavy-lower-knee", "2027-03-27T00:30").found("inside-window"))
                .isEmpty();
        assertThat(squad.placed("heavy-lower-hip", "2027-03-28T00:30").found("inside-window"))
                .containsExactly(must(15, 0));
        Squad autumn = squad().week("2027-10-25").window("00:00", "02:00");
        assertThat(autumn.placed("heavy-lower-hip", "2027-10-31T01:30")
                        .lasting(90)
                        .found("inside-window"))
                .isEmpty();
    }

    @Test
    void facility_open_counts_the_minutes_in_which_it_is_shut() {
        assertThat(inTheEvening("2027-03-02T14:55").found("facility-open")).containsExactly(must(5, 0));
        assertThat(inTheEvening("2027-03-02T15:00").found("facility-open")).isEmpty();
        assertThat(inTheEvening("2027-03-02T20:00").found("facility-open")).isEmpty();
        assertThat(inTheEvening("2027-03-02T20:05").found("facility-open")).containsExactly(must(5, 0));
    }

    private static Squad inTheEvening(String heavyLower) {
        return squad().open("weights-room", "15:00", "21:00").placed("heavy-lower-knee", heavyLower);
    }

    @Test
    void facility_open_minds_closures_and_asks_nothing_nowhere_in_particular() {
        Squad squad = squad().closed("weights-room", "2027-03-02T15:00", "2027-03-02T18:00");
        assertThat(squad.placed("heavy-lower-knee", "2027-03-02T17:50").found("facility-open"))
                .containsExactly(must(10, 0));
        Squad elsewhere = squad().closed("turf-pitch", "2027-03-02T15:00", "2027-03-02T18:00");
        assertThat(elsewhere.placed("technique", "2027-03-02T16:00").found("facility-open"))
                .isEmpty();
    }

    @Test
    void facility_fits_the_work_needs_its_kind_of_place() {
        assertThat(squad().placed("heavy-lower-knee", "2027-03-02T10:00").found("facility-fits"))
                .isEmpty();
        assertThat(squad().placed("heavy-lower-knee", "2027-03-02T10:00")
                        .at("turf-pitch")
                        .found("facility-fits"))
                .containsExactly(must(0, 1));
        assertThat(squad().placed("heavy-lower-knee", "2027-03-02T10:00")
                        .at(null)
                        .found("facility-fits"))
                .containsExactly(must(0, 1));
    }

    @Test
    void facility_fits_technique_may_be_anywhere() {
        assertThat(squad().placed("technique", "2027-03-02T10:00").found("facility-fits"))
                .isEmpty();
        assertThat(squad().placed("technique", "2027-03-02T10:00")
                        .at("weights-room")
                        .found("facility-fits"))
                .isEmpty();
    }

    /** Maximal velocity needs a straight of 80 m (expert proposal). */
    @Test
    void facility_fits_the_straight_is_long_enough_or_nobody_knows() {
        assertThat(onAStraightOf(79).found("facility-fits")).containsExactly(must(79, 80));
        assertThat(onAStraightOf(80).found("facility-fits")).isEmpty();
        assertThat(onAStraightOf(null).found("facility-fits")).isEmpty();
    }

    private static Squad onAStraightOf(@org.jspecify.annotations.Nullable Integer metres) {
        return squad().straight("turf-pitch", metres).placed("max-velocity", "2027-03-02T10:00");
    }

    @Test
    void facility_room_a_second_group_waits_until_the_first_has_ended() {
        assertThat(twoGroupsLifting("2027-03-02T10:55")
                        .room("weights-room", 1, null)
                        .found("facility-room"))
                .containsExactly(must(2, 1));
        assertThat(twoGroupsLifting("2027-03-02T11:00")
                        .room("weights-room", 1, null)
                        .found("facility-room"))
                .isEmpty();
        assertThat(twoGroupsLifting("2027-03-02T10:55")
                        .room("weights-room", 2, null)
                        .found("facility-room"))
                .isEmpty();
    }

    /** The squad of ten lifts from 10:00 to 11:00, eleven sprinters from a time of their own. */
    private static Squad twoGroupsLifting(String sprinters) {
        return squad().group("sprinters")
                .heads(11)
                .placed("heavy-lower-knee", "2027-03-02T10:00")
                .placed("heavy-lower-knee", sprinters)
                .of("sprinters");
    }

    @Test
    void facility_room_counts_athletes_too() {
        Squad squad = twoGroupsLifting("2027-03-02T10:00");
        assertThat(squad.room("weights-room", null, 20).found("facility-room")).containsExactly(must(21, 20));
        assertThat(squad.room("weights-room", null, 21).found("facility-room")).isEmpty();
        assertThat(squad.room("weights-room", 2, 20).found("facility-room"))
                .as("room for both groups, and not for all of them")
                .containsExactly(must(21, 20));
    }

    @Test
    void facility_room_a_commitment_of_two_groups_fills_two_places_and_one_athletes_none() {
        Squad practice = twoGroupsLifting("2027-03-05T10:00")
                .room("weights-room", 2, null)
                .commitment("induction", "technique", "2027-03-02T10:30")
                .of(Squad.ID, "sprinters")
                .at("weights-room");
        assertThat(practice.found("facility-room")).containsExactly(must(3, 2));
        Squad alone = twoGroupsLifting("2027-03-05T10:00")
                .room("weights-room", 1, null)
                .athlete("ash")
                .commitment("treatment", null, "2027-03-02T10:30")
                .only("ash")
                .at("weights-room");
        assertThat(alone.found("facility-room")).isEmpty();
    }

    @Test
    void facility_room_commitments_alone_are_only_told() {
        Squad squad = squad().room("turf-pitch", 1, null)
                .group("sprinters")
                .practice("first", "2027-03-02T10:00")
                .at("turf-pitch")
                .practice("second", "2027-03-02T11:00")
                .at("turf-pitch")
                .of("sprinters");
        assertThat(squad.found("facility-room")).containsExactly(told(2, 1));
    }

    /** Ash and Birch did not play on Saturday; the session for those who did not is theirs alone. */
    @Test
    void facility_room_counts_only_those_whom_a_session_is_for() {
        Squad squad = squad().aim("acceleration", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .athlete("ash")
                .athlete("birch")
                .done("fixture", "2027-02-27T15:00")
                .without("ash", "birch")
                .placed("acceleration", "2027-03-02T10:00");
        assertThat(squad.room("turf-pitch", null, 1).found("facility-room")).containsExactly(must(2, 1));
        assertThat(squad.room("turf-pitch", null, 2).found("facility-room")).isEmpty();
    }

    @Test
    void facility_room_minds_what_runs_over_midnight() {
        Squad squad = squad().room("weights-room", 1, null)
                .group("sprinters")
                .placed("heavy-lower-knee", "2027-03-02T23:30")
                .placed("heavy-lower-knee", "2027-03-03T00:25")
                .of("sprinters");
        assertThat(squad.found("facility-room")).containsExactly(must(2, 1));
    }

    /** Works have the room from 12:00 to 13:00. */
    @Test
    void facility_room_counts_what_others_have_booked_while_it_lasts() {
        assertThat(besideWorks("2027-03-02T11:00").found("facility-room")).isEmpty();
        assertThat(besideWorks("2027-03-02T11:05").found("facility-room")).containsExactly(must(2, 1));
        assertThat(besideWorks("2027-03-02T12:55").found("facility-room")).containsExactly(must(2, 1));
        assertThat(besideWorks("2027-03-02T13:00").found("facility-room")).isEmpty();
    }

    private static Squad besideWorks(String start) {
        return squad().room("weights-room", 1, null)
                .group("sprinters")
                .commitment("works", null, "2027-03-02T12:00")
                .lasting(60)
                .at("weights-room")
                .of("sprinters")
                .placed("heavy-lower-knee", start)
                .of(Squad.ID);
    }

    @Test
    void one_place_at_a_time_minds_what_runs_over_midnight() {
        Squad late = squad().placed("tempo-run", "2027-03-02T23:45");
        assertThat(late.placed("mobility", "2027-03-03T00:05").found(ONE_PLACE)).hasSize(1);
        assertThat(squad().placed("tempo-run", "2027-03-02T23:45")
                        .placed("mobility", "2027-03-03T01:30")
                        .found(ONE_PLACE))
                .isEmpty();
    }

    /** The first lasts an hour, until 0:30. */
    @Test
    void lead_free_a_coach_leads_over_midnight() {
        assertThat(overMidnight("2027-03-03T00:25").found("lead-free")).containsExactly(must(0, 1));
        assertThat(overMidnight("2027-03-03T00:30").found("lead-free")).isEmpty();
    }

    /** Whoever is held for the later one is taken, and nobody is left for the earlier. */
    @Test
    void lead_free_a_coach_held_after_midnight_is_missed_before() {
        assertThat(overMidnight("2027-03-03T00:25")
                        .ledBy("lifting-coach")
                        .held("lead")
                        .found("lead-free"))
                .containsExactly(must(0, 1));
    }

    private static Squad overMidnight(String sprinters) {
        return squad().staff("lifting-coach", "*")
                .group("sprinters")
                .placed("heavy-lower-knee", "2027-03-02T23:30")
                .of(Squad.ID)
                .placed("heavy-lower-knee", sprinters)
                .of("sprinters");
    }

    @Test
    void lead_free_one_coach_leads_one_session_at_a_time() {
        assertThat(twoGroupsLifting("2027-03-02T10:55")
                        .staff("lifting-coach", "*")
                        .found("lead-free"))
                .containsExactly(must(0, 1));
        assertThat(twoGroupsLifting("2027-03-02T11:00")
                        .staff("lifting-coach", "*")
                        .found("lead-free"))
                .isEmpty();
    }

    @Test
    void lead_free_somebody_may_lead_two_at_once() {
        StaffMember both = new StaffMember("lifting-coach", "Lifting coach", List.of("*"), 2, List.of(), List.of());
        assertThat(twoGroupsLifting("2027-03-02T10:00").staff(both).found("lead-free"))
                .isEmpty();
    }

    @Test
    void lead_free_the_coach_is_there_for_the_whole_session() {
        StaffMember mornings = new StaffMember(
                "lifting-coach",
                "Lifting coach",
                List.of("heavy-lower-knee"),
                1,
                List.of(Squad.hours("08:00", "12:00")),
                List.of(Squad.absence("2027-03-03T08:00", "2027-03-03T12:00")));
        assertThat(lifting("2027-03-02T11:00").staff(mornings).found("lead-free"))
                .isEmpty();
        assertThat(lifting("2027-03-02T11:05").staff(mornings).found("lead-free"))
                .containsExactly(must(0, 1));
        assertThat(lifting("2027-03-03T11:00").staff(mornings).found("lead-free"))
                .containsExactly(must(0, 1));
    }

    private static Squad lifting(String start) {
        return squad().placed("heavy-lower-knee", start);
    }

    @Test
    void lead_free_rests_where_nobody_listed_may_lead() {
        assertThat(lifting("2027-03-02T10:00").found("lead-free")).isEmpty();
        assertThat(lifting("2027-03-02T10:00")
                        .staff("speed-coach", "max-velocity")
                        .found("lead-free"))
                .isEmpty();
    }

    @Test
    void lead_free_whom_the_plan_names_is_held_to_it() {
        Squad squad = lifting("2027-03-02T10:00").ledBy("speed-coach").staff("lifting-coach", "heavy-lower-knee");
        assertThat(squad.staff("speed-coach", "max-velocity").found("lead-free"))
                .containsExactly(must(0, 1));
        Squad twice = twoGroupsLifting("2027-03-02T10:30").ledBy("old-hand").staff("old-hand", "*");
        assertThat(twice.staff("young-hand", "*").found("lead-free")).isEmpty();
        assertThat(twice.placed("technique", "2027-03-02T11:00")
                        .ledBy("old-hand")
                        .found("lead-free"))
                .hasSize(1);
    }

    /** Who leads only lifting takes the lifting, though the one who leads all comes first in the list. */
    @Test
    void lead_free_the_specialist_leaves_the_allrounder_free() {
        Squad squad = lifting("2027-03-02T10:00")
                .group("sprinters")
                .placed("acceleration", "2027-03-02T10:30")
                .of("sprinters");
        assertThat(squad.staff("allrounder", "*")
                        .staff("lifting-coach", "heavy-lower-knee")
                        .found("lead-free"))
                .isEmpty();
    }

    /** Technique from 10:00 to 10:30, 12:00 to 12:30, and once more. */
    private static Squad thirdVisit(String start) {
        return squad().placed("technique", "2027-03-02T10:00")
                .placed("trunk-and-balance", "2027-03-02T12:00")
                .lasting(30)
                .placed("mobility", start);
    }

    @Test
    void visits_per_day_things_half_an_hour_apart_are_one_visit() {
        assertThat(thirdVisit("2027-03-02T13:00").found("visits-per-day")).isEmpty();
        assertThat(thirdVisit("2027-03-02T13:05").found("visits-per-day")).containsExactly(must(3, 2));
    }

    @Test
    void visits_per_day_the_numbers_can_be_changed() {
        Squad squad = thirdVisit("2027-03-02T14:00");
        assertThat(squad.number("visits-per-day", "visits", 3).found("visits-per-day"))
                .isEmpty();
        assertThat(squad.number("visits-per-day", "joinedMinutes", 90).found("visits-per-day"))
                .isEmpty();
        assertThat(squad.groupNumber("visits-per-day", "joinedMinutes", 89).found("visits-per-day"))
                .containsExactly(must(3, 2));
    }

    @Test
    void visits_per_day_a_fixture_takes_its_way_and_warm_up_along() {
        // Leaves at 13:20 for a kick-off at 15:00; home at 18:00.
        assertThat(onMatchDay("2027-03-06T12:20")
                        .placed("mobility", "2027-03-06T18:30")
                        .found("visits-per-day"))
                .isEmpty();
        assertThat(onMatchDay("2027-03-06T12:15")
                        .placed("mobility", "2027-03-06T18:35")
                        .found("visits-per-day"))
                .containsExactly(must(3, 2));
    }

    @Test
    void visits_per_day_three_that_nobody_here_placed_are_told() {
        Squad squad = squad().practice("early", "2027-03-02T08:00")
                .practice("noon", "2027-03-02T12:00")
                .practice("late", "2027-03-02T18:00");
        assertThat(squad.found("visits-per-day")).containsExactly(told(3, 2));
        assertThat(squad.placed("technique", "2027-03-02T21:00").found("visits-per-day"))
                .containsExactly(told(4, 2));
        Squad two = squad().practice("early", "2027-03-02T08:00").practice("noon", "2027-03-02T12:00");
        assertThat(two.placed("technique", "2027-03-02T18:00").found("visits-per-day"))
                .as("a third that we have placed")
                .containsExactly(must(3, 2));
    }

    /** Technique ends at 01:05 elapsed, which is 02:05 by the clock; trunk work at 02:35 is half an hour later. */
    @Test
    void visits_per_day_counts_elapsed_minutes_when_the_clocks_change() {
        assertThat(inTheShortNight("2027-03-28T02:35")
                        .placed("mobility", "2027-03-28T10:00")
                        .found("visits-per-day"))
                .isEmpty();
        assertThat(inTheShortNight("2027-03-28T02:40")
                        .placed("mobility", "2027-03-28T10:00")
                        .found("visits-per-day"))
                .containsExactly(must(3, 2));
    }

    @Test
    void visits_per_day_concerns_those_who_come_so_often() {
        Squad squad = thirdVisit("2027-03-02T11:00")
                .athlete("ash")
                .placed("acceleration", "2027-03-02T18:00")
                .level("visits-per-day", RuleLevel.WANT);
        assertThat(squad.found("visits-per-day")).containsExactly(want(24, 3, 2));
        squad.restricted(RestrictionLimit.LIGHT, "2027-03-01", "2027-03-07", Pathway.ACCELERATION);
        assertThat(squad.found("visits-per-day")).containsExactly(want(21.6, 3, 2));
    }

    /** Technique ends at 23:00; eight hours later is 07:00. */
    @Test
    void night_rest_eight_hours_lie_between_the_days() {
        assertThat(overnight("2027-03-03T06:55").found("night-rest")).containsExactly(must(7.92, 8));
        assertThat(overnight("2027-03-03T07:00").found("night-rest")).isEmpty();
        assertThat(overnight("2027-03-03T07:05").found("night-rest")).isEmpty();
    }

    private static Squad overnight(String morning) {
        return squad().placed("technique", "2027-03-02T22:30").placed("mobility", morning);
    }

    @Test
    void night_rest_is_counted_from_arrival_home() {
        Squad squad = squad().fixture("cup-tie", "2027-03-02T20:00").travelling(75, 75);
        assertThat(squad.placed("mobility", "2027-03-03T07:00").found("night-rest"))
                .isEmpty();
        assertThat(squad.placed("technique", "2027-03-03T06:55").found("night-rest"))
                .containsExactly(must(7.92, 8));
    }

    @Test
    void night_rest_the_night_of_the_clock_change_is_shorter_or_longer() {
        Squad spring = squad().week("2027-03-22")
                .placed("technique", "2027-03-27T22:30")
                .placed("mobility", "2027-03-28T07:00");
        assertThat(spring.found("night-rest")).containsExactly(must(7, 8));
        Squad autumn = squad().week("2027-10-25")
                .placed("technique", "2027-10-30T23:30")
                .placed("mobility", "2027-10-31T07:00");
        assertThat(autumn.found("night-rest")).isEmpty();
    }

    @Test
    void night_rest_holds_after_the_last_evening_of_history_and_before_the_week_to_come() {
        Squad history = squad().done("technique", "2027-02-28T22:30").lasting(30);
        assertThat(history.placed("mobility", "2027-03-01T06:30").found("night-rest"))
                .containsExactly(must(7.5, 8));
        Squad toCome = squad().commitment("early", "technique", "2027-03-08T06:30");
        assertThat(toCome.placed("mobility", "2027-03-07T22:40").found("night-rest"))
                .containsExactly(must(7.5, 8));
    }

    @Test
    void night_rest_a_short_night_between_two_practices_is_told() {
        Squad squad = squad().practice("late", "2027-03-02T21:35").practice("early", "2027-03-03T06:00");
        assertThat(squad.found("night-rest")).containsExactly(told(7, 8));
        // A session in between changes nothing of it; one that is the last thing of the evening does.
        assertThat(squad.placed("mobility", "2027-03-02T23:05").found("night-rest"))
                .containsExactly(must(6.58, 8));
    }

    @Test
    void night_rest_as_a_want_costs_a_point_an_hour_and_its_hours_can_be_changed() {
        Squad squad = overnight("2027-03-03T05:00");
        assertThat(squad.level("night-rest", RuleLevel.WANT).found("night-rest"))
                .containsExactly(want(2, 6, 8));
        assertThat(squad.rule("night-rest", RuleLevel.WANT, 2.0, Map.of("hours", 9))
                        .found("night-rest"))
                .containsExactly(want(6, 6, 9));
        assertThat(squad.groupNumber("night-rest", "hours", 6).found("night-rest"))
                .isEmpty();
    }

    @Test
    void night_rest_what_only_takes_time_is_no_training() {
        Squad squad = squad().commitment("lecture", null, "2027-03-02T22:30")
                .placed("technique", "2027-03-03T06:00")
                .dose(Dose.FULL);
        assertThat(squad.found("night-rest")).isEmpty();
    }

    @Test
    void facility_fits_any_of_the_kinds_will_do() {
        Squad squad = squad().facility("sports-hall", FacilityKind.HALL, FacilityKind.GYM);
        assertThat(squad.placed("acceleration", "2027-03-02T10:00")
                        .at("sports-hall")
                        .found("facility-fits"))
                .isEmpty();
    }

    /** Ash, a sprinter, comes for treatment while the seven sprinters lift: the squad has nothing to do with it. */
    @Test
    void facility_room_concerns_those_who_are_there() {
        Squad squad = squad().group("sprinters")
                .heads(7)
                .athlete("ash", "sprinters")
                .room("weights-room", null, 7)
                .placed("heavy-lower-knee", "2027-03-02T10:00")
                .of("sprinters")
                .commitment("treatment", null, "2027-03-02T10:30")
                .only("ash")
                .at("weights-room");
        assertThat(squad.judged().only("facility-room").groups()).containsExactly("sprinters");
    }
}
