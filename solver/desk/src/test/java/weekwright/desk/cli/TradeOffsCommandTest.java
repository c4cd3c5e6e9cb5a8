package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What cannot all be had, and what could go, of the demo in which something must. */
class TradeOffsCommandTest {
    /** Two sessions held at the same time. */
    private static final String HELD = """
            { "weekwright": 1, "scenario": "dunmarsh-clash", "placements": [
              { "group": "college-squad", "family": "mobility", "start": "2027-09-13T16:00", "pin": { "start": true } },
              { "group": "college-squad", "family": "trunk-and-balance", "start": "2027-09-13T16:15", "pin": { "start": true } } ] }
            """;

    private static final int SCREEN = 40;

    private final Trial trial = new Trial();

    @Test
    void what_could_go_in_a_week_that_cannot_hold_all() {
        assertThat(trial.run("tradeoffs", "demo:clash", "--moves", "4000", "--threads", "1"))
                .as(trial.err())
                .isZero();

        assertThat(trial.out()).isEqualTo("""
                        Not all that is asked for was met: the best plan found falls short of Heavy lower, knee-dominant and
                        Maximal velocity sprinting.
                        Nothing is broken that must hold; key work falls short by 2; 60.4 points of wishes unmet.

                        What clashes
                          · Heavy lower, knee-dominant cannot be had: each of 119 ways to place it breaks something that
                            must hold: "Hours before a fixture" (65), "The place is open" (65), "Hours after a fixture"
                            (54).
                          · Maximal velocity sprinting cannot be had: each of 109 ways to place it breaks something that
                            must hold: "Hours after a fixture" (75), "Hours before a fixture" (59), "One place at a time"
                            (39).

                        What could go, what buys most first
                          · Let Maximal velocity sprinting be done in a micro dose, and count it: 1 more of the key work is
                            done, saves 7.3 points.
                          · Let maximal sprinting begin 51 h instead of 64 h after a fixture: 1 more of the key work is
                            done, costs 19.6 points more.
                          · Have College squad there on Wed 15 Sep: 1 more of the key work is done, costs 52.8 points more.
                          · Have Weights room open on Tue 14 Sep: 1 more of the key work is done, costs 63.1 points more.

                        Each was tried by a search of 4,000 moves. A point is an hour of rest that the whole group would
                        rather have, or its like; what changes is said of the whole plan.
                        """);
    }

    @Test
    void no_more_than_a_screen_and_no_word_of_the_machine() {
        trial.in(HELD.getBytes(StandardCharsets.UTF_8)).run("tradeoffs", "demo:clash", "-", "--moves", "3000");

        assertThat(trial.out().lines())
                .hasSizeLessThanOrEqualTo(SCREEN)
                .allSatisfy(line ->
                        assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(100));
        assertThat(trial.out())
                .doesNotContainPattern("(?i)cohort|stimulus|slot|constraint|lexicographic|score|[a-z]+-[a-z]+-floor");
    }

    @Test
    void pins_that_contradict_each_other() {
        int exit = trial.in(HELD.getBytes(StandardCharsets.UTF_8))
                .run("tradeoffs", "demo:clash", "-", "--moves", "3000", "--threads", "2");

        assertThat(exit).isEqualTo(Exit.MUST_BROKEN);
        assertThat(trial.out().replaceAll("\\s+", " "))
                .contains(
                        "The pin of Mobility (Mon 13 Sep 16:00) and the pin of Trunk, balance, stability (Mon 13 Sep 16:15)"
                                + " cannot both be had: Mobility (Mon 13 Sep 16:00) and Trunk, balance, stability (Mon 13 Sep 16:15)"
                                + " overlap by ",
                        "Either can be had without the other.")
                .contains("Unpin Mobility (Mon 13 Sep 16:00): mends 1 thing that must hold");
    }

    @Test
    void where_all_can_be_had_nothing_need_go() {
        assertThat(trial.run("tradeoffs", "demo:one-match", "--moves", "4000")).isZero();
        assertThat(trial.out()).startsWith("Nothing need go: all that must hold holds, and all that is owed is met.\n");
    }

    @Test
    void the_same_seed_gives_the_same_answer_on_any_number_of_threads() {
        trial.run("tradeoffs", "demo:clash", "--moves", "1000", "--threads", "1", "--json");
        String one = trial.out();
        trial.run("tradeoffs", "demo:clash", "--moves", "1000", "--threads", "3", "--json");

        assertThat(trial.out()).isEqualTo(one).contains("\"proved\": true", "\"couldGo\": [");
    }

    @Test
    void a_budget_that_is_none() {
        assertThat(trial.run("tradeoffs", "demo:clash", "--moves", "0")).isEqualTo(Exit.BAD_INPUT);
        assertThat(trial.err()).contains("--moves is 0: give a whole number from 1");
        assertThat(trial.run("tradeoffs", "demo:clash", "--threads", "65")).isEqualTo(Exit.BAD_INPUT);
        assertThat(trial.err()).contains("--threads is 65: give 1 to 64");
        assertThat(trial.out()).isEmpty();
    }
}
