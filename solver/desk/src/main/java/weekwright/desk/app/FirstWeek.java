package weekwright.desk.app;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.Window;

/**
 * A week to start from, made of the answers to three questions: which days, which fixtures, which places. One squad, and
 * the sessions that the places allow; the coach changes both later.
 *
 * @param windows the days and hours that can be had
 */
public record FirstWeek(
        String title,
        LocalDate firstDay,
        ZoneId zone,
        List<Window> windows,
        List<Fixture> fixtures,
        List<Facility> places) {
    /** Id of the squad. */
    public static final String SQUAD = "squad";

    /** How long a fixture lasts until the coach says otherwise. */
    private static final int FIXTURE_MINUTES = 110;

    private static final int DAYS = 7;
    private static final int GRID = 15;

    /** A session to begin with: common practice, no source. */
    private record Start(String family, PerWeek perWeek, Priority priority, List<Dose> doses) {}

    private static final PerWeek ONCE = new PerWeek(1, 1, 1);
    private static final PerWeek IF_POSSIBLE = new PerWeek(0, 1, 1);
    private static final List<Dose> ANY = List.of(Dose.FULL, Dose.REDUCED, Dose.MICRO);
    private static final List<Dose> FULL_OR_LESS = List.of(Dose.FULL, Dose.REDUCED);

    private static final List<Start> STARTS = List.of(
            new Start("max-velocity", ONCE, Priority.KEY, ANY),
            new Start("heavy-lower-knee", ONCE, Priority.KEY, FULL_OR_LESS),
            new Start("acceleration", ONCE, Priority.MAIN, FULL_OR_LESS),
            new Start("upper-strength", ONCE, Priority.MAIN, FULL_OR_LESS),
            new Start("tempo-run", IF_POSSIBLE, Priority.SPARE, FULL_OR_LESS),
            new Start("trunk-and-balance", new PerWeek(0, 2, 2), Priority.SPARE, List.of(Dose.FULL)),
            new Start("mobility", new PerWeek(0, 1, 2), Priority.SPARE, List.of(Dose.FULL)));

    /** A fixture of the squad; it lasts {@value #FIXTURE_MINUTES} minutes until the coach says otherwise. */
    public static Fixture fixture(int number, String label, Moment start) {
        return Fixture.plain("fixture-" + number, label, List.of(SQUAD), null, start, FIXTURE_MINUTES);
    }

    public FirstWeek {
        windows = List.copyOf(windows);
        fixtures = List.copyOf(fixtures);
        places = List.copyOf(places);
    }

    /** The week as a scenario. */
    public Scenario scenario() {
        return new Scenario(
                Scenario.VERSION,
                "my-week",
                title,
                zone,
                firstDay,
                DAYS,
                GRID,
                List.of(squad()),
                List.of(),
                fixtures,
                List.of(),
                places,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Map.of(),
                List.of());
    }

    private Group squad() {
        return new Group(
                SQUAD,
                "Squad",
                GroupKind.FIELD,
                Phase.IN_SEASON,
                Level.TRAINED,
                20,
                0,
                windows,
                List.of(),
                new PerWeek(1, 2, 3),
                aims(),
                Map.of(),
                List.of());
    }

    private List<Aim> aims() {
        List<FacilityKind> offered =
                places.stream().flatMap(place -> place.offers().stream()).toList();
        List<Aim> aims = new ArrayList<>();
        for (Start start : STARTS) {
            List<FacilityKind> needed = Catalogue.builtIn()
                    .find(start.family())
                    .map(family -> family.facility())
                    .orElseThrow();
            if (needed.isEmpty() || needed.stream().anyMatch(offered::contains)) {
                aims.add(new Aim(
                        start.family(),
                        Share.ALL,
                        start.perWeek(),
                        start.priority(),
                        start.doses(),
                        null,
                        start.doses().contains(Dose.MICRO),
                        false,
                        false,
                        List.of(),
                        null,
                        null));
            }
        }
        return aims;
    }
}
