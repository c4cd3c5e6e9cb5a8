package weekwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;

/** The rules that a coach has changed, for whom and how. */
public final class ChangedRules {
    private static final Rulebook RULES = Rulebook.builtIn();

    private final Scenario scenario;

    /** The changed rules of a scenario. */
    public ChangedRules(Scenario scenario) {
        this.scenario = scenario;
    }

    /** The title of a rule, and for whom it was changed where that is not for all. */
    public String title(String id) {
        List<String> labels = groups(id).stream().map(Group::label).toList();
        return labels.isEmpty() ? Names.rule(id) : Names.rule(id) + " (" + String.join(", ", labels) + ")";
    }

    /** The groups for which alone a rule was changed; none where it was for all. */
    public List<Group> groups(String id) {
        if (settings(null).softened().contains(id)) {
            return List.of();
        }
        return scenario.groups().stream()
                .filter(group -> settings(group).softened().contains(id))
                .toList();
    }

    /**
     * How the rules hold.
     *
     * @param group the group that they hold for, or null for all
     */
    public RuleSettings settings(@Nullable Group group) {
        return group == null ? RuleSettings.of(RULES, scenario) : RuleSettings.of(RULES, scenario, group);
    }

    /**
     * How a rule differs from the usual, e.g. {@code off instead of a wish} or {@code weight 0.5}.
     *
     * @param group the group that it differs for, or null for all
     */
    public String how(@Nullable Group group, Rule rule) {
        RuleSettings settings = settings(group);
        List<String> parts = new ArrayList<>();
        if (settings.level(rule.id()) != rule.level()) {
            parts.add(word(settings.level(rule.id())) + " instead of " + word(rule.level()));
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
        return String.join(", ", parts);
    }

    private static String word(RuleLevel level) {
        return switch (level) {
            case MUST -> "a must";
            case KEY, MAIN -> "owed";
            case WANT -> "a wish";
            case TOLD -> "only told";
            case OFF -> "off";
        };
    }
}
