package weekwright.desk.view.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.ChangedRules;
import weekwright.desk.view.Dates;
import weekwright.desk.view.page.RulesPage.Entry;
import weekwright.desk.view.page.RulesPage.Level;
import weekwright.desk.view.page.RulesPage.Scope;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleNumber;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** Fills the page of rules. */
public final class RulesPages {
    private final String base;
    private final Scenario scenario;
    private final @Nullable Group group;
    private final ChangedRules changed;
    private final RuleSettings settings;

    private RulesPages(String base, Scenario scenario, @Nullable Group group) {
        this.base = base;
        this.scenario = scenario;
        this.group = group;
        changed = new ChangedRules(scenario);
        settings = changed.settings(group);
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
        for (Group one : scenario.groups()) {
            int own = own(one);
            if (scenario.groups().size() > 1 || group != null || own > 0) {
                String label = "For " + one.label() + (own == 0 ? "" : ": " + own + " changed");
                scopes.add(new Scope(label, base + "/rules?of=" + one.id(), one.equals(group)));
            }
        }
        return scopes;
    }

    /** How many rules differ from the usual for a group that do not for all. */
    private int own(Group one) {
        List<String> all = changed.settings(null).softened();
        return (int) changed.settings(one).softened().stream()
                .filter(id -> !all.contains(id))
                .count();
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
                settings.softened().contains(rule.id()) ? changed.how(group, rule) : "",
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
}
