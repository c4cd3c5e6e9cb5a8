package weekwright.engine.testing;

import static weekwright.engine.testing.Squad.squad;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Share;

/** One small plan for each rule that is judged, which breaks it through what is placed. */
public final class RuleExamples {
    private static final Map<String, Supplier<Squad>> BY_RULE = new LinkedHashMap<>();

    static {
        placeAndTime();
        recovery();
        fixtures();
        shape();
        aims();
        wishes();
        otherWants();
        facts();
        packs();
    }

    private RuleExamples() {}

    /** Ids of the rules that have an example. */
    public static Set<String> rules() {
        return java.util.Collections.unmodifiableSet(BY_RULE.keySet());
    }

    /** A fresh example of a rule. */
    public static Squad of(String rule) {
        Supplier<Squad> example = BY_RULE.get(rule);
        if (example == null) {
            throw new IllegalArgumentException("no example breaks \"" + rule + "\": give it one here");
        }
        return example.get();
    }

    private static void example(String rule, Supplier<Squad> example) {
        BY_RULE.put(rule, example);
    }

    private static void placeAndTime() {
        example(
                "one-place-at-a-time",
                () -> squad().placed("technique", "2027-03-02T10:00").placed("trunk-and-balance", "2027-03-02T10:20"));
        example("inside-window", () -> squad().window("16:00", "21:00").placed("technique", "2027-03-02T15:45"));
        example(
                "facility-open",
                () -> squad().open("weights-room", "15:00", "21:00").placed("heavy-lower-knee", "2027-03-02T14:30"));
        example(
                "facility-room",
                () -> squad().room("weights-room", 1, null)
                        .placed("heavy-lower-knee", "2027-03-02T18:00")
                        .group("sprinters")
                        .placed("heavy-lower-hip", "2027-03-02T18:30")
                        .of("sprinters"));
        example(
                "facility-fits",
                () -> squad().placed("heavy-lower-knee", "2027-03-02T18:00").at("turf-pitch"));
        example("quorum", () -> withShifts("ash", "birch", "cedar"));
        example("attendance", () -> withShifts("ash"));
        example("sits-out", () -> withShifts("ash").level("sits-out", RuleLevel.WANT));
        example(
                "lead-free",
                () -> squad().staff("speed-coach", "max-velocity")
                        .placed("max-velocity", "2027-03-02T10:00")
                        .group("sprinters")
                        .placed("max-velocity", "2027-03-02T10:30")
                        .of("sprinters"));
        example(
                "visits-per-day",
                () -> squad().placed("technique", "2027-03-02T08:00")
                        .placed("trunk-and-balance", "2027-03-02T12:00")
                        .placed("mobility", "2027-03-02T18:00"));
        example(
                "night-rest",
                () -> squad().placed("technique", "2027-03-02T22:30").placed("mobility", "2027-03-03T06:00"));
    }

    /** Technique at ten, and a shift of their own at that time for each of some. */
    private static Squad withShifts(String... athletes) {
        Squad squad = squad().placed("technique", "2027-03-02T10:00");
        for (String id : athletes) {
            squad.athlete(id)
                    .commitment("shift-of-" + id, null, "2027-03-02T09:30")
                    .only(id);
        }
        return squad;
    }

    private static void recovery() {
        example(
                "pathway-gap-floor",
                () -> squad().placed("max-velocity", "2027-03-02T16:55").placed("max-velocity", "2027-03-04T09:00"));
        example(
                "pathway-gap",
                () -> squad().placed("max-velocity", "2027-03-02T16:55").placed("max-velocity", "2027-03-05T10:00"));
        example(
                "high-block-floor",
                () -> squad().placed("lower-hypertrophy", "2027-03-02T17:00")
                        .placed("acceleration", "2027-03-04T09:00"));
        example(
                "high-block-gap",
                () -> squad().placed("lower-hypertrophy", "2027-03-02T17:00")
                        .placed("acceleration", "2027-03-04T12:00"));
    }

    private static void fixtures() {
        example(
                "before-fixture",
                () -> squad().fixture("cup-tie", "2027-03-06T10:00").placed("max-velocity", "2027-03-04T18:00"));
        example(
                "before-fixture-margin",
                () -> squad().fixture("cup-tie", "2027-03-06T10:00").placed("max-velocity", "2027-03-03T16:55"));
        example(
                "after-fixture",
                () -> squad().fixture("cup-tie", "2027-03-01T16:15").placed("max-velocity", "2027-03-04T09:00"));
        example(
                "after-fixture-margin",
                () -> squad().fixture("cup-tie", "2027-03-01T16:15").placed("max-velocity", "2027-03-04T12:00"));
        example(
                "primer-end",
                () -> squad().fixture("cup-tie", "2027-03-06T15:00").placed("primer", "2027-03-06T12:00"));
        example(
                "day-before-light",
                () -> squad().fixture("cup-tie", "2027-03-06T15:00").placed("small-sided-games", "2027-03-05T10:00"));
        example(
                "load-falls-to-fixture",
                () -> squad().fixture("cup-tie", "2027-03-06T15:00")
                        .placed("technique", "2027-03-03T10:00")
                        .placed("tempo-run", "2027-03-04T10:00"));
        example(
                "free-day-place",
                () -> squad().fixture("cup-tie", "2027-03-01T15:00").placed("technique", "2027-03-03T10:00"));
    }

    private static void shape() {
        example("four-high-days", () -> highDays("2027-03-01", "2027-03-02", "2027-03-03", "2027-03-04"));
        example("three-high-days", () -> highDays("2027-03-02", "2027-03-03", "2027-03-04"));
        example("free-day", RuleExamples::noFreeDay);
        example("high-days-most", () -> highDays("2027-03-02", "2027-03-05").highDays(0, 1, 1));
        example("high-days-least", () -> squad().highDays(1, 1, 2));
        example("high-days-target", () -> highDays("2027-03-02").highDays(1, 2, 3));
        example("no-middle-day", () -> squad().placed("small-sided-games", "2027-03-02T10:00"));
        example(
                "freshest-first",
                () -> squad().placed("heavy-lower-knee", "2027-03-02T10:00")
                        .placed("acceleration", "2027-03-02T14:00"));
    }

    private static void aims() {
        example(
                "aim-most",
                () -> squad().aim("technique", 0, 1, 1)
                        .placed("technique", "2027-03-02T10:00")
                        .placed("technique", "2027-03-04T10:00"));
        example("aim-least", () -> squad().aim("technique", 1, 1, 1));
        example("aim-target", () -> squad().aim("technique", 0, 1, 1));
        example(
                "dose-kept",
                () -> squad().aim("technique", 0, 1, 1)
                        .doses(Dose.FULL, Dose.MICRO)
                        .placed("technique", "2027-03-02T10:00")
                        .dose(Dose.MICRO));
    }

    private static void wishes() {
        example(
                "speed-exposure",
                () -> squad().aim("max-velocity", 0, 1, 1)
                        .done("max-velocity", "2027-02-21T10:00")
                        .placed("max-velocity", "2027-03-03T10:00"));
        example(
                "preferred-time",
                () -> squad().aim("technique", 0, 1, 1)
                        .prefers("16:00", "19:00")
                        .placed("technique", "2027-03-02T10:00"));
        example(
                "preferred-facility",
                () -> squad().facility("sports-hall", FacilityKind.HALL)
                        .aim("acceleration", 0, 1, 1)
                        .prefers(null, null, "sports-hall")
                        .placed("acceleration", "2027-03-02T10:00"));
        example(
                "maximum-repeated",
                () -> squad().level(Level.ADVANCED)
                        .done("heavy-lower-knee", "2027-02-09T10:00")
                        .lift("back-squat")
                        .done("heavy-lower-knee", "2027-02-16T10:00")
                        .lift("back-squat")
                        .done("heavy-lower-knee", "2027-02-23T10:00")
                        .lift("back-squat")
                        .placed("heavy-lower-knee", "2027-03-02T10:00")
                        .lift("back-squat"));
        example(
                "variant-churn",
                () -> squad().placed("heavy-lower-knee", "2027-03-02T10:00")
                        .lift("front-squat")
                        .placed("heavy-lower-knee", "2027-03-06T10:00")
                        .lift("back-squat"));
        example(
                "same-lead",
                () -> squad().staff("speed-coach", "technique")
                        .staff("skills-coach", "technique")
                        .aim("technique", 0, 2, 2)
                        .placed("technique", "2027-03-02T10:00")
                        .ledBy("speed-coach")
                        .placed("technique", "2027-03-04T10:00")
                        .ledBy("skills-coach"));
        example("keep-plan", () -> techniqueAt("2027-03-03T10:00").closeTo(techniqueAt("2027-03-02T10:00"), null));
    }

    private static void otherWants() {
        example(
                "primer-window",
                () -> squad().fixture("cup-tie", "2027-03-06T15:00").placed("primer", "2027-03-04T10:00"));
        example(
                "even-spread",
                () -> squad().aim("tempo-run", 0, 2, 2)
                        .placed("tempo-run", "2027-03-02T10:00")
                        .placed("tempo-run", "2027-03-04T10:00"));
        example(
                "night-rest-margin",
                () -> squad().placed("technique", "2027-03-02T21:00").placed("mobility", "2027-03-03T06:00"));
        example("six-days-running", RuleExamples::noFreeDay);
        example(
                "strength-endurance-apart",
                () -> squad().placed("aerobic-intervals", "2027-03-02T10:00")
                        .placed("upper-strength", "2027-03-02T12:00"));
        example(
                "top-up",
                () -> squad().athlete("ash")
                        .fixture("cup-tie", "2027-03-03T15:00")
                        .expecting("ash", 0)
                        .aim("top-up-run", 0, 1, 1)
                        .whom(Share.NOT_PLAYED));
        example(
                "travel-day-light",
                () -> squad().fixture("cup-tie", "2027-03-06T15:00")
                        .travelling(150, 30)
                        .placed("small-sided-games", "2027-03-06T07:00"));
        example(
                "visit-size",
                () -> squad().placed("upper-strength", "2027-03-02T10:00")
                        .placed("tempo-run", "2027-03-02T10:50")
                        .placed("easy-bike", "2027-03-02T11:35")
                        .placed("hamstring-eccentric", "2027-03-02T12:10"));
        example(
                "short-wait",
                () -> squad().placed("technique", "2027-03-02T09:00").placed("mobility", "2027-03-02T12:00"));
        example(
                "learner-frequency",
                () -> squad().aim("technique", 1, 1, 1).learning().placed("technique", "2027-03-02T10:00"));
        example(
                "return-dose",
                () -> squad().aim("max-velocity", 0, 1, 1)
                        .done("max-velocity", "2027-02-12T10:00")
                        .placed("max-velocity", "2027-03-01T10:00"));
        example(
                "pathway-neglected",
                () -> squad().aim("heavy-lower-knee", 0, 1, 1)
                        .done("heavy-lower-knee", "2027-02-19T10:00")
                        .placed("heavy-lower-knee", "2027-03-03T10:00"));
        example(
                "sprint-metres",
                () -> squad().aim("max-velocity", 0, 1, 1).metres(130, 400).placed("max-velocity", "2027-03-02T10:00"));
        example(
                "taper",
                () -> squad().days(14)
                        .done("tempo-run", "2027-02-21T10:00")
                        .fixture("cup-tie", "2027-03-13T15:00")
                        .tapering(6)
                        .placed("tempo-run", "2027-03-02T10:00")
                        .placed("tempo-run", "2027-03-08T10:00"));
    }

    /** Facts at no cost, unless a coach turns them into wants, as here. */
    private static void facts() {
        example(
                "week-load",
                () -> squad().level("week-load", RuleLevel.WANT)
                        .done("tempo-run", "2027-02-22T10:00")
                        .placed("tempo-run", "2027-03-02T10:00"));
        example("load-spread", () -> tempoRuns(6).level("load-spread", RuleLevel.WANT));
        example(
                "load-ratio",
                () -> squad().level("load-ratio", RuleLevel.WANT)
                        .done("tempo-run", "2027-02-08T10:00")
                        .placed("tempo-run", "2027-03-02T10:00"));
        example(
                "marks-old",
                () -> squad().level("marks-old", RuleLevel.WANT)
                        .athlete("ash")
                        .placed("acceleration", "2027-03-02T10:00"));
    }

    private static void packs() {
        example(
                "college-in-season",
                () -> squad().level("college-in-season", RuleLevel.WANT)
                        .commitment("camp", "technique", "2027-03-02T10:00")
                        .lasting(201)
                        .placed("tempo-run", "2027-03-02T14:00"));
        example("college-out-of-season", () -> tempoRuns(6).level("college-out-of-season", RuleLevel.WANT));
        example("youth", () -> tempoRuns(6).level("youth", RuleLevel.WANT));
    }

    private static Squad tempoRuns(int days) {
        Squad squad = squad();
        for (int day = 1; day <= days; day++) {
            squad.placed("tempo-run", "2027-03-0" + day + "T10:00");
        }
        return squad;
    }

    private static Squad highDays(String... dates) {
        Squad squad = squad();
        for (String date : dates) {
            squad.placed("lower-hypertrophy", date + "T10:00");
        }
        return squad;
    }

    private static Squad noFreeDay() {
        Squad squad = squad();
        for (int day = 1; day <= 7; day++) {
            squad.placed("technique", "2027-03-0" + day + "T10:00");
        }
        return squad;
    }

    private static Squad techniqueAt(String start) {
        return squad().aim("technique", 0, 1, 1).placed("technique", start);
    }
}
