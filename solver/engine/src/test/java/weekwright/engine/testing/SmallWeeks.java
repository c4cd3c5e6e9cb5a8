package weekwright.engine.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;
import weekwright.engine.Engine;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Yardstick;

/** Weeks of at most 8 sessions with what was proven of them by CP-SAT, and what may change in them afterwards. */
public final class SmallWeeks {
    /** Where the data lie among the tests' resources. */
    public static final String FOLDER = "weekwright/engine/proven/";

    private SmallWeeks() {}

    /**
     * What was proven of a week.
     *
     * @param want points of the best plan that breaks no must; key and main are counts
     * @param fewest sessions that must move at least after each change, for a plan as good as any by must, key and main
     */
    public record Proven(String week, double key, double main, double want, Map<Change, Integer> fewest) {
        /** The scenario, under the yardstick rules. */
        public Scenario scenario() {
            try {
                return Yardstick.of(Documents.readScenario(week, resource(week + ".scenario.json")));
            } catch (DocumentException e) {
                throw new IllegalStateException(e);
            }
        }

        /** The best plan, judged as it stands. */
        public Plan plan() {
            Scenario scenario = scenario();
            try {
                return Engine.judge(scenario, Documents.readPlan(week, resource(week + ".plan.json"), scenario))
                        .plan();
            } catch (DocumentException e) {
                throw new IllegalStateException(e);
            }
        }

        @Override
        public String toString() {
            return week;
        }
    }

    /** What may change after the plan was made. */
    public enum Change {
        TWO_PINS,
        FIXTURE_MOVED,
        FACILITY_CLOSED
    }

    /** A scenario and the plan that was made before it changed, with the pins that were set since. */
    public record Changed(Scenario scenario, Plan before) {}

    /** All weeks with what was proven of them. */
    public static List<Proven> all() {
        return JsonMapper.shared().readValue(resource("index.json"), new TypeReference<List<Proven>>() {});
    }

    /** A week and its plan after a change. */
    public static Changed after(Change change, Scenario scenario, Plan plan) {
        return switch (change) {
            case TWO_PINS -> new Changed(scenario, pinned(scenario, plan));
            case FIXTURE_MOVED -> new Changed(scenario.withFixtures(fixtures(scenario)), plan);
            case FACILITY_CLOSED -> new Changed(scenario.withFacilities(closed(scenario, plan)), plan);
        };
    }

    /** The first and the third session are held on another day, where the two break nothing by themselves. */
    private static Plan pinned(Scenario scenario, Plan plan) {
        List<Placement> held = new ArrayList<>();
        for (int at : List.of(0, 2)) {
            held.add(elsewhere(scenario, plan, plan.placements().get(at), held));
        }
        List<Placement> all = plan.placements().stream()
                .map(one -> held.stream()
                        .filter(other -> Objects.equals(other.id(), one.id()))
                        .findFirst()
                        .orElse(one))
                .toList();
        return plan.withPlacements(all);
    }

    private static Placement elsewhere(Scenario scenario, Plan plan, Placement session, List<Placement> held) {
        for (int day = 0; day < scenario.days(); day++) {
            for (int hour = 9; hour < 21; hour++) {
                LocalDateTime start = scenario.firstDay().plusDays(day).atTime(hour, 0);
                Placement there = heldAt(session, Moment.of(start));
                List<Placement> alone = new ArrayList<>(held);
                alone.add(there);
                boolean otherDay = !start.toLocalDate().equals(session.start().date());
                if (otherDay
                        && Engine.judge(scenario, plan.withPlacements(alone))
                                        .plan()
                                        .totals()
                                        .must()
                                == 0) {
                    return there;
                }
            }
        }
        throw new IllegalStateException("there is no other day for " + session.id());
    }

    private static Placement heldAt(Placement p, Moment start) {
        Pin pin = new Pin(true, false, false, false, false, false, false, List.of());
        return p.withStart(start).withPin(pin);
    }

    /** All fixtures one day earlier. */
    private static List<Fixture> fixtures(Scenario scenario) {
        return scenario.fixtures().stream()
                .map(f -> f.withStart(Moment.of(f.start().date().minusDays(1).atTime(14, 30))))
                .toList();
    }

    /** The facility of the plan's second session is shut on that day. */
    private static List<Facility> closed(Scenario scenario, Plan plan) {
        Placement first = plan.placements().stream()
                .filter(placement -> placement.facility() != null)
                .skip(1)
                .findFirst()
                .orElseThrow();
        var date = first.start().date();
        Away shut = new Away(Moment.of(date.atStartOfDay()), Moment.of(date.atTime(23, 0)), "repairs");
        return scenario.facilities().stream()
                .map(f -> f.id().equals(first.facility())
                        ? new Facility(
                                f.id(), f.label(), f.offers(), f.straightMetres(), f.room(), f.open(), List.of(shut))
                        : f)
                .toList();
    }

    private static byte[] resource(String name) {
        try (InputStream data = SmallWeeks.class.getClassLoader().getResourceAsStream(FOLDER + name)) {
            return Objects.requireNonNull(data, name).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
