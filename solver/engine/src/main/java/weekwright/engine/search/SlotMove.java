package weekwright.engine.search;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Stimulus;

/** Puts one or several sessions somewhere else at once. */
final class SlotMove extends AbstractMove<Week> {
    private static final String OPTION = "option";

    private final Seat[] seats;
    private final @Nullable Stimulus[] to;

    SlotMove(Seat[] seats, @Nullable Stimulus[] to) {
        this.seats = seats;
        this.to = to;
    }

    static SlotMove of(Seat seat, @Nullable Stimulus to) {
        return new SlotMove(new Seat[] {seat}, new @Nullable Stimulus[] {to});
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<Week> director) {
        for (int i = 0; i < seats.length; i++) {
            if (seats[i].getOption() != to[i]) {
                return true;
            }
        }
        return false;
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<Week> director) {
        for (int i = 0; i < seats.length; i++) {
            if (seats[i].getOption() != to[i]) {
                director.beforeVariableChanged(seats[i], OPTION);
                seats[i].setOption(to[i]);
                director.afterVariableChanged(seats[i], OPTION);
            }
        }
    }

    @Override
    public Collection<?> getPlanningEntities() {
        return List.of(seats);
    }

    @Override
    public Collection<?> getPlanningValues() {
        return Arrays.asList(to);
    }
}
