package weekwright.desk.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Bargain;
import weekwright.desk.app.Bargains;
import weekwright.desk.app.Search;
import weekwright.desk.app.Searches;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.view.search.Bargained;
import weekwright.desk.view.search.Course;
import weekwright.desk.view.search.SearchLine;
import weekwright.desk.view.week.Open;
import weekwright.engine.explain.Traded;

/** Hands what the desk works on over to be shown. */
final class Views {
    private Views() {}

    static Open open(Seen seen) {
        return new Open(seen.scenario(), seen.revision(), seen.planned(), seen::judged, seen::drawn, seen::people);
    }

    /** How a search goes, or null where there is none. */
    static @Nullable Course course(Searches searches, Workplace place, Search.@Nullable Standing now) {
        return now == null
                ? null
                : course(now, searches.of(place).map(searches::before).orElse(0));
    }

    private static Course course(Search.Standing now, int before) {
        List<SearchLine> steps = now.points().stream()
                .map(point -> new SearchLine(point.totals(), point.placed(), point.sessions(), 0, point.seconds()))
                .toList();
        return new Course(
                state(now.state()),
                now.seconds(),
                before,
                steps,
                now.drawn(),
                now.message(),
                now.comparison(),
                now.changes());
    }

    /** How the search for what could go stands, or null where there is none. */
    static @Nullable Bargained bargained(Bargains bargains, Workplace place, Seen seen) {
        return bargains.of(place)
                .map(bargain -> bargained(bargain, bargains.before(bargain), bargain.isOf(seen)))
                .orElse(null);
    }

    private static Bargained bargained(Bargain bargain, int before, boolean current) {
        Bargain.Standing now = bargain.now();
        Traded found = now.found();
        return new Bargained(
                state(now.state()),
                before,
                now.tried(),
                now.trying(),
                found == null ? null : found.answer(),
                now.message(),
                current);
    }

    private static String state(Bargain.State state) {
        return switch (state) {
            case WAITING -> Course.WAITING;
            case RUNNING -> Course.RUNNING;
            case ENDED, FAILED -> Course.ENDED;
        };
    }

    private static String state(Search.State state) {
        return switch (state) {
            case WAITING -> Course.WAITING;
            case RUNNING -> Course.RUNNING;
            case SAVED, SAME, LATE, DROPPED, FAILED -> Course.ENDED;
        };
    }
}
