package weekwright.desk.app;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** The last piece of work of each folder: what is on is never begun twice, and what has ended is known until it is put away. */
final class Latest<P extends OneByOne.Piece> {
    private final OneByOne turns;
    private final Map<Workplace, P> pieces = new ConcurrentHashMap<>();

    Latest(OneByOne turns) {
        this.turns = turns;
    }

    /** The piece of a folder: the one that is on, or a new one, which waits for its turn from now on. */
    synchronized P ask(Workplace place, Supplier<P> piece) {
        P known = pieces.get(place);
        if (known != null && known.isOn()) {
            return known;
        }
        P next = piece.get();
        pieces.put(place, next);
        turns.add(next);
        return next;
    }

    /** The last one of a folder. */
    Optional<P> of(Workplace place) {
        return Optional.ofNullable(pieces.get(place));
    }

    /** Forgets the last one of a folder, once it has ended. */
    synchronized void putAway(Workplace place) {
        pieces.computeIfPresent(place, (key, piece) -> piece.isOn() ? piece : null);
    }

    /** How many pieces of work come before one that waits. */
    int before(P piece) {
        return turns.before(piece);
    }

    /** What is said where a piece of work has failed by our fault. */
    static String failed(RuntimeException fault) {
        return "A fault of the program (" + fault.getClass().getSimpleName() + "); the plan stays as it was.";
    }
}
