package weekwright.model.scenario;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import weekwright.model.Ids;
import weekwright.model.catalogue.FamilyPatch;

/**
 * What the coach knows and wants: the one input of a plan.
 *
 * @param weekwright version of the document form, 1
 * @param zone zone of all local times
 * @param firstDay first local date of the plan
 * @param days length of the plan, 1 to 84
 * @param gridMinutes starts lie on multiples of it from midnight: 5, 10, 15, 30 or 60
 * @param history what was done up to 28 days before the first day
 * @param catalogue families changed or added
 * @param rules rules changed, by id
 * @param packs rule packs switched on for all groups
 */
public record Scenario(
        int weekwright,
        String id,
        String title,
        ZoneId zone,
        LocalDate firstDay,
        int days,
        int gridMinutes,
        List<Group> groups,
        List<Athlete> athletes,
        List<Fixture> fixtures,
        List<Commitment> commitments,
        List<Facility> facilities,
        List<Transfer> transfers,
        List<StaffMember> staff,
        List<LogEntry> history,
        List<FamilyPatch> catalogue,
        Map<String, RuleSetting> rules,
        List<String> packs) {
    /** The version of the document form that this program reads and writes. */
    public static final int VERSION = 1;

    /** Days before the first day that history reaches back, and after the last that fixtures reach ahead. */
    public static final int EDGE_DAYS = 28;

    public Scenario {
        title = title == null ? id : title;
        gridMinutes = gridMinutes == 0 ? 15 : gridMinutes;
        groups = Ids.listed(groups);
        athletes = Ids.listed(athletes);
        fixtures = Ids.listed(fixtures);
        commitments = Ids.listed(commitments);
        facilities = Ids.listed(facilities);
        transfers = Ids.listed(transfers);
        staff = Ids.listed(staff);
        history = Ids.listed(history);
        catalogue = Ids.listed(catalogue);
        rules = Ids.mapped(rules);
        packs = Ids.listed(packs);
    }

    /** The last local date of the plan. */
    public LocalDate lastDay() {
        return firstDay.plusDays(days - 1L);
    }

    /** How many plan weeks there are, a short last one included. */
    public int weeks() {
        return (days + 6) / 7;
    }

    /** The same with other groups. */
    public Scenario withGroups(List<Group> groups) {
        return copy(groups, athletes, fixtures, commitments, facilities, staff, history, catalogue, rules);
    }

    /** The same with other athletes. */
    public Scenario withAthletes(List<Athlete> athletes) {
        return copy(groups, athletes, fixtures, commitments, facilities, staff, history, catalogue, rules);
    }

    /** The same with other fixtures. */
    public Scenario withFixtures(List<Fixture> fixtures) {
        return copy(groups, athletes, fixtures, commitments, facilities, staff, history, catalogue, rules);
    }

    /** The same with other commitments. */
    public Scenario withCommitments(List<Commitment> commitments) {
        return copy(groups, athletes, fixtures, commitments, facilities, staff, history, catalogue, rules);
    }

    /** The same with other facilities. */
    public Scenario withFacilities(List<Facility> facilities) {
        return copy(groups, athletes, fixtures, commitments, facilities, staff, history, catalogue, rules);
    }

    /** The same with other staff. */
    public Scenario withStaff(List<StaffMember> staff) {
        return copy(groups, athletes, fixtures, commitments, facilities, staff, history, catalogue, rules);
    }

    /** The same with other history. */
    public Scenario withHistory(List<LogEntry> history) {
        return copy(groups, athletes, fixtures, commitments, facilities, staff, history, catalogue, rules);
    }

    /** The same with other changes to session families. */
    public Scenario withCatalogue(List<FamilyPatch> catalogue) {
        return copy(groups, athletes, fixtures, commitments, facilities, staff, history, catalogue, rules);
    }

    /** The same with other rules changed. */
    public Scenario withRules(Map<String, RuleSetting> rules) {
        return copy(groups, athletes, fixtures, commitments, facilities, staff, history, catalogue, rules);
    }

    private Scenario copy(
            List<Group> groups,
            List<Athlete> athletes,
            List<Fixture> fixtures,
            List<Commitment> commitments,
            List<Facility> facilities,
            List<StaffMember> staff,
            List<LogEntry> history,
            List<FamilyPatch> catalogue,
            Map<String, RuleSetting> rules) {
        return new Scenario(
                weekwright,
                id,
                title,
                zone,
                firstDay,
                days,
                gridMinutes,
                groups,
                athletes,
                fixtures,
                commitments,
                facilities,
                transfers,
                staff,
                history,
                catalogue,
                rules,
                packs);
    }
}
