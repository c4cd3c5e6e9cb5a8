package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Share;

/**
 * Who has more to do than the others sits out what would be too much of a day, a run of days or a week, but only where what
 * is theirs alone has a part in it; what is too much for all keeps nobody away.
 */
class SittingOutTest {
    private static List<String> sitOut(Squad squad) {
        return squad.judged().of("sits-out").stream()
                .flatMap(finding -> finding.athletes().stream())
                .toList();
    }

    /** Ash's own, under a name of its own. */
    private static Squad club(Squad squad, String family, String start) {
        return squad.commitment("club-" + start, family, start).only("ash");
    }

    private static Squad ash() {
        return squad().athlete("ash");
    }

    private static Squad daily(Squad squad, String month, int first, int last) {
        for (int day = first; day <= last; day++) {
            squad.placed("technique", month + (day < 10 ? "0" : "") + day + "T10:00");
        }
        return squad;
    }

    private static final String MARCH = "2027-03-";

    private static Squad thirdVisit() {
        return club(ash(), "trunk-and-balance", "2027-03-02T08:00")
                .placed("technique", "2027-03-02T12:00")
                .placed("tempo-run", "2027-03-02T18:00");
    }

    /** Four days running: acceleration, the knee, maximal speed and the hip. */
    private static Squad fourthHighDay() {
        return club(ash(), "acceleration", "2027-03-01T10:00")
                .placed("heavy-lower-knee", "2027-03-02T10:00")
                .placed("max-velocity", "2027-03-03T10:00")
                .placed("heavy-lower-hip", "2027-03-04T10:00");
    }

    private static Squad thirdHighDay() {
        return club(ash().highDays(0, 2, 2), "heavy-lower-knee", "2027-03-01T10:00")
                .placed("max-velocity", "2027-03-03T10:00")
                .placed("heavy-lower-knee", "2027-03-05T10:00");
    }

    private static Squad noFreeDay() {
        return daily(club(ash(), "technique", "2027-03-07T10:00"), MARCH, 1, 6);
    }

    private static Squad hardWorkTooNear() {
        return club(ash(), "lower-hypertrophy", "2027-03-01T17:00").placed("acceleration", "2027-03-03T09:00");
    }

    @Test
    void what_is_only_wanted_of_days_and_weeks_keeps_nobody_away() {
        assertThat(sitOut(thirdVisit())).containsExactly("ash");
        assertThat(sitOut(thirdVisit().level("visits-per-day", RuleLevel.WANT))).isEmpty();
        assertThat(sitOut(fourthHighDay())).containsExactly("ash");
        assertThat(sitOut(fourthHighDay().level("four-high-days", RuleLevel.WANT)))
                .isEmpty();
        assertThat(sitOut(thirdHighDay())).containsExactly("ash");
        assertThat(sitOut(thirdHighDay().level("high-days-most", RuleLevel.WANT)))
                .isEmpty();
        assertThat(sitOut(noFreeDay())).containsExactly("ash");
        assertThat(sitOut(noFreeDay().level("free-day", RuleLevel.WANT))).isEmpty();
        assertThat(sitOut(hardWorkTooNear())).containsExactly("ash");
        assertThat(sitOut(hardWorkTooNear().level("high-block-floor", RuleLevel.WANT)))
                .isEmpty();
    }

    /** A shift is no visit. */
    @Test
    void visits_that_are_too_many_for_all_keep_nobody_away() {
        Squad squad = club(ash(), null, "2027-03-02T21:00")
                .placed("technique", "2027-03-02T08:00")
                .placed("technique", "2027-03-02T12:00")
                .placed("tempo-run", "2027-03-02T18:00");
        assertThat(sitOut(squad)).isEmpty();
        assertThat(squad.found("visits-per-day")).isNotEmpty();
    }

    /** Mobility of one's own takes no free day from a week. */
    @Test
    void a_week_that_leaves_nobody_a_free_day_keeps_nobody_away() {
        Squad squad = daily(club(ash(), "mobility", "2027-03-02T18:00"), MARCH, 1, 7);
        assertThat(sitOut(squad)).isEmpty();
        assertThat(squad.found("free-day")).isNotEmpty();
    }

    /** Saturday and Sunday are left beside the club's Monday: with Saturday's session there is still one. */
    @Test
    void who_has_a_free_day_left_comes() {
        assertThat(sitOut(daily(club(ash(), "technique", "2027-03-01T10:00"), MARCH, 2, 6)))
                .isEmpty();
    }

    @Test
    void each_week_has_a_free_day_of_its_own() {
        assertThat(sitOut(daily(club(ash().days(14), "technique", "2027-03-14T10:00"), MARCH, 8, 13)))
                .containsExactly("ash");
    }

    /** Away by night to a match that begins at three on the second Monday: the journey takes the Sunday. */
    private static Squad nightJourney(String family, int minutes, String... squads) {
        return squad().days(14)
                .athlete("ash", Squad.ID, "sprinters")
                .fixture("night-tie", "2027-03-08T03:00")
                .of(squads)
                .travelling(minutes, 0)
                .commitment("club", family, "2027-03-02T18:00")
                .only("ash");
    }

    private static final List<String> WEEK = List.of("01", "02", "03", "04", "05", "06");

    private static Squad technique(Squad squad, List<String> dates) {
        dates.forEach(date -> squad.placed("technique", MARCH + date + "T10:00"));
        return squad.group("sprinters").heads(8);
    }

    @Test
    void a_long_journey_of_ones_own_takes_the_free_day() {
        assertThat(sitOut(technique(nightJourney("mobility", 300, "sprinters"), WEEK)))
                .containsExactly("ash");
        assertThat(sitOut(technique(nightJourney("mobility", 60, "sprinters"), WEEK)))
                .isEmpty();
        assertThat(sitOut(technique(nightJourney("mobility", 300, Squad.ID), WEEK)))
                .as("all travel")
                .isEmpty();
    }

    @Test
    void a_match_without_a_long_journey_is_no_reason_where_nobody_has_a_free_day() {
        List<String> all = List.of("01", "02", "03", "04", "05", "06", "07");
        assertThat(sitOut(technique(nightJourney("mobility", 60, "sprinters"), all)))
                .isEmpty();
    }

    private static Squad fourHighDaysForAll(Squad squad) {
        return squad.placed("acceleration", "2027-03-01T10:00")
                .placed("heavy-lower-knee", "2027-03-02T10:00")
                .placed("max-velocity", "2027-03-03T10:00")
                .placed("heavy-lower-hip", "2027-03-04T10:00");
    }

    @Test
    void high_days_running_that_are_too_many_for_all_keep_nobody_away() {
        Squad lesson = fourHighDaysForAll(club(ash(), "technique", "2027-03-07T10:00"));
        assertThat(sitOut(lesson)).isEmpty();
        assertThat(lesson.found("four-high-days")).isNotEmpty();
        assertThat(sitOut(fourHighDaysForAll(club(ash(), null, "2027-03-02T18:00"))))
                .as("a shift is not felt")
                .isEmpty();
        Squad bench = squad().athlete("ash", Squad.ID, "sprinters")
                .fixture("tie", "2027-03-02T19:00")
                .of("sprinters")
                .expecting("ash", 0);
        assertThat(sitOut(fourHighDaysForAll(bench).group("sprinters").heads(8)))
                .as("nor is a match from the bench")
                .isEmpty();
    }

    /** Twenty short visits to the physio between eight and noon are one visit to the eye of the rule. */
    @Test
    void a_day_full_of_small_things_is_read_whole() {
        Squad squad = ash();
        for (int minute = 0; minute < 200; minute += 10) {
            String at = "2027-03-02T" + (8 + minute / 60 < 10 ? "0" : "") + (8 + minute / 60) + ":" + minute % 60 / 10
                    + "0";
            club(squad, "mobility", at).lasting(5);
        }
        assertThat(sitOut(squad.placed("technique", "2027-03-02T14:00"))).isEmpty();
        assertThat(sitOut(squad.placed("tempo-run", "2027-03-02T18:00"))).containsExactly("ash");
    }

    private static Squad clubs(String... days) {
        String[] families = {"acceleration", "heavy-lower-knee", "max-velocity", "heavy-lower-hip"};
        Squad squad = ash();
        for (int i = 0; i < days.length; i++) {
            club(squad, families[i], MARCH + days[i] + "T10:00");
        }
        return squad;
    }

    @Test
    void a_run_of_high_days_is_too_long_whichever_end_is_added() {
        assertThat(sitOut(clubs("02", "03", "04").placed("heavy-lower-hip", "2027-03-01T10:00")))
                .containsExactly("ash");
        assertThat(sitOut(clubs("02", "04", "05").placed("heavy-lower-hip", "2027-03-03T10:00")))
                .containsExactly("ash");
    }

    @Test
    void a_run_that_is_over_or_on_a_day_that_is_high_already_is_made_no_longer() {
        assertThat(sitOut(clubs("01", "02", "03", "04").placed("acceleration", "2027-03-06T10:00")))
                .as("two days later")
                .isEmpty();
        assertThat(sitOut(clubs("01", "02", "03", "04").placed("heavy-upper-push", "2027-03-04T14:00")))
                .as("on a high day")
                .isEmpty();
    }

    @Test
    void high_days_are_counted_from_monday_to_sunday() {
        Squad squad = club(ash().days(14).highDays(0, 2, 2), "heavy-lower-knee", "2027-03-01T10:00");
        assertThat(sitOut(
                        club(squad, "heavy-lower-knee", "2027-03-08T10:00").placed("max-velocity", "2027-03-03T10:00")))
                .isEmpty();
    }

    /** Three at the club are too many already; a session that makes it four is too much nevertheless. */
    @Test
    void a_high_day_more_is_too_many_where_ones_own_are_too_many() {
        assertThat(sitOut(clubs("01", "02", "03").highDays(0, 2, 2).placed("heavy-lower-hip", "2027-03-05T10:00")))
                .containsExactly("ash");
    }

    /** Of the sprinters, four with ash, nobody can be spared. Hypertrophy ends at 18:00 and wants 40 hours. */
    private static Squad sprinters(String acceleration) {
        return squad().athlete("ash", "sprinters", Squad.ID)
                .placed("lower-hypertrophy", "2027-03-01T17:00")
                .of("sprinters")
                .placed("acceleration", acceleration)
                .of("sprinters");
    }

    @Test
    void hard_work_that_is_too_near_already_is_no_reason_to_miss_more_of_it() {
        Squad after = sprinters("2027-03-03T09:00").placed("max-velocity", "2027-03-03T12:00");
        assertThat(sitOut(after.group("sprinters").heads(4))).isEmpty();
        Squad before = sprinters("2027-03-03T09:00").placed("max-velocity", "2027-03-01T12:00");
        assertThat(sitOut(before.group("sprinters").heads(4))).isEmpty();
        Squad nearer = sprinters("2027-03-03T10:00").placed("max-velocity", "2027-03-03T08:00");
        assertThat(sitOut(nearer.group("sprinters").heads(4)))
                .as("nearer by two hours")
                .containsExactly("ash");
    }

    @Test
    void hard_work_that_is_too_near_for_all_keeps_nobody_away() {
        Squad squad = club(ash(), "technique", "2027-03-06T10:00")
                .placed("lower-hypertrophy", "2027-03-01T17:00")
                .placed("acceleration", "2027-03-03T09:00");
        assertThat(sitOut(squad)).isEmpty();
        assertThat(squad.found("high-block-floor")).isNotEmpty();
    }

    @Test
    void two_sessions_at_once_for_all_keep_nobody_away() {
        Squad squad = club(ash(), "technique", "2027-03-06T10:00")
                .placed("technique", "2027-03-02T10:00")
                .placed("tempo-run", "2027-03-02T10:10");
        assertThat(sitOut(squad)).isEmpty();
        assertThat(squad.found("one-place-at-a-time")).isNotEmpty();
    }

    /** Eight hours between the squad's evening, until 23:00, and the club's morning. */
    @Test
    void a_night_before_ones_own_morning_is_kept() {
        assertThat(sitOut(club(ash(), "technique", "2027-03-04T06:59").placed("technique", "2027-03-03T22:30")))
                .containsExactly("ash");
        assertThat(sitOut(club(ash(), "technique", "2027-03-04T07:00").placed("technique", "2027-03-03T22:30")))
                .isEmpty();
        assertThat(sitOut(club(ash(), "technique", "2027-03-03T22:00").placed("technique", "2027-03-04T06:59")))
                .containsExactly("ash");
    }

    /** Five of thirty did not play. Ash's shift ends at 10:05, when their top-up has begun, but not the lesson for all. */
    @Test
    void who_misses_the_earlier_session_comes_to_the_later_one() {
        Squad squad = squad().heads(30).aim("top-up-run", 0, 1, 1).whom(Share.NOT_PLAYED);
        List.of("ash", "birch", "cedar", "date", "elm").forEach(squad::athlete);
        squad.done("fixture", "2027-02-27T15:00")
                .without("ash", "birch", "cedar", "date", "elm")
                .commitment("shift", null, "2027-03-02T09:00")
                .lasting(65)
                .only("ash")
                .placed("top-up-run", "2027-03-02T10:00")
                .placed("technique", "2027-03-02T10:10");
        assertThat(squad.judged().of("sits-out"))
                .extracting(finding -> finding.placements().get(0) + " " + finding.athletes())
                .containsExactlyInAnyOrder(
                        "squad/top-up-run+not-played/2027-03-01/1 [ash]",
                        "squad/technique/2027-03-01/1 [birch, cedar, date, elm]");
    }
}
