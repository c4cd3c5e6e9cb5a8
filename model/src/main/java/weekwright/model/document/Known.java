package weekwright.model.document;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.catalogue.Variant;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;

/**
 * What the ids in a document may refer to.
 *
 * @param catalogue families in force
 * @param misfits ids of families of the scenario's own that are faulty: known, and nothing more is said of them
 */
record Known(
        Set<String> groups,
        Set<String> athletes,
        Set<String> fixtures,
        Set<String> facilities,
        Set<String> staff,
        Catalogue catalogue,
        List<String> misfits) {

    /** What a scenario's text lists, as far as it can be read. */
    static Known of(Node scenario, Catalogue catalogue, List<String> misfits) {
        return new Known(
                ids(scenario, "groups"),
                ids(scenario, "athletes"),
                ids(scenario, "fixtures"),
                ids(scenario, "facilities"),
                ids(scenario, "staff"),
                catalogue,
                misfits);
    }

    /** What a scenario lists. */
    static Known of(Scenario scenario) {
        return new Known(
                ids(scenario.groups(), Group::id),
                ids(scenario.athletes(), Athlete::id),
                ids(scenario.fixtures(), Fixture::id),
                ids(scenario.facilities(), Facility::id),
                ids(scenario.staff(), StaffMember::id),
                Catalogue.builtIn().with(scenario.catalogue()),
                List.of());
    }

    private static Set<String> ids(Node scenario, String list) {
        Set<String> ids = new LinkedHashSet<>();
        scenario.list(list).forEach(entry -> entry.field("id").id().ifPresent(ids::add));
        return ids;
    }

    private static <T> Set<String> ids(List<T> entries, Function<T, String> id) {
        Set<String> ids = new LinkedHashSet<>();
        entries.forEach(entry -> ids.add(id.apply(entry)));
        return ids;
    }

    void group(Node id, Faults faults) {
        check(id, groups, "group", faults);
    }

    void athlete(Node id, Faults faults) {
        check(id, athletes, "athlete", faults);
    }

    void fixture(Node id, Faults faults) {
        check(id, fixtures, "fixture", faults);
    }

    void facility(Node id, Faults faults) {
        check(id, facilities, "place", faults);
    }

    void lead(Node id, Faults faults) {
        check(id, staff, "member of staff", faults);
    }

    /** A family of any kind. */
    void family(Node id, Faults faults) {
        family(id, "family", role -> true, faults);
    }

    /** A family that can be trained: no fixture. */
    void session(Node id, Faults faults) {
        if (isFixture(id).orElse(false)) {
            faults.add(
                    id,
                    Shown.value(id) + " is a fixture, not a session",
                    "Name a session family here; fixtures stand in the scenario's list of fixtures.");
        } else {
            family(id, "family", role -> role != Role.FIXTURE, faults);
        }
    }

    /** A family of fixtures. */
    void fixtureFamily(Node id, Faults faults) {
        if (isFixture(id).orElse(true)) {
            family(id, "fixture family", role -> role == Role.FIXTURE, faults);
        } else {
            faults.add(
                    id,
                    Shown.value(id) + " is a session, not a fixture",
                    Shown.listed(families(role -> role == Role.FIXTURE)));
        }
    }

    private Optional<Boolean> isFixture(Node id) {
        return find(id).map(family -> family.role() == Role.FIXTURE);
    }

    private void family(Node id, String kind, Predicate<Role> roles, Faults faults) {
        if (find(id).isEmpty() && id.id().isPresent()) {
            check(id, families(roles), kind, faults);
        }
    }

    private List<String> families(Predicate<Role> roles) {
        Stream<String> sound = catalogue.families().stream()
                .filter(family -> roles.test(family.role()))
                .map(Family::id);
        return Stream.concat(sound, misfits.stream()).distinct().toList();
    }

    /** A variant of a family. */
    void variant(Node id, Node family, Faults faults) {
        Optional<Family> known = id.id().isPresent() ? find(family) : Optional.empty();
        known.ifPresent(
                of -> check(id, of.variants().stream().map(Variant::id).toList(), "variant of " + of.id(), faults));
    }

    /** Whether both are known. */
    boolean knows(Node group, Node family) {
        return groups.contains(group.written()) && find(family).isPresent();
    }

    private Optional<Family> find(Node id) {
        return id.id().flatMap(catalogue::find);
    }

    /** An id that must be among those known; one of the wrong form has been reported already. */
    static void check(Node id, Collection<String> known, String kind, Faults faults) {
        Optional<String> asked = id.id().filter(name -> !known.contains(name));
        if (asked.isPresent() && !faults.full()) {
            faults.add(id, "no " + kind + " is called " + Shown.quoted(asked.get()), Shown.meant(asked.get(), known));
        }
    }
}
