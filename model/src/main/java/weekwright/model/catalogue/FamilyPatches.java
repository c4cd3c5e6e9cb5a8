package weekwright.model.catalogue;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Lays a scenario's change over a family. */
final class FamilyPatches {
    /** Hours that are never asked for: those between fixtures, which nobody here spaces. */
    private static final Hours NONE = new Hours(0, null);

    private FamilyPatches() {}

    /** The family with the fields that the change gives; a change without faults is taken for granted. */
    static Family merged(@Nullable Family base, FamilyPatch patch) {
        return base == null ? added(patch) : changed(base, patch);
    }

    private static Family changed(Family base, FamilyPatch patch) {
        return new Family(
                base.id(),
                either(patch.label(), base.label()),
                either(patch.role(), base.role()),
                either(patch.demand(), base.demand()),
                either(patch.rpe(), base.rpe()),
                either(patch.minutes(), base.minutes()),
                either(patch.warmUpMinutes(), base.warmUpMinutes()),
                either(patch.facility(), base.facility()),
                patch.straightMetres() == null ? base.straightMetres() : patch.straightMetres(),
                either(patch.pathways(), base.pathways()),
                either(patch.againHours(), base.againHours()),
                either(patch.crossHours(), base.crossHours()),
                either(patch.beforeFixtureHours(), base.beforeFixtureHours()),
                patch.beforeFixtureMicroHours() == null
                        ? base.beforeFixtureMicroHours()
                        : patch.beforeFixtureMicroHours(),
                either(patch.afterHours(), base.afterHours()),
                patch.order() == null ? base.order() : patch.order(),
                either(patch.variants(), base.variants()),
                either(patch.content(), base.content()),
                patch.note() == null ? base.note() : patch.note(),
                either(patch.source(), base.source()));
    }

    private static Family added(FamilyPatch patch) {
        Family blank = new Family(
                patch.id(),
                patch.id(),
                Role.SESSION,
                new Demand(0, 0, 0),
                0,
                0,
                0,
                List.of(),
                null,
                Map.of(),
                NONE,
                NONE,
                NONE,
                null,
                Map.of(),
                null,
                List.of(),
                List.of(),
                null,
                "the coach's own");
        return changed(blank, patch);
    }

    private static <T> T either(@Nullable T given, T otherwise) {
        return given == null ? otherwise : given;
    }
}
