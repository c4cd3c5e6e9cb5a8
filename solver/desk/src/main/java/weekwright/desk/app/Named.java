package weekwright.desk.app;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import weekwright.model.Nearest;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;

/**
 * Things of one kind, of which a coach has named one: by its id, or by what it is called where only one is called so.
 *
 * @param what what they are, in messages
 */
public record Named<T>(String what, List<T> all, Function<T, String> id, Function<T, String> name) {
    /** A group; throws {@link InputFault} when there is none. */
    public static Group group(Scenario scenario, String said) {
        return new Named<>("group", scenario.groups(), Group::id, Group::label).meant(said);
    }

    /** An athlete; throws {@link InputFault} when there is none. */
    public static Athlete athlete(Scenario scenario, String said) {
        return athletes(scenario).meant(said);
    }

    /** All athletes. */
    public static Named<Athlete> athletes(Scenario scenario) {
        return new Named<>("athlete", scenario.athletes(), Athlete::id, Athlete::name);
    }

    /** A place; throws {@link InputFault} when there is none. */
    public static Facility facility(Scenario scenario, String said) {
        return facilities(scenario).meant(said);
    }

    /** All places. */
    public static Named<Facility> facilities(Scenario scenario) {
        return new Named<>("facility", scenario.facilities(), Facility::id, Facility::label);
    }

    /** All who lead. */
    public static Named<StaffMember> staff(Scenario scenario) {
        return new Named<>("member of staff", scenario.staff(), StaffMember::id, StaffMember::name);
    }

    /** A fixture; throws {@link InputFault} when there is none. */
    public static Fixture fixture(Scenario scenario, String said) {
        return new Named<>("fixture", scenario.fixtures(), Fixture::id, Fixture::label).meant(said);
    }

    /** The id of the one that is meant; where that is none of these, what was said. */
    public String idOf(String said) {
        return found(said).map(id).orElse(said);
    }

    private Optional<T> found(String said) {
        return only(one -> id.apply(one).equals(said)).or(() -> only(one -> isCalled(one, said)));
    }

    private T meant(String said) {
        return found(said)
                .orElseThrow(() -> new InputFault(
                        all.stream().anyMatch(one -> isCalled(one, said))
                                ? "more than one " + what + " is called \"" + said + "\": give the id, one of "
                                        + known()
                                : "no " + what + " is called \"" + said + "\": " + hint(said)));
    }

    private Optional<T> only(Predicate<T> meant) {
        List<T> found = all.stream().filter(meant).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private boolean isCalled(T one, String said) {
        return name.apply(one).equalsIgnoreCase(said);
    }

    private String hint(String said) {
        return Nearest.of(said, all.stream().map(id).toList())
                .or(() -> Nearest.of(said, all.stream().map(name).toList()))
                .map(near -> "did you mean " + near + "?")
                .orElseGet(() -> all.isEmpty() ? "there is none" : "known are " + known());
    }

    private String known() {
        return all.stream()
                .map(one -> id.apply(one) + (isCalled(one, id.apply(one)) ? "" : " (" + name.apply(one) + ")"))
                .collect(Collectors.joining(", "));
    }
}
