package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.problem.Problem;
import weekwright.model.scenario.Moment;

/** Times of a day at which something can start, in words. */
final class StartTimes {
    private static final int MOST_RUNS = 3;

    private final Problem problem;

    StartTimes(Problem problem) {
        this.problem = problem;
    }

    /** E.g. {@code at 09:00}, {@code 09:00 to 12:15}, {@code 09:00 to 12:15 or at 16:00}. */
    String said(List<Integer> starts) {
        List<String> runs = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= starts.size(); i++) {
            boolean goesOn = i < starts.size() && starts.get(i) - starts.get(i - 1) == problem.scenario.gridMinutes();
            if (!goesOn) {
                runs.add(run(starts.get(first), starts.get(i - 1)));
                first = i;
            }
        }
        return runs.size() > MOST_RUNS
                ? run(starts.get(0), starts.get(starts.size() - 1)) + ", not at every time between"
                : Names.choice(runs);
    }

    private String run(int first, int last) {
        return first == last ? "at " + time(first) : time(first) + " to " + time(last);
    }

    private String time(int start) {
        Moment moment = problem.calendar.moment(start);
        return moment.local().toLocalTime().toString();
    }
}
