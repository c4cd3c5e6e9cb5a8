package weekwright.engine.search;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

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
        return changes();
    }

    /** Whether any session would lie elsewhere. */
    boolean changes() {
        for (int i = 0; i < seats.length; i++) {
            if (seats[i].getOption() != to[i]) {
                return true;
            }
        }
        return false;
    }

    /** Moves the sessions in a judge. */
    void in(Judge judge) {
        for (int i = 0; i < seats.length; i++) {
            judge.move(seats[i].session(), to[i]);
        }
    }

    /** Seats the sessions where it puts them. */
    void take() {
        for (int i = 0; i < seats.length; i++) {
            seats[i].setOption(to[i]);
        }
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
