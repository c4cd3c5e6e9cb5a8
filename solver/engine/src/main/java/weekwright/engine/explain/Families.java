package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
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
                .orElse(new FamilyPatch(
                        id, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
                        null, null, null, null));
    }

    /** A scenario with a changed family in place of what it said of it. */
    static Scenario with(Scenario scenario, FamilyPatch patch) {
        List<FamilyPatch> catalogue = new ArrayList<>(scenario.catalogue());
        catalogue.removeIf(other -> other.id().equals(patch.id()));
        catalogue.add(patch);
        return Amended.withCatalogue(scenario, catalogue);
    }

    /** Other hours before a fixture, of micro doses or of all others. */
    static FamilyPatch before(FamilyPatch of, Hours hours, boolean micro) {
        return patch(
                of,
                micro ? of.beforeFixtureHours() : hours,
                micro ? hours : of.beforeFixtureMicroHours(),
                of.afterHours());
    }

    /** Other hours after a fixture of this family. */
    static FamilyPatch after(FamilyPatch of, Map<String, Hours> hours) {
        return patch(of, of.beforeFixtureHours(), of.beforeFixtureMicroHours(), hours);
    }

    private static FamilyPatch patch(
            FamilyPatch of, @Nullable Hours before, @Nullable Hours beforeMicro, @Nullable Map<String, Hours> after) {
        return new FamilyPatch(
                of.id(),
                of.label(),
                of.role(),
                of.demand(),
                of.rpe(),
                of.minutes(),
                of.warmUpMinutes(),
                of.facility(),
                of.straightMetres(),
                of.pathways(),
                of.againHours(),
                of.crossHours(),
                before,
                beforeMicro,
                after,
                of.order(),
                of.variants(),
                of.content(),
                of.note(),
                of.source());
    }
}
