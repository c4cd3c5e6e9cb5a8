package weekwright.model.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.model.Nearest;
import weekwright.model.Plain;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RuleSetting;

/** What is wrong with a setting of one rule. */
final class SettingFaults {
    /** The highest factor that a cost may be multiplied by. */
    static final double MOST_WEIGHT = 100;

    /** Pins are kept by the way plans are made; no level could loosen them. */
    private static final String PINS = "pins";

    private static final List<String> PATHWAYS =
            Stream.of(Pathway.values()).map(Pathway::id).toList();

    private final Rule rule;
    private final List<String> found = new ArrayList<>();

    private SettingFaults(Rule rule) {
        this.rule = rule;
    }

    /** One line a fault, numbers in alphabetical order; the path of the field comes before the first colon. */
    static List<String> of(Rule rule, RuleSetting setting) {
        SettingFaults faults = new SettingFaults(rule);
        faults.level(setting.level());
        faults.weight(setting.weight());
        new TreeMap<>(setting.numbers()).forEach(faults::named);
        return List.copyOf(faults.found);
    }

    private void level(@Nullable RuleLevel level) {
        if (level == null || level == rule.level()) {
            return;
        }
        if (rule.id().equals(PINS)) {
            found.add("level: pins are always kept; take the pin off instead of setting " + level.id());
        } else if (level == RuleLevel.KEY || level == RuleLevel.MAIN) {
            found.add(
                    "level: " + level.id() + " is the priority of an aim, not of a rule; give must, want, told or off");
        }
    }

    private void weight(@Nullable Double weight) {
        if (weight != null && !(weight >= 0 && weight <= MOST_WEIGHT)) {
            found.add("weight: " + Plain.number(weight) + " is outside 0 to " + Plain.number(MOST_WEIGHT));
        }
    }

    private void named(String name, @Nullable Object value) {
        rule.number(name).ifPresentOrElse(number -> value(number, value), () -> found.add(unknown(name)));
    }

    private String unknown(String name) {
        List<String> names = Stream.concat(
                        Stream.of("level", "weight"), rule.numbers().stream().map(RuleNumber::name))
                .toList();
        return name + ": " + rule.id() + " has no number of this name; " + Nearest.hint(name, names);
    }

    private void value(RuleNumber number, @Nullable Object value) {
        if (number.keyed() == null) {
            one(number, number.name(), value);
        } else if (value instanceof Map<?, ?> byKey) {
            byKey.forEach((key, one) -> keyed(number, String.valueOf(key), one));
        } else {
            found.add(number.name() + ": " + shown(value) + " is not a set of numbers by " + number.keyed() + "; give "
                    + range(number) + " for each, e.g. { \"" + PATHWAYS.get(0) + "\": "
                    + Plain.number((number.least() + number.most()) / 2) + " }");
        }
    }

    private void keyed(RuleNumber number, String key, @Nullable Object value) {
        String path = number.name() + "." + key;
        if (PATHWAYS.contains(key)) {
            one(number, path, value);
        } else {
            found.add(path + ": is no " + number.keyed() + "; " + Nearest.hint(key, PATHWAYS));
        }
    }

    private void one(RuleNumber number, String path, @Nullable Object value) {
        if (!(value instanceof Number given)) {
            found.add(path + ": " + shown(value) + " is not a number; give " + range(number));
        } else if (!(given.doubleValue() >= number.least() && given.doubleValue() <= number.most())) {
            found.add(path + ": " + Plain.number(given.doubleValue()) + " is out of range; give " + range(number));
        }
    }

    private static String range(RuleNumber number) {
        return Plain.number(number.least()) + " to " + Plain.number(number.most()) + " " + number.unit();
    }

    private static String shown(@Nullable Object value) {
        return value instanceof String text ? "\"" + text + "\"" : String.valueOf(value);
    }
}
