package weekwright.desk.view;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.explain.Judged;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Finding;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Remedy;
import weekwright.model.plan.Solver;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Travel;

/** A small invented club with a match on Saturday, and parts of plans for it. */
public final class Quayside {
    public static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

    private Quayside() {}

    public static Scenario scenario(String title, int days, List<Group> groups) {
        return new Scenario(
                1,
                "quayside",
                title,
                ZoneId.of("Europe/Dublin"),
                MONDAY,
                days,
                15,
                groups,
                List.of(),
                List.of(new Fixture(
                        "r18",
                        "League round 18",
                        List.of("squad"),
                        "fixture",
                        at("2027-03-06T14:30"),
                        105,
                        null,
                        FixtureWeight.KEY,
                        new Travel(75, 90),
                        null,
                        List.of(),
                        List.of())),
                List.of(new Commitment(
                        "practice",
                        "Team practice",
                        List.of("squad"),
                        List.of(),
                        "team-practice",
                        at("2027-03-02T18:15"),
                        75,
                        "turf",
                        Effort.EASY,
                        null)),
                List.of(facility("gym", "Weights room"), facility("turf", "Turf pitch")),
                List.of(),
                List.of(new StaffMember("c1", "Speed coach", List.of("*"), 1, List.of(), List.of())),
                List.of(),
                List.of(),
                Map.of(),
                List.of());
    }

    private static Facility facility(String id, String label) {
        return new Facility(id, label, List.of(), null, null, List.of(), List.of());
    }

    public static Group group(String id, String label) {
        return new Group(
                id, label, null, null, null, 18, 0.8, List.of(), List.of(), null, List.of(), Map.of(), List.of());
    }

    public static List<Group> oneSquad() {
        return List.of(group("squad", "Match squad"));
    }

    public static Placement session(String family, String start, int minutes, @Nullable String facility, Dose dose) {
        return new Placement(
                "squad/" + family + "/2027-03-01/1",
                "squad",
                family,
                at(start),
                minutes,
                facility,
                null,
                dose,
                null,
                null);
    }

    public static Placement withLift(Placement placement, String variant) {
        return new Placement(
                placement.id(),
                placement.group(),
                placement.family(),
                placement.start(),
                placement.minutes(),
                placement.facility(),
                placement.lead(),
                placement.dose(),
                variant,
                placement.pin());
    }

    public static Placement pinned(Placement placement, String lead, Pin pin) {
        return new Placement(
                placement.id(),
                placement.group(),
                placement.family(),
                placement.start(),
                placement.minutes(),
                placement.facility(),
                lead,
                placement.dose(),
                null,
                pin);
    }

    public static DayPicture day(int index, @Nullable Integer matchDay, DayClass dayClass, double demand, double load) {
        return new DayPicture("squad", MONDAY.plusDays(index), matchDay, demand, load, dayClass);
    }

    public static Plan plan(Totals totals, List<Placement> placements, List<Finding> findings, List<LeftOut> leftOut) {
        return new Plan(
                1,
                "quayside",
                null,
                null,
                new Solver(7, 1_830_000, 5.0, 2, "time", "0.1.0"),
                placements,
                leftOut,
                List.of(),
                totals,
                findings);
    }

    public static Judged clean(List<DayPicture> days, Placement... placements) {
        return new Judged(
                plan(new Totals(0, 0, 0, 0), List.of(placements), List.of(), List.of()), List.of("free-day"), days);
    }

    public static Finding finding(RuleLevel level, double cost, String text, @Nullable String help) {
        return new Finding(
                "free-day",
                "A free day each week",
                level,
                cost,
                18,
                List.of("squad"),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                null,
                null,
                MONDAY,
                null,
                0,
                1,
                "days",
                text,
                help == null ? null : new Remedy(List.of(), new Totals(-1, 0, 0, 0), List.of(), true, help),
                null);
    }

    public static List<DayPicture> week() {
        List<DayPicture> days = new ArrayList<>();
        days.add(day(0, -5, DayClass.FREE, 0, 0));
        days.add(day(1, -4, DayClass.HIGH, 8.6, 655));
        days.add(day(2, -3, DayClass.LOW, 3.26, 210));
        days.add(day(3, -2, DayClass.MIDDLE, 6, 480.4));
        days.add(day(4, -1, DayClass.FREE, 0, 0));
        days.add(day(5, 0, DayClass.HIGH, 9, 1000));
        days.add(day(6, 1, DayClass.FREE, 0, 0));
        return days;
    }

    public static Moment at(String text) {
        return Moment.parse(text);
    }
}
