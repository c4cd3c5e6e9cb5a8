package weekwright.model.prescription;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Demands;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Restriction;

/** What somebody does who sits a session out: work for another quality, no harder, and possible at the place. */
public final class Alternatives {
    /** In the order in which they are offered: strength of the other half first, then what is easy. Expert proposal. */
    private static final List<String> OFFERED = List.of(
            "upper-strength", "heavy-upper-push", "heavy-upper-pull", "trunk-and-balance", "easy-bike", "mobility");

    private final Catalogue catalogue;

    /** What a catalogue holds for those who sit out. */
    public Alternatives(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * The first of what is offered that touches none of the qualities that the athlete sits out, nor one that the session
     * is high on.
     *
     * @param restrictions those that hold on the day
     * @param place where the session is, or null for nowhere in particular
     * @param hoursToFixture hours from the session's end to the athlete's next fixture
     * @param fits whether a family fits between what else the athlete does
     * @return the family, or null where nothing fits
     */
    public @Nullable Family instead(
            Family family,
            List<Restriction> restrictions,
            @Nullable Facility place,
            double hoursToFixture,
            Predicate<Family> fits) {
        Set<Pathway> spared = EnumSet.noneOf(Pathway.class);
        restrictions.forEach(restriction -> spared.addAll(restriction.pathways()));
        family.pathways().keySet().stream().filter(family::high).forEach(spared::add);
        List<FacilityKind> offers = place == null ? List.of() : place.offers();
        return OFFERED.stream()
                .flatMap(id -> catalogue.find(id).stream())
                .filter(other -> !other.id().equals(family.id()))
                .filter(fits)
                .filter(other -> other.pathways().keySet().stream().noneMatch(spared::contains))
                .filter(other ->
                        other.facility().isEmpty() || other.facility().stream().anyMatch(offers::contains))
                .filter(other -> other.role() == Role.RECOVERY
                        || other.beforeFixtureHours().must() <= hoursToFixture)
                .filter(other -> Demands.sessionDemand(other, Dose.FULL, false)
                        <= Demands.sessionDemand(family, Dose.FULL, false))
                .findFirst()
                .orElse(null);
    }
}
