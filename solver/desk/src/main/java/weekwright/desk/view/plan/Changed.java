package weekwright.desk.view.plan;

import java.util.Locale;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** What a coach has changed, in a few words, for the history. */
public final class Changed {
    private Changed() {}

    /** A session was put elsewhere by hand. */
    public static String moved(Scenario scenario, String session, Moment start) {
        return new Names(scenario).session(session) + ": put on " + Dates.day(start.date()) + " at "
                + Dates.clock(start) + " and held there";
    }

    /** What would help was done, e.g. {@code Done what helps: move … to …; saves 3 points}. */
    public static String mended(String text) {
        return "Done what helps: " + text.substring(0, 1).toLowerCase(Locale.ROOT)
                + text.substring(1).replaceFirst("\\.$", "");
    }

    /** Something was given up, e.g. {@code Tried what could go: unpin …}. */
    public static String given(String step) {
        return "Tried what could go: " + step.substring(0, 1).toLowerCase(Locale.ROOT) + step.substring(1);
    }

    /**
     * Something of a session was pinned or let go.
     *
     * @param text what was done, beginning with the session's id
     */
    public static String pinned(Scenario scenario, String session, String text) {
        String rest = text.startsWith(session) ? text.substring(session.length()) : ": " + text;
        return new Names(scenario).session(session) + rest.replaceFirst("\\.$", "");
    }
}
