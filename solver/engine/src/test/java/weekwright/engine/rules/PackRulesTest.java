package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.must;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;

/**
 * Published limits of hours and days off, dated, for whom a coach switches them on; local rules decide. A tempo run that is
 * placed takes 40 minutes.
 */
class PackRulesTest {
    private static final String IN_SEASON = "college-in-season";
    private static final String OUT_OF_SEASON = "college-out-of-season";
    private static final String YOUTH = "youth";

    /** Drills of so many minutes each from Monday on, and a tempo run placed on Monday evening. */
    private static Squad drills(int... minutes) {
        Squad squad = squad().placed("tempo-run", "2027-03-01T20:00");
        for (int day = 0; day < minutes.length; day++) {
            if (minutes[day] > 0) {
                squad.commitment("drill-" + day, "technique", "2027-03-0" + (day + 1) + "T08:00")
                        .lasting(minutes[day]);
            }
        }
        return squad;
    }

    @ParameterizedTest
    @ValueSource(strings = {IN_SEASON, OUT_OF_SEASON, YOUTH})
    void a_pack_is_off_until_it_is_switched_on(String pack) {
        Squad much = drills(600, 600, 600, 600, 600, 600, 600);
        assertThat(much.found(pack)).isEmpty();
        assertThat(much.pack(pack).found(pack)).isNotEmpty();
        assertThat(much.judged().judged().plan().softened()).contains(pack);
    }

    /** 20 h a week: NCAA Division I, Bylaw 17.1.7 as of 2026, seen only in secondary pages. */
    @Test
    void college_in_season_allows_twenty_hours_a_week() {
        assertThat(drills(200, 200, 200, 200, 200, 160).pack(IN_SEASON).found(IN_SEASON))
                .isEmpty();
        assertThat(drills(200, 200, 200, 200, 200, 160)
                        .commitment("monday", "technique", "2027-03-08T08:00")
                        .pack(IN_SEASON)
                        .found(IN_SEASON))
                .as("the Monday after is the next week's")
                .isEmpty();
        assertThat(drills(200, 200, 200, 200, 200, 161).pack(IN_SEASON).found(IN_SEASON))
                .containsExactly(want(0.4, 20.02, 20));
        assertThat(drills(200, 200, 200, 200, 200, 220).pack(IN_SEASON).found(IN_SEASON))
                .containsExactly(want(24, 21, 20));
    }

    /** The same: 4 h a day. */
    @Test
    void college_in_season_allows_four_hours_a_day() {
        assertThat(drills(200).pack(IN_SEASON).found(IN_SEASON)).isEmpty();
        assertThat(drills(201).pack(IN_SEASON).found(IN_SEASON)).containsExactly(want(0.4, 4.02, 4));
        assertThat(drills(0, 300).pack(IN_SEASON).found(IN_SEASON))
                .as("of a day without anything placed it is told")
                .containsExactly(told(5, 4));
    }

    /** The same: a competition day counts three hours, whatever its length and however many. */
    @Test
    void a_competition_day_counts_three_hours() {
        Squad match = drills(200, 200, 200, 200, 210).fixture("cup-tie", "2027-03-06T15:00");
        assertThat(match.pack(IN_SEASON).found(IN_SEASON)).containsExactly(want(12, 17.5 + 3, 20));
        Squad twice = drills(200, 200, 200, 200, 130)
                .fixture("morning", "2027-03-06T10:00")
                .fixture("afternoon", "2027-03-06T15:00");
        assertThat(twice.pack(IN_SEASON).found(IN_SEASON)).isEmpty();
        assertThat(drills(0, 0, 0, 0, 0, 61)
                        .fixture("cup-tie", "2027-03-06T15:00")
                        .pack(IN_SEASON)
                        .found(IN_SEASON))
                .containsExactly(told(4.02, 4));
    }

    /** One day off a week in season, two out of it (the second count from secondary pages, too). */
    @Test
    void days_off_are_those_without_anything_but_recovery() {
        Squad all = drills(20, 20, 20, 20, 20, 20, 20);
        assertThat(all.pack(IN_SEASON).found(IN_SEASON)).containsExactly(want(24, 0, 1));
        Squad six = drills(20, 20, 20, 20, 20, 20).placed("mobility", "2027-03-07T10:00");
        assertThat(six.pack(IN_SEASON).found(IN_SEASON)).isEmpty();
        assertThat(drills(20, 20, 20, 20, 20, 20).pack(OUT_OF_SEASON).found(OUT_OF_SEASON))
                .containsExactly(want(24, 1, 2));
        assertThat(drills(20, 20, 20, 20, 20).pack(OUT_OF_SEASON).found(OUT_OF_SEASON))
                .isEmpty();
        assertThat(drills(20, 20, 20, 20, 20, 20, 20).pack(OUT_OF_SEASON).found(OUT_OF_SEASON))
                .containsExactly(want(48, 0, 2));
        assertThat(all.level(OUT_OF_SEASON, RuleLevel.MUST).found(OUT_OF_SEASON))
                .containsExactly(must(0, 2));
    }

    @Test
    void a_short_last_week_is_not_judged_by_the_week() {
        assertThat(drills(20, 20, 20, 20, 20, 20)
                        .days(6)
                        .pack(OUT_OF_SEASON)
                        .pack(IN_SEASON)
                        .judged()
                        .findings())
                .extracting(finding -> finding.rule())
                .doesNotContain(OUT_OF_SEASON, IN_SEASON);
    }

    /** 8 h a week out of season: the same pages. */
    @Test
    void college_out_of_season_allows_eight_hours_a_week() {
        assertThat(drills(400, 40).pack(OUT_OF_SEASON).found(OUT_OF_SEASON)).isEmpty();
        assertThat(drills(400, 41).pack(OUT_OF_SEASON).found(OUT_OF_SEASON)).containsExactly(want(0.4, 8.02, 8));
        assertThat(drills(260)
                        .fixture("friendly", "2027-03-06T15:00")
                        .pack(OUT_OF_SEASON)
                        .found(OUT_OF_SEASON))
                .as("5 h and a competition of 3")
                .isEmpty();
        assertThat(drills(261)
                        .fixture("friendly", "2027-03-06T15:00")
                        .pack(OUT_OF_SEASON)
                        .found(OUT_OF_SEASON))
                .as("a minute more")
                .containsExactly(want(0.4, 8.02, 8));
    }

    /** Hours a week no more than years of age: NATA 2019, seen only in secondary pages. Fourteen on Monday, or on Tuesday. */
    @ParameterizedTest
    @CsvSource({"2013-03-01, 800, 0", "2013-03-01, 801, 0.4", "2013-03-02, 740, 0", "2013-03-02, 741, 0.4"})
    void youth_hours_are_the_years_of_the_youngest(String born, int minutes, double cost) {
        Squad young = drills(minutes)
                .athlete("ash")
                .born("2011-01-01")
                .athlete("birch")
                .born(born)
                .athlete("cedar");
        assertThat(young.pack(YOUTH).found(YOUTH))
                .hasSize(cost > 0 ? 1 : 0)
                .allMatch(amount -> amount.cost() == cost && amount.limit() == (minutes > 790 ? 14 : 13));
    }

    @Test
    void youth_hours_for_each_year_can_be_changed() {
        Squad young = drills(381)
                .athlete("ash")
                .born("2013-01-01")
                .rule(YOUTH, RuleLevel.WANT, null, Map.of("hoursAYear", 0.5));
        assertThat(young.found(YOUTH)).containsExactly(want(0.4, 7.02, 7));
    }

    @Test
    void youth_counts_a_fixture_by_its_minutes_of_play_and_asks_for_two_days_off() {
        Squad young = drills(710).athlete("ash").born("2013-01-01").fixture("cup-tie", "2027-03-06T15:00");
        assertThat(young.pack(YOUTH).found(YOUTH)).as("750 + 90 min").isEmpty();
        assertThat(young.commitment("more", "technique", "2027-03-03T08:00")
                        .lasting(1)
                        .found(YOUTH))
                .containsExactly(want(0.4, 14.02, 14));
        Squad own = drills(710).athlete("ash").born("2013-01-01").fixture("cup-tie", "2027-03-06T15:00");
        assertThat(own.playing(91).pack(YOUTH).found(YOUTH)).containsExactly(want(0.4, 14.02, 14));
        assertThat(drills(20, 20, 20, 20, 20, 20).pack(YOUTH).found(YOUTH))
                .as("no birth dates, so no hours")
                .containsExactly(want(24, 1, 2));
    }

    @Test
    void hours_are_shared_by_those_who_spend_them() {
        Squad one = drills(200)
                .quorum(1)
                .athlete("ash")
                .commitment("course", "technique", "2027-03-01T15:00")
                .lasting(60)
                .only("ash");
        assertThat(one.pack(IN_SEASON).found(IN_SEASON)).containsExactly(want(2.4, 5, 4));
    }
}
