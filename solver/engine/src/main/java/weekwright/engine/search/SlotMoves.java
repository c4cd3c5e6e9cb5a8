package weekwright.engine.search;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import java.util.Iterator;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** The stream of moves that a walk tries: mostly single changes, some swaps, some that know of days. */
public class SlotMoves implements MoveIteratorFactory<Week, SlotMove> {
    private @Nullable MoveMaker maker;
    private @Nullable Week madeFor;

    @Override
    public long getSize(ScoreDirector<Week> director) {
        return Math.max(1, director.getWorkingSolution().getSeats().size());
    }

    @Override
    public Iterator<SlotMove> createOriginalMoveIterator(ScoreDirector<Week> director) {
        throw new UnsupportedOperationException("moves are drawn by lot");
    }

    @Override
    public Iterator<SlotMove> createRandomMoveIterator(ScoreDirector<Week> director, Random random) {
        MoveMaker drawn = maker(director.getWorkingSolution(), random);
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return true;
            }

            @Override
            public SlotMove next() {
                return drawn.next();
            }
        };
    }

    /** Timefold asks for an iterator at every step; what it draws from stays the same all along. */
    private MoveMaker maker(Week week, Random random) {
        if (maker == null || madeFor != week) {
            maker = new MoveMaker(week.walk().problem, week.walk().judge, week.getSeats(), random);
            madeFor = week;
        }
        return maker;
    }
}
