package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import org.junit.jupiter.api.Test;
import weekwright.engine.testing.RuleExamples;
import weekwright.engine.testing.Squad;
import weekwright.model.scenario.Level;

/** The sentences of the wants about rest, size, exposure and learning, word for word. */
class WantWordingTest {
    private static String text(Squad squad, String rule) {
        return squad.judged().only(rule).text();
    }

    private static String text(String rule) {
        return text(RuleExamples.of(rule), rule);
    }

    @Test
    void primer_window() {
        assertThat(text("primer-window"))
                .isEqualTo("Primer (Thu 4 Mar 10:00) ends 52 h 30 min before Cup tie; a primer works from 33 h to 4 h"
                        + " before.");
        Squad late = squad().fixture("cup-tie", "2027-03-03T15:00").placed("primer", "2027-03-04T10:00");
        assertThat(text(late, "primer-window"))
                .isEqualTo("Primer (Thu 4 Mar 10:00) has no fixture after it; a primer works from 33 h to 4 h before.");
        assertThat(RuleExamples.of("primer-window")
                        .judged()
                        .only("primer-window")
                        .fixtures())
                .containsExactly("cup-tie");
    }

    @Test
    void even_spread() {
        assertThat(text("even-spread"))
                .isEqualTo("Tempo run (Thu 4 Mar 10:00) starts 48 h after Tempo run (Tue 2 Mar 10:00); spread evenly"
                        + " over the week, 72 h lie between.");
    }

    @Test
    void night_rest_margin() {
        assertThat(text("night-rest-margin"))
                .isEqualTo("8 h 30 min lie between the end of Technique drill / new skill (Tue 2 Mar 21:00) and the"
                        + " start of Mobility (Wed 3 Mar 06:00); for a long night 10 h are wanted.");
        Squad home =
                squad().fixture("cup-tie", "2027-03-02T18:00").travelling(0, 75).placed("mobility", "2027-03-03T06:00");
        assertThat(text(home, "night-rest-margin"))
                .isEqualTo("9 h lie between the end of Cup tie and the start of Mobility (Wed 3 Mar 06:00), travel and"
                        + " a fixture's warm-up included; for a long night 10 h are wanted.");
    }

    @Test
    void six_days_running() {
        assertThat(text("six-days-running"))
                .isEqualTo("Squad has no free day from Mon 1 Mar to Sun 7 Mar, 7 days running; at most 6 are wanted.");
    }

    @Test
    void strength_endurance_apart() {
        assertThat(text("strength-endurance-apart"))
                .isEqualTo("Upper push and pull (Tue 2 Mar 12:00) starts 1 h 20 min after Aerobic intervals (Tue 2 Mar"
                        + " 10:00); between lifting and hard endurance work on one day 3 h are wanted.");
    }

    @Test
    void top_up() {
        assertThat(text("top-up"))
                .isEqualTo("Those who did not play Cup tie have nothing by the end of Thu 4 Mar; wanted: Short hard"
                        + " running for those who did not play; may lie at the venue straight after the match.");
    }

    @Test
    void travel_day_light() {
        assertThat(text("travel-day-light"))
                .isEqualTo("Small-sided games (Sat 6 Mar 07:00) lies on a day of long travel: only low work belongs"
                        + " there.");
    }

    @Test
    void attendance() {
        assertThat(text("attendance"))
                .isEqualTo("Technique drill / new skill (Tue 2 Mar 10:00) lies where 1 of 10 in Squad cannot take part."
                        + " Concerns Ash.");
    }

    @Test
    void visit_size() {
        assertThat(text("visit-size"))
                .isEqualTo(
                        "Squad has a visit of 4 sessions on Tue 2 Mar, easy and short work not counted; at most 3 are"
                                + " wanted.");
        Squad day = squad().commitment("practice", "team-practice", "2027-03-02T14:00")
                .lasting(191)
                .placed("upper-strength", "2027-03-02T10:00");
        assertThat(text(day, "visit-size"))
                .isEqualTo("Squad trains 211 min on Tue 2 Mar, warm-ups and easy work not counted; at most 210 min are"
                        + " wanted.");
    }

    @Test
    void short_wait() {
        assertThat(text("short-wait")).isEqualTo("Squad waits 2 h 30 min between visits on Tue 2 Mar.");
    }

    @Test
    void learner_frequency() {
        assertThat(text("learner-frequency"))
                .isEqualTo(
                        "Technique drill / new skill: 1 in the week from Mon 1 Mar; a skill being learnt is wanted at"
                                + " least 2 times.");
        Squad two = squad().aim("technique", 0, 2, 5).learning();
        assertThat(text(two, "learner-frequency"))
                .isEqualTo(
                        "Technique drill / new skill: none in the week from Mon 1 Mar; a skill being learnt is wanted"
                                + " at least 2 times.");
        two.placed("technique", "2027-03-01T10:00").placed("technique", "2027-03-03T10:00");
        two.placed("top-up-run", "2027-03-03T08:00");
        assertThat(text(two, "learner-frequency"))
                .isEqualTo("Technique drill / new skill (Wed 3 Mar 10:00) comes after something tiring; a new skill is"
                        + " learnt fresh, on days of its own.");
        Squad twice = squad().aim("technique", 0, 2, 5)
                .learning()
                .placed("technique", "2027-03-01T10:00")
                .placed("technique", "2027-03-01T16:00");
        assertThat(text(twice, "learner-frequency"))
                .isEqualTo("Technique drill / new skill (Mon 1 Mar 16:00) comes on a day that has it already; a new"
                        + " skill is learnt fresh, on days of its own.");
        Squad often = squad().aim("technique", 0, 2, 5).learning();
        for (int day = 1; day <= 5; day++) {
            often.placed("technique", "2027-03-0" + day + "T10:00");
        }
        assertThat(text(often, "learner-frequency"))
                .isEqualTo(
                        "Technique drill / new skill: 5 in the week from Mon 1 Mar; a skill being learnt is wanted at"
                                + " most 4 times.");
    }

    @Test
    void return_dose() {
        assertThat(text("return-dose"))
                .isEqualTo("Maximal velocity sprinting (Mon 1 Mar 10:00) comes 17 days after the last sprinting near"
                        + " best speed, with 100 % of the usual volume; at most 50 % are wanted.");
    }

    @Test
    void pathway_neglected() {
        assertThat(text("pathway-neglected"))
                .isEqualTo("Squad goes 12 days without knee-dominant strength at high intensity, from Fri 19 Feb to Wed"
                        + " 3 Mar; it is wanted every 10 days.");
    }

    @Test
    void sprint_metres() {
        assertThat(text("sprint-metres"))
                .isEqualTo("Maximal velocity sprinting (Tue 2 Mar 10:00) holds 130 m at 95 % of best speed or more; at"
                        + " most 120 m are wanted.");
        Squad all = squad().level(Level.NOVICE)
                .aim("max-velocity", 0, 1, 1)
                .metres(60, 200)
                .placed("max-velocity", "2027-03-02T10:00");
        assertThat(text(all, "sprint-metres"))
                .isEqualTo("Maximal velocity sprinting (Tue 2 Mar 10:00) holds 200 m of sprinting, run-ins included; at"
                        + " least 240 m are wanted.");
    }

    @Test
    void taper() {
        assertThat(text("taper"))
                .isEqualTo("Before Cup tie the daily load of Squad falls by 6.7 % against the 14 days before the taper;"
                        + " a fall of at least 41 % is wanted.");
        Squad none = squad().days(14)
                .done("tempo-run", "2027-02-21T10:00")
                .fixture("cup-tie", "2027-03-13T15:00")
                .tapering(6);
        assertThat(text(none, "taper"))
                .isEqualTo("Before Cup tie the daily load of Squad falls by 100 % against the 14 days before the taper;"
                        + " a fall of at most 60 % is wanted.");
        none.placed("tempo-run", "2027-03-08T10:00").placed("tempo-run", "2027-03-10T10:00");
        assertThat(text(none, "taper"))
                .isEqualTo("Before Cup tie the daily load of Squad rises by 211.1 % against the 14 days before the"
                        + " taper; a fall of at least 41 % is wanted.");
    }
}
