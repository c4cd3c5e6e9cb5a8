package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.must;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Share;

/**
 * Who comes, and whether they are enough: of a squad of ten a session needs eight (expert proposal). Technique takes 30
 * minutes, maximal velocity 65, heavy lower 60, tempo 40.
 */
class AttendanceRulesTest {
    private static final String SESSION = "2027-03-02T10:00";

    private static List<String> sitOut(Squad squad) {
        return squad.judged().of("sits-out").stream()
                .flatMap(finding -> finding.athletes().stream())
                .toList();
    }

    /** Ash works until some minutes after nine; technique begins at ten. */
    private static Squad shift(int minutes) {
        return squad().athlete("ash")
                .commitment("shift", null, "2027-03-02T09:00")
                .only("ash")
                .lasting(minutes)
                .placed("technique", SESSION);
    }

    @Test
    void whoever_works_at_the_time_sits_out_and_the_session_goes_on() {
        assertThat(sitOut(shift(60))).isEmpty();
        assertThat(sitOut(shift(61))).containsExactly("ash");
        assertThat(shift(61).found("one-place-at-a-time")).isEmpty();
        assertThat(shift(61).found("quorum")).isEmpty();
    }

    /** Six points for all (expert proposal), so 0.6 for one of ten. */
    @Test
    void attendance_costs_by_the_share_that_sits_out() {
        assertThat(shift(60).found("attendance")).isEmpty();
        assertThat(shift(61).found("attendance")).containsExactly(want(0.6, 1, 0));
        assertThat(shift(61).found("sits-out")).containsExactly(told(1, 0));
        assertThat(shift(61).heads(20).found("attendance")).containsExactly(want(0.3, 1, 0));
    }

    private static Squad exam(String from, String to) {
        return squad().athlete("ash").busy(from, to).placed("technique", SESSION);
    }

    @Test
    void an_exam_keeps_one_away_from_what_meets_it() {
        assertThat(sitOut(exam("2027-03-02T09:00", "2027-03-02T10:00"))).isEmpty();
        assertThat(sitOut(exam("2027-03-02T09:00", "2027-03-02T10:01"))).containsExactly("ash");
        assertThat(sitOut(exam("2027-03-02T10:29", "2027-03-02T12:00"))).containsExactly("ash");
        assertThat(sitOut(exam("2027-03-02T10:30", "2027-03-02T12:00"))).isEmpty();
    }

    @Test
    void hours_of_ones_own_must_hold_the_whole_session() {
        assertThat(sitOut(squad().athlete("ash").comes("10:00", "10:30").placed("technique", SESSION)))
                .isEmpty();
        assertThat(sitOut(squad().athlete("ash").comes("10:00", "10:29").placed("technique", SESSION)))
                .containsExactly("ash");
        assertThat(sitOut(squad().athlete("ash").comes("10:01", "10:30").placed("technique", SESSION)))
                .containsExactly("ash");
    }

    /** Each with an exam at another time of the day. */
    private static Squad exams(int heads, int number) {
        Squad squad = squad().heads(heads).placed("technique", SESSION);
        for (int i = 0; i < number; i++) {
            squad.athlete("player-" + (char) ('a' + i)).busy("2027-03-02T10:1" + i, "2027-03-02T12:00");
        }
        return squad;
    }

    @Test
    void quorum_of_ten_eight_must_come() {
        assertThat(exams(10, 1).found("quorum")).isEmpty();
        assertThat(exams(10, 2).found("quorum")).isEmpty();
        assertThat(exams(10, 3).found("quorum")).containsExactly(must(7, 8));
        assertThat(exams(10, 3).level("quorum", RuleLevel.WANT).found("quorum")).containsExactly(want(24, 7, 8));
    }

    /** Of nine 7.2 must come, so that one may be missing and not two; all of a group where it says so. */
    @Test
    void quorum_is_never_rounded_down_and_each_group_has_its_own() {
        assertThat(exams(9, 1).found("quorum")).isEmpty();
        assertThat(exams(9, 2).found("quorum")).containsExactly(must(7, 8));
        assertThat(exams(10, 1).quorum(1).found("quorum")).containsExactly(must(9, 10));
        assertThat(exams(10, 3).quorum(0.7).found("quorum")).isEmpty();
    }

    /** The same exam for three of ten is no matter of one by one: the session is not for enough people then. */
    @Test
    void quorum_fails_where_many_have_the_same_exam() {
        Squad squad = squad().placed("technique", SESSION);
        for (String id : List.of("ash", "birch", "cedar")) {
            squad.athlete(id).busy("2027-03-02T10:00", "2027-03-02T12:00");
        }
        assertThat(squad.found("quorum")).containsExactly(must(7, 8));
    }

    /** What as many as three of ten have to do is not theirs alone: two things at once, and nobody yields. */
    @Test
    void what_many_have_to_do_keeps_nobody_away() {
        Squad two = squad().athlete("ash")
                .athlete("birch")
                .commitment("duty", null, SESSION)
                .only("ash", "birch")
                .placed("technique", SESSION);
        assertThat(sitOut(two)).containsExactly("ash", "birch");
        Squad three = squad().athlete("ash")
                .athlete("birch")
                .athlete("cedar")
                .commitment("duty", null, SESSION)
                .only("ash", "birch", "cedar")
                .placed("technique", SESSION);
        assertThat(sitOut(three)).isEmpty();
        assertThat(three.found("one-place-at-a-time")).containsExactly(must(-30, 0));
    }

    private static Squad restricted(int exams) {
        return exams(10, exams)
                .athlete("zelkova")
                .restricted(RestrictionLimit.NONE, "2027-03-02", "2027-03-02", Pathway.ACCELERATION)
                .placed("acceleration", "2027-03-02T10:00");
    }

    /** A clinician's word leaves nine, of whom 7.2 must come; it is told and costs nothing. */
    @Test
    void a_clinicians_word_is_told_and_counts_neither_as_missing_nor_as_coming() {
        assertThat(restricted(0).found("attendance")).isEmpty();
        assertThat(restricted(0).found("sits-out")).containsExactly(told(1, 0));
        assertThat(restricted(1).found("quorum")).isEmpty();
        assertThat(restricted(2).found("quorum")).containsExactly(must(7, 8));
    }

    @Test
    void quorum_a_session_for_nobody_is_none() {
        Squad all = squad().heads(1)
                .athlete("ash")
                .restricted(RestrictionLimit.NONE, "2027-03-02", "2027-03-02", Pathway.ACCELERATION)
                .placed("acceleration", SESSION);
        assertThat(all.found("quorum")).containsExactly(must(0, 1));
        Squad bench = squad().aim("technique", 0, 1, 1).whom(Share.NOT_PLAYED).placed("technique", SESSION);
        assertThat(bench.found("quorum")).containsExactly(must(0, 1));
    }

    /** Ash does not sprint on Tuesday, so that Thursday's 39 hours after it are too few for the nine others only. */
    @Test
    void what_is_sat_out_leaves_nothing_behind() {
        Squad squad = squad().athlete("ash")
                .busy("2027-03-02T16:00", "2027-03-02T19:00")
                .placed("max-velocity", "2027-03-02T16:55")
                .placed("max-velocity", "2027-03-04T09:00");
        assertThat(squad.judged().only("pathway-gap-floor").heads()).isEqualTo(9);
    }

    private static Squad secondClub(String family, String start, String placed, String placedAt) {
        return squad().athlete("ash")
                .commitment("club", family, start)
                .only("ash")
                .placed(placed, placedAt);
    }

    /** 40 hours from maximal sprinting to maximal sprinting: the club's ends on Monday at 18:00. */
    @Test
    void a_second_club_takes_its_hours() {
        assertThat(sitOut(secondClub("max-velocity", "2027-03-01T17:00", "max-velocity", "2027-03-03T09:59")))
                .containsExactly("ash");
        assertThat(sitOut(secondClub("max-velocity", "2027-03-01T17:00", "max-velocity", "2027-03-03T10:00")))
                .isEmpty();
    }

    /** Eight hours of sleep: the club's evening ends at 23:00. */
    @Test
    void a_late_evening_takes_its_night() {
        assertThat(sitOut(secondClub("technique", "2027-03-01T22:00", "technique", "2027-03-02T06:59")))
                .containsExactly("ash");
        assertThat(sitOut(secondClub("technique", "2027-03-01T22:00", "technique", "2027-03-02T07:00")))
                .isEmpty();
    }

    /** Two visits a day: a third would be the squad's in the evening. */
    @Test
    void a_third_visit_is_one_too_many() {
        Squad squad = squad().athlete("ash")
                .commitment("school", "trunk-and-balance", "2027-03-02T08:00")
                .only("ash")
                .placed("technique", "2027-03-02T12:00");
        assertThat(sitOut(squad)).isEmpty();
        squad.placed("tempo-run", "2027-03-02T18:00");
        assertThat(squad.judged().only("sits-out").placements()).containsExactly("squad/tempo-run/2027-03-01/1");
        assertThat(squad.found("visits-per-day")).isEmpty();
    }

    @Test
    void a_third_visit_that_all_have_is_a_breach_for_all() {
        Squad squad = squad().athlete("ash")
                .placed("technique", "2027-03-02T08:00")
                .placed("technique", "2027-03-02T12:00")
                .placed("tempo-run", "2027-03-02T18:00");
        assertThat(sitOut(squad)).isEmpty();
        assertThat(squad.found("visits-per-day")).containsExactly(must(3, 2));
    }

    @Test
    void a_fourth_high_day_running_is_one_too_many() {
        Squad squad = squad().athlete("ash")
                .commitment("club", "acceleration", "2027-03-01T10:00")
                .only("ash")
                .placed("heavy-lower-knee", "2027-03-02T10:00")
                .placed("max-velocity", "2027-03-03T10:00");
        assertThat(sitOut(squad)).isEmpty();
        squad.placed("heavy-lower-hip", "2027-03-04T10:00");
        assertThat(sitOut(squad)).containsExactly("ash");
        assertThat(squad.found("four-high-days")).isEmpty();
    }

    @Test
    void a_high_day_beyond_the_most_of_the_week_is_one_too_many() {
        Squad squad = squad().highDays(0, 2, 2)
                .athlete("ash")
                .commitment("club", "heavy-lower-knee", "2027-03-01T10:00")
                .only("ash")
                .placed("max-velocity", "2027-03-03T10:00");
        assertThat(sitOut(squad)).isEmpty();
        squad.placed("heavy-lower-knee", "2027-03-05T10:00");
        assertThat(sitOut(squad)).containsExactly("ash");
        assertThat(squad.found("high-days-most")).isEmpty();
    }

    /** The squad is free on Sunday, when Ash's club trains: Saturday is what Ash has left. */
    @Test
    void the_week_keeps_its_free_day() {
        Squad squad = squad().athlete("ash")
                .commitment("club", "technique", "2027-03-07T10:00")
                .only("ash");
        for (int day = 1; day <= 5; day++) {
            squad.placed("technique", "2027-03-0" + day + "T10:00");
        }
        assertThat(sitOut(squad)).isEmpty();
        squad.placed("technique", "2027-03-06T10:00");
        assertThat(sitOut(squad)).containsExactly("ash");
        assertThat(squad.found("free-day")).isEmpty();
    }

    /** Forty hours from lower-body hypertrophy to the next hard work: the club's ends on Monday at 18:00. */
    @Test
    void hard_work_of_ones_own_takes_the_hours_to_the_next() {
        assertThat(sitOut(secondClub("lower-hypertrophy", "2027-03-01T17:00", "acceleration", "2027-03-03T09:59")))
                .containsExactly("ash");
        assertThat(sitOut(secondClub("lower-hypertrophy", "2027-03-01T17:00", "acceleration", "2027-03-03T10:00")))
                .isEmpty();
        assertThat(sitOut(secondClub("acceleration", "2027-03-03T10:00", "lower-hypertrophy", "2027-03-01T17:01")))
                .containsExactly("ash");
    }

    /** A guest of the sprinters plays for the squad, which comes first, whatever the hour. */
    private static Squad guest(String squads, String sprinters) {
        return squad().athlete("ash", Squad.ID, "sprinters")
                .placed("technique", squads)
                .group("sprinters")
                .heads(8)
                .placed("trunk-and-balance", sprinters)
                .of("sprinters");
    }

    @Test
    void of_two_groups_at_once_the_main_one_comes_first() {
        assertThat(guest(SESSION, "2027-03-02T10:20").judged().only("sits-out").placements())
                .containsExactly("sprinters/trunk-and-balance/2027-03-01/1");
        assertThat(guest("2027-03-02T10:20", SESSION).judged().only("sits-out").placements())
                .containsExactly("sprinters/trunk-and-balance/2027-03-01/1");
        assertThat(sitOut(guest(SESSION, "2027-03-02T10:30"))).isEmpty();
    }

    /** One of four is more than a fifth: the sprinters cannot do without Ash, and something must give way. */
    @Test
    void a_group_that_cannot_do_without_somebody_is_not_left() {
        Squad four = guest(SESSION, "2027-03-02T10:20").heads(4);
        assertThat(sitOut(four)).isEmpty();
        assertThat(four.found("one-place-at-a-time")).containsExactly(must(-10, 0));
        Squad five = guest(SESSION, "2027-03-02T10:20").heads(5);
        assertThat(sitOut(five)).containsExactly("ash");
    }

    /** Maximal sprinting ends 40 hours before a match (Owen 2022: none on the two days before). */
    @Test
    void a_match_of_the_main_group_takes_the_hours_before_and_after() {
        Squad before = squad().athlete("ash", Squad.ID, "sprinters")
                .fixture("cup-tie", "2027-03-06T11:05")
                .group("sprinters")
                .placed("max-velocity", "2027-03-04T18:00")
                .of("sprinters");
        assertThat(sitOut(before)).isEmpty();
        before.placed("max-velocity", "2027-03-04T18:01").of("sprinters");
        assertThat(before.judged().of("sits-out"))
                .extracting(finding -> finding.fixtures())
                .isNotEmpty();
        Squad bench = squad().athlete("ash", Squad.ID, "sprinters")
                .fixture("cup-tie", "2027-03-06T11:05")
                .expecting("ash", 0)
                .group("sprinters")
                .placed("max-velocity", "2027-03-04T18:01")
                .of("sprinters");
        assertThat(sitOut(bench)).isEmpty();
    }

    /** Two of ten did not play: what is for them alone is theirs, and the earlier of two sessions is attended. */
    @Test
    void along_a_line_the_later_session_yields() {
        Squad topUpFirst = bench().placed("top-up-run", SESSION).placed("technique", "2027-03-02T10:10");
        assertThat(topUpFirst.judged().only("sits-out").placements()).containsExactly("squad/technique/2027-03-01/1");
        Squad topUpLast = bench().placed("technique", SESSION).placed("top-up-run", "2027-03-02T10:10");
        assertThat(sitOut(topUpLast)).isEmpty();
        assertThat(topUpLast.found("one-place-at-a-time")).containsExactly(must(-20, 0));
    }

    private static Squad bench() {
        return squad().aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .athlete("ash")
                .athlete("birch")
                .done("fixture", "2027-02-27T15:00")
                .without("ash", "birch");
    }

    /** A rule that is no must keeps nobody away. */
    @Test
    void only_musts_keep_somebody_away() {
        assertThat(sitOut(shift(61).level("one-place-at-a-time", RuleLevel.WANT)))
                .isEmpty();
        assertThat(shift(61).level("one-place-at-a-time", RuleLevel.WANT).found("one-place-at-a-time"))
                .containsExactly(want(2.4, -1, 0));
        assertThat(sitOut(shift(61).level("one-place-at-a-time", RuleLevel.OFF)))
                .isEmpty();
    }

    @Test
    void whoever_sits_out_is_not_asked_for_marks() {
        assertThat(squad().athlete("ash").placed("acceleration", SESSION).found("marks-old"))
                .hasSize(1);
        assertThat(squad().athlete("ash")
                        .busy("2027-03-02T10:00", "2027-03-02T12:00")
                        .placed("acceleration", SESSION)
                        .found("marks-old"))
                .isEmpty();
    }

    /** Where a coach makes a want of it each reason costs its share. */
    @Test
    void sits_out_as_a_want() {
        assertThat(shift(61).level("sits-out", RuleLevel.WANT).found("sits-out"))
                .containsExactly(want(0.4, 1, 0));
        Squad both = restricted(1).level("sits-out", RuleLevel.WANT);
        assertThat(both.judged().of("sits-out")).hasSize(3);
    }
}
