package weekwright.model.rulebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.model.BuiltIn;
import weekwright.model.Nearest;
import weekwright.model.scenario.RuleSetting;

/** Every rule, in the order in which rules are read: must, key and main, want, told, packs. */
public final class Rulebook {
    private final Map<String, Rule> byId = new LinkedHashMap<>();

    private Rulebook(List<Rule> rules) {
        rules.forEach(rule -> byId.put(rule.id(), rule));
    }

    /** The rules that come with the program, read once. */
    public static Rulebook builtIn() {
        return Holder.RULEBOOK;
    }

    /** The rule of this id, if there is one. */
    public Optional<Rule> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * The rule of this id.
     *
     * @throws IllegalArgumentException when there is none; the message names the nearest
     */
    public Rule rule(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException(unknown(id)));
    }

    /** All rules in order. */
    public List<Rule> rules() {
        return List.copyOf(byId.values());
    }

    /**
     * What is wrong with a scenario's or a group's setting of a rule, empty when nothing is: one line each, the
     * field's path below the rule before the first colon, then what is wrong and what would be right.
     */
    public List<String> faults(String ruleId, RuleSetting setting) {
        Rule rule = byId.get(ruleId);
        return rule == null ? List.of(unknown(ruleId)) : SettingFaults.of(rule, setting);
    }

    private String unknown(String id) {
        return "no rule is called \"" + id + "\": " + Nearest.hint(id, byId.keySet());
    }

    private static final class Holder {
        static final Rulebook RULEBOOK = new Rulebook(BuiltIn.read("rulebook.json", "rules", Rule.class));
    }
}
