package weekwright.engine.explain;

import java.util.List;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Window;

/** Scenarios in which one thing is otherwise. */
final class Amended {
    private Amended() {}

    static Scenario with(Scenario of, Group group) {
        return with(
                of,
                of.groups().stream()
                        .map(one -> one.id().equals(group.id()) ? group : one)
                        .toList(),
                of.facilities(),
                of.staff());
    }

    static Scenario with(Scenario of, Facility facility) {
        return with(
                of,
                of.groups(),
                of.facilities().stream()
                        .map(one -> one.id().equals(facility.id()) ? facility : one)
                        .toList(),
                of.staff());
    }

    static Scenario with(Scenario of, StaffMember member) {
        return with(
                of,
                of.groups(),
                of.facilities(),
                of.staff().stream()
                        .map(one -> one.id().equals(member.id()) ? member : one)
                        .toList());
    }

    private static Scenario with(Scenario of, List<Group> groups, List<Facility> facilities, List<StaffMember> staff) {
        return new Scenario(
                of.weekwright(),
                of.id(),
                of.title(),
                of.zone(),
                of.firstDay(),
                of.days(),
                of.gridMinutes(),
                groups,
                of.athletes(),
                of.fixtures(),
                of.commitments(),
                facilities,
                of.transfers(),
                staff,
                of.history(),
                of.catalogue(),
                of.rules(),
                of.packs());
    }

    static Group with(Group of, List<Window> windows, List<Aim> aims) {
        return new Group(
                of.id(),
                of.label(),
                of.kind(),
                of.phase(),
                of.level(),
                of.headcount(),
                of.quorum(),
                windows,
                of.away(),
                of.highDays(),
                aims,
                of.rules(),
                of.packs());
    }

    static Facility with(Facility of, List<Window> open) {
        return new Facility(of.id(), of.label(), of.offers(), of.straightMetres(), of.room(), open, of.closed());
    }

    static StaffMember with(StaffMember of, List<Window> windows) {
        return new StaffMember(of.id(), of.name(), of.leads(), of.atOnce(), windows, of.away());
    }
}
