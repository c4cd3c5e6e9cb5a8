package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.catalogue.AfterKey;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.FamilyPatch;
import weekwright.model.catalogue.Hours;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;

/** A rule of hours asked for less, by as much as a breach needs: never by more than half. */
final class Softening {
    private static final int HOUR = 60;

    private final Problem problem;

    Softening(Problem problem) {
        this.problem = problem;
    }

    /**
     * A rule with fewer hours.
     *
     * @param key what is softened, whatever the number
     * @param hours how many fewer
     */
    record Softer(String key, int hours, String step, Scenario scenario) {}

    /** What of a rule would have to be asked for less so that a breach is none; null where that is no matter of hours. */
    @Nullable
    Softer of(Fact fact) {
        int hours = Math.floorDiv(Math.max(0, fact.measured()), HOUR);
        if (2 * hours * HOUR < fact.limit() || fact.things().size() < 2) {
            return null;
        }
        int fewer = (fact.limit() + HOUR - 1) / HOUR - hours;
        return switch (fact.rule().id()) {
            case "before-fixture" -> before(fact, hours, fewer);
            case "after-fixture" -> after(fact, fewer);
            case "pathway-gap-floor" -> fact.detail() == 0 ? again(fact, hours, fewer) : null;
            case "night-rest" -> ofRule(fact, hours, fewer, "Let a night's rest be ");
            case "primer-end" -> ofRule(fact, hours, fewer, "Let a primer end before a fixture by ");
            default -> null;
        };
    }

    private static String insteadOf(int hours, int fewer) {
        return hours + " h instead of " + (hours + fewer) + " h";
    }

    private Softer before(Fact fact, int hours, int fewer) {
        Stimulus session = fact.things().get(0);
        Family family = family(session);
        boolean micro = session.dose == Dose.MICRO && family.beforeFixtureMicroHours() != null;
        Hours usual = Objects.requireNonNull(micro ? family.beforeFixtureMicroHours() : family.beforeFixtureHours());
        Hours softer = new Hours(hours, usual.want());
        String step = "Let " + family.label() + (micro ? " in a micro dose" : "") + " end " + insteadOf(hours, fewer)
                + " before a fixture";
        FamilyPatch patch = Families.before(Families.of(problem.scenario, family.id()), softer, micro);
        return new Softer("before " + family.id() + micro, fewer, step, Families.with(problem.scenario, patch));
    }

    private @Nullable Softer after(Fact fact, int fewer) {
        Family fixture = family(fact.things().get(0));
        Map<String, Hours> after = new LinkedHashMap<>(fixture.afterHours());
        List<String> softened = new ArrayList<>();
        int usual = 0;
        for (String key : keys(fact.things().get(1), after)) {
            Hours hours = Objects.requireNonNull(after.get(key));
            if (hours.must() * HOUR > fact.measured()) {
                usual = (int) Math.max(usual, Math.ceil(hours.must()));
                after.put(key, new Hours(Math.max(0, hours.must() - fewer), hours.want()));
                softened.add(key);
            }
        }
        if (softened.isEmpty()) {
            return null;
        }
        String what = Names.list(softened.stream().map(Softening::work).toList());
        String step = "Let " + what + " begin " + insteadOf(usual - fewer, fewer) + " after a fixture";
        FamilyPatch patch = Families.after(Families.of(problem.scenario, fixture.id()), after);
        return new Softer("after " + fixture.id() + softened, fewer, step, Families.with(problem.scenario, patch));
    }

    /** Which of a fixture's hours hold for a session. */
    private static List<String> keys(Stimulus session, Map<String, Hours> after) {
        FamilyInfo family = Objects.requireNonNull(session.family);
        List<String> keys = new ArrayList<>();
        if (session.dose == Dose.MICRO) {
            keys.addAll(List.of(AfterKey.MICRO_SPEED, AfterKey.MICRO_STRENGTH));
        }
        for (Pathway pathway : Pathway.values()) {
            if (family.family.high(pathway)) {
                keys.add(after.containsKey(pathway.id()) ? pathway.id() : AfterKey.OTHER_HIGH);
            }
        }
        return keys.stream().distinct().filter(after::containsKey).toList();
    }

    private static String work(String key) {
        for (Pathway pathway : Pathway.values()) {
            if (pathway.id().equals(key)) {
                return Wording.quality(pathway);
            }
        }
        return switch (key) {
            case AfterKey.MICRO_SPEED -> "micro doses of sprinting";
            case AfterKey.MICRO_STRENGTH -> "micro doses of strength";
            default -> "other hard work";
        };
    }

    private Softer again(Fact fact, int hours, int fewer) {
        Stimulus first = fact.things().get(0);
        Stimulus second = fact.things().get(1);
        int shared =
                Objects.requireNonNull(first.family).family.equals(second.family == null ? null : second.family.family)
                        ? first.family.high
                        : first.family.high & Objects.requireNonNull(second.family).high;
        Map<String, Object> byQuality = new LinkedHashMap<>();
        List<String> names = new ArrayList<>();
        // What a micro dose asks is six tenths of what the rule says.
        double full = first.dose == Dose.MICRO ? Math.floor(hours / 0.6) : hours;
        for (Pathway pathway : Pathway.values()) {
            if ((shared & 1 << pathway.ordinal()) != 0) {
                byQuality.put(pathway.id(), full);
                names.add(Wording.quality(pathway));
            }
        }
        String step = "Let " + Names.list(names) + " come again after " + insteadOf(hours, fewer);
        return new Softer("again " + names, fewer, step, ruled(fact, new LinkedHashMap<>(Map.of("hours", byQuality))));
    }

    private Softer ofRule(Fact fact, int hours, int fewer, String words) {
        return new Softer(
                fact.rule().id(),
                fewer,
                words + insteadOf(hours, fewer),
                ruled(fact, new LinkedHashMap<>(Map.of("hours", (double) hours))));
    }

    /** The scenario with other numbers of a rule for the group of a breach. */
    private Scenario ruled(Fact fact, Map<String, Object> numbers) {
        Group group = fact.group().group;
        RuleSetting usual = group.rules().get(fact.rule().id());
        Map<String, Object> all = new LinkedHashMap<>(usual == null ? Map.of() : usual.numbers());
        all.putAll(numbers);
        Map<String, RuleSetting> rules = new LinkedHashMap<>(group.rules());
        rules.put(
                fact.rule().id(),
                new RuleSetting(usual == null ? null : usual.level(), usual == null ? null : usual.weight(), all));
        return Amended.with(problem.scenario, group.withRules(rules));
    }

    private static Family family(Stimulus thing) {
        return Objects.requireNonNull(thing.family).family;
    }
}
