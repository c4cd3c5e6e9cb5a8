package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.StaffMember;

/** What the coach would rather have, and the plan that people already know. All points are expert proposals. */
class PreferenceRulesTest {
    private static final String TIME = "preferred-time";
    private static final String PLACE = "preferred-facility";
    private static final String KEEP = "keep-plan";
    private static final String SAME_LEAD = "same-lead";

    /** Heavy lower for an hour, wanted between 16:00 and 19:00. */
    private static Squad lifting(String start) {
        return squad().aim("heavy-lower-knee", 0, 1, 1)
                .prefers("16:00", "19:00")
                .placed("heavy-lower-knee", start);
    }

    @Test
    void preferred_time_the_whole_session_lies_inside() {
        assertThat(lifting("2027-03-02T15:55").found(TIME)).containsExactly(want(2, 5, 0));
        assertThat(lifting("2027-03-02T16:00").found(TIME)).isEmpty();
        assertThat(lifting("2027-03-02T18:00").found(TIME)).isEmpty();
        assertThat(lifting("2027-03-02T18:05").found(TIME)).containsExactly(want(2, 5, 0));
    }

    @Test
    void preferred_time_may_have_one_end_only() {
        assertThat(lifting("2027-03-02T20:00").prefers("16:00", null).found(TIME))
                .isEmpty();
        assertThat(lifting("2027-03-02T08:00").prefers(null, "19:00").found(TIME))
                .isEmpty();
        assertThat(lifting("2027-03-02T15:30").prefers("16:00", null).found(TIME))
                .containsExactly(want(2, 30, 0));
        assertThat(lifting("2027-03-02T15:30")
                        .prefers(null, null, "weights-room")
                        .found(TIME))
                .isEmpty();
    }

    @Test
    void preferred_time_goes_by_the_clock_after_it_has_changed() {
        Squad squad = squad().week("2027-03-22")
                .aim("heavy-lower-knee", 0, 1, 1)
                .prefers("16:00", "19:00")
                .placed("heavy-lower-knee", "2027-03-28T16:00");
        assertThat(squad.found(TIME)).isEmpty();
        Squad early = squad().week("2027-10-25")
                .aim("heavy-lower-knee", 0, 1, 1)
                .prefers("16:00", "19:00")
                .placed("heavy-lower-knee", "2027-10-31T15:55");
        assertThat(early.found(TIME)).containsExactly(want(2, 5, 0));
    }

    @Test
    void preferred_time_and_facility_cost_the_same_for_few_heads_and_pins() {
        Squad few = squad().athlete("ash")
                .aim("acceleration", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .prefers("16:00", "19:00", "sports-hall")
                .facility("sports-hall", FacilityKind.HALL)
                .done("fixture", "2027-02-27T15:00")
                .without("ash")
                .placed("acceleration", "2027-03-02T10:00")
                .pinned();
        assertThat(few.found(TIME)).containsExactly(want(2, 360, 0));
        assertThat(few.found(PLACE)).containsExactly(want(2, 1, 0));
    }

    @Test
    void preferred_time_its_points_and_weight_can_be_changed() {
        Squad squad = lifting("2027-03-02T15:00").number(TIME, "points", 3);
        assertThat(squad.found(TIME)).containsExactly(want(3, 60, 0));
        assertThat(squad.groupRule(TIME, null, 0.5, Map.of()).found(TIME)).containsExactly(want(1.5, 60, 0));
    }

    private static Squad acceleratingAt(@Nullable String place, String... preferred) {
        return squad().facility("sports-hall", FacilityKind.HALL)
                .aim("acceleration", 0, 1, 1)
                .prefers(null, null, preferred)
                .placed("acceleration", "2027-03-02T10:00")
                .at(place);
    }

    @Test
    void preferred_facility_any_of_those_named_will_do() {
        assertThat(acceleratingAt("turf-pitch", "sports-hall").found(PLACE)).containsExactly(want(2, 1, 0));
        assertThat(acceleratingAt("sports-hall", "sports-hall").found(PLACE)).isEmpty();
        assertThat(acceleratingAt("sports-hall", "turf-pitch", "sports-hall").found(PLACE))
                .isEmpty();
        assertThat(acceleratingAt("turf-pitch").found(PLACE)).isEmpty();
        assertThat(lifting("2027-03-02T16:00")
                        .prefers(null, null, "weights-room")
                        .found(PLACE))
                .isEmpty();
    }

    @Test
    void preferred_facility_nowhere_in_particular_is_not_the_place_preferred() {
        Squad squad = squad().aim("technique", 0, 1, 1)
                .prefers(null, null, "turf-pitch")
                .placed("technique", "2027-03-02T10:00");
        assertThat(squad.found(PLACE)).containsExactly(want(2, 1, 0));
        assertThat(squad.at("turf-pitch").found(PLACE)).isEmpty();
    }

    @Test
    void preferred_facility_its_points_can_be_changed() {
        Squad squad = acceleratingAt("turf-pitch", "sports-hall").number(PLACE, "points", 6);
        assertThat(squad.found(PLACE)).containsExactly(want(6, 1, 0));
        assertThat(squad.groupNumber(PLACE, "points", 1).found(PLACE)).containsExactly(want(1, 1, 0));
    }

    /** Heavy lower on Tuesday at 16:00 in the weights room, as people know it. */
    private static Squad known() {
        return lifts("2027-03-02T16:00", "weights-room", Dose.FULL);
    }

    private static Squad lifts(String start, String room, Dose dose) {
        return squad().facility("club-gym", FacilityKind.GYM)
                .aim("heavy-lower-knee", 0, 1, 1)
                .doses(Dose.FULL, Dose.REDUCED)
                .placed("heavy-lower-knee", start)
                .at(room)
                .dose(dose);
    }

    private static Squad without() {
        return squad().facility("club-gym", FacilityKind.GYM)
                .aim("heavy-lower-knee", 0, 1, 1)
                .doses(Dose.FULL, Dose.REDUCED);
    }

    @Test
    void keep_plan_a_change_in_a_draft_costs_two_whatever_it_is() {
        assertThat(known().closeTo(known(), null).found(KEEP)).isEmpty();
        for (Squad changed : new Squad[] {
            lifts("2027-03-03T16:00", "weights-room", Dose.FULL),
            lifts("2027-03-02T17:00", "weights-room", Dose.FULL),
            lifts("2027-03-02T16:00", "club-gym", Dose.FULL),
            lifts("2027-03-02T16:00", "weights-room", Dose.REDUCED),
            without()
        }) {
            assertThat(changed.closeTo(known(), null).found(KEEP)).containsExactly(want(2, 1, 0));
        }
    }

    @Test
    void keep_plan_once_given_out_another_day_is_dearer_than_an_hour_and_a_place() {
        Squad given = known().published("2027-02-26T12:00");
        assertThat(lifts("2027-03-03T16:00", "weights-room", Dose.FULL)
                        .closeTo(given, null)
                        .found(KEEP))
                .containsExactly(want(24, 1, 0));
        assertThat(without().closeTo(given, null).found(KEEP)).containsExactly(want(24, 1, 0));
        assertThat(lifts("2027-03-02T17:00", "club-gym", Dose.FULL)
                        .closeTo(given, null)
                        .found(KEEP))
                .containsExactly(want(8, 1, 0));
        assertThat(lifts("2027-03-02T16:00", "weights-room", Dose.REDUCED)
                        .closeTo(given, null)
                        .found(KEEP))
                .containsExactly(want(8, 1, 0));
        assertThat(lifts("2027-03-02T16:00", "club-gym", Dose.FULL)
                        .closeTo(given, null)
                        .found(KEEP))
                .containsExactly(want(3, 1, 0));
    }

    @Test
    void keep_plan_a_session_within_forty_eight_hours_costs_double() {
        Squad given = known().published("2027-02-26T12:00");
        assertThat(without().closeTo(given, "2027-02-28T15:55").found(KEEP)).containsExactly(want(24, 1, 0));
        assertThat(without().closeTo(given, "2027-02-28T16:00").found(KEEP)).containsExactly(want(48, 1, 0));
        assertThat(without().closeTo(given, "2027-03-02T16:00").found(KEEP)).containsExactly(want(48, 1, 0));
        assertThat(without().closeTo(given, "2027-03-02T16:05").found(KEEP)).containsExactly(want(24, 1, 0));
        assertThat(without().closeTo(known(), "2027-03-02T12:00").found(KEEP)).containsExactly(want(2, 1, 0));
    }

    @Test
    void keep_plan_its_hours_are_elapsed_when_the_clocks_change() {
        Squad given = squad().week("2027-03-22")
                .aim("heavy-lower-knee", 0, 1, 1)
                .placed("heavy-lower-knee", "2027-03-28T16:00")
                .published("2027-03-19T12:00");
        Squad gone = squad().week("2027-03-22").aim("heavy-lower-knee", 0, 1, 1);
        assertThat(gone.closeTo(given, "2027-03-26T15:00").found(KEEP)).containsExactly(want(48, 1, 0));
        assertThat(gone.closeTo(given, "2027-03-26T14:55").found(KEEP)).containsExactly(want(24, 1, 0));
    }

    @Test
    void keep_plan_its_numbers_can_be_changed() {
        Squad given = known().published("2027-02-26T12:00");
        assertThat(without()
                        .number(KEEP, "draftPoints", 5)
                        .closeTo(known(), null)
                        .found(KEEP))
                .containsExactly(want(5, 1, 0));
        assertThat(without()
                        .groupNumber(KEEP, "dayPoints", 9)
                        .closeTo(given, null)
                        .found(KEEP))
                .containsExactly(want(9, 1, 0));
        assertThat(without()
                        .number(KEEP, "soonHours", 12)
                        .closeTo(given, "2027-03-01T16:00")
                        .found(KEEP))
                .containsExactly(want(24, 1, 0));
        assertThat(without()
                        .groupNumber(KEEP, "soonFactor", 3)
                        .closeTo(given, "2027-03-01T16:00")
                        .found(KEEP))
                .containsExactly(want(72, 1, 0));
    }

    @Test
    void keep_plan_asks_nothing_where_no_plan_was_known() {
        assertThat(known().found(KEEP)).isEmpty();
        assertThat(known().published("2027-02-26T12:00").found(KEEP)).isEmpty();
    }

    /** The clock jumps from 01:00 to 02:00: heavy lower from 00:30 ends at 02:30, half an hour too late. */
    @Test
    void preferred_time_goes_by_the_clock_while_it_changes() {
        Squad squad = squad().week("2027-03-22")
                .aim("heavy-lower-knee", 0, 1, 1)
                .prefers("00:00", "02:00")
                .placed("heavy-lower-knee", "2027-03-28T00:30");
        assertThat(squad.found("preferred-time")).containsExactly(want(2, 30, 0));
    }

    private static Squad coached(String... leads) {
        Squad squad =
                squad().staff("ash", "technique").staff("birch", "technique").aim("technique", 0, 3, 4);
        for (int i = 0; i < leads.length; i++) {
            squad.placed("technique", "2027-03-0" + (i + 1) + "T10:00");
            if (!leads[i].equals("anyone")) {
                squad.ledBy(leads[i]);
            }
        }
        return squad;
    }

    /** Common sense of the trade; expert proposal. */
    @Test
    void same_lead_each_change_in_a_week_costs_one() {
        assertThat(coached("ash", "ash", "ash").found(SAME_LEAD)).isEmpty();
        assertThat(coached("ash", "birch").found(SAME_LEAD)).containsExactly(want(1, 2, 1));
        assertThat(coached("ash", "birch", "birch").found(SAME_LEAD)).containsExactly(want(1, 2, 1));
        assertThat(coached("ash", "birch", "ash").found(SAME_LEAD)).containsExactly(want(1, 2, 1), want(1, 2, 1));
        assertThat(coached("birch", "ash").pinned().backwards().found(SAME_LEAD))
                .containsExactly(want(1, 2, 1));
    }

    @Test
    void same_lead_two_a_week_are_enough_for_a_change() {
        Squad two = squad().staff("ash", "technique")
                .staff("birch", "technique")
                .aim("technique", 0, 2, 2)
                .placed("technique", "2027-03-01T10:00")
                .ledBy("ash")
                .placed("technique", "2027-03-02T10:00")
                .ledBy("birch");
        assertThat(two.found(SAME_LEAD)).containsExactly(want(1, 2, 1));
    }

    @Test
    void same_lead_is_of_one_aim_and_one_week() {
        Squad nextWeek =
                coached("ash").days(14).placed("technique", "2027-03-09T10:00").ledBy("birch");
        assertThat(nextWeek.found(SAME_LEAD)).isEmpty();
        Squad otherAim = coached("ash")
                .aim("mobility", 0, 1, 1)
                .placed("mobility", "2027-03-02T10:00")
                .ledBy("birch");
        assertThat(otherAim.found(SAME_LEAD)).isEmpty();
        Squad extra = coached("ash")
                .group("sprinters")
                .placed("technique", "2027-03-02T12:00")
                .of("sprinters");
        assertThat(extra.ledBy("birch").found(SAME_LEAD)).isEmpty();
    }

    @Test
    void same_lead_who_is_not_named_leads_by_the_plan_of_the_staff() {
        assertThat(coached("anyone", "anyone").found(SAME_LEAD)).isEmpty();
        Squad away = coached("anyone")
                .staff(new StaffMember(
                        "alder",
                        "Alder",
                        List.of("technique"),
                        1,
                        List.of(),
                        List.of(Squad.absence("2027-03-02T00:00", "2027-03-02T23:00"))));
        assertThat(away.placed("technique", "2027-03-02T10:00").found(SAME_LEAD))
                .containsExactly(want(1, 2, 1));
    }

    @Test
    void same_lead_its_points_can_be_changed() {
        assertThat(coached("ash", "birch").number(SAME_LEAD, "points", 3).found(SAME_LEAD))
                .containsExactly(want(3, 2, 1));
        assertThat(coached("ash", "birch").weight(SAME_LEAD, 0.5).found(SAME_LEAD))
                .containsExactly(want(0.5, 2, 1));
    }
}
