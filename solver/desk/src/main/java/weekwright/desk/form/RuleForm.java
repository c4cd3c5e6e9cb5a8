package weekwright.desk.form;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.page.FormField;
import weekwright.desk.view.page.FormField.Choice;
import weekwright.desk.view.page.FormField.Control;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleNumber;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Scenario;

/** A rule in a form: how much it matters, its weight and its numbers, for all or for one group. */
public final class RuleForm implements Editable {
    private static final String RULES = "rules";

    private final Rule rule;
    private final int group;
    private final Map<String, Object> document;
    private Map<String, Object> setting;
    private Wrong wrong = Wrong.nothing();
    private @Nullable Scenario changed;

    private RuleForm(Scenario scenario, Rule rule, int group) {
        this.rule = rule;
        this.group = group;
        this.document = Documents.apart(scenario);
        this.setting = Paths.map(Paths.map(owner().get(RULES)).get(rule.id()));
    }

    /**
     * The form of a rule.
     *
     * @param group number of the group that it is changed for, or -1 for all
     */
    public static RuleForm of(Scenario scenario, Rule rule, int group) {
        return new RuleForm(scenario, rule, group);
    }

    private Map<String, Object> owner() {
        return group < 0
                ? document
                : Paths.map(Paths.list(document.get("groups")).get(group));
    }

    /** Fills the form with what was sent; what is left empty is as usual. */
    public RuleForm filled(Map<String, List<String>> sent) {
        setting = new LinkedHashMap<>();
        put("level", text(sent, "level"));
        put("weight", number(text(sent, "weight")));
        for (RuleNumber number : rule.numbers()) {
            if (number.keyed() == null) {
                put(number.name(), number(text(sent, number.name())));
            } else {
                Map<String, Object> byKey = new LinkedHashMap<>();
                for (Pathway pathway : Pathway.values()) {
                    Object value = number(text(sent, number.name() + "." + pathway.id()));
                    if (value != null) {
                        byKey.put(pathway.id(), value);
                    }
                }
                put(number.name(), byKey.isEmpty() ? null : byKey);
            }
        }
        return this;
    }

    private void put(String name, @Nullable Object value) {
        if (value != null && !value.equals("")) {
            setting.put(name, value);
        }
    }

    private static String text(Map<String, List<String>> sent, String name) {
        return String.join(" ", sent.getOrDefault(name, List.of())).strip();
    }

    private static @Nullable Object number(String text) {
        if (text.isEmpty()) {
            return null;
        }
        String plain = text.replace(',', '.');
        return plain.matches("-?[0-9]{1,9}(\\.[0-9]{1,9})?") ? new BigDecimal(plain) : text;
    }

    /** A rule has no lists. */
    @Override
    public void grow(String list) {}

    /** A rule has no lists. */
    @Override
    public void shrink(String row) {}

    /** Sets the rule back to what is usual. */
    @Override
    public boolean without() {
        setting = new LinkedHashMap<>();
        return read(false);
    }

    @Override
    public boolean read(boolean half) {
        Map<String, Object> owner = owner();
        Map<String, Object> rules = Paths.map(owner.get(RULES));
        rules.remove(rule.id());
        if (!setting.isEmpty()) {
            rules.put(rule.id(), setting);
        }
        owner.put(RULES, rules);
        if (group >= 0) {
            List<Object> groups = Paths.list(document.get("groups"));
            groups.set(group, owner);
            document.put("groups", groups);
        }
        return whole(half);
    }

    private boolean whole(boolean half) {
        changed = null;
        String root = (group < 0 ? "" : "groups[" + group + "].") + RULES + "." + rule.id();
        try {
            changed = Documents.readScenario(
                    "the form", Documents.writeAny(document).getBytes(StandardCharsets.UTF_8));
            wrong = Wrong.nothing();
        } catch (DocumentException e) {
            wrong = Wrong.of(e.problems(), root, half, path -> path);
        }
        return changed != null;
    }

    /** The scenario with the rule as it was sent; only where nothing is wrong. */
    public Scenario changed() {
        if (changed == null) {
            throw new IllegalStateException("what is wrong has to be mended first");
        }
        return changed;
    }

    @Override
    public FormField shown() {
        List<FormField> fields = new ArrayList<>();
        fields.add(level());
        fields.add(field(
                "weight",
                "Weight",
                "Multiplies what a breach of a wish costs: 0.5 halves it, 2 doubles it. Usually 1.",
                "",
                Paths.text(setting.get("weight"))));
        rule.numbers().forEach(number -> fields.addAll(numbers(number)));
        return new FormField(Control.PART, "", "", "", "", false, false, "", "", List.of(), fields, List.of(), false);
    }

    private FormField level() {
        String now = Paths.text(setting.get("level"));
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", "As usual: " + word(rule.level()), now.isEmpty()));
        Arrays.stream(RuleLevel.values())
                .filter(level -> level != RuleLevel.KEY && level != RuleLevel.MAIN)
                .forEach(level -> choices.add(
                        new Choice(level.id(), word(level), level.id().equals(now))));
        return new FormField(
                Control.ONE,
                "level",
                "How much it matters",
                "",
                "",
                false,
                false,
                "",
                now,
                choices,
                List.of(),
                wrong.take("level"),
                false);
    }

    /** A level in a coach's words. */
    public static String word(RuleLevel level) {
        return switch (level) {
            case MUST -> "must hold";
            case KEY, MAIN -> "owed, as its aim matters";
            case WANT -> "a wish";
            case TOLD -> "only told";
            case OFF -> "off";
        };
    }

    private List<FormField> numbers(RuleNumber number) {
        if (number.keyed() == null) {
            return List.of(
                    field(number.name(), label(number), help(number), number.unit(), now(setting, number.name())));
        }
        Map<String, Object> byKey = Paths.map(setting.get(number.name()));
        return Arrays.stream(Pathway.values())
                .map(pathway -> field(
                        number.name() + "." + pathway.id(),
                        label(number) + ": " + pathway.id().replace('-', ' '),
                        help(number),
                        number.unit(),
                        now(byKey, pathway.id())))
                .toList();
    }

    private static String now(Map<String, Object> values, String name) {
        return Paths.text(values.get(name));
    }

    private static String label(RuleNumber number) {
        String meaning = number.meaning();
        return Character.toUpperCase(meaning.charAt(0)) + meaning.substring(1);
    }

    private static String help(RuleNumber number) {
        String usual = number.usual() == null ? "each session's own" : plain(number.usual());
        return "Usually " + usual + "; " + plain(number.least()) + " to " + plain(number.most()) + ". Source: "
                + number.source() + ".";
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private FormField field(String name, String label, String help, String unit, String value) {
        return new FormField(
                Control.NUMBER,
                name,
                label,
                help,
                unit,
                false,
                false,
                "",
                value,
                List.of(),
                List.of(),
                wrong.take(name),
                false);
    }

    @Override
    public List<String> elsewhere() {
        return wrong.rest();
    }
}
