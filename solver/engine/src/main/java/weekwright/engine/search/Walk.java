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
    private final long reach;
    private long limit;
    private boolean whole = true;
    private Runnable stop = () -> {};

    /**
     * A walk from a plan.
     *
     * @param reach by how much a step may at most make the weighted sum worse; what is worse than that is not weighed to the
     *     end
     */
    Walk(Problem problem, @Nullable Stimulus[] start, Pace pace, int mustFactor, long reach) {
        this.problem = problem;
        this.mustFactor = mustFactor;
        this.reach = reach;
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
        return owner == calculator ? this : new Walk(problem, judge.placements(), pace.deaf(judge), mustFactor, reach);
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
        here();
    }

    /**
     * The weighted sum of the state that the seats are in, or something beyond reach where it is that much. A rejected move
     * is taken back from the judge's journal, which is far cheaper than working it out again.
     */
    long weigh() {
        boolean moved = !touched.isEmpty();
        if (!tried.isEmpty()) {
            decide();
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
        long weight = scale.slopeBelow(judge, mustFactor, limit, pace.best);
        whole = weight != Scale.BEYOND;
        if (moved && (whole ? pace.tried(judge) : pace.triedInVain())) {
            stop.run();
        }
        return whole ? weight : limit;
    }

    /** The last move stays, or it is taken back. */
    private void decide() {
        if (allBack()) {
            judge.revert();
        } else if (whole) {
            judge.keep();
            here();
        } else {
            judge.revert();
            touched.addAll(tried);
            limit = Long.MAX_VALUE;
        }
        tried.clear();
        triedFrom.clear();
    }

    private void here() {
        limit = reach == Long.MAX_VALUE ? reach : scale.slope(judge, mustFactor) + reach;
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
