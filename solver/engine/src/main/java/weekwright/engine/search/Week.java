package weekwright.engine.search;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.cloner.SolutionCloner;
import ai.timefold.solver.core.api.score.buildin.simplelong.SimpleLongScore;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A plan as Timefold sees it. */
@PlanningSolution(solutionCloner = Week.Cloner.class)
public class Week {
    @PlanningEntityCollectionProperty
    private List<Seat> seats = new ArrayList<>();

    @PlanningScore
    private @Nullable SimpleLongScore score;

    private @Nullable Walk walk;

    /** For Timefold. */
    public Week() {}

    Week(List<Seat> seats, Walk walk) {
        this.seats = seats;
        this.walk = walk;
    }

    /** The sessions. */
    public List<Seat> getSeats() {
        return seats;
    }

    /** The weighted sum, below zero for what is broken. */
    public @Nullable SimpleLongScore getScore() {
        return score;
    }

    /** For Timefold. */
    public void setScore(@Nullable SimpleLongScore score) {
        this.score = score;
    }

    Walk walk() {
        return java.util.Objects.requireNonNull(walk);
    }

    /** Copies the seats and nothing else. */
    public static class Cloner implements SolutionCloner<Week> {
        @Override
        public Week cloneSolution(Week original) {
            List<Seat> copies = new ArrayList<>(original.seats.size());
            for (Seat seat : original.seats) {
                copies.add(new Seat(seat.session(), seat.getOption()));
            }
            Week copy = new Week(copies, original.walk());
            copy.score = original.score;
            return copy;
        }
    }
}
