package weekwright.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import weekwright.engine.problem.FacilityInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.StaffInfo;
import weekwright.engine.problem.Stimulus;

/**
 * Cuts a problem into parts that have nothing to do with each other: no people, no facility with limited room and nobody
 * to lead in common. What is best for each is best for all, and they can be searched side by side.
 */
final class Parts {
    private final Problem problem;
    private final int[] joined;

    private Parts(Problem problem) {
        this.problem = problem;
        joined = new int[problem.groups.size()];
        for (int group = 0; group < joined.length; group++) {
            joined[group] = group;
        }
    }

    /** The sessions that can move, by part, in the order of the documents. */
    static List<List<Session>> of(Problem problem, List<Session> free) {
        Parts parts = new Parts(problem);
        parts.joinPeople();
        problem.facilities.stream().filter(FacilityInfo::limited).forEach(parts::joinFacility);
        problem.staff.forEach(parts::joinStaff);
        Map<Integer, List<Session>> byPart = new TreeMap<>();
        for (Session session : free) {
            byPart.computeIfAbsent(parts.root(session.group.index), part -> new ArrayList<>())
                    .add(session);
        }
        return List.copyOf(byPart.values());
    }

    /** The sessions that can move, by week and by squads that share people, in order. */
    static List<List<Session>> weeksOfPeople(Problem problem, List<Session> free) {
        Parts parts = new Parts(problem);
        parts.joinPeople();
        int squads = problem.groups.size();
        Map<Integer, List<Session>> byWeek = new TreeMap<>();
        for (Session session : free) {
            int squad = parts.root(session.group.index);
            byWeek.computeIfAbsent(session.week * squads + squad, week -> new ArrayList<>())
                    .add(session);
        }
        return List.copyOf(byWeek.values());
    }

    private void joinPeople() {
        for (int group = 0; group < joined.length; group++) {
            for (int other : problem.related[group]) {
                join(group, other);
            }
        }
    }

    private void joinFacility(FacilityInfo facility) {
        int first = -1;
        for (Session session : problem.sessions) {
            if (uses(session, facility.index)) {
                first = first < 0 ? session.group.index : first;
                join(first, session.group.index);
            }
        }
    }

    private static boolean uses(Session session, int facility) {
        for (Stimulus option : session.options) {
            if (option.facility == facility) {
                return true;
            }
        }
        return false;
    }

    private void joinStaff(StaffInfo member) {
        int first = -1;
        for (Session session : problem.sessions) {
            if (problem.mayLead(member.index, session.index) || session.heldLead == member.index) {
                first = first < 0 ? session.group.index : first;
                join(first, session.group.index);
            }
        }
    }

    private void join(int a, int b) {
        int low = Math.min(root(a), root(b));
        joined[root(a)] = low;
        joined[root(b)] = low;
    }

    private int root(int group) {
        int at = group;
        while (joined[at] != at) {
            at = joined[at];
        }
        return at;
    }
}
