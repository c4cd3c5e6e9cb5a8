package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.model.scenario.Weekday.FRI;
import static weekwright.model.scenario.Weekday.MON;
import static weekwright.model.scenario.Weekday.SUN;
import static weekwright.model.scenario.Weekday.THU;
import static weekwright.model.scenario.Weekday.TUE;
import static weekwright.model.scenario.Weekday.WED;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.recalculation.Recalculation.Result;
import weekwright.engine.recalculation.Recalculation.RuleSum;
import weekwright.model.catalogue.FamilyPatch;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Prefer;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Restriction;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Room;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Transfer;
import weekwright.model.scenario.Travel;

/** The example of the documents: one match on Saturday, and one want half a point short. */
class ExamplePlanTest {
    private static Sketch quayside() {
        Sketch sketch = new Sketch();
        sketch.headcount = 18;
        sketch.highDays = new PerWeek(1, 2, 3);
        sketch.windows.add(Sketch.window("16:00", "21:00", MON, TUE, WED, THU, FRI));
        sketch.windows.add(Sketch.window("10:00", "13:00", SUN));
        sketch.aim("max-velocity", 1, 1, 2, Priority.KEY, Dose.FULL, Dose.REDUCED, Dose.MICRO)
                .aim(
                        "heavy-lower-knee",
                        Share.ALL,
                        new PerWeek(1, 1, 1),
                        Priority.MAIN,
                        false,
                        new Prefer(List.of("gym"), ClockTime.parse("16:00"), ClockTime.parse("19:00")),
                        Dose.FULL,
                        Dose.REDUCED)
                .athlete(
                        "a07",
                        new Restriction(
                                List.of(Pathway.MAX_VELOCITY_SPRINT, Pathway.HIP_DOMINANT),
                                RestrictionLimit.LIGHT,
                                LocalDate.parse("2027-03-01"),
                                LocalDate.parse("2027-03-05"),
                                "clinician"))
                .match(
                        "r18",
                        "fixture",
                        "2027-03-06T14:30",
                        105,
                        FixtureWeight.REGULAR,
                        new Travel(75, 75),
                        new Appearance("a07", 0))
                .practice("2027-03-03T19:00", 75, Effort.USUAL)
                .done("fixture", "2027-02-27T14:30", 105);
        placesAndPeople(sketch);
        settings(sketch);
        return sketch.place("max-velocity", "2027-03-02T16:30", "turf")
                .place("heavy-lower-knee", "2027-03-02T18:00", "gym");
    }

    private static void placesAndPeople(Sketch sketch) {
        sketch.facilities.clear();
        sketch.facilities.add(new Facility(
                "gym",
                "Weights room",
                List.of(FacilityKind.GYM),
                null,
                new Room(1, 20),
                List.of(Sketch.window("15:00", "21:00", MON, TUE, THU, FRI)),
                List.of(Sketch.away("2027-03-04T15:00", "2027-03-04T21:00"))));
        sketch.facilities.add(new Facility(
                "turf", "Turf pitch", List.of(FacilityKind.FIELD), 90, new Room(2, null), List.of(), List.of()));
        sketch.transfers.add(new Transfer(List.of("gym", "turf"), 10));
        sketch.staff.add(new StaffMember("c1", "Speed coach", List.of("*"), 1, List.of(), List.of()));
    }

    private static void settings(Sketch sketch) {
        sketch.catalogue.add(new FamilyPatch(
                "max-velocity",
                null,
                null,
                null,
                null,
                35,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null));
        sketch.rules.put("no-middle-day", new RuleSetting(null, 0.5, Map.of()));
        sketch.rules.put("load-spread", new RuleSetting(RuleLevel.OFF, null, Map.of()));
        sketch.number("pathway-gap", "hours", Map.of("max-velocity-sprint", 60));
    }

    /**
     * Heavy lower ends Tuesday 19:00, 91 h 30 min before the match on Saturday 14:30; 96 are wanted, 92 counted: half an
     * hour short for the 17 of 18 who play, 0.47, rounded 0.5. Nothing else is short.
     */
    @Test
    void halfAPointShortBeforeTheMatch() {
        assertThat(quayside().judged())
                .isEqualTo(new Result(0, 0, 0, 5, Map.of("before-fixture-margin", new RuleSum(1, 5))));
    }

    /** The one who sits out the sprint and the match still lifts: his line holds the lift and the bench only. */
    @Test
    void whoSitsOutCarriesNothing() {
        Case the = quayside().asCase();
        Person restricted = the.people().get(0);
        Day tuesday = Day.of(the, restricted, LocalDate.parse("2027-03-02"));
        assertThat(tuesday.stimuli()).extracting(thing -> thing.trains().id()).containsExactly("heavy-lower-knee");
        Day saturday = tuesday.on(LocalDate.parse("2027-03-06"));
        assertThat(saturday.stimuli()).isEmpty();
        assertThat(saturday.isFree()).isFalse();
    }

    /** Each aim is owed once; of the two high days wanted one is missing for 17 of 18: 12 x 17/18 = 11.3. */
    @Test
    void withoutTheLiftAndTheSprintTheAimsAreOwed() {
        Sketch sketch = quayside();
        sketch.placements.clear();
        // One high day, the match, of two wanted; the restricted athlete's week is not judged.
        // The maximal speed line starts on Monday and reaches Sunday, 6 days: nothing.
        assertThat(sketch.judged())
                .isEqualTo(new Result(
                        0,
                        10,
                        10,
                        113,
                        Map.of("aim-least", new RuleSum(2, 20), "high-days-target", new RuleSum(1, 113))));
    }
}
