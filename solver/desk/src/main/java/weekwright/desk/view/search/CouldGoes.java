package weekwright.desk.view.search;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.model.answer.Clash;
import weekwright.model.answer.GiveUp;
import weekwright.model.answer.TradeOffs;
import weekwright.model.plan.Totals;

/** Says what could go, and how the search for it stands. */
public final class CouldGoes {
    private static final String NONE = "none";
    private static final String OFFERED = "offered";
    private static final String OLD = "The week has changed since this was looked for.";

    private CouldGoes() {}

    /**
     * What is shown of it.
     *
     * @param totals how the plan stands, or null where there is none
     * @param now the last search for it, or null
     */
    public static CouldGo of(
            String base, String query, int revision, @Nullable Totals totals, @Nullable Bargained now) {
        if (now == null || (!now.on() && !now.current())) {
            return of(base, query, revision, isOwed(totals) ? OFFERED : NONE, offered(now));
        }
        TradeOffs answer = now.answer();
        return answer == null
                ? of(base, query, revision, now.state(), now.on() ? status(now) : now.message())
                : new CouldGo(
                        base,
                        query,
                        revision,
                        Course.ENDED,
                        answer.text(),
                        answer.clashes().stream().map(Clash::text).toList(),
                        offers(answer.couldGo()),
                        answer.couldGo().isEmpty() ? "" : note(answer));
    }

    private static CouldGo of(String base, String query, int revision, String state, String says) {
        return new CouldGo(base, query, revision, state, says, List.of(), List.of(), "");
    }

    private static boolean isOwed(@Nullable Totals totals) {
        return totals != null && (totals.must() > 0 || totals.key() > 0 || totals.main() > 0);
    }

    private static String offered(@Nullable Bargained old) {
        return (old == null ? "" : OLD + " ")
                + "What stands against what, and what each thing given up would buy, can be"
                + " looked for; it takes a while, and nothing changes until you try one.";
    }

    private static String status(Bargained now) {
        if (now.state().equals(Course.WAITING)) {
            return now.before() == 0
                    ? "It begins in a moment."
                    : now.before() == 1
                            ? "One search comes before this one."
                            : now.before() + " searches come before this one.";
        }
        return now.tried() == 0 ? "It begins in a moment." : "Search " + now.tried() + ": " + now.trying() + ".";
    }

    private static List<CouldGo.Offer> offers(List<GiveUp> all) {
        return IntStream.range(0, all.size())
                .mapToObj(i -> offer(i, all.get(i)))
                .toList();
    }

    private static CouldGo.Offer offer(int number, GiveUp one) {
        String step = String.join(", ", one.steps());
        String rest = one.text().startsWith(step + ": ") ? one.text().substring(step.length() + 2) : one.text();
        return new CouldGo.Offer(
                number, step, rest.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + rest.substring(1));
    }

    private static String note(TradeOffs answer) {
        return "Each was tried by a search of " + Dates.grouped(answer.moves())
                + " moves; what changes is said of the whole plan.";
    }
}
