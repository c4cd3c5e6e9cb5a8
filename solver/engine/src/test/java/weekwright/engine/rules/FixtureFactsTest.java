package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Squad.squad;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;

/** Fixtures that lie close together: said with their hours, and never paid for. */
class FixtureFactsTest {
    private static final String CLOSE = "fixtures-close";
    private static final String PACK = "rest-between-fixtures";

    /** A fixture that ends on Monday at 16:45, and another. */
    private static Squad after(String start) {
        return squad().fixture("semi-final", "2027-03-01T15:00").fixture("final", start);
    }

    /** 120 h: FIFPRO 2019, At the Limit. 72 h: FIFA's statement with players' unions, July 2025 (press reports only). */
    @ParameterizedTest
    @CsvSource({
        "2027-03-06T16:44, 119.98, 120",
        "2027-03-04T16:45, 72, 120",
        "2027-03-04T16:44, 71.98, 72",
        "2027-03-02T16:45, 24, 72"
    })
    void fixtures_close_counts_from_the_end_to_the_kick_off(String start, double hours, double limit) {
        assertThat(after(start).found(CLOSE)).containsExactly(told(hours, limit));
    }

    @Test
    void fixtures_close_says_nothing_of_120_hours() {
        assertThat(after("2027-03-06T16:45").found(CLOSE)).isEmpty();
        assertThat(squad().fixture("final", "2027-03-06T15:00").found(CLOSE)).isEmpty();
    }

    /** Clocks go forward in Dublin on 28 March 2027: 119 h lie between the same hours of the clock. */
    @Test
    void fixtures_close_counts_elapsed_hours_across_a_clock_change() {
        Squad change = squad().week("2027-03-22")
                .days(14)
                .fixture("semi-final", "2027-03-25T15:00")
                .fixture("final", "2027-03-30T16:45");
        assertThat(change.found(CLOSE)).containsExactly(told(119, 120));
    }

    @Test
    void fixtures_close_looks_at_the_next_one_that_the_same_people_play() {
        Squad three = after("2027-03-03T15:00").fixture("replay", "2027-03-05T15:00");
        assertThat(three.found(CLOSE)).containsExactly(told(46.25, 72), told(46.25, 72));
        Squad rested = squad().athlete("ash")
                .fixture("semi-final", "2027-03-01T15:00")
                .fixture("replay", "2027-03-03T15:00")
                .expecting("ash", 0)
                .fixture("final", "2027-03-05T15:00");
        assertThat(rested.judged().of(CLOSE))
                .extracting(finding -> finding.measured() + " h for " + finding.heads())
                .containsExactlyInAnyOrder("94.25 h for 1", "46.25 h for 9", "46.25 h for 9");
    }

    @Test
    void fixtures_close_reaches_into_the_history_and_beyond_the_end_but_not_past_both() {
        assertThat(squad().done("fixture", "2027-02-27T15:00")
                        .fixture("final", "2027-03-02T15:00")
                        .found(CLOSE))
                .containsExactly(told(70.25, 72));
        assertThat(squad().done("fixture", "2027-02-27T15:00")
                        .fixture("final", "2027-03-01T15:00")
                        .found(CLOSE))
                .as("on the first day")
                .containsExactly(told(46.25, 72));
        assertThat(squad().fixture("semi-final", "2027-03-06T15:00")
                        .fixture("final", "2027-03-09T15:00")
                        .found(CLOSE))
                .containsExactly(told(70.25, 72));
        assertThat(squad().done("fixture", "2027-02-24T15:00")
                        .done("fixture", "2027-02-27T15:00")
                        .fixture("semi-final", "2027-03-08T15:00")
                        .fixture("final", "2027-03-10T15:00")
                        .found(CLOSE))
                .isEmpty();
    }

    @Test
    void fixtures_close_sees_whoever_plays_for_two_groups() {
        Squad guest = squad().athlete("ash", "guests", Squad.ID)
                .fixture("semi-final", "2027-03-01T15:00")
                .group("guests")
                .heads(1)
                .fixture("final", "2027-03-03T15:00")
                .of("guests");
        assertThat(guest.judged().only(CLOSE).groups()).containsExactly("guests");
    }

    @Test
    void fixtures_close_costs_nothing_at_any_level() {
        for (RuleLevel level : new RuleLevel[] {RuleLevel.WANT, RuleLevel.MUST}) {
            assertThat(after("2027-03-03T15:00").level(CLOSE, level).found(CLOSE))
                    .containsExactly(told(46.25, 72));
        }
        assertThat(after("2027-03-03T15:00").level(CLOSE, RuleLevel.OFF).found(CLOSE))
                .isEmpty();
    }

    /** 72 h and 120 h as above; the pack speaks in place of the fact. */
    @Test
    void rest_between_fixtures_speaks_where_the_pack_is_on() {
        assertThat(after("2027-03-04T16:44").found(PACK)).isEmpty();
        assertThat(after("2027-03-04T16:44").pack(PACK).found(PACK)).containsExactly(told(71.98, 72));
        assertThat(after("2027-03-04T16:45").pack(PACK).found(PACK)).containsExactly(told(72, 120));
        assertThat(after("2027-03-06T16:45").pack(PACK).found(PACK)).isEmpty();
        assertThat(after("2027-03-04T16:44").pack(PACK).found(CLOSE)).isEmpty();
        Squad shorter =
                after("2027-03-04T16:45").rule(PACK, RuleLevel.WANT, null, java.util.Map.of("preferredHours", 72));
        assertThat(shorter.found(PACK)).isEmpty();
        assertThat(shorter.found(CLOSE)).as("of which the pack says nothing").containsExactly(told(72, 120));
    }
}
