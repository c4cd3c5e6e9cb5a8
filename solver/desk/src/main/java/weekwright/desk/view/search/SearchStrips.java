package weekwright.desk.view.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Words;
import weekwright.desk.view.search.SearchStrip.Changes;
import weekwright.model.answer.Change;
import weekwright.model.answer.Comparison;
import weekwright.model.answer.Shift;

/** Says how a search goes and what came of it. */
public final class SearchStrips {
    private static final int WIDE = 300;
    private static final int HIGH = 60;
    private static final int USUAL_SECONDS = 5;
    private static final int MOST_STEPS = 12;

    private SearchStrips() {}

    /**
     * The strip of a folder.
     *
     * @param planned whether there is a plan to start from
     * @param now the folder's last search as it is now, or null
     */
    public static SearchStrip of(String base, String query, int revision, boolean planned, @Nullable Course now) {
        return new SearchStrip(
                base,
                query,
                revision,
                now == null ? "idle" : now.state(),
                planned,
                now == null ? "" : status(now),
                now == null ? USUAL_SECONDS : (int) Math.ceil(now.seconds()),
                now == null ? "" : curve(now),
                now == null ? List.of() : steps(now.steps()),
                now == null || now.on() ? null : outcome(now),
                now == null || now.comparison() == null ? List.of() : changes(now.comparison()),
                now == null ? 0 : now.number());
    }

    private static String status(Course now) {
        if (now.state().equals(Course.WAITING)) {
            int before = now.before();
            return before == 0
                    ? "It begins in a moment."
                    : before == 1 ? "One search comes before this one." : before + " searches come before this one.";
        }
        List<SearchLine> points = now.steps();
        return points.isEmpty() ? now.message() : said(points.get(points.size() - 1));
    }

    private static String said(SearchLine point) {
        return "After " + Dates.decimal(point.seconds()) + " s " + point.placed() + " of " + point.sessions()
                + " sessions are placed. " + Words.verdict(point.totals());
    }

    /** A step for each better plan: wishes unmet of those that break the least that must hold. */
    private static String curve(Course now) {
        List<SearchLine> points = now.steps();
        double most = points.stream()
                .mapToDouble(point -> point.totals().want())
                .max()
                .orElse(0);
        if (points.size() < 2 || most == 0) {
            return "";
        }
        StringBuilder curve = new StringBuilder();
        double last = -1;
        for (SearchLine point : points) {
            double x = WIDE * Math.min(1, point.seconds() / now.seconds());
            double y = HIGH - HIGH * point.totals().want() / most;
            curve.append(
                    last < 0
                            ? String.format(Locale.ROOT, "M%.1f %.1f", x, y)
                            : String.format(Locale.ROOT, " L%.1f %.1f L%.1f %.1f", x, last, x, y));
            last = y;
        }
        return curve.toString();
    }

    private static List<String> steps(List<SearchLine> points) {
        List<SearchLine> last = points.subList(Math.max(0, points.size() - MOST_STEPS), points.size());
        List<String> steps =
                new ArrayList<>(last.stream().map(SearchStrips::said).toList());
        Collections.reverse(steps);
        return steps;
    }

    private static String outcome(Course now) {
        Comparison comparison = now.comparison();
        return comparison == null ? now.message() : now.message() + " " + comparison.text();
    }

    /** What differs between two plans, under headings. */
    public static List<Changes> changes(Comparison comparison) {
        List<Changes> changes = new ArrayList<>();
        add(
                changes,
                "Sessions that differ",
                comparison.sessions().stream().map(Change::text).toList());
        add(
                changes,
                "Kept better",
                comparison.better().stream().map(Shift::text).toList());
        add(changes, "Kept worse", comparison.worse().stream().map(Shift::text).toList());
        return changes;
    }

    private static void add(List<Changes> changes, String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            changes.add(new Changes(heading, lines));
        }
    }
}
