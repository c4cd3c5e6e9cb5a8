package weekwright.engine.search;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Random;

/** The stream of moves that a walk tries: mostly single changes, some swaps, some that know of days. */
public class SlotMoves implements MoveIteratorFactory<Week, SlotMove> {
    @Override
    public long getSize(ScoreDirector<Week> director) {
        return new MoveMaker(director.getWorkingSolution(), new Random(0)).size();
    }

    @Override
    public Iterator<SlotMove> createOriginalMoveIterator(ScoreDirector<Week> director) {
        throw new UnsupportedOperationException("moves are drawn by lot");
    }

    @Override
    public Iterator<SlotMove> createRandomMoveIterator(ScoreDirector<Week> director, Random random) {
        MoveMaker maker = new MoveMaker(director.getWorkingSolution(), random);
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return maker.size() > 0;
            }

            @Override
            public SlotMove next() {
                if (!hasNext()) {
                    throw new NoSuchElementException();
                }
                return maker.next();
            }
        };
    }
}
