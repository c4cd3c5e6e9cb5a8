package weekwright.desk.view.week;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.plan.PlanPage.Line;
import weekwright.desk.view.search.CouldGo;
import weekwright.desk.view.search.SearchStrip;

/**
 * The coach's desk: a plan as a landscape, and how it stands.
 *
 * @param base address of the folder, ended by no stroke
 * @param query query of the address that shows the same part again
 * @param revision the revision that is shown
 * @param saved what the revision is, in words
 * @param planned whether there is a plan yet
 * @param panel how the plan stands; null while the first is being looked for
 * @param news what the coach should be told once
 */
public record WeekPage(
        String base,
        String query,
        String title,
        String span,
        String zone,
        int revision,
        String saved,
        boolean planned,
        List<Choice> weeks,
        List<Choice> lanes,
        Landscape landscape,
        @Nullable Panel panel,
        CouldGo couldGo,
        SearchStrip search,
        List<String> news) {
    public WeekPage {
        weeks = List.copyOf(weeks);
        lanes = List.copyOf(lanes);
        news = List.copyOf(news);
    }

    /** One of several ways to look at a plan. */
    public record Choice(String label, String query, boolean chosen) {}

    /**
     * How a plan stands.
     *
     * @param helpSought whether it was looked for what would help
     * @param breaches what is broken, dearest level first
     * @param leftOut what is wanted and not placed
     * @param told facts that cost nothing
     * @param made how the plan was found, or null
     */
    public record Panel(
            String verdict,
            List<Totals> totals,
            boolean helpSought,
            List<Level> breaches,
            List<Missing> leftOut,
            List<Line> told,
            List<Softened> softened,
            List<String> kept,
            @Nullable String made,
            String caution) {
        public Panel {
            totals = List.copyOf(totals);
            breaches = List.copyOf(breaches);
            leftOut = List.copyOf(leftOut);
            told = List.copyOf(told);
            softened = List.copyOf(softened);
            kept = List.copyOf(kept);
        }
    }

    /**
     * A rule that is changed here.
     *
     * @param label its title, and for whom where it is not for all
     * @param query what follows the address of the page of rules to get to it
     */
    public record Softened(String label, String how, String query) {}

    /**
     * A session that is wanted and not placed.
     *
     * @param line what it is and what stands in the way
     * @param session its id
     * @param best where it would cost least, or null where all that could be breaks what must hold
     */
    public record Missing(
            Line line, String session, @Nullable Best best) {}

    /**
     * A start for a session.
     *
     * @param start date and time
     * @param facility id of its place, or an empty text
     * @param label where and when, and what it changes, in words
     */
    public record Best(String start, String facility, String dose, String label) {}

    /** A total with the word of its level. */
    public record Totals(String level, String amount, boolean clean) {}

    /** What is broken at a level. */
    public record Level(String id, String heading, List<Line> lines) {
        public Level {
            lines = List.copyOf(lines);
        }
    }
}
