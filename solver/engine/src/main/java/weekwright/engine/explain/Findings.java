package weekwright.engine.explain;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.problem.Stimulus.Kind;
import weekwright.model.plan.Finding;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.LogEntry;

/** Turns facts into findings of the plan document. */
final class Findings {
    private static final Comparator<Fact> IN_ORDER = Comparator.comparing((Fact fact) -> fact.level())
            .thenComparing(fact -> -fact.tenths())
            .thenComparing(Fact::firstDay)
            .thenComparing(fact -> Rulebook.builtIn().rules().indexOf(rule(fact)))
            .thenComparing(fact -> fact.group().index);

    private final Problem problem;
    private final Wording wording;
    private final Remedies remedies;

    Findings(Problem problem, Remedies remedies) {
        this.problem = problem;
        this.remedies = remedies;
        wording = new Wording(problem);
    }

    /** Findings by level, dearest first. */
    List<Finding> of(List<Fact> facts) {
        return inOrder(facts).map(this::finding).toList();
    }

    /** By level, dearest first. */
    static Stream<Fact> inOrder(List<Fact> facts) {
        return facts.stream().sorted(IN_ORDER);
    }

    /** The sentence of a finding, or its title where it says nothing. */
    static String said(Finding finding) {
        return finding.text().isBlank() ? finding.title() : finding.text();
    }

    private static Rule rule(Fact fact) {
        return Rulebook.builtIn().rule(fact.rule().id());
    }

    private Finding finding(Fact fact) {
        Rule rule = rule(fact);
        int week = Math.floorDiv(fact.firstDay(), 7);
        boolean inPlan = fact.firstDay() >= 0 && fact.firstDay() < problem.calendar.days();
        boolean oneDay = fact.firstDay() == fact.lastDay();
        Help help = remedies.help(problem, fact);
        return new Finding(
                rule.id(),
                rule.title(),
                fact.level(),
                fact.tenths() / 10.0,
                fact.heads(),
                List.of(fact.group().group.id()),
                Athletes.named(problem, fact),
                ids(fact, Kind.PLACEMENT),
                ids(fact, Kind.FIXTURE),
                ids(fact, Kind.COMMITMENT),
                ids(fact, Kind.HISTORY),
                fact.facility() == null ? null : fact.facility().facility.id(),
                null,
                inPlan ? problem.calendar.date(7 * week) : null,
                oneDay ? problem.calendar.date(fact.firstDay()) : null,
                inUnit(rule, fact, fact.measured()),
                inUnit(rule, fact, fact.limit()),
                rule.unit(),
                wording.text(fact),
                help.remedy(),
                help.noRemedy());
    }

    /** A finding about one session is about no other, though it may name one. */
    private List<String> ids(Fact fact, Kind kind) {
        Session session = fact.session();
        if (kind == Kind.PLACEMENT && session != null) {
            return List.of(session.id);
        }
        return fact.things().stream()
                .filter(thing -> thing.kind == kind)
                .map(thing -> id(problem, thing))
                .toList();
    }

    /** The name of a thing in documents. */
    static String id(Problem problem, Stimulus thing) {
        return switch (thing.kind) {
            case PLACEMENT -> problem.sessions.get(thing.index).id;
            case FIXTURE -> problem.scenario.fixtures().get(thing.index).id();
            case COMMITMENT -> problem.scenario.commitments().get(thing.index).id();
            case HISTORY -> historyId(problem.scenario.history().get(thing.index));
        };
    }

    private static String historyId(LogEntry entry) {
        return entry.id() == null ? entry.group() + "/" + entry.family() + "/" + entry.start() : entry.id();
    }

    /** A judge counts in minutes, tenths, hundredths or ones; the document in the rule's unit. */
    private static double inUnit(Rule rule, Fact fact, int value) {
        double factor = switch (rule.unit()) {
            case "h" -> 60;
            case "h or days" -> fact.detail() == FactWording.DAYS_OFF ? 1 : 60;
            case "AU", "%" -> 10;
            case "share", "times" -> 100;
            case "points of demand" -> 100;
            default -> 1;
        };
        return Math.round(value / factor * 100) / 100.0;
    }
}
