package weekwright.desk.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Search;
import weekwright.desk.app.Searches;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.view.Course;
import weekwright.desk.view.Open;
import weekwright.desk.view.SearchLine;

/** Hands what the desk works on over to be shown. */
final class Views {
    private Views() {}

    static Open open(Seen seen) {
        return new Open(seen.scenario(), seen.revision(), seen.planned(), seen.judged(), seen::people);
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
                state(now.state()), now.seconds(), before, steps, now.drawn(), now.message(), now.comparison());
    }

    private static String state(Search.State state) {
        return switch (state) {
            case WAITING -> Course.WAITING;
            case RUNNING -> Course.RUNNING;
            case SAVED, SAME, LATE, DROPPED, FAILED -> Course.ENDED;
        };
    }
}
