package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import org.junit.jupiter.api.Test;
import weekwright.engine.testing.RuleExamples;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RestrictionLimit;

/** The sentences of facts and packs, word for word, and that a group is named where there are several. */
class FactWordingTest {
    private static String text(Squad squad, String rule) {
        return squad.judged().only(rule).text();
    }

    private static String text(String rule) {
        return text(RuleExamples.of(rule), rule);
    }

    private static Squad weeks(int lastWeek) {
        return squad().done("tempo-run", "2027-02-24T10:00").lasting(lastWeek).placed("tempo-run", "2027-03-02T10:00");
    }

    @Test
    void week_load() {
        assertThat(text("week-load"))
                .isEqualTo("The load of Squad in the week from Mon 1 Mar is 33.3 % below the last week without a"
                        + " fixture; a change of more than 10 % is worth knowing.");
        assertThat(text(weeks(36), "week-load"))
                .isEqualTo("The load of Squad in the week from Mon 1 Mar is 11.1 % above the last week without a"
                        + " fixture; a change of more than 10 % is worth knowing.");
        assertThat(text(weeks(20).done("tempo-run", "2027-02-17T10:00").lasting(30), "week-load"))
                .isEqualTo("The load of Squad in the week from Mon 1 Mar is 60 % above the mean of the last 2 weeks"
                        + " without a fixture; a rise of more than 15 % should have a reason.");
        Squad match = weeks(200).done("fixture", "2027-02-27T15:00").fixture("cup-tie", "2027-03-06T15:00");
        assertThat(text(match, "week-load")).contains(" below the last week with a fixture; ");
    }

    @Test
    void week_load_of_people_who_are_not_equally_far_off() {
        Squad two = squad().athlete("ash")
                .done("tempo-run", "2027-02-24T10:00")
                .done("tempo-run", "2027-02-25T10:00")
                .without("ash")
                .placed("tempo-run", "2027-03-02T10:00");
        assertThat(text(two, "week-load"))
                .isEqualTo("The load of Squad in the week from Mon 1 Mar is up to 66.7 % below the last week without a"
                        + " fixture; a change of more than 10 % is worth knowing.");
    }

    /** Ash is kept from running for the week, which nobody here can mend: only the others are spoken of. */
    @Test
    void week_load_of_those_for_whom_something_is_placed() {
        Squad two =
                weeks(60).athlete("ash").restricted(RestrictionLimit.NONE, "2027-03-01", "2027-03-07", Pathway.AEROBIC);
        assertThat(text(two, "week-load"))
                .isEqualTo("The load of Squad in the week from Mon 1 Mar is 33.3 % below the last week without a"
                        + " fixture; a change of more than 10 % is worth knowing. Concerns 9 of 10 in Squad.");
    }

    /** Six days of 160 AU, and for Ash 80 on the seventh: a mean of 148.57 over a deviation of 30.24. */
    @Test
    void load_spread_of_people_whose_days_are_not_equally_alike() {
        Squad two = RuleExamples.of("load-spread")
                .quorum(1)
                .athlete("ash")
                .commitment("club", "tempo-run", "2027-03-07T10:00")
                .lasting(20)
                .only("ash");
        assertThat(text(two, "load-spread"))
                .isEqualTo("The days of Squad in the week from Mon 1 Mar are much alike: monotony up to 4.91 (mean of a"
                        + " day's load ÷ their standard deviation, that of a sample); more than 2 is often called"
                        + " high.");
    }

    @Test
    void load_spread() {
        assertThat(text("load-spread"))
                .isEqualTo("The days of Squad in the week from Mon 1 Mar are much alike: monotony 2.27 (mean of a"
                        + " day's load ÷ their standard deviation, that of a sample); more than 2 is often called"
                        + " high.");
        Squad alike = squad();
        for (int day = 1; day <= 7; day++) {
            alike.placed("tempo-run", "2027-03-0" + day + "T10:00");
        }
        assertThat(text(alike, "load-spread"))
                .isEqualTo("Squad has the same load on every day of the week from Mon 1 Mar: its monotony cannot be"
                        + " worked out.");
    }

    /** The critiques stand beside every ratio: Lolli et al. 2019, Impellizzeri et al. 2020 and 2021. */
    @Test
    void load_ratio() {
        assertThat(text("load-ratio"))
                .isEqualTo("By Sun 7 Mar the mean daily load of Squad over 7 days is 1.60 times that over 28 days."
                        + " Describes how this week compares with recent weeks; does not predict injury. Against it:"
                        + " The short span lies inside the long one, which ties them together (Lolli et al. 2019, BJSM"
                        + " 53:921-922). No causal or conceptual basis; go back to ordinary progression (Impellizzeri"
                        + " et al. 2020, J Athl Train 55:893-901). Dividing by fixed or random long loads did about as"
                        + " well (Impellizzeri et al. 2021, Sports Med 51:581-592).");
        Squad two = squad().athlete("ash")
                .done("tempo-run", "2027-02-08T10:00")
                .without("ash")
                .placed("tempo-run", "2027-03-02T10:00");
        assertThat(text(two, "load-ratio"))
                .startsWith("By Sun 7 Mar the mean daily load of Squad over 7 days is from 1.60 to 4.00 times that"
                        + " over 28 days. ");
    }

    @Test
    void marks_old() {
        assertThat(text("marks-old"))
                .isEqualTo("Acceleration 10-40 m (Tue 2 Mar 10:00) needs a sprint time of the last 90 days; Ash has"
                        + " none.");
        Squad lifts = squad().athlete("ash")
                .mark(Measure.LIFT, "2026-10-01")
                .athlete("birch")
                .placed("upper-strength", "2027-03-02T10:00");
        assertThat(text(lifts, "marks-old"))
                .isEqualTo("Upper push and pull (Tue 2 Mar 10:00) needs a lift of the last 90 days; Ash and Birch have"
                        + " none.");
        Squad many = squad().placed("aerobic-intervals", "2027-03-02T10:00");
        for (String id : new String[] {"ash", "birch", "cedar", "date", "elm", "fir", "gum"}) {
            many.athlete(id);
        }
        assertThat(text(many, "marks-old"))
                .endsWith(" needs an aerobic speed of the last 90 days; Ash, Birch, Cedar, Date, Elm and 2 more have"
                        + " none.");
        assertThat(many.judged().only("marks-old").athletes()).hasSize(7);
    }

    private static Squad technique() {
        return squad().placed("technique", "2027-03-02T10:00");
    }

    @Test
    void sits_out_whom_and_why() {
        assertThat(text("sits-out"))
                .isEqualTo("Technique drill / new skill (Tue 2 Mar 10:00) goes on without Ash, for whom Shift of ash"
                        + " (Tue 2 Mar 09:30) comes first.");
        Squad exam = technique().athlete("ash").busy("2027-03-02T10:00", "2027-03-02T12:00");
        assertThat(text(exam, "sits-out"))
                .isEqualTo("Technique drill / new skill (Tue 2 Mar 10:00) goes on without Ash, who cannot come at that"
                        + " time.");
        Squad injured = squad().athlete("ash")
                .restricted(RestrictionLimit.NONE, "2027-03-02", "2027-03-02", Pathway.ACCELERATION)
                .athlete("birch")
                .restricted(RestrictionLimit.NONE, "2027-03-02", "2027-03-02", Pathway.ACCELERATION)
                .placed("acceleration", "2027-03-02T10:00");
        assertThat(text(injured, "sits-out"))
                .isEqualTo("Acceleration 10-40 m (Tue 2 Mar 10:00) goes on without Ash and Birch, by a clinician's"
                        + " word.");
        Squad several = technique()
                .athlete("ash")
                .busy("2027-03-02T10:00", "2027-03-02T12:00")
                .athlete("birch")
                .commitment("shift", null, "2027-03-02T09:30")
                .only("birch");
        assertThat(text(several, "sits-out"))
                .isEqualTo("Technique drill / new skill (Tue 2 Mar 10:00) goes on without Ash and Birch, who have other"
                        + " things to do.");
    }

    @Test
    void sits_out_for_another_group_and_where_nobody_is_named() {
        Squad guest = technique()
                .athlete("ash", Squad.ID, "juniors")
                .group("juniors")
                .placed("trunk-and-balance", "2027-03-02T10:20")
                .of("juniors");
        assertThat(text(guest, "sits-out"))
                .isEqualTo("Juniors: Trunk, balance, stability (Tue 2 Mar 10:20) goes on without Ash, for whom Squad"
                        + " comes first: Technique drill / new skill (Tue 2 Mar 10:00).");
        Squad counted = technique()
                .heads(1)
                .group("juniors")
                .placed("trunk-and-balance", "2027-03-02T10:20")
                .of("juniors");
        assertThat(counted.judged().of("sits-out")).isEmpty();
    }

    @Test
    void sits_out_what_would_be_too_much() {
        Squad visits = technique()
                .placed("tempo-run", "2027-03-02T18:00")
                .athlete("ash")
                .commitment("school", "trunk-and-balance", "2027-03-02T06:00")
                .only("ash");
        assertThat(text(visits, "sits-out"))
                .endsWith(" goes on without Ash: it would be one visit too many on that day.");
        Squad highDays = squad().highDays(0, 1, 1)
                .athlete("ash")
                .commitment("club", "heavy-lower-knee", "2027-03-01T10:00")
                .only("ash")
                .placed("max-velocity", "2027-03-04T10:00");
        assertThat(text(highDays, "sits-out"))
                .endsWith(" goes on without Ash: it would be one high day too many in that week.");
        Squad hardWork = squad().athlete("ash")
                .commitment("club", "lower-hypertrophy", "2027-03-01T17:00")
                .only("ash")
                .placed("acceleration", "2027-03-03T09:00");
        assertThat(text(hardWork, "sits-out"))
                .endsWith(" goes on without Ash: the hard work of another day lies too near.");
        Squad running = squad().athlete("ash")
                .commitment("club", "acceleration", "2027-03-01T10:00")
                .only("ash")
                .placed("heavy-lower-knee", "2027-03-02T10:00")
                .placed("max-velocity", "2027-03-03T10:00")
                .placed("heavy-lower-hip", "2027-03-04T10:00");
        assertThat(text(running, "sits-out"))
                .endsWith(" goes on without Ash: it would be one high day too many in a row.");
        Squad freeDay = squad().athlete("ash")
                .commitment("club", "technique", "2027-03-07T10:00")
                .only("ash");
        for (int day = 1; day <= 6; day++) {
            freeDay.placed("technique", "2027-03-0" + day + "T10:00");
        }
        assertThat(text(freeDay, "sits-out"))
                .endsWith(" (Sat 6 Mar 10:00) goes on without Ash: it would take the free day from that week.");
    }

    /** Each with the source of the hours that are named. */
    @Test
    void fixtures_close() {
        Squad close = squad().fixture("semi-final", "2027-03-01T15:00").fixture("final", "2027-03-05T15:00");
        assertThat(text(close, "fixtures-close"))
                .isEqualTo("Final starts 94 h 15 min after Semi final ends; under 120 h is close. Source: FIFPRO 2019,"
                        + " At the Limit.");
        Squad veryClose = squad().fixture("semi-final", "2027-03-01T15:00").fixture("final", "2027-03-03T15:00");
        assertThat(text(veryClose, "fixtures-close"))
                .isEqualTo("Final starts 46 h 15 min after Semi final ends; under 72 h is very close. Source: FIFA"
                        + " statement with player unions, July 2025 (press reports only).");
        assertThat(text(veryClose.number("fixtures-close", "veryCloseHours", 60), "fixtures-close"))
                .as("hours of the coach's own have no source")
                .isEqualTo("Final starts 46 h 15 min after Semi final ends; under 60 h is very close.");
    }

    @Test
    void rest_between_fixtures() {
        Squad close = squad().pack("rest-between-fixtures")
                .done("fixture", "2027-02-27T15:00")
                .fixture("final", "2027-03-03T15:00");
        assertThat(text(close, "rest-between-fixtures"))
                .isEqualTo("Final starts 94 h 15 min after the fixture of Sat 27 Feb ends; 120 h are preferred. Source:"
                        + " FIFPRO 2019, At the Limit.");
        Squad veryClose = squad().pack("rest-between-fixtures")
                .fixture("semi-final", "2027-03-01T15:00")
                .fixture("final", "2027-03-03T15:00");
        assertThat(text(veryClose, "rest-between-fixtures"))
                .isEqualTo("Final starts 46 h 15 min after Semi final ends; 72 h are asked for. Source: FIFA statement"
                        + " with player unions, July 2025 (press reports only).");
    }

    @Test
    void softened() {
        Squad changed = squad().pack("youth").level("no-middle-day", RuleLevel.OFF);
        assertThat(text(changed, "softened"))
                .isEqualTo("Changed from the usual for Squad: No middle days and Youth hours.");
    }

    /** Dated, with their sources; local rules decide. */
    @Test
    void packs() {
        String college =
                " Source: NCAA Division I, Bylaw 17.1.7 as of 2026 (secondary pages only); the compliance office"
                        + " decides.";
        String young = " Source: NATA youth specialization statement 2019 (secondary pages only); local rules decide.";
        assertThat(text("college-in-season"))
                .isEqualTo("Squad has 4 h 1 min of training and competition on Tue 2 Mar; at most 4 h a day are"
                        + " allowed." + college);
        assertThat(text("college-out-of-season"))
                .isEqualTo("Squad has 1 day off in the week from Mon 1 Mar; 2 are asked for." + college);
        assertThat(text("youth")).isEqualTo("Squad has 1 day off in the week from Mon 1 Mar; 2 are asked for." + young);
        Squad camp = squad().pack("youth")
                .athlete("ash")
                .born("2013-03-01")
                .commitment("camp", "technique", "2027-03-01T08:00")
                .lasting(810)
                .placed("tempo-run", "2027-03-02T10:00");
        assertThat(text(camp, "youth"))
                .isEqualTo("Squad has 14 h 10 min of training and competition in the week from Mon 1 Mar; at most 14 h"
                        + " a week are allowed by the age of the youngest." + young);
        Squad none = RuleExamples.of("college-out-of-season").placed("technique", "2027-03-07T10:00");
        assertThat(text(none, "college-out-of-season")).startsWith("Squad has no day off in the week from Mon 1 Mar; ");
    }

    @Test
    void a_group_is_named_where_there_are_several() {
        assertThat(text(RuleExamples.of("marks-old").group("juniors"), "marks-old"))
                .startsWith("Squad: Acceleration 10-40 m (Tue 2 Mar 10:00) needs a sprint time ");
        assertThat(text(RuleExamples.of("no-middle-day").group("juniors"), "no-middle-day"))
                .startsWith("Tue 2 Mar is a middle day for Squad: ");
        Squad together = RuleExamples.of("one-place-at-a-time")
                .athlete("ash", Squad.ID, "juniors")
                .group("juniors");
        assertThat(text(together, "one-place-at-a-time")).startsWith("Squad: Technique drill ");
        Squad both = squad().athlete("ash", Squad.ID, "juniors")
                .placed("technique", "2027-03-02T10:00")
                .group("juniors")
                .quorum(1)
                .placed("trunk-and-balance", "2027-03-02T10:20")
                .of("juniors");
        assertThat(text(both, "one-place-at-a-time")).startsWith("Squad and Juniors: Technique drill ");
    }

    @Test
    void a_guest_is_no_reason_to_name_two_groups_for_one_groups_day() {
        Squad guest = squad().heads(2)
                .athlete("ash", Squad.ID, "juniors")
                .placed("mobility", "2027-03-02T09:00")
                .group("juniors")
                .placed("technique", "2027-03-02T12:00")
                .of("juniors");
        assertThat(text(guest, "short-wait"))
                .isEqualTo("Squad waits 2 h 40 min between visits on Tue 2 Mar. Concerns Ash.");
    }

    @Test
    void a_group_is_named_where_a_session_is_left_out() {
        Squad left = squad().window("10:00", "10:20").aim("technique", 1, 1, 1);
        assertThat(left.judged().leftOut().text()).startsWith("Technique drill / new skill in the week from Mon 1 Mar");
        assertThat(left.group("juniors").judged().leftOut().text())
                .contains("Squad")
                .startsWith("Technique drill / new skill in the week from Mon 1 Mar");
    }
}
