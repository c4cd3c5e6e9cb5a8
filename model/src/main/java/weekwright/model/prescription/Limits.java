package weekwright.model.prescription;

import java.time.LocalDate;
import java.util.Set;
import weekwright.model.catalogue.Family;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Restriction;

/** What a clinician's word keeps an athlete out of. Nobody is ever cleared by it. */
public final class Limits {
    private Limits() {}

    /**
     * Whether a restriction keeps an athlete out of a session: up to light bars what is high on a quality named, up to micro
     * all but micro doses of it, none whatever touches the quality at all.
     */
    public static boolean keepsOut(Restriction restriction, Family family, Dose dose, LocalDate day) {
        if (!restriction.holdsOn(day)) {
            return false;
        }
        Set<Pathway> touched = family.pathways().keySet();
        return restriction.pathways().stream()
                .filter(touched::contains)
                .anyMatch(pathway -> switch (restriction.upTo()) {
                    case NONE -> true;
                    case MICRO -> dose != Dose.MICRO && family.high(pathway);
                    case LIGHT -> family.high(pathway);
                });
    }
}
