package weekwright.engine.explain;

import java.util.List;
import java.util.Map;
import weekwright.engine.problem.Problem;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Scenario;

/** What would help with each finding of a plan. */
final class Remedies {
    /** Wants that cost less, in tenths, are not worth a remedy. */
    private static final int LEAST_WANT = 20;

    private static final Help NOT_OF_THE_PLAN =
            Help.no("It is about the plan before this one, so no remedy was looked for.");

    private final Map<Subject, Help> found;
    private final Help otherwise;

    private Remedies(Map<Subject, Help> found, Help otherwise) {
        this.found = found;
        this.otherwise = otherwise;
    }

    /** None, where nobody will read them and the time is better saved. */
    static Remedies none() {
        return new Remedies(Map.of(), Help.NOT_ASKED);
    }

    /**
     * Looks for them.
     *
     * @param plan a plan whose leads and lifts are written
     * @param facts what is found of it
     */
    static Remedies of(Scenario scenario, Plan plan, List<Fact> facts) {
        boolean any = facts.stream().anyMatch(Remedies::wanted);
        return new Remedies(any ? new RemedySearch(scenario, plan).found() : Map.of(), NOT_OF_THE_PLAN);
    }

    /** Whether a finding is worth a remedy. */
    static boolean wanted(Fact fact) {
        return fact.level() != RuleLevel.TOLD && (fact.level() != RuleLevel.WANT || fact.tenths() >= LEAST_WANT);
    }

    /** What would help with one of these findings. */
    Help help(Problem problem, Fact fact) {
        if (!wanted(fact)) {
            return fact.level() == RuleLevel.TOLD ? Help.COSTS_NOTHING : Help.TOO_SMALL;
        }
        return found.getOrDefault(Subject.of(problem, fact), otherwise);
    }
}
