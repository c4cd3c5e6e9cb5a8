package weekwright.desk.app;

import java.time.Clock;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Search.Glance;
import weekwright.desk.app.Search.State;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.store.Outcome;
import weekwright.engine.explain.Comparisons;
import weekwright.engine.explain.Judged;
import weekwright.model.answer.Comparison;
import weekwright.model.plan.Plan;

/**
 * The searches of all open folders. One runs at a time, with all processors; the others wait in the order in which they
 * were asked for, one a folder at most, so that nobody's week is put off by somebody's many.
 */
public final class Searches {
    private final Planner planner;
    private final Clock clock;
    private final Function<Plan, String> verdict;
    private final Latest<Search> latest;

    /**
     * The searches of a desk.
     *
     * @param turns where they wait for their turn
     * @param verdict says how a plan stands, for the history
     */
    public Searches(Planner planner, Clock clock, OneByOne turns, Function<Plan, String> verdict) {
        this.planner = planner;
        this.clock = clock;
        latest = new Latest<>(turns);
        this.verdict = verdict;
    }

    /**
     * The search of a folder: the one that is on, or a new one. A second click never starts a second search.
     *
     * @param afresh whether only what is pinned is kept of the plan; else the search stays close to all of it
     */
    public Search ask(Workplace place, Seen from, double seconds, boolean afresh) {
        return latest.ask(place, () -> {
            long after = latest.of(place).map(Search::changes).orElse(0L) + 1;
            return new Search(place, from, seconds, afresh, after, this::run);
        });
    }

    /** The last search of a folder. */
    public Optional<Search> of(Workplace place) {
        return latest.of(place);
    }

    /** A folder and its last search as they are at one moment. */
    public Glance glance(Workplace place) {
        return latest.of(place).map(Search::glance).orElseGet(() -> new Glance(place.now(), null));
    }

    /** Forgets the last search of a folder, once it has ended. */
    public void putAway(Workplace place) {
        latest.putAway(place);
    }

    /** How many pieces of work come before a search that waits. */
    public int before(Search search) {
        return latest.before(search);
    }

    private void run(Search search) {
        if (search.isDropped()) {
            search.becomes(State.DROPPED, "Not searched; the plan stays as it was.");
            return;
        }
        search.becomes(State.RUNNING, "Searching.");
        try {
            Judged found = planner.propose(
                    Proposals.of(search.from().scenario(), start(search), search.seconds(), clock), search);
            if (search.isDropped()) {
                search.becomes(State.DROPPED, "What was found is dropped; the plan stays as it was.");
            } else {
                save(search, found);
            }
        } catch (FileFault | InputFault fault) {
            search.becomes(State.FAILED, String.valueOf(fault.getMessage()));
        } catch (RuntimeException fault) {
            search.becomes(State.FAILED, Latest.failed(fault));
        }
    }

    private static @Nullable Plan start(Search search) {
        Seen from = search.from();
        if (!from.planned()) {
            return null;
        }
        return search.isAfresh()
                ? pinnedOnly(from.judged().plan())
                : from.judged().plan();
    }

    /** What a coach holds of a plan, and nothing else. */
    private static Plan pinnedOnly(Plan plan) {
        return plan.withSessions(
                plan.placements().stream()
                        .filter(placement -> !placement.held().isNone())
                        .toList(),
                plan.leftOut().stream().filter(left -> left.pin() != null).toList());
    }

    private void save(Search search, Judged found) {
        Seen from = search.from();
        String what = !from.planned() ? "Planned" : search.isAfresh() ? "Planned afresh" : "Planned again";
        if (from.planned()
                && found.plan().placements().equals(from.judged().plan().placements())) {
            search.becomes(State.SAME, same(search));
            return;
        }
        Comparison comparison =
                from.planned() ? Comparisons.of(from.scenario(), from.judged().plan(), found.plan()) : null;
        String label = what + ". " + withoutStop(verdict.apply(found.plan()));
        // Nobody sees the plan that is saved and the search still on.
        synchronized (search) {
            ended(search, search.place().save(from.revision().number(), label, found), what + ".", comparison);
        }
    }

    private static void ended(Search search, Outcome outcome, String said, @Nullable Comparison comparison) {
        if (outcome instanceof Outcome.Saved saved) {
            search.ends(State.SAVED, said, saved.head().number(), comparison);
        } else if (outcome instanceof Outcome.Stale stale && stale.kept() != null) {
            search.ends(State.LATE, stale.message(), stale.kept().number(), comparison);
        } else {
            search.becomes(State.SAME, same(search));
        }
    }

    private static String same(Search search) {
        return search.isAfresh()
                ? "The same plan was found again."
                : "Nothing better was found close to this plan: it stays. Plan afresh to look for another.";
    }

    private static String withoutStop(String sentence) {
        return sentence.replaceFirst("\\.$", "");
    }
}
