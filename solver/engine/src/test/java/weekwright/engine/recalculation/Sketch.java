package weekwright.engine.recalculation;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.FamilyPatch;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Away;
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
import weekwright.model.scenario.Prefer;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Restriction;
import weekwright.model.scenario.Room;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Transfer;
import weekwright.model.scenario.Travel;
import weekwright.model.scenario.Weekday;
import weekwright.model.scenario.Window;

/** A scenario and a plan for one squad, put together line by line as a coach would tell it. */
final class Sketch {
    static final String SQUAD = "squad";

    String zone = "Europe/Dublin";
    LocalDate firstDay = LocalDate.parse("2027-03-01");
    int days = 7;
    GroupKind kind = GroupKind.FIELD;
    Phase phase = Phase.IN_SEASON;
    int headcount = 10;

    @Nullable
    PerWeek highDays;

    final List<Window> windows = new ArrayList<>();
    final List<Aim> aims = new ArrayList<>();
    final List<Group> otherGroups = new ArrayList<>();
    final List<Athlete> athletes = new ArrayList<>();
    final List<Fixture> fixtures = new ArrayList<>();
    final List<Commitment> commitments = new ArrayList<>();
    final List<Facility> facilities = new ArrayList<>();
    final List<Transfer> transfers = new ArrayList<>();
    final List<StaffMember> staff = new ArrayList<>();
    final List<LogEntry> history = new ArrayList<>();
    final List<FamilyPatch> catalogue = new ArrayList<>();
    final Map<String, RuleSetting> rules = new TreeMap<>();
    final List<Placement> placements = new ArrayList<>();

    Sketch() {
        facilities.add(facility("gym", List.of(FacilityKind.GYM), null));
        facilities.add(facility("turf", List.of(FacilityKind.FIELD), null));
    }

    static Facility facility(String id, List<FacilityKind> offers, @Nullable Room room) {
        return new Facility(id, id, offers, null, room, List.of(), List.of());
    }

    static Window window(String from, String to, Weekday... weekdays) {
        return new Window(List.of(weekdays), null, ClockTime.parse(from), ClockTime.parse(to), null, null);
    }

    static Away away(String from, String to) {
        return new Away(Moment.parse(from), Moment.parse(to), null);
    }

    Sketch aim(String family, int least, int target, int most, Priority priority, Dose... doses) {
        return aim(family, Share.ALL, new PerWeek(least, target, most), priority, false, null, doses);
    }

    Sketch aim(
            String family,
            Share whom,
            PerWeek perWeek,
            Priority priority,
            boolean learning,
            @Nullable Prefer prefer,
            Dose... doses) {
        aims.add(new Aim(
                family,
                whom,
                perWeek,
                priority,
                List.of(doses),
                prefer,
                false,
                learning,
                false,
                List.of(),
                null,
                null));
        return this;
    }

    Sketch athlete(String id, Restriction... restrictions) {
        athletes.add(new Athlete(
                id, id, List.of(SQUAD), null, null, List.of(), List.of(), List.of(), List.of(restrictions)));
        return this;
    }

    Sketch match(String id, String start, int minutes, Appearance... expected) {
        return match(id, "fixture", start, minutes, FixtureWeight.REGULAR, Travel.NONE, expected);
    }

    Sketch match(
            String id,
            String family,
            String start,
            int minutes,
            FixtureWeight weight,
            Travel travel,
            Appearance... expected) {
        fixtures.add(new Fixture(
                id,
                id,
                List.of(SQUAD),
                family,
                Moment.parse(start),
                minutes,
                null,
                weight,
                travel,
                null,
                List.of(expected),
                List.of()));
        return this;
    }

    Sketch done(String family, String start, int minutes, PersonEntry... people) {
        history.add(new LogEntry(
                null,
                null,
                null,
                SQUAD,
                family,
                Moment.parse(start),
                minutes,
                Dose.FULL,
                null,
                null,
                true,
                List.of(),
                List.of(people),
                null));
        return this;
    }

    Sketch practice(String start, int minutes, @Nullable Effort effort) {
        return commitment("team-practice", start, minutes, effort);
    }

    Sketch commitment(@Nullable String family, String start, int minutes, @Nullable Effort effort) {
        commitments.add(new Commitment(
                "fixed-" + (commitments.size() + 1),
                "fixed",
                List.of(SQUAD),
                List.of(),
                family,
                Moment.parse(start),
                minutes,
                null,
                effort,
                null));
        return this;
    }

    Sketch place(String family, String start, @Nullable String facility) {
        return place(family, start, facility, Dose.FULL);
    }

    Sketch place(String family, String start, @Nullable String facility, Dose dose) {
        return place(null, family, start, facility, null, dose);
    }

    Sketch place(
            @Nullable String id,
            String family,
            String start,
            @Nullable String facility,
            @Nullable String lead,
            Dose dose) {
        placements.add(new Placement(id, SQUAD, family, Moment.parse(start), null, facility, lead, dose, null, null));
        return this;
    }

    Sketch placeFor(String group, String family, String start, @Nullable String facility) {
        placements.add(
                new Placement(null, group, family, Moment.parse(start), null, facility, null, Dose.FULL, null, null));
        return this;
    }

    Sketch number(String rule, String name, Object value) {
        rules.put(rule, new RuleSetting(null, null, Map.of(name, value)));
        return this;
    }

    Scenario scenario() {
        List<Group> groups = new ArrayList<>();
        groups.add(new Group(
                SQUAD,
                SQUAD,
                kind,
                phase,
                Level.TRAINED,
                headcount,
                0.8,
                windows,
                List.of(),
                highDays,
                aims,
                Map.of(),
                List.of()));
        groups.addAll(otherGroups);
        return new Scenario(
                1,
                "sketch",
                "Sketch",
                ZoneId.of(zone),
                firstDay,
                days,
                5,
                groups,
                athletes,
                fixtures,
                commitments,
                facilities,
                transfers,
                staff,
                history,
                catalogue,
                rules,
                List.of());
    }

    Plan plan() {
        return plan(null);
    }

    Plan plan(@Nullable String published) {
        return new Plan(
                1,
                "sketch",
                null,
                published == null ? null : Moment.parse(published),
                null,
                placements,
                List.of(),
                List.of(),
                null,
                List.of());
    }

    Case asCase() {
        return Case.of(scenario(), Catalogue.builtIn(), Rulebook.builtIn(), plan());
    }

    Recalculation.Result judged() {
        return Recalculation.of(scenario(), Catalogue.builtIn(), Rulebook.builtIn(), plan());
    }

    Recalculation.Result judgedBeside(Plan before, @Nullable String now) {
        return Recalculation.of(
                scenario(),
                Catalogue.builtIn(),
                Rulebook.builtIn(),
                plan(),
                before,
                now == null ? null : Moment.parse(now));
    }
}
