package weekwright.engine.explain;

import java.util.List;
import java.util.function.Function;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;

/** Scenarios in which one thing is otherwise. */
final class Amended {
    private Amended() {}

    static Scenario with(Scenario of, Group group) {
        return of.withGroups(replaced(of.groups(), Group::id, group));
    }

    static Scenario with(Scenario of, Facility facility) {
        return of.withFacilities(replaced(of.facilities(), Facility::id, facility));
    }

    static Scenario with(Scenario of, StaffMember member) {
        return of.withStaff(replaced(of.staff(), StaffMember::id, member));
    }

    static Scenario without(Scenario of, Commitment commitment) {
        return of.withCommitments(of.commitments().stream()
                .filter(one -> !one.id().equals(commitment.id()))
                .toList());
    }

    private static <T> List<T> replaced(List<T> all, Function<T, String> id, T by) {
        return all.stream()
                .map(one -> id.apply(one).equals(id.apply(by)) ? by : one)
                .toList();
    }
}
