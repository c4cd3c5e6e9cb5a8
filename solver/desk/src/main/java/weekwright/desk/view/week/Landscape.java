package weekwright.desk.view.week;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Weeks as a landscape: days are columns, groups, places or athletes are lanes. Above each lane's ground runs the skyline
 * of what its days ask; below it lie the sessions on the axis of time.
 *
 * @param near whether sessions are shown as cards; far away they are marks
 */
public record Landscape(List<Week> weeks, boolean near) {
    public Landscape {
        weeks = List.copyOf(weeks);
    }

    /** The axis of time. */
    public record Axis(int rows, List<Hour> hours) {
        public Axis {
            hours = List.copyOf(hours);
        }
    }

    /** A whole hour, with the row where it begins. */
    public record Hour(int row, String text) {}

    /** A week with its days and lanes. */
    public record Week(int number, String heading, List<Head> days, List<Lane> lanes) {
        public Week {
            days = List.copyOf(days);
            lanes = List.copyOf(lanes);
        }
    }

    /** The head of a column, e.g. {@code Tue}, {@code 9 Feb}. */
    public record Head(String date, String weekday, String day) {}

    /**
     * A lane.
     *
     * @param note what else to know of it, or null
     * @param axis the hours that are shown, in rows of five minutes
     */
    public record Lane(String id, String label, @Nullable String note, Axis axis, List<Day> days) {
        public Lane {
            days = List.copyOf(days);
        }
    }

    /**
     * A lane's day.
     *
     * @param name the day in words, with all that the skyline says of it
     * @param matchDay distance from a match such as {@code MD−2}, or an empty text
     * @param sky the piece of the skyline over it
     * @param shades time that cannot be had
     * @param cards what lies on it, in order of time
     */
    public record Day(
            String date, String name, String weekday, String matchDay, Sky sky, List<Shade> shades, List<Card> cards) {
        public Day {
            shades = List.copyOf(shades);
            cards = List.copyOf(cards);
        }
    }

    /**
     * A piece of the skyline, drawn in a field of 120 by 70; the ground is below.
     *
     * @param look how it is filled: free, low, middle, high, or use where it shows how long a place is in use
     * @param path outline of the hill as SVG path data
     * @param top height of its top from above, 0 to 70
     * @param word the class of the day in a word
     * @param points points of demand, or an empty text
     * @param amount how much it is besides, in a coach's unit
     */
    public record Sky(String look, String path, int top, String word, String points, String amount) {}

    /** Time that cannot be had: closed, away or travel, and why. */
    public record Shade(
            String kind, int row, int rows, @Nullable String why) {}

    /** What a card is. */
    public enum Kind {
        FIXTURE,
        FIXED,
        SESSION;

        /** Its name in style sheets. */
        public String look() {
            return switch (this) {
                case FIXTURE -> "fixture";
                case FIXED -> "fixed";
                case SESSION -> "session";
            };
        }
    }

    /**
     * Something on a day.
     *
     * @param mark id of its element in the page
     * @param id its id in the plan or the scenario
     * @param demand how much a session asks: low, middle or high; free where it asks nothing
     * @param track which of the tracks side by side it lies in, from 1
     * @param tracks how many tracks there are, at most 4
     * @param place label of its place, or null
     * @param notes what else to know
     * @param pinned what is held of it in words, or null
     * @param lit whether it has part in something that is broken that must hold
     */
    public record Card(
            String mark,
            String id,
            Kind kind,
            String demand,
            int row,
            int rows,
            int track,
            int tracks,
            String time,
            String end,
            String label,
            @Nullable String group,
            @Nullable String place,
            List<String> notes,
            @Nullable String pinned,
            boolean lit) {
        public Card {
            notes = List.copyOf(notes);
        }
    }
}
