package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.scenario.Share;

/** When a primer works, who trains after a fixture that they did not play, days of travel, and a taper. */
class WantsRoundFixturesTest {
    private static final String PRIMER = "primer-window";
    private static final String TOP_UP = "top-up";
    private static final String TRAVEL = "travel-day-light";
    private static final String TAPER = "taper";

    private static Squad match() {
        return squad().fixture("cup-tie", "2027-03-06T15:00");
    }

    /** 4 h: expert proposal, grounded in Harrison et al. 2019, Sports Med 49:1499-1514; 33 h: from memory. */
    @Test
    void primer_window_four_to_thirty_three_hours_before() {
        assertThat(match().placed("primer", "2027-03-06T10:45").found(PRIMER)).containsExactly(want(12, 3.75, 4));
        assertThat(match().placed("primer", "2027-03-06T10:30").found(PRIMER)).isEmpty();
        assertThat(match().placed("primer", "2027-03-05T05:30").found(PRIMER)).isEmpty();
        assertThat(match().placed("primer", "2027-03-05T05:15").found(PRIMER)).containsExactly(want(12, 33.25, 33));
        assertThat(match().placed("technique", "2027-03-04T10:00").found(PRIMER))
                .isEmpty();
    }

    @Test
    void primer_window_counts_elapsed_hours_when_the_clocks_change() {
        Squad sunday = squad().week("2027-03-22").fixture("cup-tie", "2027-03-28T15:00");
        assertThat(sunday.placed("primer", "2027-03-27T04:30").found(PRIMER)).isEmpty();
        assertThat(squad().week("2027-03-22")
                        .fixture("cup-tie", "2027-03-28T15:00")
                        .placed("primer", "2027-03-27T04:15")
                        .found(PRIMER))
                .containsExactly(want(12, 33.25, 33));
    }

    /** It ends at 11:45. */
    @Test
    void primer_window_a_fixture_of_the_first_day_is_one_to_come_after() {
        assertThat(squad().fixture("monday", "2027-03-01T10:00")
                        .placed("primer", "2027-03-01T15:00")
                        .found(PRIMER))
                .containsExactly(want(12, -3.25, 4));
    }

    /** What starts with a fixture comes after it. Common practice, no source. */
    @Test
    void primer_window_a_primer_that_starts_with_the_last_fixture_is_for_none() {
        Squad squad = match().placed("primer", "2027-03-06T15:00");
        assertThat(squad.found(PRIMER)).containsExactly(want(12, 1.75, 4));
        assertThat(squad.judged().only(PRIMER).text()).contains(" has no fixture after it; ");
    }

    @Test
    void primer_window_the_next_fixture_counts_wherever_it_lies() {
        Squad two = squad().fixture("midweek", "2027-03-03T15:00")
                .fixture("cup-tie", "2027-03-06T15:00")
                .placed("primer", "2027-03-05T10:00");
        assertThat(two.found(PRIMER)).isEmpty();
        assertThat(squad().fixture("monday", "2027-03-08T15:00")
                        .placed("primer", "2027-03-07T10:30")
                        .found(PRIMER))
                .isEmpty();
        assertThat(squad().fixture("midweek", "2027-03-03T15:00")
                        .placed("primer", "2027-03-04T10:45")
                        .found(PRIMER))
                .containsExactly(want(12, -18, 4));
    }

    @Test
    void primer_window_rests_for_those_who_play_none() {
        assertThat(squad().placed("primer", "2027-03-04T10:00").found(PRIMER)).isEmpty();
        assertThat(squad().done("fixture", "2027-02-27T15:00")
                        .placed("primer", "2027-03-04T10:00")
                        .found(PRIMER))
                .isEmpty();
        Squad bench = squad().athlete("ash")
                .fixture("cup-tie", "2027-03-06T15:00")
                .expecting("ash", 0)
                .placed("primer", "2027-03-04T10:00")
                .pinned();
        assertThat(bench.found(PRIMER)).containsExactly(want(10.8, 52.5, 33));
    }

    /** Expert proposal: whoever does not play tomorrow needs no primer, and is not told of a match in nine days. */
    @Test
    void primer_window_is_nothing_to_those_on_the_bench_of_the_next_fixture() {
        Squad rested = squad().athlete("ash")
                .fixture("cup-tie", "2027-03-06T15:00")
                .expecting("ash", 0)
                .fixture("league", "2027-03-13T15:00");
        assertThat(rested.placed("primer", "2027-03-05T10:00").pinned().found(PRIMER))
                .isEmpty();
        Squad fresh = squad().athlete("ash")
                .fixture("midweek", "2027-03-03T15:00")
                .expecting("ash", 0)
                .fixture("cup-tie", "2027-03-06T15:00");
        assertThat(fresh.placed("primer", "2027-03-04T10:00").pinned().found(PRIMER))
                .as("for the match that all of them play")
                .containsExactly(want(12, 52.5, 33));
    }

    /** Ash did not play on Wednesday from 15:00 to 16:45. */
    private static Squad ashOnTheBench() {
        return squad().athlete("ash")
                .fixture("cup-tie", "2027-03-03T15:00")
                .expecting("ash", 0)
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED);
    }

    /** Expert proposal. */
    @Test
    void top_up_from_the_final_whistle_to_the_end_of_the_next_day() {
        assertThat(ashOnTheBench().found(TOP_UP)).containsExactly(want(16, 0, 1));
        assertThat(ashOnTheBench().placed("top-up-run", "2027-03-03T16:40").found(TOP_UP))
                .containsExactly(want(16, 0, 1));
        assertThat(ashOnTheBench().placed("top-up-run", "2027-03-03T16:45").found(TOP_UP))
                .isEmpty();
        assertThat(ashOnTheBench().placed("top-up-run", "2027-03-04T23:30").found(TOP_UP))
                .isEmpty();
        assertThat(ashOnTheBench().placed("top-up-run", "2027-03-05T00:00").found(TOP_UP))
                .containsExactly(want(16, 0, 1));
        assertThat(ashOnTheBench()
                        .placed("top-up-run", "2027-03-05T10:00")
                        .number(TOP_UP, "days", 2)
                        .found(TOP_UP))
                .isEmpty();
    }

    @Test
    void top_up_rests_where_all_listed_played_or_the_next_day_is_not_in_the_plan() {
        Squad played = squad().athlete("ash")
                .fixture("cup-tie", "2027-03-03T15:00")
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED);
        assertThat(played.found(TOP_UP)).isEmpty();
        Squad sunday = squad().athlete("ash")
                .fixture("cup-tie", "2027-03-07T15:00")
                .expecting("ash", 0)
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED);
        assertThat(sunday.found(TOP_UP)).isEmpty();
        assertThat(squad().athlete("ash")
                        .fixture("cup-tie", "2027-03-03T15:00")
                        .expecting("ash", 0)
                        .aim("top-up-run", 0, 1, 1)
                        .found(TOP_UP))
                .isEmpty();
    }

    @Test
    void top_up_after_a_fixture_of_the_history_and_into_the_next_week() {
        Squad history = squad().athlete("ash")
                .done("fixture", "2027-02-28T15:00")
                .without("ash")
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED);
        assertThat(history.found(TOP_UP)).containsExactly(want(16, 0, 1));
        assertThat(history.placed("top-up-run", "2027-03-01T10:00").found(TOP_UP))
                .isEmpty();
        Squad sunday = squad().days(14)
                .athlete("ash")
                .fixture("cup-tie", "2027-03-07T15:00")
                .expecting("ash", 0)
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED);
        assertThat(sunday.found(TOP_UP)).containsExactly(want(16, 0, 1));
        assertThat(sunday.placed("top-up-run", "2027-03-08T10:00").found(TOP_UP))
                .isEmpty();
    }

    private static Squad away(int out, int back) {
        return squad().athlete("ash")
                .fixture("cup-tie", "2027-03-05T20:45")
                .expecting("ash", 0)
                .travelling(out, back);
    }

    /** 120 min: expert proposal. */
    @Test
    void travel_day_light_a_leg_of_more_than_two_hours_the_bench_too() {
        assertThat(away(120, 0).placed("small-sided-games", "2027-03-05T09:00").found(TRAVEL))
                .isEmpty();
        assertThat(away(121, 0).placed("small-sided-games", "2027-03-05T09:00").found(TRAVEL))
                .containsExactly(want(8, 1, 0));
        assertThat(away(121, 0).placed("tempo-run", "2027-03-05T09:00").found(TRAVEL))
                .isEmpty();
        assertThat(away(121, 0).placed("small-sided-games", "2027-03-04T09:00").found(TRAVEL))
                .isEmpty();
        assertThat(away(121, 0)
                        .placed("small-sided-games", "2027-03-05T09:00")
                        .number(TRAVEL, "travelMinutes", 121)
                        .found(TRAVEL))
                .isEmpty();
    }

    @Test
    void travel_day_light_the_way_home_may_touch_the_next_date() {
        assertThat(away(0, 90).placed("small-sided-games", "2027-03-06T16:00").found(TRAVEL))
                .isEmpty();
        assertThat(away(0, 121)
                        .placed("small-sided-games", "2027-03-06T16:00")
                        .pinned()
                        .found(TRAVEL))
                .containsExactly(want(8, 1, 0));
    }

    /**
     * A taper of 6 days before Saturday 13 March, against the 14 days from 21 February: 240 AU a day before the plan, and
     * as much again on Tuesday.
     */
    private static Squad tapering(String... tempoRuns) {
        Squad squad = squad().days(14)
                .done("tempo-run", "2027-02-21T10:00")
                .fixture("cup-tie", "2027-03-13T15:00")
                .tapering(6);
        for (String start : tempoRuns) {
            squad.placed("tempo-run", start);
        }
        return squad;
    }

    /** Bosquet et al. 2007, MSSE 39:1358-1365: 41 to 60 %. Loads: 4 x 60 and 4 x 40 AU. */
    @Test
    void taper_the_daily_load_falls_by_forty_one_to_sixty_per_cent() {
        // 400 AU in 14 days, 160 in 6: 28.57 and 26.67 a day.
        assertThat(tapering("2027-03-02T10:00", "2027-03-08T10:00").found(TAPER))
                .containsExactly(want(34.3, 6.7, 41));
        // 720 AU in 14 days, 160 in 6: 51.43 and 26.67 a day, a fall of 48.1 %.
        assertThat(tapering("2027-03-01T10:00", "2027-03-02T10:00", "2027-03-03T10:00", "2027-03-08T10:00")
                        .found(TAPER))
                .isEmpty();
        // Nothing at all: a fall of 100 %.
        assertThat(tapering("2027-03-02T10:00").found(TAPER)).containsExactly(want(40, 100, 60));
        // 240 AU in 14 days, 320 in 6: a rise of 211.1 %, and no more than 100 points.
        assertThat(tapering("2027-03-08T10:00", "2027-03-10T10:00").found(TAPER))
                .containsExactly(want(100, -211.1, 41));
    }

    /** 700 AU in 14 days and 120 in 6: 50 and 20 a day; a minute less is beyond the edge. */
    @Test
    void taper_of_exactly_sixty_per_cent_is_as_it_should_be() {
        assertThat(tapering("2027-03-02T10:00")
                        .lasting(115)
                        .placed("tempo-run", "2027-03-08T10:00")
                        .lasting(30)
                        .found(TAPER))
                .isEmpty();
        assertThat(tapering("2027-03-02T10:00")
                        .lasting(115)
                        .placed("tempo-run", "2027-03-08T10:00")
                        .lasting(29)
                        .found(TAPER))
                .containsExactly(want(1.3, 61.3, 60));
    }

    @Test
    void taper_the_first_and_the_last_day_count_and_those_round_them_do_not() {
        Squad edges = tapering("2027-03-06T10:00", "2027-03-07T10:00", "2027-03-12T10:00");
        // 400 AU in 14 days to Saturday 6 March, 320 in the 6 from Sunday.
        assertThat(edges.found(TAPER)).containsExactly(want(100, -86.7, 41));
        assertThat(edges.done("tempo-run", "2027-02-20T10:00").found(TAPER)).containsExactly(want(100, -86.7, 41));
    }

    @Test
    void taper_rests_where_none_is_asked_or_too_little_is_known() {
        Squad unknown = squad().days(14)
                .done("tempo-run", "2027-02-22T10:00")
                .fixture("cup-tie", "2027-03-13T15:00")
                .tapering(6)
                .placed("tempo-run", "2027-03-08T10:00");
        assertThat(unknown.found(TAPER)).isEmpty();
        Squad notAsked = squad().days(14)
                .done("tempo-run", "2027-02-21T10:00")
                .fixture("cup-tie", "2027-03-13T15:00")
                .placed("tempo-run", "2027-03-08T10:00");
        assertThat(notAsked.found(TAPER)).isEmpty();
        Squad nothing = squad().days(14)
                .done("tempo-run", "2027-02-21T10:00")
                .missed()
                .fixture("cup-tie", "2027-03-13T15:00")
                .tapering(6)
                .placed("tempo-run", "2027-03-08T10:00");
        assertThat(nothing.found(TAPER)).as("nothing to fall from").isEmpty();
        Squad over = squad().done("tempo-run", "2027-02-01T10:00")
                .done("tempo-run", "2027-02-12T10:00")
                .fixture("cup-tie", "2027-03-01T15:00")
                .tapering(6);
        assertThat(over.found(TAPER)).as("all of it is past").isEmpty();
    }

    @Test
    void taper_of_a_fixture_beyond_the_plan_what_lies_in_it_is_measured() {
        Squad later = squad().days(10)
                .done("tempo-run", "2027-02-21T10:00")
                .fixture("cup-tie", "2027-03-13T15:00")
                .tapering(6)
                .placed("tempo-run", "2027-03-02T10:00")
                .placed("tempo-run", "2027-03-08T10:00");
        // 400 AU in 14 days, 160 in the 4 of 6 days that are planned: a rise of 40 %.
        assertThat(later.found(TAPER)).containsExactly(want(81, -40, 41));
    }

    @Test
    void taper_is_told_where_nothing_placed_lies_in_it() {
        assertThat(tapering().found(TAPER)).containsExactly(told(100, 60));
    }
}
