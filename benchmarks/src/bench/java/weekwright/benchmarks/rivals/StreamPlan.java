package weekwright.benchmarks.rivals;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactCollectionProperty;
import ai.timefold.solver.core.api.score.buildin.bendablelong.BendableLongScore;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/** A plan as Timefold sees it with constraint streams. */
@PlanningSolution
public class StreamPlan {
    @PlanningEntityCollectionProperty
    private List<StreamSeat> seats = new ArrayList<>();

    private List<CohortDay> days = new ArrayList<>();

    private List<CohortWeek> weeks = new ArrayList<>();

    private List<AimWeek> aims = new ArrayList<>();

    private List<Booked> booked = new ArrayList<>();

    @PlanningScore(bendableHardLevelsSize = 1, bendableSoftLevelsSize = 3)
    private @Nullable BendableLongScore score;

    /** For Timefold. */
    public StreamPlan() {}

    /** A plan with nothing placed. */
    StreamPlan(Problem problem) {
        AloneRules alone = new AloneRules(problem);
        Common common = new Common(problem);
        for (Session session : problem.sessions) {
            seats.add(new StreamSeat(session, alone.of(session), common));
        }
        days = CohortDay.all(problem);
        weeks = CohortWeek.all(problem);
        aims = AimWeek.all(problem);
        booked = Booked.all(problem);
    }

    /** The sessions. */
    public List<StreamSeat> getSeats() {
        return seats;
    }

    /** Days of cohorts. */
    @ProblemFactCollectionProperty
    public List<CohortDay> getDays() {
        return days;
    }

    /** Weeks of cohorts. */
    @ProblemFactCollectionProperty
    public List<CohortWeek> getWeeks() {
        return weeks;
    }

    /** Aims by week. */
    @ProblemFactCollectionProperty
    public List<AimWeek> getAims() {
        return aims;
    }

    /** Commitments in facilities. */
    @ProblemFactCollectionProperty
    public List<Booked> getBooked() {
        return booked;
    }

    /** Must, then key, main and want; all in tenths, below zero for what is broken. */
    public @Nullable BendableLongScore getScore() {
        return score;
    }

    /** For Timefold. */
    public void setScore(@Nullable BendableLongScore score) {
        this.score = score;
    }

    /** Where each session lies. */
    @Nullable
    Stimulus[] at() {
        @Nullable Stimulus[] at = new @Nullable Stimulus[seats.size()];
        seats.forEach(seat -> at[seat.getId()] = seat.getOption());
        return at;
    }
}
