package weekwright.desk.view.terminal;

import java.util.List;
import weekwright.desk.view.Dates;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleNumber;
import weekwright.model.rulebook.Rulebook;

/** The rulebook as lines to read, level by level. */
public final class RulesText {
    private static final int WIDTH = 100;
    private static final int INDENT = 4;

    private final Paper paper = new Paper(WIDTH);
    private final Ink ink;

    private RulesText(Ink ink) {
        this.ink = ink;
    }

    /** All rules, each with its sentence, its cost, its numbers and their sources. */
    public static String of(Rulebook rulebook, Ink ink) {
        RulesText text = new RulesText(ink);
        for (RuleLevel level : RuleLevel.values()) {
            List<Rule> rules = rulebook.rules().stream()
                    .filter(rule -> rule.level() == level)
                    .toList();
            text.level(level, rules);
        }
        return text.paper.toString();
    }

    private void level(RuleLevel level, List<Rule> rules) {
        if (!rules.isEmpty()) {
            paper.line(ink.strong(heading(level)));
            rules.forEach(this::rule);
            paper.blank();
        }
    }

    private static String heading(RuleLevel level) {
        return switch (level) {
            case MUST -> "What must hold (must)";
            case KEY -> "What is owed, by the priority of its aim (key, main)";
            case MAIN -> "What is owed (main)";
            case WANT -> "What is wished (want)";
            case TOLD -> "What is told and costs nothing (told)";
            case OFF -> "What is off until it is switched on (off)";
        };
    }

    private void rule(Rule rule) {
        String state = rule.judged() ? "" : ", not judged yet";
        paper.line("  " + ink.strong(rule.id()) + "  " + rule.title() + state);
        paper.wrapped(INDENT, "", rule.sentence());
        paper.wrapped(INDENT, "Costs: ", rule.cost());
        rule.numbers().forEach(this::number);
        paper.wrapped(INDENT, "Source: ", rule.source());
    }

    private void number(RuleNumber number) {
        String usual = number.usual() == null ? "the families' own" : Dates.exact(number.usual()) + " " + number.unit();
        String by = number.keyed() == null ? "" : ", by " + number.keyed();
        paper.wrapped(
                INDENT,
                number.name() + ": ",
                usual + by + " (" + Dates.exact(number.least()) + " to " + Dates.exact(number.most()) + "): "
                        + number.meaning() + "; " + number.source());
    }
}
