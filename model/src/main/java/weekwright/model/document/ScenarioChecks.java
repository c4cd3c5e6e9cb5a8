package weekwright.model.document;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.model.rulebook.Rulebook;

/** All that a schema cannot say of a scenario, theme by theme. */
final class ScenarioChecks {
    private final Node scenario;
    private final Faults faults;

    private ScenarioChecks(Node scenario, Faults faults) {
        this.scenario = scenario;
        this.faults = faults;
    }

    /**
     * Reports what cannot be.
     *
     * @param moments all local times that are well formed
     */
    static void check(Node scenario, List<Node> moments, Faults faults) {
        new ScenarioChecks(scenario, faults).all(moments);
    }

    private void all(List<Node> moments) {
        Optional<ZoneId> zone = TimeChecks.zone(scenario.field("zone"), faults);
        TimeChecks times = new TimeChecks(faults, zone.orElse(null));
        times.exist(moments);
        uniqueIds();
        FamilyChecks families = FamilyChecks.check(scenario.list("catalogue"), faults);
        Known known = Known.of(scenario, families.catalogue(), families.misfits());
        RuleChecks rules = new RuleChecks(Rulebook.builtIn(), faults);
        rules.check(scenario);
        new GroupChecks(scenario, known, times, rules, faults).check();
        new PeopleChecks(scenario, known, times, faults).check();
        new PlaceChecks(scenario, known, times, faults).check();
        new FixtureChecks(scenario, known, faults).check();
        new EntryChecks(known, faults).check(scenario.list("history"));
        horizon().ifPresent(this::starts);
    }

    private void uniqueIds() {
        for (String list : List.of(
                "groups", "athletes", "fixtures", "commitments", "facilities", "staff", "history", "catalogue")) {
            uniqueIds(scenario.list(list), faults);
        }
    }

    /** Ids that must differ from each other within a list. */
    static void uniqueIds(List<Node> entries, Faults faults) {
        Map<String, Node> seen = new HashMap<>();
        for (Node entry : entries) {
            Node id = entry.field("id");
            Node first = id.text().map(text -> seen.putIfAbsent(text, id)).orElse(null);
            if (first != null) {
                faults.add(
                        id,
                        Shown.value(id) + " is there twice, first at " + faults.place(first),
                        "Give each an id of its own.");
            }
        }
    }

    private Optional<Horizon> horizon() {
        Optional<LocalDate> first = faults.sound(scenario.field("firstDay")).date();
        int days = faults.sound(scenario.field("days")).whole().orElse(0);
        return first.filter(day -> days > 0).map(day -> new Horizon(day, day.plusDays(days - 1L)));
    }

    private void starts(Horizon horizon) {
        scenario.list("fixtures").forEach(fixture -> horizon.ahead(fixture.field("start"), faults));
        scenario.list("commitments").forEach(commitment -> horizon.ahead(commitment.field("start"), faults));
        scenario.list("history").forEach(entry -> horizon.past(entry.field("start"), faults));
    }
}
