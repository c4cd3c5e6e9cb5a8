package weekwright.engine.search;

import ai.timefold.solver.core.api.score.buildin.simplelong.SimpleLongScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import org.jspecify.annotations.Nullable;

/** Lets the judge score what Timefold moves. */
public class WeekScore implements IncrementalScoreCalculator<Week, SimpleLongScore> {
    private @Nullable Walk walk;

    @Override
    public void resetWorkingSolution(Week week) {
        walk = week.walk().claimedBy(this);
        walk.begin(week.getSeats());
    }

    @Override
    public void beforeVariableChanged(Object seat, String variable) {}

    @Override
    public void afterVariableChanged(Object seat, String variable) {
        walk().touch((Seat) seat);
    }

    @Override
    public SimpleLongScore calculateScore() {
        return SimpleLongScore.of(-walk().weigh());
    }

    @Override
    public void beforeEntityAdded(Object seat) {}

    @Override
    public void afterEntityAdded(Object seat) {}

    @Override
    public void beforeEntityRemoved(Object seat) {}

    @Override
    public void afterEntityRemoved(Object seat) {}

    private Walk walk() {
        return java.util.Objects.requireNonNull(walk);
    }
}
