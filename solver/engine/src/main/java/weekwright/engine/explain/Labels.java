package weekwright.engine.explain;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Variant;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;

/** What a scenario calls the things that a plan names by their ids; an id that it does not know stands for itself. */
final class Labels {
    private final Scenario scenario;
    private final Catalogue catalogue;

    Labels(Scenario scenario) {
        this.scenario = scenario;
        catalogue = Catalogue.builtIn().with(scenario.catalogue());
    }

    String family(String id) {
        return catalogue.find(id).map(Family::label).orElse(id);
    }

    /** A place, or null for nowhere in particular. */
    String place(@Nullable String id) {
        return id == null ? "nowhere in particular" : label(scenario.facilities(), Facility::id, Facility::label, id);
    }

    String staff(String id) {
        return label(scenario.staff(), StaffMember::id, StaffMember::name, id);
    }

    /** The lift of a session, or its family where it has none. */
    String lift(Placement session) {
        return catalogue.find(session.family()).stream()
                .flatMap(family -> family.variants().stream())
                .filter(variant -> variant.id().equals(session.variant()))
                .map(Variant::label)
                .findFirst()
                .orElse(family(session.family()));
    }

    /** A sentence about a group, which is named where the scenario has several. */
    String ofGroup(String id, String sentence) {
        return scenario.groups().size() < 2
                ? sentence
                : label(scenario.groups(), Group::id, Group::label, id) + ": " + sentence;
    }

    private static <T> String label(List<T> all, Function<T, String> ids, Function<T, String> labels, String id) {
        return all.stream()
                .filter(one -> ids.apply(one).equals(id))
                .map(labels)
                .findFirst()
                .orElse(id);
    }
}
