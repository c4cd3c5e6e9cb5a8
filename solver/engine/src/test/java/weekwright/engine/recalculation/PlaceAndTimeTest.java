package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static weekwright.model.scenario.Weekday.TUE;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.recalculation.Recalculation.RuleSum;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Room;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Transfer;
import weekwright.model.scenario.Travel;

/** Places, hours and leads. Common practice, no source, unless said otherwise. */
class PlaceAndTimeTest {
    private static final RuleSum ONE_MUST = new RuleSum(1, 10);

    private static Map<String, RuleSum> judged(Sketch sketch) {
        return sketch.judged().rules();
    }

    /** Speed on the turf ends 11:05; the gym is ten minutes away, so 11:15 will do and 11:10 will not. */
    @Test
    void theWayBetweenTwoPlacesTakesItsTime() {
        assertThat(judged(sprintThenLift("2027-03-02T11:15"))).doesNotContainKey("one-place-at-a-time");
        assertThat(judged(sprintThenLift("2027-03-02T11:10"))).contains(entry("one-place-at-a-time", ONE_MUST));
    }

    private static Sketch sprintThenLift(String lift) {
        Sketch sketch = new Sketch();
        sketch.transfers.add(new Transfer(List.of("gym", "turf"), 10));
        return sketch.place("max-velocity", "2027-03-02T10:00", "turf").place("heavy-lower-knee", lift, "gym");
    }

    /** Kick-off 19:00, 25 minutes of warm-up, an hour's journey: the squad is gone from 17:35. */
    @Test
    void theJourneyToAMatchTakesTheSquad() {
        Sketch inTime = away().place("mobility", "2027-03-02T17:15", null);
        Sketch tooLate = away().place("mobility", "2027-03-02T17:20", null);
        assertThat(judged(inTime)).doesNotContainKey("one-place-at-a-time");
        assertThat(judged(tooLate)).contains(entry("one-place-at-a-time", ONE_MUST));
    }

    private static Sketch away() {
        return new Sketch().match("cup", "fixture", "2027-03-02T19:00", 105, FixtureWeight.REGULAR, new Travel(60, 60));
    }

    /** Two fixed things that overlap are only told. */
    @Test
    void fixedAgainstFixedIsTold() {
        Sketch sketch = new Sketch().practice("2027-03-02T18:00", 85, null).match("cup", "2027-03-02T19:00", 105);
        assertThat(judged(sketch)).doesNotContainKey("one-place-at-a-time");
    }

    /** One person's work shift does not stand in the way of the session of all: 6 points times one of ten. */
    @Test
    void oneAthletesShiftIsNoReason() {
        Sketch sketch = new Sketch().athlete("ash");
        sketch.commitments.add(new Commitment(
                "shift",
                "shift",
                List.of(),
                List.of("ash"),
                null,
                Moment.parse("2027-03-02T09:00"),
                480,
                null,
                null,
                null));
        sketch.place("mobility", "2027-03-02T10:00", null);
        assertThat(judged(sketch)).isEqualTo(Map.of("attendance", new RuleSum(1, 6)));
    }

    /** Hours 09:00 to 11:00 and 11:00 to 12:00 are one window; a session to 12:05 is five minutes outside. */
    @Test
    void touchingWindowsAreOne() {
        assertThat(judged(inWindows("2027-03-02T10:55"))).isEmpty();
        assertThat(judged(inWindows("2027-03-02T11:00"))).isEqualTo(Map.of("inside-window", ONE_MUST));
    }

    private static Sketch inWindows(String start) {
        Sketch sketch = new Sketch();
        sketch.windows.add(Sketch.window("09:00", "11:00", TUE));
        sketch.windows.add(Sketch.window("11:00", "12:00", TUE));
        return sketch.place("max-velocity", start, "turf");
    }

    /** A lift on the turf does not fit; a sprint of 80 m on a straight of 60 m does not either; nowhere fits neither. */
    @Test
    void thePlaceFitsTheWork() {
        Sketch sketch = new Sketch();
        sketch.facilities.add(
                new Facility("yard", "yard", List.of(FacilityKind.FIELD), 60, null, List.of(), List.of()));
        sketch.place("heavy-upper-push", "2027-03-02T10:00", "turf")
                .place("max-velocity", "2027-03-03T10:00", "yard")
                .place("heavy-upper-pull", "2027-03-04T10:00", null)
                .place("technique", "2027-03-04T11:00", null);
        assertThat(judged(sketch)).contains(entry("facility-fits", new RuleSum(3, 30)));
    }

    /** The gym opens at 15:00. */
    @Test
    void thePlaceIsOpen() {
        Sketch sketch = new Sketch();
        sketch.facilities.clear();
        sketch.facilities.add(new Facility(
                "gym",
                "gym",
                List.of(FacilityKind.GYM),
                null,
                null,
                List.of(Sketch.window("15:00", "21:00", TUE)),
                List.of()));
        sketch.place("heavy-upper-push", "2027-03-02T14:45", "gym");
        assertThat(judged(sketch)).isEqualTo(Map.of("facility-open", ONE_MUST));
    }

    /** Room for one group: the one who comes in second finds none, also where both start at once. */
    @Test
    void thePlaceHasRoom() {
        assertThat(judged(crowded("2027-03-02T10:30", new Room(1, null)))).contains(entry("facility-room", ONE_MUST));
        assertThat(judged(crowded("2027-03-02T10:00", new Room(1, null)))).contains(entry("facility-room", ONE_MUST));
        assertThat(judged(crowded("2027-03-02T10:45", new Room(1, null)))).doesNotContainKey("facility-room");
        assertThat(judged(crowded("2027-03-02T10:30", new Room(null, 19)))).contains(entry("facility-room", ONE_MUST));
        assertThat(judged(crowded("2027-03-02T10:30", new Room(2, 20)))).doesNotContainKey("facility-room");
    }

    private static Sketch crowded(String second, Room room) {
        Sketch sketch = new Sketch();
        sketch.facilities.clear();
        sketch.facilities.add(Sketch.facility("gym", List.of(FacilityKind.GYM), room));
        return sketch.place("heavy-upper-push", "2027-03-02T10:00", "gym").place("heavy-upper-pull", second, "gym");
    }

    /** One coach, one session at a time: the second of two at once has nobody, and a family nobody may lead needs none. */
    @Test
    void somebodyLeads() {
        Sketch sketch = new Sketch();
        sketch.staff.add(
                new StaffMember("coach", "coach", List.of("max-velocity", "technique"), 1, List.of(), List.of()));
        sketch.place("max-velocity", "2027-03-02T10:00", "turf")
                .place("technique", "2027-03-02T10:30", null)
                .place("mobility", "2027-03-02T10:30", null);
        assertThat(judged(sketch)).contains(entry("lead-free", ONE_MUST));
        sketch.staff.add(new StaffMember("helper", "helper", List.of("technique"), 1, List.of(), List.of()));
        assertThat(judged(sketch)).doesNotContainKey("lead-free");
    }

    /** A given lead who may not, or is away, does not count, though another could. */
    @Test
    void aGivenLeadIsJudgedAsGiven() {
        Sketch sketch = new Sketch();
        sketch.staff.add(new StaffMember("coach", "coach", List.of("*"), 1, List.of(), List.of()));
        sketch.staff.add(new StaffMember("helper", "helper", List.of("technique"), 1, List.of(), List.of()));
        sketch.place(null, "mobility", "2027-03-02T10:00", null, "helper", Dose.FULL);
        assertThat(judged(sketch)).isEqualTo(Map.of("lead-free", ONE_MUST));
    }

    /** Three visits a day: gaps of 30 minutes join, of 35 do not. */
    @Test
    void twoVisitsADay() {
        Sketch two = new Sketch()
                .place("mobility", "2027-03-02T08:00", null)
                .place("mobility", "2027-03-02T08:50", null)
                .place("technique", "2027-03-02T12:00", null);
        Sketch three = new Sketch()
                .place("mobility", "2027-03-02T08:00", null)
                .place("mobility", "2027-03-02T08:55", null)
                .place("technique", "2027-03-02T12:00", null);
        // From 09:10 to 12:00 they wait 2 h 50 min: 2.8 points.
        assertThat(judged(two)).isEqualTo(Map.of("short-wait", new RuleSum(1, 28)));
        assertThat(judged(three)).containsEntry("visits-per-day", ONE_MUST);
    }

    /** Home at 23:15 (final whistle 20:45, two and a half hours of road): next morning from 07:15, not from 07:10. */
    @Test
    void aNightBetween() {
        assertThat(judged(morningAfter("2027-03-03T07:15"))).doesNotContainKey("night-rest");
        assertThat(judged(morningAfter("2027-03-03T07:10"))).contains(entry("night-rest", ONE_MUST));
    }

    private static Sketch morningAfter(String start) {
        return new Sketch()
                .match("cup", "fixture", "2027-03-02T19:00", 105, FixtureWeight.REGULAR, new Travel(150, 150))
                .place("mobility", start, null);
    }
}
