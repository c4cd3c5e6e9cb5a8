package weekwright.engine.explain;

import java.util.List;
import weekwright.engine.problem.Problem;
import weekwright.model.scenario.Athlete;

/** The athletes whom a finding concerns by name. */
final class Athletes {
    private Athletes() {}

    /**
     * Ids of those concerned, where all are listed by name and they are not the whole group, or where the
     * finding is about them and not their fellows; else none.
     */
    static List<String> named(Problem problem, Fact fact) {
        if (!fact.athletes().isEmpty()) {
            return fact.athletes();
        }
        List<String> ids = fact.cohorts().stream()
                .flatMap(cohort -> problem.cohorts.get(cohort).athletes().stream())
                .toList();
        return ids.size() == fact.heads() && fact.heads() < fact.group().heads ? ids : List.of();
    }

    /** Their names. */
    static List<String> names(Problem problem, List<String> ids) {
        return problem.scenario.athletes().stream()
                .filter(athlete -> ids.contains(athlete.id()))
                .map(Athlete::name)
                .toList();
    }
}
