package weekwright.desk.view.plan;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.ChangedRules;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.plan.PlanPage.Breaches;
import weekwright.desk.view.plan.PlanPage.Line;
import weekwright.desk.view.plan.PlanPage.Standing;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.Blocker;
import weekwright.model.plan.CheapestOption;
import weekwright.model.plan.Finding;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Scenario;

/** Says how a plan stands: totals, what is broken, what is left out, what is kept. */
public final class Standings {
    private static final List<RuleLevel> COSTING =
            List.of(RuleLevel.MUST, RuleLevel.KEY, RuleLevel.MAIN, RuleLevel.WANT);

    private final Scenario scenario;
    private final Names names;
    private final Plan plan;

    private Standings(Scenario scenario, Plan plan) {
        this.scenario = scenario;
        this.names = new Names(scenario);
        this.plan = plan;
    }

    /** How a judged plan stands. */
    public static Standing of(Scenario scenario, Judged judged) {
        return new Standings(scenario, judged.plan()).standing(judged.kept());
    }

    private Standing standing(List<String> kept) {
        return new Standing(
                PlanPages.verdict(plan),
                COSTING.stream()
                        .map(this::breaches)
                        .filter(breaches -> !breaches.lines().isEmpty())
                        .toList(),
                plan.leftOut().stream().map(this::line).toList(),
                told(),
                plan.softened().stream().map(new ChangedRules(scenario)::title).toList(),
                plan.solver() == null ? titles(kept) : countedByTheme(kept, plan.findings()));
    }

    private List<Line> told() {
        List<Finding> told = findings(RuleLevel.TOLD).toList();
        return new GoodToKnow(names, told)
                .lines(told).stream()
                        .map(text -> Line.of(null, text, List.of()))
                        .toList();
    }

    /** Of a plan written by hand, every rule that it keeps by its title. */
    private static List<String> titles(List<String> kept) {
        return kept.stream().map(id -> Rulebook.builtIn().rule(id).title()).toList();
    }

    /** Of a plan that was searched for, how many of each theme: what is not kept is named among the breaches. */
    private static List<String> countedByTheme(List<String> kept, List<Finding> findings) {
        if (kept.isEmpty()) {
            return List.of();
        }
        Map<String, List<Rule>> themes = Rulebook.builtIn().rules().stream()
                .filter(Rule::judged)
                .filter(rule -> !factOrOff(rule) || kept.contains(rule.id()) || costs(rule, findings))
                .collect(Collectors.groupingBy(Rule::theme, LinkedHashMap::new, Collectors.toList()));
        return themes.entrySet().stream()
                .map(theme -> theme.getKey().replace('-', ' ') + " "
                        + theme.getValue().stream()
                                .filter(rule -> kept.contains(rule.id()))
                                .count()
                        + " of " + theme.getValue().size())
                .toList();
    }

    /** Whether nobody counts on it unless a coach says so. */
    private static boolean factOrOff(Rule rule) {
        return rule.level() == RuleLevel.OFF || rule.level() == RuleLevel.TOLD;
    }

    private static boolean costs(Rule rule, List<Finding> findings) {
        return findings.stream()
                .anyMatch(finding -> finding.rule().equals(rule.id()) && finding.level() != RuleLevel.TOLD);
    }

    private Breaches breaches(RuleLevel level) {
        return new Breaches(
                level,
                IntStream.range(0, plan.findings().size())
                        .boxed()
                        .filter(number -> plan.findings().get(number).level() == level)
                        .sorted(Comparator.comparingDouble((Integer number) ->
                                        plan.findings().get(number).cost())
                                .reversed())
                        .map(this::line)
                        .toList());
    }

    private Stream<Finding> findings(RuleLevel level) {
        return plan.findings().stream().filter(finding -> finding.level() == level);
    }

    private Line line(int number) {
        Finding finding = plan.findings().get(number);
        String text = finding.text().isBlank() ? finding.title() : finding.text();
        return new Line(cost(finding), text, help(finding), about(finding), number);
    }

    /** A wish of a few that comes to less than a tenth for the group is still told of. */
    private static @Nullable String cost(Finding finding) {
        if (finding.level() == RuleLevel.TOLD) {
            return null;
        }
        boolean tiny = finding.level() == RuleLevel.WANT && finding.cost() == 0;
        return tiny ? "<0.1" : Dates.number(finding.cost());
    }

    private static List<String> about(Finding finding) {
        return Stream.of(finding.placements(), finding.fixtures(), finding.commitments())
                .flatMap(List::stream)
                .toList();
    }

    /** A remedy begins with what to do, never with a name. */
    private static @Nullable String help(Finding finding) {
        if (finding.remedy() == null || finding.remedy().text().isEmpty()) {
            return null;
        }
        String text = finding.remedy().text();
        return "What would help: " + text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    private Line line(LeftOut missing) {
        String text = missing.text().isBlank() ? written(missing) : missing.text();
        return Line.of(Dates.number(missing.cost()) + " " + missing.level().id(), text, List.of(missing.id()));
    }

    /** What the engine left unsaid. */
    private String written(LeftOut missing) {
        String text = names.session(missing.id()) + " is not placed.";
        if (!missing.blockers().isEmpty()) {
            text += " What stands in the way: "
                    + String.join(
                            ", ",
                            missing.blockers().stream()
                                    .map(blocker -> blocker(blocker, missing.options()))
                                    .toList())
                    + ".";
        }
        return missing.cheapest() == null ? text : text + " " + cheapest(missing.cheapest());
    }

    private static String blocker(Blocker blocker, int options) {
        return Names.rule(blocker.rule()) + " (" + Dates.grouped(blocker.options()) + " of " + Dates.grouped(options)
                + " ways)";
    }

    private String cheapest(CheapestOption option) {
        String place = names.facility(option.facility());
        return "It would cost least on " + Dates.day(option.start().date()) + " at " + Dates.clock(option.start())
                + (place == null ? "" : ", " + place) + ".";
    }
}
