package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.plan.Finding;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Share;

/**
 * Who carries what of a session: limits given by a clinician, those who played and those who did not, and athletes of two
 * groups. Told through the order of a day, which costs 8 points shared by those who do both sessions (expert proposal).
 */
class WhoTakesPartTest {
    private static final String FRESHEST = "freshest-first";

    /** Heavy lower in the morning and acceleration after, and what Ash may do on that day. */
    private static Squad ashMay(RestrictionLimit upTo, Dose dose, Pathway... pathways) {
        return squad().placed("heavy-lower-knee", "2027-03-02T10:00")
                .placed("acceleration", "2027-03-02T14:00")
                .dose(dose)
                .athlete("ash")
                .restricted(upTo, "2027-03-02", "2027-03-02", pathways);
    }

    private static int heads(Squad squad) {
        return squad.judged().only(FRESHEST).heads();
    }

    @Test
    void up_to_light_sits_out_every_dose_of_what_is_high() {
        assertThat(heads(ashMay(RestrictionLimit.LIGHT, Dose.FULL, Pathway.ACCELERATION)))
                .isEqualTo(9);
        assertThat(heads(ashMay(RestrictionLimit.LIGHT, Dose.MICRO, Pathway.ACCELERATION)))
                .isEqualTo(9);
        assertThat(ashMay(RestrictionLimit.LIGHT, Dose.FULL, Pathway.ACCELERATION)
                        .found(FRESHEST))
                .containsExactly(want(7.2, 4, 1));
    }

    @Test
    void up_to_micro_takes_part_in_micro_doses_only() {
        assertThat(heads(ashMay(RestrictionLimit.MICRO, Dose.FULL, Pathway.ACCELERATION)))
                .isEqualTo(9);
        assertThat(heads(ashMay(RestrictionLimit.MICRO, Dose.REDUCED, Pathway.ACCELERATION)))
                .isEqualTo(9);
        assertThat(heads(ashMay(RestrictionLimit.MICRO, Dose.MICRO, Pathway.ACCELERATION)))
                .isEqualTo(10);
    }

    /** Acceleration trains the knee too, lightly. */
    @Test
    void none_sits_out_what_is_only_light_as_well() {
        Squad light = squad().placed("technique", "2027-03-02T16:00")
                .placed("acceleration", "2027-03-02T10:00")
                .placed("tempo-run", "2027-03-02T08:00")
                .athlete("ash");
        light.restricted(RestrictionLimit.LIGHT, "2027-03-02", "2027-03-02", Pathway.KNEE_DOMINANT);
        assertThat(light.judged().of(FRESHEST)).extracting(Finding::heads).containsExactly(10, 10, 10);
        light.restricted(RestrictionLimit.NONE, "2027-03-02", "2027-03-02", Pathway.KNEE_DOMINANT);
        assertThat(light.judged().of(FRESHEST)).extracting(Finding::heads).containsExactlyInAnyOrder(10, 9, 9);
    }

    @Test
    void a_limit_holds_on_its_dates_for_its_qualities() {
        Squad before = ashMay(RestrictionLimit.NONE, Dose.FULL, Pathway.AEROBIC);
        assertThat(heads(before)).isEqualTo(10);
        Squad other = squad().placed("heavy-lower-knee", "2027-03-03T10:00")
                .placed("acceleration", "2027-03-03T14:00")
                .athlete("ash")
                .restricted(RestrictionLimit.LIGHT, "2027-02-20", "2027-03-02", Pathway.ACCELERATION)
                .restricted(RestrictionLimit.LIGHT, "2027-03-04", "2027-03-09", Pathway.ACCELERATION);
        assertThat(heads(other)).isEqualTo(10);
    }

    @Test
    void a_limit_holds_for_practice_too() {
        Squad squad = squad().placed("heavy-lower-knee", "2027-03-02T10:00")
                .commitment("club-night", "acceleration", "2027-03-02T18:00")
                .athlete("ash")
                .restricted(RestrictionLimit.MICRO, "2027-03-02", "2027-03-02", Pathway.ACCELERATION);
        assertThat(heads(squad)).isEqualTo(9);
    }

    /** Ash did not play last Saturday. The group's latest fixture before a session decides whose it is. */
    private static Squad twoShares(Share speed, String start) {
        return squad().aim("acceleration", 0, 1, 1)
                .whom(speed)
                .athlete("ash")
                .done("fixture", "2027-02-27T15:00")
                .without("ash")
                .placed("acceleration", start);
    }

    @Test
    void a_session_for_those_who_played_or_did_not_is_theirs_alone() {
        assertThat(heads(twoShares(Share.PLAYED, "2027-03-02T14:00").placed("heavy-lower-knee", "2027-03-02T10:00")))
                .isEqualTo(9);
        assertThat(heads(
                        twoShares(Share.NOT_PLAYED, "2027-03-02T14:00").placed("heavy-lower-knee", "2027-03-02T10:00")))
                .isEqualTo(1);
    }

    @Test
    void the_latest_fixture_before_the_session_decides() {
        Squad squad = twoShares(Share.NOT_PLAYED, "2027-03-05T14:00")
                .placed("heavy-lower-knee", "2027-03-05T10:00")
                .athlete("birch")
                .fixture("midweek", "2027-03-03T15:00")
                .expecting("birch", 0);
        assertThat(squad.judged().only(FRESHEST).athletes()).containsExactly("birch");
    }

    @Test
    void where_there_was_no_fixture_everybody_counts_as_having_played() {
        Squad squad = squad().aim("acceleration", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .placed("acceleration", "2027-03-02T14:00")
                .placed("heavy-lower-knee", "2027-03-02T10:00");
        assertThat(squad.found(FRESHEST)).isEmpty();
        assertThat(heads(squad.whom(Share.PLAYED))).isEqualTo(10);
    }

    @Test
    void headcount_is_never_less_than_those_listed_and_unnamed_people_play_in_full() {
        Squad listed = ashMay(RestrictionLimit.LIGHT, Dose.FULL, Pathway.ACCELERATION)
                .heads(1)
                .athlete("birch")
                .athlete("elm");
        assertThat(heads(listed)).isEqualTo(2);
        assertThat(listed.judged().only(FRESHEST).athletes()).containsExactly("birch", "elm");
        Squad unnamed = squad().athlete("ash")
                .fixture("cup-tie", "2027-03-06T10:00")
                .expecting("ash", 0)
                .placed("max-velocity", "2027-03-04T18:00");
        assertThat(unnamed.judged().only("before-fixture").heads()).isEqualTo(9);
    }

    @Test
    void whoever_was_not_there_carries_nothing_of_it() {
        Squad squad = squad().heads(2)
                .athlete("ash")
                .athlete("birch")
                .done("max-velocity", "2027-02-28T17:00")
                .without("ash")
                .placed("max-velocity", "2027-03-02T09:00");
        assertThat(squad.judged().only("pathway-gap-floor").athletes()).containsExactly("birch");
        assertThat(squad.found("pathway-gap")).containsExactly(want(23, 39, 68));
    }

    /** Ash, a sprinter first, does the squad's sessions as well: the days are told to the sprinters. */
    @Test
    void an_athlete_of_two_groups_has_the_days_of_both_under_the_first() {
        Squad squad = squad().quorum(1)
                .group("sprinters")
                .heads(4)
                .athlete("ash", "sprinters", Squad.ID)
                .placed("technique", "2027-03-02T08:00")
                .placed("trunk-and-balance", "2027-03-02T12:00")
                .placed("mobility", "2027-03-02T18:00")
                .of("sprinters");
        Finding finding = squad.judged().only("visits-per-day");
        assertThat(finding.groups()).containsExactly("sprinters");
        assertThat(finding.athletes()).containsExactly("ash");
        assertThat(finding.heads()).isEqualTo(1);
    }

    @Test
    void extra_sessions_keep_the_minutes_that_the_coach_gave_them() {
        Squad squad =
                squad().placed("technique", "2027-03-02T10:00").lasting(90).placed("mobility", "2027-03-02T11:25");
        assertThat(squad.judged().only("one-place-at-a-time").measured()).isEqualTo(-5);
        Squad aim = squad().aim("technique", 0, 1, 1)
                .mainMinutes(45)
                .placed("technique", "2027-03-02T10:00")
                .lasting(90)
                .placed("mobility", "2027-03-02T10:50");
        assertThat(aim.judged().only("one-place-at-a-time").measured())
                .as("an aim's session takes the minutes of the aim: 10 and 45")
                .isEqualTo(-5);
        assertThat(List.of(aim.judged().judged().plan().placements().get(0).minutes()))
                .containsExactly(55);
    }
}
