package weekwright.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;

/** Sessions, or what stands for them, by their group and their week. */
final class ByGroupAndWeek<T> {
    private final Problem problem;
    private final List<List<T>> lists = new ArrayList<>();

    /**
     * Sorts some into lists, each in the order given.
     *
     * @param session whose group and week count
     */
    ByGroupAndWeek(Problem problem, List<T> all, Function<T, Session> session) {
        this.problem = problem;
        for (int i = 0; i < problem.groups.size() * problem.calendar.weeks(); i++) {
            lists.add(new ArrayList<>());
        }
        for (T one : all) {
            of(session.apply(one).group.index, session.apply(one).week).add(one);
        }
    }

    /** Those of a group in a week. */
    List<T> of(int group, int week) {
        return lists.get(group * problem.calendar.weeks() + week);
    }
}
