package weekwright.engine.rules;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/** What changed since the last point to which a judge may go back. */
final class Journal {
    private record Moved(Session session, @Nullable Stimulus from) {}

    private record DayBefore(int cohort, int day, DayState state) {}

    private record AbsenceBefore(
            int cohort, int session, @Nullable Absence absence) {}

    private record StaffBefore(int day, StaffDay staff) {}

    private record ScopeBefore(int scope, Cost cost) {}

    private final List<Moved> moves = new ArrayList<>();
    private final List<DayBefore> days = new ArrayList<>();
    private final List<AbsenceBefore> absences = new ArrayList<>();
    private final List<StaffBefore> staff = new ArrayList<>();
    private final List<ScopeBefore> scopes = new ArrayList<>();
    private final ArrayDeque<Cost> spareCosts = new ArrayDeque<>();
    private final Cost totalBefore = new Cost();
    private final Cost ofScopesBefore = new Cost();
    private int[] looked = new int[64];
    private int lookedCount;

    void moved(Session session, @Nullable Stimulus from) {
        moves.add(new Moved(session, from));
    }

    void changed(int cohort, int day, DayState before) {
        days.add(new DayBefore(cohort, day, before));
    }

    void changed(int cohort, int session, @Nullable Absence before) {
        absences.add(new AbsenceBefore(cohort, session, before));
    }

    /** Sessions that were moved, or to which others come; one may come twice. */
    List<Session> moved() {
        return moves.stream().map(Moved::session).toList();
    }

    void changed(int day, StaffDay before) {
        staff.add(new StaffBefore(day, before));
    }

    void changed(int scope, Cost before) {
        Cost copy = spareCosts.isEmpty() ? new Cost() : spareCosts.pop();
        copy.set(before);
        scopes.add(new ScopeBefore(scope, copy));
    }

    /** Notes that a scope was looked at again, whether its cost has changed or not. */
    void looked(int scope) {
        if (lookedCount == looked.length) {
            looked = Arrays.copyOf(looked, 2 * lookedCount);
        }
        looked[lookedCount++] = scope;
    }

    /** Scopes looked at again, in order; one may come twice. */
    int[] looked() {
        return Arrays.copyOf(looked, lookedCount);
    }

    void clear(Cost total, Cost ofScopes) {
        lookedCount = 0;
        moves.clear();
        absences.clear();
        days.clear();
        staff.clear();
        scopes.forEach(scope -> spareCosts.push(scope.cost()));
        scopes.clear();
        totalBefore.set(total);
        ofScopesBefore.set(ofScopes);
    }

    void takeBack(Timelines timelines, Cost[] kept, Cost total, Cost ofScopes) {
        for (int i = moves.size() - 1; i >= 0; i--) {
            timelines.put(moves.get(i).session().index, moves.get(i).from());
        }
        for (int i = absences.size() - 1; i >= 0; i--) {
            AbsenceBefore before = absences.get(i);
            timelines.attendance.restore(before.cohort(), before.session(), before.absence());
        }
        timelines.attendance.settled();
        for (int i = days.size() - 1; i >= 0; i--) {
            timelines.setDay(
                    days.get(i).cohort(), days.get(i).day(), days.get(i).state());
        }
        for (int i = staff.size() - 1; i >= 0; i--) {
            timelines.setStaff(staff.get(i).day(), staff.get(i).staff());
        }
        for (int i = scopes.size() - 1; i >= 0; i--) {
            kept[scopes.get(i).scope()].set(scopes.get(i).cost());
        }
        total.set(totalBefore);
        ofScopes.set(ofScopesBefore);
        clear(total, ofScopes);
    }
}
