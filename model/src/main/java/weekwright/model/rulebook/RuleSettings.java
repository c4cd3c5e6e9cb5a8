package weekwright.model.rulebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.Nearest;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;

/**
 * The rules as they hold for one group: the usual ones, changed by the scenario, changed by the group.
 *
 * <p>Settings are taken as sound: {@link Rulebook#faults} says what is wrong with one.
 */
public final class RuleSettings {
    private static final RuleSetting AS_USUAL = new RuleSetting(null, null, Map.of());

    private static final RuleSetting SWITCHED_ON = new RuleSetting(RuleLevel.WANT, null, Map.of());

    private final Rulebook rulebook;
    private final Map<String, RuleSetting> settings;

    private RuleSettings(Rulebook rulebook, Map<String, RuleSetting> settings) {
        this.rulebook = rulebook;
        this.settings = settings;
    }

    /**
     * The rules for one group. A group's own level, weight or number goes before the scenario's, each for itself, and
     * of numbers given by pathway each pathway for itself.
     *
     * @throws IllegalArgumentException when a rule is not known
     */
    public static RuleSettings of(
            Rulebook rulebook, Map<String, RuleSetting> scenarioRules, Map<String, RuleSetting> groupRules) {
        Map<String, RuleSetting> settings = new LinkedHashMap<>(scenarioRules);
        groupRules.forEach((id, setting) -> settings.merge(id, setting, RuleSettings::over));
        settings.keySet().forEach(rulebook::rule);
        return new RuleSettings(rulebook, Collections.unmodifiableMap(settings));
    }

    /**
     * The rules for a group of a scenario. A pack that the scenario or the group switches on is a want, unless its level
     * is given.
     *
     * @throws IllegalArgumentException when a rule or pack is not known
     */
    public static RuleSettings of(Rulebook rulebook, Scenario scenario, Group group) {
        Stream<String> packs = Stream.concat(scenario.packs().stream(), group.packs().stream());
        return of(rulebook, with(packs, scenario.rules()), group.rules());
    }

    /**
     * The rules for all groups of a scenario, before any group changes them for itself.
     *
     * @throws IllegalArgumentException when a rule or pack is not known
     */
    public static RuleSettings of(Rulebook rulebook, Scenario scenario) {
        return of(rulebook, with(scenario.packs().stream(), scenario.rules()), Map.of());
    }

    private static Map<String, RuleSetting> with(Stream<String> packs, Map<String, RuleSetting> rules) {
        Map<String, RuleSetting> all = new LinkedHashMap<>(rules);
        packs.forEach(pack -> all.merge(pack, SWITCHED_ON, (given, on) -> over(on, given)));
        return all;
    }

    /** How much the rule matters. */
    public RuleLevel level(String ruleId) {
        Rule rule = rulebook.rule(ruleId);
        RuleLevel level = setting(ruleId).level();
        return level == null ? rule.level() : level;
    }

    /** The factor of the rule's cost, in thousandths. */
    public int weightMilli(String ruleId) {
        rulebook.rule(ruleId);
        Double weight = setting(ruleId).weight();
        return weight == null ? 1_000 : (int) Math.round(weight * 1_000);
    }

    /**
     * A number of a rule, in the unit that the rulebook gives.
     *
     * @throws IllegalArgumentException when the rule has no number of this name, or one given by pathway
     */
    public double number(String ruleId, String name) {
        RuleNumber number = known(ruleId, name);
        Double usual = number.usual();
        if (number.keyed() != null || usual == null) {
            throw new IllegalArgumentException(
                    name + " of " + ruleId + " is given by " + number.keyed() + ": ask for it by one");
        }
        return setting(ruleId).numbers().get(name) instanceof Number given ? given.doubleValue() : usual;
    }

    /** Whether a rule has a number of this name. */
    public boolean has(String ruleId, String name) {
        return rulebook.rule(ruleId).number(name).isPresent();
    }

    /**
     * A number of a rule for one key, such as a pathway; empty where nobody has set it and the families' own figures
     * hold.
     *
     * @throws IllegalArgumentException when the rule has no number of this name
     */
    public OptionalDouble keyed(String ruleId, String name, String key) {
        Double usual = known(ruleId, name).usual();
        if (setting(ruleId).numbers().get(name) instanceof Map<?, ?> byKey && byKey.get(key) instanceof Number given) {
            return OptionalDouble.of(given.doubleValue());
        }
        return usual == null ? OptionalDouble.empty() : OptionalDouble.of(usual);
    }

    /** The ids of the rules whose level, weight or numbers differ from the usual, in alphabetical order. */
    public List<String> softened() {
        return settings.keySet().stream().filter(this::differs).sorted().toList();
    }

    private boolean differs(String ruleId) {
        Rule rule = rulebook.rule(ruleId);
        return level(ruleId) != rule.level()
                || weightMilli(ruleId) != 1_000
                || rule.numbers().stream().anyMatch(number -> differs(ruleId, number));
    }

    private boolean differs(String ruleId, RuleNumber number) {
        Object given = setting(ruleId).numbers().get(number.name());
        return given instanceof Map<?, ?> byKey
                ? byKey.values().stream().anyMatch(value -> differs(value, number.usual()))
                : differs(given, number.usual());
    }

    private static boolean differs(@Nullable Object given, @Nullable Double usual) {
        return given instanceof Number value && (usual == null || value.doubleValue() != usual);
    }

    private RuleNumber known(String ruleId, String name) {
        Rule rule = rulebook.rule(ruleId);
        return rule.number(name)
                .orElseThrow(() -> new IllegalArgumentException(ruleId + " has no number \"" + name + "\": "
                        + Nearest.hint(
                                name,
                                rule.numbers().stream().map(RuleNumber::name).toList())));
    }

    private RuleSetting setting(String ruleId) {
        return settings.getOrDefault(ruleId, AS_USUAL);
    }

    private static RuleSetting over(RuleSetting below, RuleSetting above) {
        Map<String, Object> numbers = new LinkedHashMap<>(below.numbers());
        above.numbers().forEach((name, value) -> numbers.merge(name, value, RuleSettings::over));
        return new RuleSetting(
                above.level() == null ? below.level() : above.level(),
                above.weight() == null ? below.weight() : above.weight(),
                numbers);
    }

    private static Object over(Object below, Object above) {
        if (below instanceof Map<?, ?> under && above instanceof Map<?, ?> top) {
            Map<Object, Object> both = new LinkedHashMap<>(under);
            both.putAll(top);
            return Ids.mapped(both);
        }
        return above;
    }
}
