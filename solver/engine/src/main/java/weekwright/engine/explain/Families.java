package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weekwright.model.catalogue.FamilyPatch;
import weekwright.model.catalogue.Hours;
import weekwright.model.scenario.Scenario;

/** A scenario's changes to session families, with other hours. */
final class Families {
    private Families() {}

    /** What a scenario changes of a family; nothing where it does not. */
    static FamilyPatch of(Scenario scenario, String id) {
        return scenario.catalogue().stream()
                .filter(patch -> patch.id().equals(id))
                .findFirst()
                .orElse(FamilyPatch.none(id));
    }

    /** A scenario with a changed family in place of what it said of it. */
    static Scenario with(Scenario scenario, FamilyPatch patch) {
        List<FamilyPatch> catalogue = new ArrayList<>(scenario.catalogue());
        catalogue.removeIf(other -> other.id().equals(patch.id()));
        catalogue.add(patch);
        return scenario.withCatalogue(catalogue);
    }

    /** Other hours before a fixture, of micro doses or of all others. */
    static FamilyPatch before(FamilyPatch of, Hours hours, boolean micro) {
        return micro
                ? of.withFixtureHours(of.beforeFixtureHours(), hours, of.afterHours())
                : of.withFixtureHours(hours, of.beforeFixtureMicroHours(), of.afterHours());
    }

    /** Other hours after a fixture of this family. */
    static FamilyPatch after(FamilyPatch of, Map<String, Hours> hours) {
        return of.withFixtureHours(of.beforeFixtureHours(), of.beforeFixtureMicroHours(), hours);
    }
}
