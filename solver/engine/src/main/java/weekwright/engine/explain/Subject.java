package weekwright.engine.explain;

import java.util.List;
import java.util.Set;
import weekwright.engine.problem.Problem;

/**
 * What a finding is about, by name: by it one is found again in a plan that was read anew.
 *
 * @param about the aim or session concerned; else nothing
 * @param things names of the things concerned
 * @param firstDay first day, where nothing else tells it from others; else 0
 */
record Subject(String rule, String group, String about, List<String> things, int firstDay, int lastDay, int detail) {
    private static final Set<String> OF_AN_AIM = Set.of("aim-least", "aim-target", "aim-most");

    static Subject of(Problem problem, Fact fact) {
        boolean ofAim = OF_AN_AIM.contains(fact.rule().id()) && fact.aim() != null;
        List<String> things = ofAim
                ? List.of()
                : fact.things().stream()
                        .map(thing -> thing.kind + " " + Findings.id(problem, thing))
                        .toList();
        boolean byDay = things.isEmpty();
        String about = fact.session() != null
                ? fact.session().id
                : fact.aim() != null ? fact.aim().aim.key() : "";
        return new Subject(
                fact.rule().id(),
                fact.group().group.id(),
                about,
                things,
                byDay ? fact.firstDay() : 0,
                byDay ? fact.lastDay() : 0,
                byDay ? fact.detail() : 0);
    }
}
