package weekwright.engine.search;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/** One walk through plans: the judge that goes with it, the best plan seen, and when to stop. */
final class Walk {
    final Problem problem;
    final Judge judge;
    final Pace pace;
    private final Scale scale;
    private final List<Seat> touched = new ArrayList<>();
    private final List<Seat> tried = new ArrayList<>();
    private final List<@Nullable Stimulus> triedFrom = new ArrayList<>();
    private @Nullable Object owner;
    private final int mustFactor;
    private Runnable stop = () -> {};

    Walk(Problem problem, @Nullable Stimulus[] start, Pace pace, int mustFactor) {
        this.problem = problem;
        this.mustFactor = mustFactor;
        this.pace = pace;
        judge = Judge.of(problem, start);
        scale = new Scale(problem);
    }

    /**
     * This walk for the first calculator that asks, and one of its own for any other: in its asserting modes Timefold checks
     * one calculator against a fresh one.
     */
    Walk claimedBy(Object calculator) {
        if (owner == null) {
            owner = calculator;
        }
        return owner == calculator ? this : new Walk(problem, judge.placements(), pace.deaf(judge), mustFactor);
    }

    void onStop(Runnable terminate) {
        stop = terminate;
    }

    /** Notes that a seat may have changed. */
    void touch(Seat seat) {
        touched.add(seat);
    }

    /** Brings the judge to where all seats are. */
    void begin(List<Seat> seats) {
        touched.clear();
        tried.clear();
        triedFrom.clear();
        for (Seat seat : seats) {
            judge.move(seat.session(), seat.getOption());
        }
        judge.settle();
        judge.keep();
    }

    /**
     * The weighted sum of the state that the seats are in. A rejected move is taken back from the judge's journal, which
     * is far cheaper than working it out again.
     */
    long weigh() {
        boolean moved = !touched.isEmpty();
        if (!tried.isEmpty()) {
            if (allBack()) {
                judge.revert();
            } else {
                judge.keep();
            }
            tried.clear();
            triedFrom.clear();
        }
        for (Seat seat : touched) {
            Session session = seat.session();
            Stimulus now = judge.at(session);
            if (now != seat.getOption()) {
                tried.add(seat);
                triedFrom.add(now);
                judge.move(session, seat.getOption());
            }
        }
        touched.clear();
        judge.settle();
        if (moved && pace.tried(judge)) {
            stop.run();
        }
        return scale.slope(judge, mustFactor);
    }

    private boolean allBack() {
        for (int i = 0; i < tried.size(); i++) {
            if (tried.get(i).getOption() != triedFrom.get(i)) {
                return false;
            }
        }
        return true;
    }
}
