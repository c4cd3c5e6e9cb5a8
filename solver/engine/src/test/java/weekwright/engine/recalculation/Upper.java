package weekwright.engine.recalculation;

import java.util.Set;
import weekwright.model.catalogue.Family;
import weekwright.model.scenario.Pathway;

/** Work of the upper body only. */
final class Upper {
    private Upper() {}

    static boolean only(Family family) {
        return !family.pathways().isEmpty()
                && Set.of(Pathway.UPPER_PUSH, Pathway.UPPER_PULL)
                        .containsAll(family.pathways().keySet());
    }
}
