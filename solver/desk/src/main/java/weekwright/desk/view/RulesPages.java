package weekwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.RulesPage.Entry;
import weekwright.desk.view.RulesPage.Level;
import weekwright.desk.view.RulesPage.Scope;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleNumber;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;

/** Fills the page of rules. */
public final class RulesPages {
    private final String base;
    private final Scenario scenario;
    private final @Nullable Group group;
    private final RuleSettings settings;

    private RulesPages(String base, Scenario scenario, @Nullable Group group) {
        this.base = base;
        this.scenario = scenario;
        this.group = group;
        this.settings = group == null
                ? RuleSettings.of(Rulebook.builtIn(), scenario.rules(), Map.of())
                : RuleSettings.of(Rulebook.builtIn(), scenario, group);
    }

    /**
     * The rules as they hold.
     *
     * @param group the group that they hold for, or null for all
     */
    public static RulesPage of(String base, Scenario scenario, String saved, @Nullable Group group) {
        RulesPages pages = new RulesPages(base, scenario, group);
        return new RulesPage(base, scenario.title(), saved, pages.scopes(), pages.levels());
    }

    private List<Scope> scopes() {
        List<Scope> scopes = new ArrayList<>();
        scopes.add(new Scope("For all", base + "/rules", group == null));
        if (scenario.groups().size() > 1 || group != null) {
            scenario.groups()
                    .forEach(one -> scopes.add(
                            new Scope("For " + one.label(), base + "/rules?of=" + one.id(), one.equals(group))));
        }
        return scopes;
    }

    private List<Level> levels() {
        List<Level> levels = new ArrayList<>();
        for (RuleLevel level : RuleLevel.values()) {
            List<Entry> rules = Rulebook.builtIn().rules().stream()
                    .filter(rule -> settings.level(rule.id()) == level)
                    .map(this::entry)
                    .toList();
            if (!rules.isEmpty()) {
                levels.add(new Level(heading(level), rules));
            }
        }
        return levels;
    }

    private static String heading(RuleLevel level) {
        return switch (level) {
            case MUST -> "What must hold";
            case KEY, MAIN -> "What is owed, as its aim matters";
            case WANT -> "What is wished";
            case TOLD -> "What is told and costs nothing";
            case OFF -> "What is off";
        };
    }

    private Entry entry(Rule rule) {
        return new Entry(
                rule.id(),
                rule.title(),
                rule.sentence(),
                rule.cost(),
                rule.numbers().stream().map(number -> number(rule, number)).toList(),
                rule.source(),
                settings.softened().contains(rule.id()) ? changed(rule) : "",
                rule.judged(),
                base + "/rules/" + (group == null ? "all" : group.id()) + "/" + rule.id());
    }

    private String number(Rule rule, RuleNumber number) {
        String value = number.keyed() != null
                ? "each session's own, unless changed"
                : Dates.exact(settings.number(rule.id(), number.name())) + " " + number.unit();
        return number.meaning() + ": " + value + " (" + Dates.exact(number.least()) + " to "
                + Dates.exact(number.most()) + "; " + number.source() + ")";
    }

    private String changed(Rule rule) {
        List<String> parts = new ArrayList<>();
        if (settings.level(rule.id()) != rule.level()) {
            parts.add("usually under “" + heading(rule.level()) + "”");
        }
        if (settings.weightMilli(rule.id()) != 1_000) {
            parts.add("weight " + Dates.exact(settings.weightMilli(rule.id()) / 1000.0));
        }
        RuleSetting own = group == null ? null : group.rules().get(rule.id());
        RuleSetting all = scenario.rules().get(rule.id());
        boolean numbers = (own != null && !own.numbers().isEmpty())
                || (all != null && !all.numbers().isEmpty());
        if (numbers) {
            parts.add("numbers of your own");
        }
        return "Changed here: " + String.join(", ", parts);
    }
}
