package weekwright.engine.explain;

import java.util.List;
import java.util.Map;
import weekwright.model.catalogue.FamilyPatch;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Window;

/** Scenarios in which one thing is otherwise. */
final class Amended {
    private Amended() {}

    static Scenario with(Scenario of, Group group) {
        List<Group> groups = of.groups().stream()
                .map(one -> one.id().equals(group.id()) ? group : one)
                .toList();
        return with(of, groups, of.commitments(), of.facilities(), of.staff(), of.catalogue());
    }

    static Scenario with(Scenario of, Facility facility) {
        List<Facility> facilities = of.facilities().stream()
                .map(one -> one.id().equals(facility.id()) ? facility : one)
                .toList();
        return with(of, of.groups(), of.commitments(), facilities, of.staff(), of.catalogue());
    }

    static Scenario with(Scenario of, StaffMember member) {
        List<StaffMember> staff = of.staff().stream()
                .map(one -> one.id().equals(member.id()) ? member : one)
                .toList();
        return with(of, of.groups(), of.commitments(), of.facilities(), staff, of.catalogue());
    }

    static Scenario without(Scenario of, Commitment commitment) {
        List<Commitment> others = of.commitments().stream()
                .filter(one -> !one.id().equals(commitment.id()))
                .toList();
        return with(of, of.groups(), others, of.facilities(), of.staff(), of.catalogue());
    }

    static Scenario withCatalogue(Scenario of, List<FamilyPatch> catalogue) {
        return with(of, of.groups(), of.commitments(), of.facilities(), of.staff(), catalogue);
    }

    private static Scenario with(
            Scenario of,
            List<Group> groups,
            List<Commitment> commitments,
            List<Facility> facilities,
            List<StaffMember> staff,
            List<FamilyPatch> catalogue) {
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
                commitments,
                facilities,
                of.transfers(),
                staff,
                of.history(),
                catalogue,
                of.rules(),
                of.packs());
    }

    static Group withWindows(Group of, List<Window> windows) {
        return group(of, windows, of.away(), of.aims(), of.rules());
    }

    static Group withAway(Group of, List<Away> away) {
        return group(of, of.windows(), away, of.aims(), of.rules());
    }

    static Group withAims(Group of, List<Aim> aims) {
        return group(of, of.windows(), of.away(), aims, of.rules());
    }

    static Group withRules(Group of, Map<String, RuleSetting> rules) {
        return group(of, of.windows(), of.away(), of.aims(), rules);
    }

    private static Group group(
            Group of, List<Window> windows, List<Away> away, List<Aim> aims, Map<String, RuleSetting> rules) {
        return new Group(
                of.id(),
                of.label(),
                of.kind(),
                of.phase(),
                of.level(),
                of.headcount(),
                of.quorum(),
                windows,
                away,
                of.highDays(),
                aims,
                rules,
                of.packs());
    }

    static Facility with(Facility of, List<Window> open, List<Away> closed) {
        return new Facility(of.id(), of.label(), of.offers(), of.straightMetres(), of.room(), open, closed);
    }

    static StaffMember with(StaffMember of, List<Window> windows) {
        return new StaffMember(of.id(), of.name(), of.leads(), of.atOnce(), windows, of.away());
    }
}
