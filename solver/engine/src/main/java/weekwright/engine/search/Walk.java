package weekwright.engine.search;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/** One walk through plans: the judge that goes with it, the best plan seen, and when to stop. */
final class Walk {
    private static final int ASK_EVERY = 512;

    final Problem problem;
    final Judge judge;
    final Incumbent best;
    private final Watch watch;
    private final int options;
    private final List<Seat> touched = new ArrayList<>();
    private final List<Seat> tried = new ArrayList<>();
    private final List<@Nullable Stimulus> triedFrom = new ArrayList<>();
    private @Nullable Object owner;
    private int mustFactor = 1;
    private long moves;
    private long untold;
    private Runnable stop = () -> {};

    Walk(Problem problem, @Nullable Stimulus[] start, Watch watch) {
        this.problem = problem;
        this.watch = watch;
        judge = Judge.of(problem, start);
        best = new Incumbent(judge);
        options = problem.sessions.stream()
                .filter(MoveMaker::movable)
                .mapToInt(session -> session.coarse.length)
                .sum();
    }

    /**
     * This walk for the first calculator that asks, and one of its own for any other: in its asserting modes Timefold checks
     * one calculator against a fresh one.
     */
    Walk claimedBy(Object calculator) {
        if (owner == null) {
            owner = calculator;
        }
        return owner == calculator
                ? this
                : new Walk(problem, new @Nullable Stimulus[problem.sessions.size()], Watch.NONE);
    }

    void onStop(Runnable terminate) {
        stop = terminate;
    }

    void doubleMusts() {
        mustFactor *= 2;
    }

    /** Options of all sessions that may move. */
    int options() {
        return options;
    }

    long moves() {
        return moves;
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
        Cost total = judge.settle();
        count(total);
        return mustFactor * total.mustSlope + total.restSlope;
    }

    private boolean allBack() {
        for (int i = 0; i < tried.size(); i++) {
            if (tried.get(i).getOption() != triedFrom.get(i)) {
                return false;
            }
        }
        return true;
    }

    private void count(Cost total) {
        moves++;
        if (best.offer(judge)) {
            watch.better(total, best.placed(), moves);
        }
        if (++untold == ASK_EVERY) {
            untold = 0;
            if (watch.tried(ASK_EVERY)) {
                stop.run();
            }
        }
    }
}
