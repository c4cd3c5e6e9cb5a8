package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.engine.testing.RuleExamples;
import weekwright.engine.testing.Squad;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.LendsAt;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Share;

/** Every sentence that a finding can say, word for word: what was found, what should be, and whom it concerns. */
class WordingTest {
    private static String text(Squad squad, String rule) {
        return squad.judged().only(rule).text();
    }

    /** The sentence about the rule's own example. */
    private static String text(String rule) {
        return text(RuleExamples.of(rule), rule);
    }

    @Test
    void one_place_at_a_time() {
        assertThat(text("one-place-at-a-time"))
                .isEqualTo("Technique drill / new skill (Tue 2 Mar 10:00) and Trunk, balance, stability (Tue 2 Mar"
                        + " 10:20) overlap by 10 min.");
        Squad match = squad().fixture("cup-tie", "2027-03-06T15:00").travelling(75, 75);
        assertThat(text(match.placed("technique", "2027-03-06T17:30"), "one-place-at-a-time"))
                .isEqualTo("Cup tie and Technique drill / new skill (Sat 6 Mar 17:30) overlap by 30 min, the fixture's"
                        + " travel and warm-up included.");
        Squad apart = squad().transfer("weights-room", "turf-pitch", 10)
                .placed("heavy-lower-knee", "2027-03-02T10:00")
                .placed("acceleration", "2027-03-02T11:01");
        assertThat(text(apart, "one-place-at-a-time"))
                .isEqualTo("Heavy lower, knee-dominant (Tue 2 Mar 10:00) and Acceleration 10-40 m (Tue 2 Mar 11:01) are"
                        + " 1 min apart; the way from one to the other takes 10 min.");
    }

    @Test
    void inside_window_and_facility_open() {
        assertThat(text("inside-window"))
                .isEqualTo("Technique drill / new skill (Tue 2 Mar 15:45) has 15 min outside the hours in which Squad"
                        + " can train.");
        assertThat(text("facility-open"))
                .isEqualTo("Heavy lower, knee-dominant (Tue 2 Mar 14:30) has 30 min outside the opening hours of"
                        + " Weights room.");
    }

    @Test
    void facility_fits() {
        assertThat(text("facility-fits"))
                .isEqualTo(
                        "Heavy lower, knee-dominant (Tue 2 Mar 18:00) cannot be held at Turf pitch: it needs a gym.");
        assertThat(text(squad().placed("acceleration", "2027-03-02T18:00").at(null), "facility-fits"))
                .isEqualTo("Acceleration 10-40 m (Tue 2 Mar 18:00) has no place: it needs a track, field or hall.");
        Squad narrow = squad().straight("turf-pitch", 60).placed("max-velocity", "2027-03-02T18:00");
        assertThat(text(narrow, "facility-fits"))
                .isEqualTo(
                        "Maximal velocity sprinting (Tue 2 Mar 18:00) needs a straight of 80 m; Turf pitch has 60 m.");
    }

    @Test
    void one_place_at_a_time_in_lent_minutes() {
        Squad far = squad().transfer("weights-room", "turf-pitch", 10)
                .practice("practice", "2027-03-02T18:00")
                .at("turf-pitch")
                .lending(30, LendsAt.START)
                .placed("full-body-strength", "2027-03-02T18:20")
                .dose(Dose.MICRO);
        assertThat(text(far, "one-place-at-a-time"))
                .isEqualTo(
                        "Full-body strength (Tue 2 Mar 18:20) lies in the minutes that Practice (Tue 2 Mar 18:00) lends,"
                                + " and leaves 5 min of them for the way there or back; it takes 10 min.");
    }

    @Test
    void quorum() {
        assertThat(text("quorum"))
                .isEqualTo("Technique drill / new skill (Tue 2 Mar 10:00) can have only 7 of those it is for; at least"
                        + " 8 must come.");
        Squad nobody = squad().aim("technique", 0, 1, 1).whom(Share.NOT_PLAYED).placed("technique", "2027-03-02T10:00");
        assertThat(text(nobody, "quorum"))
                .isEqualTo("Technique drill / new skill (Tue 2 Mar 10:00) can have nobody of those it is for; at least"
                        + " 1 must come.");
    }

    @Test
    void facility_room() {
        assertThat(text("facility-room"))
                .isEqualTo(
                        "Squad and Sprinters: Weights room holds 1 group at once; when Heavy lower, hip-dominant (Tue 2"
                                + " Mar 18:30) starts there are 2: Heavy lower, knee-dominant (Tue 2 Mar 18:00) and Heavy lower, hip-dominant"
                                + " (Tue 2 Mar 18:30).");
        assertThat(text(RuleExamples.of("facility-room").room("weights-room", null, 19), "facility-room"))
                .startsWith(
                        "Squad and Sprinters: Weights room holds 19 athletes at once; when Heavy lower, hip-dominant (Tue 2 Mar 18:30)"
                                + " starts there are 20: Heavy lower, knee-dominant (Tue 2 Mar 18:00) and ");
    }

    @Test
    void lead_free() {
        assertThat(text("lead-free"))
                .isEqualTo("Sprinters: Nobody who may lead Maximal velocity sprinting (Tue 2 Mar 10:30) is free then.");
        Squad named = squad().staff("speed-coach", "*")
                .staff("lifting-coach", "heavy-lower-knee")
                .placed("max-velocity", "2027-03-02T10:00")
                .ledBy("lifting-coach");
        assertThat(text(named, "lead-free"))
                .isEqualTo(
                        "Lifting coach is named to lead Maximal velocity sprinting (Tue 2 Mar 10:00), but may not lead"
                                + " it or is not free then.");
    }

    @Test
    void visits_per_day() {
        assertThat(text("visits-per-day"))
                .isEqualTo("Squad comes 3 times on Tue 2 Mar; at most 2 visits a day are allowed.");
        assertThat(text(RuleExamples.of("visits-per-day").number("visits-per-day", "visits", 1), "visits-per-day"))
                .isEqualTo("Squad comes 3 times on Tue 2 Mar; at most 1 visit a day is allowed.");
    }

    @Test
    void night_rest() {
        assertThat(text("night-rest"))
                .isEqualTo("Only 7 h lie between the end of Technique drill / new skill (Tue 2 Mar 22:30) and the start"
                        + " of Mobility (Wed 3 Mar 06:00); a night's rest is 8 h.");
        Squad home =
                squad().fixture("cup-tie", "2027-03-02T20:00").travelling(0, 75).placed("mobility", "2027-03-03T06:55");
        assertThat(text(home, "night-rest"))
                .isEqualTo("Only 7 h 55 min lie between the end of Cup tie, the way home included, and the start of"
                        + " Mobility (Wed 3 Mar 06:55); a night's rest is 8 h.");
        Squad out =
                squad().fixture("cup-tie", "2027-03-03T09:00").travelling(95, 0).placed("mobility", "2027-03-02T23:00");
        assertThat(text(out, "night-rest"))
                .isEqualTo("Only 7 h 40 min lie between the end of Mobility (Tue 2 Mar 23:00) and the start of Cup tie,"
                        + " the way there and the warm-up included; a night's rest is 8 h.");
    }

    @Test
    void pathway_gap_floor() {
        assertThat(text("pathway-gap-floor"))
                .isEqualTo("Maximal velocity sprinting (Thu 4 Mar 09:00) comes 39 h after Maximal velocity sprinting"
                        + " (Tue 2 Mar 16:55); for maximal sprinting at high intensity at least 40 h must pass.");
        Squad twice =
                squad().placed("heavy-lower-knee", "2027-03-02T09:00").placed("heavy-lower-knee", "2027-03-02T17:00");
        assertThat(text(twice, "pathway-gap-floor"))
                .isEqualTo(
                        "Heavy lower, knee-dominant comes twice on Tue 2 Mar, at 09:00 and at 17:00; it may come only"
                                + " once a day.");
    }

    @Test
    void pathway_gap() {
        assertThat(text("pathway-gap"))
                .isEqualTo("Maximal velocity sprinting (Fri 5 Mar 10:00) comes 64 h after Maximal velocity sprinting"
                        + " (Tue 2 Mar 16:55); for maximal sprinting 72 h are wanted, and 68 h count as enough.");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "max-velocity, maximal sprinting",
        "acceleration, acceleration",
        "heavy-lower-knee, knee-dominant strength",
        "heavy-lower-hip, hip-dominant strength",
        "lower-hypertrophy, knee-dominant strength and hip-dominant strength",
        "upper-strength, upper-body pushing and upper-body pulling",
        "intensive-plyometrics, jumping",
        "change-of-direction, change of direction",
        "aerobic-intervals, aerobic work",
        "repeated-sprint, 'acceleration, change of direction and aerobic work'"
    })
    void the_qualities_have_a_coachs_names(String family, String quality) {
        Squad squad = squad().placed(family, "2027-03-02T18:00").placed(family, "2027-03-03T06:00");
        assertThat(text(squad, "pathway-gap-floor")).contains("; for " + quality + " at high intensity at least ");
    }

    @Test
    void high_block_floor_and_gap() {
        assertThat(text("high-block-floor"))
                .isEqualTo(
                        "The hard work of Thu 4 Mar begins 39 h after that of Tue 2 Mar ended; at least 40 h must lie"
                                + " between.");
        assertThat(text("high-block-gap"))
                .isEqualTo("The hard work of Thu 4 Mar begins 42 h after that of Tue 2 Mar ended; 48 h are wanted, and"
                        + " 44 h count as enough.");
    }

    @Test
    void before_fixture_and_margin() {
        assertThat(text("before-fixture"))
                .isEqualTo(
                        "Maximal velocity sprinting (Thu 4 Mar 18:00) ends 38 h 55 min before Cup tie; it must end at"
                                + " least 40 h before.");
        assertThat(text("before-fixture-margin"))
                .isEqualTo("Maximal velocity sprinting (Wed 3 Mar 16:55) ends 64 h before Cup tie; 72 h are wanted, and"
                        + " 68 h count as enough.");
    }

    @Test
    void after_fixture_and_margin() {
        assertThat(text("after-fixture"))
                .isEqualTo("Maximal velocity sprinting (Thu 4 Mar 09:00) starts 63 h after Cup tie; at least 64 h must"
                        + " pass.");
        assertThat(text("after-fixture-margin"))
                .isEqualTo(
                        "Maximal velocity sprinting (Thu 4 Mar 12:00) starts 66 h after Cup tie; 72 h are wanted, and"
                                + " 68 h count as enough.");
        Squad history = squad().done("fixture", "2027-02-28T23:00").placed("tempo-run", "2027-03-01T01:15");
        assertThat(text(history, "after-fixture"))
                .isEqualTo(
                        "Tempo run (Mon 1 Mar 01:15) starts 30 min after the fixture of Sun 28 Feb; at least 16 h must"
                                + " pass.");
        Squad during = squad().fixture("cup-tie", "2027-03-02T15:00").placed("tempo-run", "2027-03-02T16:00");
        assertThat(text(during, "after-fixture"))
                .isEqualTo("Tempo run (Tue 2 Mar 16:00) starts 0 h after Cup tie; at least 16 h must pass.");
    }

    @Test
    void primer_end() {
        assertThat(text("primer-end"))
                .isEqualTo("Primer (Sat 6 Mar 12:00) ends 2 h 30 min before Cup tie; a primer must end at least 3 h"
                        + " before.");
    }

    @Test
    void three_and_four_high_days() {
        assertThat(text("three-high-days"))
                .isEqualTo("Tue 2 Mar to Thu 4 Mar are 3 high days running; at most 2 should follow one another.");
        assertThat(text("four-high-days"))
                .isEqualTo("Mon 1 Mar to Thu 4 Mar are 4 high days running; at most 3 should follow one another.");
    }

    @Test
    void free_day() {
        assertThat(text("free-day")).isEqualTo("Squad has no free day in the week from Mon 1 Mar; 1 must be kept.");
        Squad sixDays = RuleExamples.of("aim-least").number("free-day", "days", 3);
        for (int day = 1; day <= 6; day++) {
            sixDays.placed("trunk-and-balance", "2027-03-0" + day + "T10:00");
        }
        assertThat(text(sixDays, "free-day"))
                .isEqualTo("Squad has 1 free day in the week from Mon 1 Mar; 3 must be kept.");
    }

    @Test
    void aims() {
        assertThat(text("aim-most"))
                .isEqualTo("Technique drill / new skill: 2 in the week from Mon 1 Mar; at most 1 may be placed.");
        assertThat(text("aim-least"))
                .isEqualTo("Technique drill / new skill: none in the week from Mon 1 Mar; at least 1 is owed.");
        assertThat(text("aim-target"))
                .isEqualTo("Technique drill / new skill: none in the week from Mon 1 Mar; 1 is wanted.");
        assertThat(text(squad().aim("technique", 0, 2, 3), "aim-target"))
                .isEqualTo("Technique drill / new skill: none in the week from Mon 1 Mar; 2 are wanted.");
        Squad micro = squad().aim("technique", 2, 2, 3)
                .doses(Dose.FULL, Dose.MICRO)
                .placed("technique", "2027-03-02T10:00")
                .placed("technique", "2027-03-04T10:00")
                .dose(Dose.MICRO);
        assertThat(text(micro, "aim-least"))
                .isEqualTo(
                        "Technique drill / new skill: 1 in the week from Mon 1 Mar, micro doses not counted; at least"
                                + " 2 are owed.");
    }

    @Test
    void high_days_against_their_numbers() {
        assertThat(text("high-days-most"))
                .isEqualTo("Squad has 2 high days in the week from Mon 1 Mar; at most 1 is allowed.");
        assertThat(text("high-days-least"))
                .isEqualTo("Squad has no high day in the week from Mon 1 Mar; at least 1 is owed.");
        assertThat(text("high-days-target"))
                .isEqualTo("Squad has 1 high day in the week from Mon 1 Mar; 2 are wanted.");
    }

    @Test
    void day_before_light() {
        assertThat(text("day-before-light"))
                .isEqualTo("Small-sided games (Fri 5 Mar 10:00) lies on the day before Cup tie: only low work, practice"
                        + " and a primer belong there.");
    }

    @Test
    void load_falls_to_fixture() {
        assertThat(text("load-falls-to-fixture"))
                .isEqualTo("Load rises towards Cup tie: 160 AU on Thu 4 Mar after 90 AU on Wed 3 Mar.");
        Squad eve = squad().fixture("cup-tie", "2027-03-06T15:00")
                .placed("tempo-run", "2027-03-03T10:00")
                .lasting(45)
                .placed("tempo-run", "2027-03-04T10:00")
                .lasting(45)
                .placed("tempo-run", "2027-03-05T10:00");
        assertThat(text(eve, "load-falls-to-fixture"))
                .isEqualTo(
                        "Fri 5 Mar, the day before Cup tie, carries 160 AU; measured against Wed 3 Mar at most 120 AU"
                                + " are wanted.");
        Squad late = squad().fixture("cup-tie", "2027-03-06T15:00")
                .placed("technique", "2027-03-03T10:00")
                .lasting(90)
                .placed("technique", "2027-03-04T10:00")
                .lasting(40)
                .placed("technique", "2027-03-05T10:00")
                .lasting(45);
        assertThat(text(late, "load-falls-to-fixture"))
                .isEqualTo("Load rises towards Cup tie: 135 AU on Fri 5 Mar after 120 AU on Thu 4 Mar.");
    }

    @Test
    void free_day_place() {
        assertThat(text("free-day-place"))
                .isEqualTo("The free day after Cup tie is the first day after it, not the second (Wed 3 Mar).");
        assertThat(text(RuleExamples.of("free-day-place").placed("technique", "2027-03-02T10:00"), "free-day-place"))
                .isEqualTo("Neither of the two days after Cup tie is free (Tue 2 Mar and Wed 3 Mar).");
    }

    @Test
    void no_middle_day() {
        assertThat(text("no-middle-day"))
                .isEqualTo("Tue 2 Mar is a middle day for Squad: demand 6, above low (5.5) and below high (6.5).");
    }

    @Test
    void dose_kept() {
        assertThat(text("dose-kept"))
                .isEqualTo(
                        "Technique drill / new skill (Tue 2 Mar 10:00) is done in a micro dose; a full one is wanted.");
        Squad reduced = RuleExamples.of("dose-kept").doses(Dose.REDUCED, Dose.MICRO);
        assertThat(text(reduced, "dose-kept")).endsWith(" is done in a micro dose; a reduced one is wanted.");
    }

    @Test
    void freshest_first() {
        assertThat(text("freshest-first"))
                .isEqualTo("Acceleration 10-40 m (Tue 2 Mar 14:00) comes after Heavy lower, knee-dominant (Tue 2 Mar"
                        + " 10:00); the work that needs freshness more belongs first.");
        Squad skill = squad().aim("technique", 0, 1, 1)
                .learning()
                .practice("morning-practice", "2027-03-02T09:00")
                .placed("technique", "2027-03-02T14:00");
        assertThat(text(skill, "freshest-first"))
                .isEqualTo(
                        "Technique drill / new skill (Tue 2 Mar 14:00) teaches a new skill after Morning practice (Tue"
                                + " 2 Mar 09:00); a new skill is learnt fresh.");
    }

    @Test
    void preferred_time() {
        assertThat(text("preferred-time"))
                .isEqualTo("Technique drill / new skill (Tue 2 Mar 10:00) lies 360 min outside the hours preferred for"
                        + " it, 16:00 to 19:00.");
        assertThat(text(RuleExamples.of("preferred-time").prefers("16:00", null), "preferred-time"))
                .endsWith(" the hours preferred for it, 16:00 to 24:00.");
        assertThat(text(RuleExamples.of("preferred-time").prefers(null, "09:00"), "preferred-time"))
                .endsWith(" lies 90 min outside the hours preferred for it, 00:00 to 09:00.");
    }

    @Test
    void preferred_facility() {
        assertThat(text("preferred-facility"))
                .isEqualTo("Acceleration 10-40 m (Tue 2 Mar 10:00) is held at Turf pitch; preferred: Sports hall.");
        Squad nowhere = squad().aim("technique", 0, 1, 1)
                .prefers(null, null, "weights-room", "turf-pitch")
                .placed("technique", "2027-03-02T10:00");
        assertThat(text(nowhere, "preferred-facility"))
                .isEqualTo("Technique drill / new skill (Tue 2 Mar 10:00) is held nowhere in particular; preferred:"
                        + " Weights room or Turf pitch.");
    }

    @Test
    void speed_exposure() {
        assertThat(text("speed-exposure"))
                .isEqualTo("Squad goes 10 days without sprinting near best speed, from Sun 21 Feb to Wed 3 Mar; it is"
                        + " wanted every 7 days.");
    }

    private static Squad lifting() {
        return squad().facility("club-gym", FacilityKind.GYM)
                .aim("heavy-lower-knee", 0, 1, 1)
                .doses(Dose.FULL, Dose.REDUCED);
    }

    private static Squad known() {
        return lifting().placed("heavy-lower-knee", "2027-03-02T16:00").at("weights-room");
    }

    @Test
    void keep_plan() {
        assertThat(text(lifting().closeTo(known(), null), "keep-plan"))
                .isEqualTo("Heavy lower, knee-dominant (Tue 2 Mar 16:00) is left out now.");
        Squad moved = lifting().placed("heavy-lower-knee", "2027-03-03T17:00");
        assertThat(text(moved.closeTo(known(), null), "keep-plan"))
                .isEqualTo("Heavy lower, knee-dominant (Tue 2 Mar 16:00) moves to Wed 3 Mar 17:00.");
        Squad elsewhere =
                lifting().placed("heavy-lower-knee", "2027-03-02T16:00").at("club-gym");
        assertThat(text(elsewhere.closeTo(known(), null), "keep-plan"))
                .isEqualTo("Heavy lower, knee-dominant (Tue 2 Mar 16:00) moves from Weights room to Club gym.");
        Squad all = lifting()
                .placed("heavy-lower-knee", "2027-03-02T17:00")
                .at("club-gym")
                .dose(Dose.REDUCED);
        assertThat(text(all.closeTo(known(), null), "keep-plan"))
                .isEqualTo("Heavy lower, knee-dominant (Tue 2 Mar 16:00) moves to Tue 2 Mar 17:00, moves from Weights"
                        + " room to Club gym and changes from a full to a reduced dose.");
    }

    @Test
    void whom_it_concerns_where_it_is_not_everybody() {
        Squad one = RuleExamples.of("before-fixture")
                .athlete("a-ash")
                .athlete("r-birch")
                .heads(2);
        assertThat(text(one, "before-fixture")).endsWith("at least 40 h before.");
        Squad named = RuleExamples.of("freshest-first")
                .heads(3)
                .athlete("a-ash")
                .athlete("r-birch")
                .athlete("t-elm")
                .restricted(RestrictionLimit.LIGHT, "2027-03-02", "2027-03-02", Pathway.ACCELERATION);
        assertThat(text(named, "freshest-first")).endsWith(" belongs first. Concerns A ash and R birch.");
        assertThat(text(named.heads(10), "freshest-first")).endsWith(" belongs first. Concerns 9 of 10 in Squad.");
    }

    @Test
    void maximum_repeated() {
        assertThat(text("maximum-repeated"))
                .isEqualTo("Back squat in full dose, Tue 2 Mar: the 4th week running for Squad; after 3 weeks another"
                        + " lift should take its place.");
    }

    @Test
    void variant_churn() {
        assertThat(text("variant-churn"))
                .isEqualTo("Front squat gives way on Sat 6 Mar after 1 session of Squad; a lift should stay for 2.");
        assertThat(text(squad().days(30).aim("heavy-lower-hip", 0, 1, 1), "variant-churn"))
                .isEqualTo("Squad goes 29 days without the lift that is tested (Deadlift), from Mon 1 Mar to Tue 30"
                        + " Mar; it should come back within 28 days.");
    }

    @Test
    void same_lead() {
        assertThat(text("same-lead"))
                .isEqualTo("Speed coach leads Technique drill / new skill (Tue 2 Mar 10:00), and Skills coach Technique"
                        + " drill / new skill (Thu 4 Mar 10:00); one lead for the week is wanted.");
    }

    @Test
    void pins() {
        Squad barred = squad().aim("technique", 0, 1, 1).placed("technique", "2027-03-04T10:00");
        assertThat(text(barred.notOn("2027-03-04"), "pins"))
                .isEqualTo("Technique drill / new skill (Thu 4 Mar 10:00) lies on a day that is barred for it; a new"
                        + " search moves it.");
        assertThat(text(barred.held("day"), "pins"))
                .isEqualTo("Technique drill / new skill (Thu 4 Mar 10:00) is held on a day that is barred for it; it"
                        + " stays where it is held.");
        Squad micro = squad().aim("technique", 0, 1, 1).placed("technique", "2027-03-04T10:00");
        assertThat(text(micro.dose(Dose.MICRO).held("dose"), "pins"))
                .isEqualTo("Technique drill / new skill (Thu 4 Mar 10:00) is held in a micro dose, which its aim does"
                        + " not allow; it stays as it is held.");
        Squad out = squad().aim("technique", 0, 1, 1).placed("technique", "2027-03-04T10:00");
        assertThat(text(out.held("out", "start"), "pins"))
                .isEqualTo("Technique drill / new skill in the week from Mon 1 Mar is held out, and held in the plan as"
                        + " well; it stays out.");
    }
}
