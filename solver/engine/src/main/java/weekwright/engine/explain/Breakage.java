package weekwright.engine.explain;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;

/** What is broken in a plan and costs something, so that another plan can be held against it. */
final class Breakage {
    /** What is broken of which sessions, fixtures and days, whatever it costs. */
    private record Subject(
            String rule,
            RuleLevel level,
            List<String> groups,
            List<String> placements,
            List<String> fixtures,
            List<String> commitments,
            List<String> history,
            @Nullable String facility,
            @Nullable LocalDate week,
            @Nullable LocalDate day) {
        static Subject of(Finding finding) {
            return new Subject(
                    finding.rule(),
                    finding.level(),
                    finding.groups(),
                    finding.placements(),
                    finding.fixtures(),
                    finding.commitments(),
                    finding.history(),
                    finding.facility(),
                    finding.week(),
                    finding.day());
        }
    }

    /** A rule at one of its levels; groups may set it each at their own. */
    record RuleAt(String rule, RuleLevel level) {
        static RuleAt of(Finding finding) {
            return new RuleAt(finding.rule(), finding.level());
        }
    }

    private final List<Finding> findings;
    private final Map<Subject, Long> bySubject = new LinkedHashMap<>();
    private final Map<RuleAt, Long> byRule = new LinkedHashMap<>();

    Breakage(Plan judged) {
        findings = judged.findings().stream()
                .filter(finding -> finding.level().compareTo(RuleLevel.TOLD) < 0)
                .toList();
        for (Finding finding : findings) {
            bySubject.merge(Subject.of(finding), tenths(finding.cost()), Long::sum);
            byRule.merge(RuleAt.of(finding), tenths(finding.cost()), Long::sum);
        }
    }

    /** Whole tenths of a cost. */
    static long tenths(double cost) {
        return Math.round(cost * 10);
    }

    /** The rules that are broken, by level and dearest first in each. */
    List<RuleAt> rules() {
        return byRule.keySet().stream().toList();
    }

    /** What a rule costs at a level, in tenths. */
    long cost(RuleAt rule) {
        return byRule.getOrDefault(rule, 0L);
    }

    /** How much more a finding costs here than the same one there, in tenths. */
    private static long more(Finding finding, Breakage there) {
        return tenths(finding.cost()) - there.bySubject.getOrDefault(Subject.of(finding), 0L);
    }

    /** The sentence of what is most of all broken here and not there, of a rule. */
    String worst(RuleAt rule, Breakage there) {
        return findings.stream()
                .filter(finding -> RuleAt.of(finding).equals(rule))
                .max(Comparator.comparingLong(finding -> more(finding, there)))
                .map(Findings::said)
                .orElse("");
    }

    /**
     * What is broken here and was not there, or costs more, gravest first; wishes only where their rule is kept worse than
     * before, and not for what breaks something that must hold as well.
     */
    List<Finding> newly(Breakage there) {
        List<Finding> all = worse(there);
        return all.stream()
                .filter(one -> one.level() == RuleLevel.MUST
                        || all.stream().noneMatch(other -> other.level() == RuleLevel.MUST && sameThings(one, other)))
                .toList();
    }

    private static boolean sameThings(Finding one, Finding other) {
        return !one.placements().isEmpty()
                && !one.fixtures().isEmpty()
                && one.placements().equals(other.placements())
                && one.fixtures().equals(other.fixtures());
    }

    private List<Finding> worse(Breakage there) {
        return findings.stream()
                .filter(finding -> more(finding, there) > 0)
                .filter(finding ->
                        finding.level() == RuleLevel.MUST || cost(RuleAt.of(finding)) > there.cost(RuleAt.of(finding)))
                .sorted(Comparator.comparing(Finding::level).thenComparing(finding -> -more(finding, there)))
                .toList();
    }
}
