package weekwright.engine.testing;

import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.LendsAt;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.StaffMember;

/** Made-up weeks in which as much as possible goes wrong when sessions are moved by lot. */
public final class CrowdedWeeks {
    private CrowdedWeeks() {}

    /** All of them. */
    public static Stream<Scenario> all() {
        return Stream.of(threeWeeks(), liftsThatRotate(), factsThatCost(), peopleWithOtherThingsToDo(), shortNights());
    }

    /** Three weeks of two groups, in which every want about sessions, days and lines can be missed. */
    public static Scenario threeWeeks() {
        return squad().days(20)
                .heads(6)
                .athlete("ash")
                .athlete("birch", Squad.ID, "sprinters")
                .window("06:00", "22:00")
                .done("heavy-lower-knee", "2027-02-20T10:00")
                .done("tempo-run", "2027-02-10T10:00")
                .done("fixture", "2027-02-28T15:00")
                .without("ash")
                .fixture("cup-tie", "2027-03-06T15:00")
                .expecting("ash", 0)
                .travelling(150, 150)
                .fixture("final", "2027-03-20T15:00")
                .tapering(8)
                .practice("practice", "2027-03-03T18:00")
                .commitment("works", null, "2027-03-10T09:00")
                .aim("technique", 1, 3, 6)
                .learning()
                .aim("heavy-lower-knee", 1, 2, 2)
                .doses(Dose.FULL, Dose.MICRO)
                .power()
                .aim("aerobic-intervals", 0, 1, 2)
                .aim("primer", 0, 1, 1)
                .priority(Priority.SPARE)
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .aim("tempo-run", 0, 2, 3)
                .group("sprinters")
                .heads(5)
                .kind(GroupKind.SPRINT)
                .window("06:00", "22:00")
                .done("max-velocity", "2027-02-12T10:00")
                .of("sprinters")
                .aim("max-velocity", 1, 2, 3)
                .doses(Dose.FULL, Dose.REDUCED, Dose.MICRO)
                .metres(160, 430)
                .aim("hamstring-eccentric", 0, 2, 2)
                .aim("testing", 0, 1, 1)
                .scenario();
    }

    /** Lifts with short runs, so that hardly a line can be filled for nothing, and leads who are away now and then. */
    public static Scenario liftsThatRotate() {
        return squad().days(21)
                .level(Level.ADVANCED)
                .window("10:00", "13:00")
                .rule("maximum-repeated", null, null, Map.of("advancedWeeks", 1))
                .rule("variant-churn", null, null, Map.of("advancedExposures", 2, "testedWeeks", 1))
                .staff(new StaffMember(
                        "alder",
                        "Alder",
                        List.of("*"),
                        1,
                        List.of(),
                        List.of(Squad.absence("2027-03-04T00:00", "2027-03-06T11:00"))))
                .staff("birch", "heavy-lower-knee", "technique")
                .aim("heavy-lower-knee", 0, 2, 2)
                .doses(Dose.FULL, Dose.REDUCED, Dose.MICRO)
                .aim("heavy-lower-hip", 0, 1, 2)
                .aim("technique", 0, 2, 3)
                .group("guests")
                .window("10:00", "13:00")
                .aim("heavy-lower-knee", 0, 1, 1)
                .done("heavy-lower-knee", "2027-02-24T10:00")
                .lift("front-squat")
                .scenario();
    }

    /** All facts that can cost something do, and so do all packs, the days off of one of them as a must. */
    public static Scenario factsThatCost() {
        return squad().days(20)
                .heads(4)
                .athlete("ash")
                .born("2012-05-01")
                .mark(Measure.LIFT, "2026-12-05")
                .athlete("birch", Squad.ID, "juniors")
                .born("2012-06-01")
                .window("08:00", "20:00")
                .level("week-load", RuleLevel.WANT)
                .level("load-spread", RuleLevel.WANT)
                .level("load-ratio", RuleLevel.WANT)
                .level("marks-old", RuleLevel.WANT)
                .level("fixtures-close", RuleLevel.WANT)
                .pack("college-in-season")
                .rule("college-in-season", null, null, Map.of("weekHours", 4, "dayHours", 1))
                .done("tempo-run", "2027-02-08T10:00")
                .done("heavy-lower-knee", "2027-02-24T10:00")
                .without("ash")
                .fixture("cup-tie", "2027-03-06T15:00")
                .expecting("ash", 0)
                .fixture("replay", "2027-03-09T15:00")
                .practice("practice", "2027-03-03T18:00")
                .aim("heavy-lower-knee", 0, 2, 3)
                .doses(Dose.FULL, Dose.MICRO)
                .aim("tempo-run", 0, 4, 6)
                .group("juniors")
                .heads(3)
                .window("08:00", "20:00")
                .groupRule("youth", RuleLevel.WANT, null, Map.of("daysOff", 6, "hoursAYear", 0.1))
                .groupRule("college-out-of-season", RuleLevel.MUST, null, Map.of("daysOff", 5))
                .aim("acceleration", 0, 2, 3)
                .aim("mobility", 0, 2, 2)
                .scenario();
    }

    /** Two squads with sprinters in common, an exam, a shift, a second club, a bench and minutes that practice lends. */
    public static Scenario peopleWithOtherThingsToDo() {
        return squad().days(16)
                .heads(10)
                .highDays(0, 2, 2)
                .athlete("ash", Squad.ID, "sprinters")
                .athlete("birch", "sprinters", Squad.ID)
                .athlete("cedar")
                .busy("2027-03-03T08:00", "2027-03-05T12:00")
                .athlete("date")
                .comes("08:00", "13:00")
                .athlete("elm")
                .level("sits-out", RuleLevel.WANT)
                .window("08:00", "20:00")
                .done("fixture", "2027-02-27T15:00")
                .without("ash", "elm")
                .fixture("cup-tie", "2027-03-06T15:00")
                .expecting("ash", 0)
                .expecting("elm", 0)
                .practice("practice", "2027-03-03T17:00")
                .lending(20, LendsAt.START)
                .practice("next-practice", "2027-03-10T17:00")
                .lending(20, LendsAt.END)
                .commitment("shift", null, "2027-03-02T09:00")
                .lasting(300)
                .only("date", "elm")
                .commitment("club", "heavy-lower-knee", "2027-03-09T10:00")
                .only("ash")
                .commitment("school", "small-sided-games", "2027-03-11T10:00")
                .only("birch")
                .aim("heavy-lower-knee", 1, 2, 2)
                .doses(Dose.FULL, Dose.MICRO)
                .aim("acceleration", 0, 1, 2)
                .doses(Dose.FULL, Dose.MICRO)
                .aim("technique", 0, 2, 3)
                .learning()
                .aim("repeated-sprint", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .aim("pool-recovery", 0, 1, 1)
                .whom(Share.PLAYED)
                .group("sprinters")
                .heads(6)
                .kind(GroupKind.SPRINT)
                .highDays(0, 3, 3)
                .window("08:00", "20:00")
                .aim("max-velocity", 1, 2, 3)
                .aim("lower-hypertrophy", 0, 2, 2)
                .aim("tempo-run", 0, 2, 3)
                .scenario();
    }

    /** Two squads and somebody of both in the four hours round midnight, with one room, two leads, lessons and a bench. */
    public static Scenario shortNights() {
        return squad().days(4)
                .highDays(0, 2, 4)
                .athlete("ash", Squad.ID, "sprinters")
                .athlete("birch")
                .window("22:00", "24:00")
                .window("00:00", "02:00")
                .room("weights-room", 1, null)
                .staff("alder", "*")
                .staff(new StaffMember(
                        "birch-senior",
                        "Birch senior",
                        List.of("*"),
                        1,
                        List.of(),
                        List.of(Squad.absence("2027-03-02T23:30", "2027-03-03T12:00"))))
                .fixture("cup-tie", "2027-03-02T15:00")
                .expecting("birch", 0)
                .aim("heavy-lower-knee", 0, 2, 2)
                .doses(Dose.FULL, Dose.REDUCED)
                .mainMinutes(80)
                .aim("technique", 0, 2, 3)
                .learning()
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .group("sprinters")
                .window("22:00", "24:00")
                .window("00:00", "02:00")
                .aim("technique", 0, 3, 3)
                .learning()
                .aim("upper-strength", 0, 2, 3)
                .mainMinutes(80)
                .scenario();
    }
}
