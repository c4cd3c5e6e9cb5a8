package weekwright.desk.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Variant;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;

/** The labels of a scenario by id; an id that is not known stands for itself. */
public final class Names {
    private final Catalogue catalogue;
    private final Map<String, String> groups;
    private final Map<String, String> facilities;
    private final Map<String, String> staff;

    /** The labels of a scenario. */
    public Names(Scenario scenario) {
        catalogue = Catalogue.builtIn().with(scenario.catalogue());
        groups = labels(scenario.groups(), Group::id, Group::label);
        facilities = labels(scenario.facilities(), Facility::id, Facility::label);
        staff = labels(scenario.staff(), StaffMember::id, StaffMember::name);
    }

    private static <T> Map<String, String> labels(List<T> things, Function<T, String> id, Function<T, String> label) {
        Map<String, String> labels = new LinkedHashMap<>();
        things.forEach(thing -> labels.put(id.apply(thing), label.apply(thing)));
        return labels;
    }

    /** Label of a group. */
    public String group(String id) {
        return groups.getOrDefault(id, id);
    }

    /** Label of a facility; null for null. */
    public @Nullable String facility(@Nullable String id) {
        return id == null ? null : facilities.getOrDefault(id, id);
    }

    /** Name of a staff member; null for null. */
    public @Nullable String staff(@Nullable String id) {
        return id == null ? null : staff.getOrDefault(id, id);
    }

    /** Label of a session family. */
    public String family(String id) {
        return catalogue.find(id).map(Family::label).orElse(id);
    }

    /** The label of a variant of a family, or null where there is none. */
    public @Nullable String variant(String family, @Nullable String id) {
        return id == null
                ? null
                : catalogue.find(family).stream()
                        .flatMap(known -> known.variants().stream())
                        .filter(variant -> variant.id().equals(id))
                        .map(Variant::label)
                        .findFirst()
                        .orElse(id);
    }

    /** A session in words, by its id {@code group/family/week/n}. */
    public String session(String id) {
        String[] parts = id.split("/", -1);
        return parts.length < 2 ? id : family(parts[1].replaceFirst("\\+.*", "")) + " of " + group(parts[0]);
    }

    /** Title of a rule. */
    public static String rule(String id) {
        return Rulebook.builtIn().find(id).map(Rule::title).orElse(id);
    }
}
