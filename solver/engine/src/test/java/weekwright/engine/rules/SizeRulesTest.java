package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Phase;

/** Sessions in a visit, minutes in a day, idle hours, and metres of sprinting. */
class SizeRulesTest {
    private static final String SIZE = "visit-size";
    private static final String WAIT = "short-wait";
    private static final String METRES = "sprint-metres";

    /** Three sessions from 10:00 to 12:05. */
    private static Squad three() {
        return squad().placed("upper-strength", "2027-03-02T10:00")
                .placed("tempo-run", "2027-03-02T10:50")
                .placed("easy-bike", "2027-03-02T11:35");
    }

    /** Expert proposal. */
    @Test
    void visit_size_a_fourth_session_costs_eight() {
        assertThat(three().found(SIZE)).isEmpty();
        assertThat(three().placed("hamstring-eccentric", "2027-03-02T12:35").found(SIZE))
                .containsExactly(want(8, 4, 3));
        assertThat(three().placed("hamstring-eccentric", "2027-03-02T12:36").found(SIZE))
                .isEmpty();
        assertThat(three().number(SIZE, "sessions", 2).found(SIZE)).containsExactly(want(8, 3, 2));
        assertThat(three().placed("heavy-upper-push", "2027-03-02T18:00")
                        .placed("hamstring-eccentric", "2027-03-02T18:45")
                        .number(SIZE, "sessions", 1)
                        .found(SIZE))
                .as("in each of two visits")
                .containsExactly(want(16, 3, 1));
    }

    @Test
    void visit_size_easy_and_short_work_is_not_counted() {
        Squad easy = three().placed("mobility", "2027-03-02T12:05")
                .placed("technique", "2027-03-02T12:25")
                .placed("trunk-and-balance", "2027-03-02T12:55")
                .placed("warm-up", "2027-03-02T09:40")
                .placed("recovery", "2027-03-02T13:20");
        assertThat(easy.found(SIZE)).isEmpty();
    }

    @Test
    void visit_size_is_unsaid_where_none_of_it_was_placed() {
        Squad fixed = squad().commitment("one", "tempo-run", "2027-03-02T10:00")
                .lasting(40)
                .commitment("two", "tempo-run", "2027-03-02T10:40")
                .lasting(40)
                .commitment("three", "tempo-run", "2027-03-02T11:20")
                .lasting(40)
                .commitment("four", "tempo-run", "2027-03-02T12:00")
                .lasting(40);
        assertThat(fixed.found(SIZE)).isEmpty();
        assertThat(fixed.placed("mobility", "2027-03-02T12:40").found(SIZE)).isEmpty();
        assertThat(fixed.placed("upper-strength", "2027-03-02T13:00").pinned().found(SIZE))
                .containsExactly(want(8, 5, 3));
    }

    /** A practice of so many minutes, 15 of them warm-up, and upper-strength of 35 without its own. */
    private static Squad longPractice(int minutes) {
        return squad().commitment("practice", "team-practice", "2027-03-02T14:00")
                .lasting(minutes)
                .placed("upper-strength", "2027-03-02T10:00");
    }

    /** 210 min: expert proposal. */
    @Test
    void visit_size_two_hundred_and_ten_minutes_a_day_without_warm_ups() {
        assertThat(longPractice(190).found(SIZE)).isEmpty();
        assertThat(longPractice(191).found(SIZE)).containsExactly(want(8, 211, 210));
        assertThat(squad().commitment("practice", "team-practice", "2027-03-02T14:00")
                        .lasting(300)
                        .placed("technique", "2027-03-02T10:00")
                        .found(SIZE))
                .isEmpty();
    }

    /** Expert proposal. */
    @Test
    void short_wait_a_point_for_each_idle_hour_between_visits() {
        Squad technique = squad().placed("technique", "2027-03-02T09:00");
        assertThat(technique.placed("mobility", "2027-03-02T12:00").found(WAIT)).containsExactly(want(2.5, 2.5, 0));
        assertThat(squad().placed("mobility", "2027-03-02T10:01")
                        .placed("technique", "2027-03-02T09:00")
                        .found(WAIT))
                .containsExactly(want(0.5, 0.52, 0));
        assertThat(squad().placed("technique", "2027-03-02T09:00")
                        .placed("mobility", "2027-03-02T10:00")
                        .found(WAIT))
                .isEmpty();
    }

    @Test
    void short_wait_is_elapsed_when_the_clocks_change() {
        Squad night = squad().week("2027-03-22")
                .placed("mobility", "2027-03-28T00:10")
                .placed("technique", "2027-03-28T03:30");
        assertThat(night.found(WAIT)).containsExactly(want(2, 2, 0));
    }

    @Test
    void short_wait_not_before_a_fixture_nor_between_fixed_things() {
        assertThat(squad().placed("mobility", "2027-03-06T09:00")
                        .fixture("cup-tie", "2027-03-06T15:00")
                        .found(WAIT))
                .isEmpty();
        Squad fixed = squad().commitment("one", "team-practice", "2027-03-02T08:00")
                .commitment("two", "team-practice", "2027-03-02T12:00");
        assertThat(fixed.found(WAIT)).isEmpty();
        assertThat(fixed.placed("mobility", "2027-03-02T13:00").pinned().found(WAIT))
                .containsExactly(want(3, 3, 0));
    }

    @Test
    void short_wait_falls_to_those_who_wait() {
        Squad two = squad().athlete("ash", Squad.ID)
                .placed("technique", "2027-03-02T09:00")
                .commitment("second-club", "tempo-run", "2027-03-02T11:30")
                .only("ash");
        assertThat(two.found(WAIT)).containsExactly(want(0.2, 2, 0));
    }

    private static Squad sprinting() {
        return squad().aim("max-velocity", 0, 1, 1).placed("max-velocity", "2027-03-02T10:00");
    }

    /** A full session of 40 min: 120 m near best speed and 400 m in all. */
    @Test
    void sprint_metres_the_band_is_the_groups() {
        assertThat(sprinting().found(METRES)).isEmpty();
        assertThat(sprinting().kind(GroupKind.SPRINT).found(METRES)).isEmpty();
        assertThat(sprinting().phase(Phase.OFF_SEASON).found(METRES)).isEmpty();
        assertThat(sprinting().level(Level.NOVICE).found(METRES)).containsExactly(want(4, 120, 80));
    }

    /** Haugen et al. 2019, Sports Med Open 5:44, Table 2: 50 to 150 m; the narrower bands are expert proposals. */
    @Test
    void sprint_metres_each_ten_metres_outside_cost_one() {
        assertThat(sprinting().metres(121, 400).found(METRES)).containsExactly(want(0.1, 121, 120));
        assertThat(sprinting().metres(130, 400).found(METRES)).containsExactly(want(1, 130, 120));
        assertThat(sprinting().metres(40, 240).found(METRES)).isEmpty();
        assertThat(sprinting().metres(39, 239).found(METRES)).containsExactly(want(0.2, 39, 40));
        assertThat(sprinting().metres(150, 420).kind(GroupKind.SPRINT).found(METRES))
                .isEmpty();
        assertThat(sprinting().metres(49, 420).kind(GroupKind.SPRINT).found(METRES))
                .containsExactly(want(0.1, 49, 50));
        assertThat(sprinting().metres(150, 420).phase(Phase.PRE_SEASON).found(METRES))
                .isEmpty();
        assertThat(sprinting().metres(59, 420).phase(Phase.PRE_SEASON).found(METRES))
                .containsExactly(want(0.1, 59, 60));
    }

    /** All sprinting, run-ins included: common practice, no source. */
    @Test
    void sprint_metres_all_sprinting_has_a_band_too() {
        assertThat(sprinting().mainMinutes(45).found(METRES)).containsExactly(want(4.5, 450, 420));
        assertThat(sprinting().mainMinutes(75).found(METRES)).containsExactly(want(10.5, 225, 120));
        assertThat(sprinting().metres(100, 400).factors(0.5).found(METRES)).containsExactly(want(4, 200, 240));
    }

    @Test
    void sprint_metres_full_speed_sessions_only() {
        assertThat(squad().level(Level.NOVICE)
                        .placed("max-velocity", "2027-03-02T10:00")
                        .dose(Dose.REDUCED)
                        .placed("speed-endurance", "2027-03-04T10:00")
                        .placed("testing", "2027-03-06T10:00")
                        .placed("acceleration", "2027-03-07T10:00")
                        .found(METRES))
                .isEmpty();
    }
}
