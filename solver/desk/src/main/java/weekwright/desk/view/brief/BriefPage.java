package weekwright.desk.view.brief;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A week for those who lead the team: what lies when, counted from the matches, why so, and what was given up. It names no
 * athlete.
 *
 * @param title title of the scenario
 * @param sheets one a group
 */
public record BriefPage(String title, List<Sheet> sheets) {
    public BriefPage {
        sheets = List.copyOf(sheets);
    }

    /**
     * A group's week.
     *
     * @param span first and last date in words
     * @param zone zone of all times
     * @param why three sentences
     * @param givenUp what was asked for and has no place, or not the whole of it; empty for nothing
     * @param news what has changed since the plan was given out, or null where nobody knows
     */
    public record Sheet(
            String group,
            String span,
            String zone,
            List<Day> days,
            List<String> why,
            List<String> givenUp,
            @Nullable News news) {
        public Sheet {
            days = List.copyOf(days);
            why = List.copyOf(why);
            givenUp = List.copyOf(givenUp);
        }
    }

    /**
     * A day.
     *
     * @param date e.g. {@code Tue 9 Feb}
     * @param matchDay e.g. {@code MD−4}; empty where no match is near
     * @param dayClass free, low, middle or high
     * @param demand points of demand, 0 to about 10
     */
    public record Day(String date, String matchDay, String dayClass, double demand, List<Item> items) {
        public Day {
            items = List.copyOf(items);
        }
    }

    /**
     * Something on a day.
     *
     * @param start e.g. {@code 09:30}
     * @param place where it is, or empty
     * @param fixture whether it is a match or a meet
     */
    public record Item(String start, String label, String place, boolean fixture) {}

    /**
     * What has changed.
     *
     * @param since when the plan was given out, or null where nobody wrote it down
     * @param lines each change in a few words, in order of time; empty for none
     */
    public record News(@Nullable String since, List<String> lines) {
        public News {
            lines = List.copyOf(lines);
        }

        /** What stands over the changes. */
        public String heading() {
            return since == null ? "Changed since it was given out" : "Changed since " + since;
        }
    }
}
