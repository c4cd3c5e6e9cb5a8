package weekwright.benchmarks.rivals;

import weekwright.benchmarks.rivals.PairRules.Found;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Prefer;

/** What an option of a session breaks whatever else is placed: with all that is fixed, and of what its aim prefers. */
final class AloneRules {
    private static final int WHOLE_DAY = 24 * 60;

    private final Problem problem;
    private final PairRules pairs;

    AloneRules(Problem problem) {
        this.problem = problem;
        pairs = new PairRules(problem);
    }

    /** By option of the session. */
    Found[] of(Session session) {
        Found[] found = new Found[session.options.length];
        for (Stimulus option : session.options) {
            // Somebody of those it is for must be able to come.
            Found all = new Found(option.cohorts.length == 0 ? 1 : 0, preferred(session, option));
            for (Stimulus fixed : problem.fixed) {
                all = sharesSomebody(option, fixed) ? all.plus(pairs.of(option, fixed)) : all;
            }
            found[option.option] = all;
        }
        return found;
    }

    static boolean sharesSomebody(Stimulus a, Stimulus b) {
        for (int cohort : a.cohorts) {
            if (b.has(cohort)) {
                return true;
            }
        }
        return false;
    }

    private int preferred(Session session, Stimulus at) {
        Prefer prefer = session.aim == null ? null : session.aim.aim.prefer();
        if (prefer == null) {
            return 0;
        }
        int start = problem.calendar.clockMinutes(at.start);
        ClockTime from = prefer.from();
        ClockTime to = prefer.to();
        boolean early = from != null && start < from.minutes();
        boolean late = start + at.minutes() > (to == null ? WHOLE_DAY : to.minutes());
        boolean elsewhere = !prefer.facilities().isEmpty()
                && (at.facility < 0
                        || !prefer.facilities()
                                .contains(problem.facilities
                                        .get(at.facility)
                                        .facility
                                        .id()));
        int tenths = Units.share(Units.PREFERRED, 1);
        return (early || late ? tenths : 0) + (elsewhere ? tenths : 0);
    }
}
