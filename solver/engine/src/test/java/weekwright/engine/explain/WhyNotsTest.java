package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;
import weekwright.engine.testing.Squad;
import weekwright.model.answer.Spot;
import weekwright.model.answer.WhyNot;
import weekwright.model.answer.WhyNotDay;
import weekwright.model.answer.WhyNotOption;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Weekday;

/** Why a session does not lie elsewhere, day by day. Starts lie on the full hour here; heavy lower takes one. */
class WhyNotsTest {
    private static final String HEAVY = "squad/heavy-lower-knee/2027-03-01/1";

    /** Heavy lower is owed once; it can lie from Monday to Wednesday between three hours of the clock. */
    private static Squad lifting() {
        return squad().window("16:00", "19:00", Weekday.MON, Weekday.TUE, Weekday.WED)
                .aim("heavy-lower-knee", 1, 1, 1);
    }

    private static WhyNot asked(Squad squad, String session, @Nullable String day) {
        return Engine.whyNot(squad.scenario(), squad.plan(), session, day == null ? null : LocalDate.parse(day));
    }

    private static String day(Squad squad, String day) {
        List<WhyNotDay> days = asked(squad, HEAVY, day).days();
        assertThat(days).hasSize(1);
        return days.get(0).text();
    }

    @Test
    void where_it_lies_now_and_nothing_is_better() {
        Squad squad = lifting().placed("heavy-lower-knee", "2027-03-02T16:00");
        assertThat(asked(squad, HEAVY, null).text())
                .isEqualTo("Heavy lower, knee-dominant of Squad lies on Tue 2 Mar 16:00. Best elsewhere: Tue 2 Mar"
                        + " 17:00, costs nothing more.");
        assertThat(day(squad, "2027-03-02"))
                .isEqualTo("Tue 2 Mar: it lies here now, at 16:00; nothing else on this day is better.");
    }

    @Test
    void a_day_that_costs_more_says_by_how_much_and_why() {
        Squad squad = lifting()
                .prefers("17:00", "19:00")
                .placed("heavy-lower-knee", "2027-03-02T17:00")
                .fixture("cup-tie", "2027-03-06T15:00");
        assertThat(day(squad, "2027-03-03"))
                .isEqualTo(
                        "Wed 3 Mar (MD−3): can start 16:00 to 18:00; best at 16:00, costs 34 points more: Heavy lower,"
                                + " knee-dominant (Wed 3 Mar 16:00) ends 70 h before Cup tie; 96 h are wanted, and 92 h count as"
                                + " enough. Heavy lower, knee-dominant (Wed 3 Mar 16:00) lies 60 min outside the hours preferred"
                                + " for it, 17:00 to 19:00.");
    }

    @Test
    void a_day_on_which_nothing_is_possible_says_what_stands_in_the_way() {
        Squad squad = lifting()
                .placed("heavy-lower-knee", "2027-03-02T16:00")
                .closed("weights-room", "2027-03-03T00:00", "2027-03-04T00:00");
        assertThat(day(squad, "2027-03-03"))
                .isEqualTo(
                        "Wed 3 Mar: not possible; at 16:00, which comes nearest: Heavy lower, knee-dominant (Wed 3 Mar"
                                + " 16:00) has 60 min outside the opening hours of Weights room.");
        assertThat(day(squad, "2027-03-04")).isEqualTo("Thu 4 Mar: Squad has no free hours that are long enough.");
    }

    @Test
    void a_better_start_says_what_it_puts_right() {
        Squad squad = lifting().prefers("17:00", "19:00").placed("heavy-lower-knee", "2027-03-02T16:00");
        assertThat(asked(squad, HEAVY, null).text())
                .isEqualTo(
                        "Heavy lower, knee-dominant of Squad lies on Tue 2 Mar 16:00. Better would be Tue 2 Mar 17:00,"
                                + " saves 2 points.");
        assertThat(day(squad, "2027-03-02"))
                .isEqualTo(
                        "Tue 2 Mar: it lies here now, at 16:00; best at 17:00, saves 2 points: Heavy lower, knee-dominant"
                                + " (Tue 2 Mar 16:00) lies 60 min outside the hours preferred for it, 17:00 to 19:00.");
    }

    @Test
    void starts_that_are_not_in_one_run_are_told_apart() {
        Squad squad = lifting()
                .commitment("meeting", null, "2027-03-01T17:00")
                .placed("heavy-lower-knee", "2027-03-02T16:00");
        assertThat(day(squad, "2027-03-01"))
                .isEqualTo("Mon 1 Mar: can start at 16:00 or at 18:00; best at 16:00, costs nothing more.");
    }

    @Test
    void a_session_left_out() {
        Squad squad = lifting().doses(Dose.FULL, Dose.REDUCED).commitment("meeting", null, "2027-03-01T16:00");
        squad.lasting(120);
        WhyNot answer = asked(squad, HEAVY, null);
        assertThat(answer.now()).isNull();
        assertThat(answer.text())
                .isEqualTo("Heavy lower, knee-dominant of Squad is left out in the week from Mon 1 Mar. Better would be"
                        + " Mon 1 Mar 18:00, Weights room, key work falls short by 1 less.");
        assertThat(answer.days().get(0).text())
                .isEqualTo(
                        "Mon 1 Mar: can only start at 18:00, Weights room, key work falls short by 1 less: Heavy lower,"
                                + " knee-dominant: none in the week from Mon 1 Mar; at least 1 is owed.");
    }

    @Test
    void a_session_that_has_no_other_way() {
        Squad squad = squad().window("16:00", "17:00", Weekday.MON)
                .aim("heavy-lower-knee", 1, 1, 1)
                .placed("heavy-lower-knee", "2027-03-01T16:00");
        assertThat(asked(squad, HEAVY, null).text())
                .isEqualTo(
                        "Heavy lower, knee-dominant of Squad lies on Mon 1 Mar 16:00. There is no other start for it.");
        assertThat(asked(squad.pinned(), HEAVY, null).text())
                .isEqualTo("Heavy lower, knee-dominant of Squad lies on Mon 1 Mar 16:00. It is pinned; the answer looks"
                        + " past the pin. There is no other start for it.");
    }

    @Test
    void another_place_and_another_dose_are_named() {
        Squad squad = lifting()
                .doses(Dose.FULL, Dose.REDUCED)
                .facility("barn", weekwright.model.scenario.FacilityKind.GYM)
                .closed("barn", "2027-03-02T00:00", "2027-03-03T00:00")
                .closed("weights-room", "2027-03-03T00:00", "2027-03-04T00:00")
                .placed("heavy-lower-knee", "2027-03-02T16:00");
        assertThat(day(squad, "2027-03-03"))
                .isEqualTo("Wed 3 Mar: can start 16:00 to 18:00; best at 16:00, Barn, costs nothing more.");
    }

    @Test
    void every_start_place_and_dose_is_an_option_with_its_price() {
        Squad squad = lifting().prefers("17:00", "19:00").placed("heavy-lower-knee", "2027-03-02T16:00");
        squad.closed("weights-room", "2027-03-03T00:00", "2027-03-04T00:00");
        WhyNot answer = asked(squad, HEAVY, null);
        assertThat(answer.session()).isEqualTo(HEAVY);
        assertThat(answer.now()).isEqualTo(new Spot(Moment.parse("2027-03-02T16:00"), "weights-room", Dose.FULL));
        assertThat(answer.totals()).isEqualTo(new Totals(0, 0, 0, 2));
        assertThat(answer.options()).hasSize(9);
        assertThat(answer.options().get(1))
                .isEqualTo(new WhyNotOption(
                        Moment.parse("2027-03-01T17:00"),
                        "weights-room",
                        Dose.FULL,
                        true,
                        new Totals(0, 0, 0, -2),
                        List.of(),
                        List.of("preferred-time"),
                        null));
        WhyNotOption closed = answer.options().get(6);
        assertThat(closed.possible()).isFalse();
        assertThat(closed.breaks()).containsExactly("facility-open");
        assertThat(closed.change()).isEqualTo(new Totals(1, 0, 0, 0));
        assertThat(closed.why())
                .isEqualTo("Heavy lower, knee-dominant (Wed 3 Mar 16:00) has 60 min outside the opening hours of"
                        + " Weights room.");
        assertThat(answer.days().get(0).best()).isEqualTo(answer.options().get(1));
        assertThat(answer.days().get(2).best()).isNull();
    }

    @Test
    void a_session_that_lies_off_the_grid_is_among_its_options() {
        Squad squad = lifting().placed("heavy-lower-knee", "2027-03-02T16:20");
        WhyNot answer = asked(squad, HEAVY, "2027-03-02");
        assertThat(answer.options()).hasSize(4);
        assertThat(answer.options().get(1).start()).isEqualTo(Moment.parse("2027-03-02T16:20"));
        assertThat(answer.options().get(1).change()).isEqualTo(new Totals(0, 0, 0, 0));
    }

    /** An extra session keeps the length that the coach gave it. */
    @Test
    void an_extra_session_keeps_its_length() {
        Squad squad = squad().window("16:00", "18:00", Weekday.MON, Weekday.TUE)
                .placed("heavy-lower-knee", "2027-03-01T16:00")
                .lasting(90);
        assertThat(asked(squad, HEAVY, null).options()).hasSize(2);
    }

    @Test
    void a_session_that_is_not_there_is_refused() {
        assertThatThrownBy(() -> asked(lifting(), "squad/max-velocity/2027-03-01/1", null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no session is called \"squad/max-velocity/2027-03-01/1\"");
    }
}
