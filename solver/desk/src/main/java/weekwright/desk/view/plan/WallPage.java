package weekwright.desk.view.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A week for the wall: days beside each other, groups below each other. No athlete is named on it, nor why anybody sits out.
 *
 * @param title title of the scenario
 * @param span first and last date in words
 * @param zone zone of all times
 * @param days headings of the days
 * @param lanes the groups
 * @param caution what holds whatever the plan says
 */
public record WallPage(String title, String span, String zone, List<String> days, List<Lane> lanes, String caution) {
    public WallPage {
        days = List.copyOf(days);
        lanes = List.copyOf(lanes);
    }

    /** A group's week. */
    public record Lane(String group, List<Cell> cells) {
        public Lane {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A group's day.
     *
     * @param head distance from a match and class of the day, e.g. {@code MD−2 · low}
     * @param style class of the day, for its ground
     * @param items what lies on it, in order of time
     */
    public record Cell(String head, String style, List<Item> items) {
        public Cell {
            items = List.copyOf(items);
        }
    }

    /**
     * One thing on a day.
     *
     * @param style what it is, for its border
     * @param time start and end
     * @param where its place, or null
     * @param more lift, dose, for whom, who leads; empty where there is nothing
     */
    public record Item(
            String style,
            String time,
            String label,
            @Nullable String where,
            String more) {}
}
