package weekwright.scenarios;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Restriction;
import weekwright.model.scenario.Room;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.Travel;
import weekwright.model.scenario.Weekday;
import weekwright.model.scenario.Window;

/** Short ways to write the parts of a made-up scenario: what is not named here has its usual value. */
final class Parts {
    private Parts() {}

    static Window window(List<Weekday> days, String from, String to) {
        return new Window(days, null, ClockTime.parse(from), ClockTime.parse(to), null, null);
    }

    static Aim aim(String family, PerWeek perWeek, Priority priority, List<Dose> doses) {
        boolean micro = doses.contains(Dose.MICRO);
        return new Aim(family, Share.ALL, perWeek, priority, doses, null, micro, false, false, List.of(), null, null);
    }

    static Group group(
            String id,
            String label,
            GroupKind kind,
            int headcount,
            List<Window> windows,
            PerWeek highDays,
            List<Aim> aims) {
        return new Group(
                id,
                label,
                kind,
                Phase.IN_SEASON,
                Level.TRAINED,
                headcount,
                Group.USUAL_QUORUM,
                windows,
                List.of(),
                highDays,
                aims,
                Map.of(),
                List.of());
    }

    static Athlete athlete(String id, String name, String group, List<Restriction> restrictions) {
        return new Athlete(id, name, List.of(group), null, null, List.of(), List.of(), List.of(), restrictions);
    }

    static Fixture fixture(
            String id,
            String label,
            String group,
            String family,
            LocalDateTime start,
            int minutes,
            FixtureWeight weight,
            Travel travel,
            List<Appearance> expected) {
        return new Fixture(
                id,
                label,
                List.of(group),
                family,
                Moment.of(start),
                minutes,
                null,
                weight,
                travel,
                null,
                expected,
                List.of());
    }

    static Commitment practice(
            String id, String group, LocalDateTime start, int minutes, String facility, @Nullable Effort effort) {
        return new Commitment(
                id,
                "Team practice",
                List.of(group),
                List.of(),
                "team-practice",
                Moment.of(start),
                minutes,
                facility,
                effort,
                null);
    }

    static Facility facility(
            String id, String label, FacilityKind kind, @Nullable Integer straight, int groups, List<Window> open) {
        return new Facility(id, label, List.of(kind), straight, new Room(groups, null), open, List.of());
    }

    static LogEntry done(
            String group, String family, LocalDateTime start, int minutes, Dose dose, @Nullable Double rpe) {
        return entry(group, family, start, minutes, dose, rpe, true, List.of(), List.of());
    }

    static LogEntry entry(
            String group,
            String family,
            LocalDateTime start,
            int minutes,
            Dose dose,
            @Nullable Double rpe,
            boolean done,
            List<String> except,
            List<PersonEntry> people) {
        return new LogEntry(
                null,
                null,
                null,
                group,
                family,
                Moment.of(start),
                minutes,
                dose,
                null,
                rpe,
                done,
                except,
                people,
                null);
    }

    static PersonEntry played(String athlete, int minutes) {
        return new PersonEntry(athlete, null, minutes, List.of(), null, null, null);
    }
}
