package weekwright.benchmarks.rivals;

import java.util.List;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/** A commitment in a facility. */
record Booked(Stimulus commitment, int groups) {
    static List<Booked> all(Problem problem) {
        return problem.fixed.stream()
                .filter(fixed -> fixed.kind == Stimulus.Kind.COMMITMENT && fixed.facility >= 0)
                .map(fixed -> new Booked(fixed, problem.groupsIn(fixed)))
                .toList();
    }

    int day() {
        return commitment.day;
    }

    int facility() {
        return commitment.facility;
    }
}
