package weekwright.engine.rules;

import java.util.Arrays;
import weekwright.engine.problem.Stimulus;
import weekwright.model.rulebook.RuleSettings;

/**
 * What makes a visit, for one group, and how a day's things fall into visits.
 *
 * @param joinedMinutes things with at most so many minutes between them are one visit
 * @param mostSessions most sessions in one visit, of those that count
 */
record Visiting(int joinedMinutes, int mostSessions) {
    static Visiting of(RuleSettings settings) {
        return new Visiting((int) settings.number("visits-per-day", "joinedMinutes"), (int)
                settings.number("visit-size", "sessions"));
    }

    /** Counts the visits of a day, and the minutes waited between them. */
    void count(Stimulus[] things, int count, DayState into) {
        Walk walk = new Walk(into);
        Stimulus[] sorted = inOrder(things, count) ? things : withTravel(things, count);
        for (int i = 0; i < count; i++) {
            if (sorted[i].family != null) {
                walk.add(sorted[i]);
            }
        }
        walk.leave();
    }

    private static boolean inOrder(Stimulus[] things, int count) {
        for (int i = 1; i < count; i++) {
            if (things[i].occupiedStart < things[i - 1].occupiedStart) {
                return false;
            }
        }
        return true;
    }

    /** A day's things in order of their time with travel, which is nearly the order of their starts. */
    private static Stimulus[] withTravel(Stimulus[] things, int count) {
        Stimulus[] sorted = Arrays.copyOf(things, count);
        for (int i = 1; i < count; i++) {
            Stimulus thing = sorted[i];
            int place = i;
            while (place > 0 && thing.occupiedStart < sorted[place - 1].occupiedStart) {
                sorted[place] = sorted[place - 1];
                place--;
            }
            sorted[place] = thing;
        }
        return sorted;
    }

    /** The visit that is going on, and what the one before it was. */
    private final class Walk {
        private final DayState day;
        private boolean going;
        private int until;
        private int sessions;
        private boolean placed;
        private boolean placedCounts;
        private boolean fixture;
        private int waited;
        private boolean placedBefore;
        private boolean fixtureBefore;

        Walk(DayState day) {
            this.day = day;
        }

        void add(Stimulus thing) {
            if (!going || thing.occupiedStart - until > joinedMinutes) {
                arrive(thing.occupiedStart);
            }
            until = Math.max(until, thing.occupiedEnd);
            boolean counts = java.util.Objects.requireNonNull(thing.family).counted;
            sessions += counts ? 1 : 0;
            placed |= thing.placed();
            placedCounts |= counts && thing.placed();
            fixture |= thing.isFixture();
        }

        private void arrive(int at) {
            leave();
            waited = going ? at - until : 0;
            placedBefore = placed;
            fixtureBefore = fixture;
            going = true;
            until = at;
            sessions = 0;
            placed = false;
            placedCounts = false;
            fixture = false;
            day.visits++;
        }

        void leave() {
            if (sessions > mostSessions && placedCounts) {
                day.fullVisits++;
                day.mostInVisit = Math.max(day.mostInVisit, sessions);
            }
            if (!fixture && !fixtureBefore && (placed || placedBefore)) {
                day.waitMinutes += waited;
            }
        }
    }
}
