package weekwright.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/**
 * Draws moves by lot: about 60 in a hundred put one session anywhere, 15 swap two sessions, and 25 know of days: a session
 * to another day at the same time, to another time of its day, to another place or dose, two days of a group swapped, two
 * days of all groups that share people. Where one session alone is put somewhere, those in its way give way.
 */
final class MoveMaker {
    private static final int CHANGE = 60;
    private static final int SWAP = 75;
    private static final int SAME_TIME = 83;
    private static final int SAME_DAY = 89;
    private static final int SAME_START = 94;
    private static final int GROUP_DAYS = 98;
    /** One change in so many leaves a session out. */
    private static final int LEAVE_OUT = 12;
    /** One change in so many puts a session that has moved back where people know it. */
    private static final int GO_BACK = 4;

    private static final int TRIES = 8;

    private final Problem problem;
    private final RandomGenerator random;
    private final List<Seat> movable = new ArrayList<>();
    private final ByGroupAndWeek<Seat> byGroupAndWeek;
    private final Places[] places;
    private final GivingWay way;

    MoveMaker(Problem problem, Judge judge, List<Seat> seats, RandomGenerator random) {
        this.problem = problem;
        this.random = random;
        places = new Places[problem.sessions.size()];
        for (Seat seat : seats) {
            Session session = seat.session();
            if (movable(session)) {
                places[session.index] = new Places(judge, problem, session);
                movable.add(seat);
            }
        }
        byGroupAndWeek = new ByGroupAndWeek<>(problem, movable, Seat::session);
        way = new GivingWay(problem, byGroupAndWeek, places);
    }

    /** Whether there is anything to move: a session that cannot lie anywhere, or only where it is held, stays. */
    static boolean movable(Session session) {
        return session.options.length > 0 && !(session.stays && session.coarse.length == 1);
    }

    SlotMove next() {
        for (int i = 0; i < TRIES; i++) {
            SlotMove move = draw(random.nextInt(100));
            if (move != null) {
                return move;
            }
        }
        return change(any());
    }

    private @Nullable SlotMove draw(int lot) {
        if (lot < CHANGE) {
            return change(any());
        }
        if (lot < SWAP) {
            return swap(any(), any());
        }
        Seat seat = any();
        if (lot < SAME_START) {
            return alike(seat, lot);
        }
        Session session = seat.session();
        return swapDays(session.week, lot < GROUP_DAYS ? alone(session) : related(session));
    }

    private SlotMove change(Seat seat) {
        Stimulus before = places(seat).before();
        if (before != null && before != seat.getOption() && random.nextInt(GO_BACK) == 0) {
            return way.putting(seat, before);
        }
        boolean leaveOut = !seat.session().stays && seat.getOption() != null && random.nextInt(LEAVE_OUT) == 0;
        return leaveOut
                ? SlotMove.of(seat, null)
                : way.putting(seat, places(seat).any(random));
    }

    private @Nullable SlotMove swap(Seat a, Seat b) {
        Stimulus ofA = a.getOption();
        Stimulus ofB = b.getOption();
        if (a == b || (ofA == null && ofB == null)) {
            return null;
        }
        Stimulus forA = ofB == null ? null : taking(a, ofB);
        Stimulus forB = ofA == null ? null : taking(b, ofA);
        boolean lost = (ofB != null && forA == null) || (ofA != null && forB == null);
        boolean kept = (forA == null && a.session().stays) || (forB == null && b.session().stays);
        return lost || kept ? null : new SlotMove(new Seat[] {a, b}, new @Nullable Stimulus[] {forA, forB});
    }

    private @Nullable Stimulus taking(Seat seat, Stimulus place) {
        return places(seat).like(place, place.day, clock(place));
    }

    private @Nullable SlotMove alike(Seat seat, int lot) {
        Stimulus now = seat.getOption();
        if (now == null) {
            return change(seat);
        }
        Stimulus to;
        if (lot < SAME_TIME) {
            int day = 7 * seat.session().week + random.nextInt(7);
            to = places(seat).like(now, day, clock(now));
        } else if (lot < SAME_DAY) {
            to = places(seat).onDay(now.day, random);
        } else {
            to = places(seat).sibling(now, random);
        }
        return to == null ? null : way.putting(seat, to);
    }

    private @Nullable SlotMove swapDays(int week, List<Seat> seats) {
        int first = 7 * week;
        int a = first + random.nextInt(7);
        int b = first + random.nextInt(7);
        if (a == b) {
            return null;
        }
        List<Seat> moved = new ArrayList<>();
        List<Stimulus> to = new ArrayList<>();
        for (Seat seat : seats) {
            Stimulus now = seat.getOption();
            if (now != null && (now.day == a || now.day == b)) {
                Stimulus there = places(seat).like(now, now.day == a ? b : a, clock(now));
                if (there != null) {
                    moved.add(seat);
                    to.add(there);
                }
            }
        }
        return moved.isEmpty() ? null : new SlotMove(moved.toArray(Seat[]::new), to.toArray(Stimulus[]::new));
    }

    private List<Seat> alone(Session session) {
        return byGroupAndWeek.of(session.group.index, session.week);
    }

    private List<Seat> related(Session session) {
        List<Seat> related = new ArrayList<>();
        for (int group : problem.related[session.group.index]) {
            related.addAll(byGroupAndWeek.of(group, session.week));
        }
        return related;
    }

    private int clock(Stimulus at) {
        return problem.calendar.clockMinutes(at.start);
    }

    private Seat any() {
        return movable.get(random.nextInt(movable.size()));
    }

    private Places places(Seat seat) {
        return places[seat.session().index];
    }
}
