package weekwright.desk.view;

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
