package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.Rewriting.Outcome;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/** What only the coach can change: somebody gives half an hour or an hour more, or an aim is dropped. */
final class CoachsWays {
    /** Plans judged from nothing, so that a plan is judged while one waits. */
    private static final int MOST_JUDGED = 40;

    private final Problem problem;
    private final Judge judge;
    private final Rewriting rewriting;

    CoachsWays(Problem problem, Judge judge, Rewriting rewriting) {
        this.problem = problem;
        this.judge = judge;
        this.rewriting = rewriting;
    }

    /** The best of the ways in mind that is better than what the plan alone can do, really judged; else that. */
    @Nullable
    Found better(Sought sought) {
        Found best = sought.best;
        for (Found guess : sought.ofCoach) {
            boolean dearer = best != null && Found.IN_ORDER.compare(best, guess) <= 0;
            Found found = dearer ? null : judged(sought, guess.way());
            if (found != null && (best == null || Found.IN_ORDER.compare(found, best) < 0)) {
                best = found;
            }
        }
        return best;
    }

    /** Of the aims concerned the one without which the plan is best, where that clears a finding; a last resort. */
    @Nullable
    Found withoutAim(Sought sought) {
        List<AimInfo> aims = new ArrayList<>(sought.concerned.stream()
                .map(session -> session.aim)
                .filter(Objects::nonNull)
                .distinct()
                .toList());
        return aims.stream()
                .map(aim -> judged(sought, Way.without(aim)))
                .filter(Objects::nonNull)
                .min(Found.IN_ORDER)
                .orElse(null);
    }

    private @Nullable Found judged(Sought sought, Way way) {
        Outcome outcome = rewriting.judged() < MOST_JUDGED ? rewriting.outcome(way) : null;
        if (outcome == null || !rewriting.clears(sought.fact, outcome) || !sought.worthIt(outcome.change())) {
            return null;
        }
        Session session = way.session();
        Stimulus now = session == null ? null : judge.at(session);
        return Found.of(problem.calendar, way, outcome.change(), rewriting.adds(outcome), now);
    }
}
