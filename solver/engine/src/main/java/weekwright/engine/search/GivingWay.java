package weekwright.engine.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;

/**
 * Puts a session somewhere, and those of the same people that lie in its way give way along the day: what has its middle
 * later goes later, the others earlier, each as far as it must, and what finds no time that day is left out. In a full day
 * hardly any session could be put in or made longer otherwise.
 */
final class GivingWay {
    private final Problem problem;
    private final Places[] places;
    private final ByGroupAndWeek<Seat> seats;

    /**
     * Moves of some seats.
     *
     * @param places by session, of all these seats
     */
    GivingWay(Problem problem, ByGroupAndWeek<Seat> seats, Places[] places) {
        this.problem = problem;
        this.seats = seats;
        this.places = places;
    }

    /** The move that puts a session there. */
    SlotMove putting(Seat seat, Stimulus to) {
        Day day = new Day(seat, to);
        for (int group : problem.related[seat.session().group.index]) {
            seats.of(group, seat.session().week).forEach(day::note);
        }
        return day.move();
    }

    /** A day on which room is made for a session. */
    private final class Day {
        private final Seat seat;
        private final Stimulus to;
        private final List<Seat> before = new ArrayList<>();
        private final List<Seat> after = new ArrayList<>();
        private final List<Seat> moved = new ArrayList<>();
        private final List<@Nullable Stimulus> there = new ArrayList<>();

        Day(Seat seat, Stimulus to) {
            this.seat = seat;
            this.to = to;
            put(seat, to);
        }

        private void put(Seat other, @Nullable Stimulus where) {
            moved.add(other);
            there.add(where);
        }

        /** What is held to its day stays where it is: it could not be left out. */
        void note(Seat other) {
            Stimulus its = other.getOption();
            if (other != seat && its != null && its.day == to.day && !other.session().stays) {
                boolean later = its.start + its.end >= to.start + to.end;
                (later ? after : before).add(other);
            }
        }

        SlotMove move() {
            later();
            earlier();
            return new SlotMove(moved.toArray(Seat[]::new), there.toArray(Stimulus[]::new));
        }

        private void later() {
            after.sort(Comparator.comparingInt(other -> at(other).start));
            int end = to.end;
            for (Seat other : after) {
                if (at(other).start < end) {
                    Stimulus next = places[other.session().index].from(at(other), end);
                    put(other, next);
                    end = next == null ? end : next.end;
                }
            }
        }

        private void earlier() {
            before.sort(Comparator.comparingInt(other -> -at(other).end));
            int start = to.start;
            for (Seat other : before) {
                if (at(other).end > start) {
                    Stimulus next = places[other.session().index].until(at(other), start);
                    put(other, next);
                    start = next == null ? start : next.start;
                }
            }
        }

        private Stimulus at(Seat other) {
            return Objects.requireNonNull(other.getOption());
        }
    }
}
