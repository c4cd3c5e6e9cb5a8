package weekwright.desk.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import weekwright.desk.form.Look.Offer;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** What the fields of a scenario can name: ids with the labels that a coach knows. */
final class Offers {
    private final Scenario scenario;
    private final Catalogue catalogue;

    Offers(Scenario scenario) {
        this.scenario = scenario;
        this.catalogue = Catalogue.builtIn().with(scenario.catalogue());
    }

    /** What there is to choose, in order. */
    Map<String, String> of(Offer offer) {
        return switch (offer) {
            case NOTHING -> Map.of();
            case GROUPS -> labels(scenario.groups(), Group::id, Group::label);
            case ATHLETES -> labels(scenario.athletes(), Athlete::id, Athlete::name);
            case PLACES -> labels(scenario.facilities(), Facility::id, Facility::label);
            case SESSIONS -> families(family -> family.role() != Role.FIXTURE && family.role() != Role.PRACTICE);
            case FIXTURE_FAMILIES -> families(family -> family.role() == Role.FIXTURE);
            case FAMILIES -> families(family -> family.role() != Role.FIXTURE);
            case LEADS -> leads();
            case LIFTS -> lifts();
            case PACKS -> packs();
        };
    }

    private static <T> Map<String, String> labels(List<T> things, Function<T, String> id, Function<T, String> label) {
        Map<String, String> labels = new LinkedHashMap<>();
        things.forEach(thing -> labels.put(id.apply(thing), label.apply(thing)));
        return labels;
    }

    private Map<String, String> families(Predicate<Family> wanted) {
        return labels(catalogue.families().stream().filter(wanted).toList(), Family::id, Family::label);
    }

    private Map<String, String> leads() {
        Map<String, String> leads = new LinkedHashMap<>(Map.of("*", "Everything"));
        leads.putAll(of(Offer.FAMILIES));
        return leads;
    }

    private Map<String, String> lifts() {
        Map<String, String> lifts = new LinkedHashMap<>();
        catalogue
                .families()
                .forEach(family ->
                        family.variants().forEach(variant -> lifts.putIfAbsent(variant.id(), variant.label())));
        return lifts;
    }

    private static Map<String, String> packs() {
        return labels(
                Rulebook.builtIn().rules().stream()
                        .filter(rule -> rule.theme().equals("packs"))
                        .toList(),
                Rule::id,
                Rule::title);
    }
}
