package weekwright.model.document;

import java.util.List;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.RuleSetting;

/** Rule settings and packs of a scenario or a group. */
final class RuleChecks {
    private static final String PACKS = "packs";

    private final Rulebook rulebook;
    private final Faults faults;
    private final Schema setting =
            Schemas.of("scenario").property("rules").others().orElseThrow();

    RuleChecks(Rulebook rulebook, Faults faults) {
        this.rulebook = rulebook;
        this.faults = faults;
    }

    /** Checks the {@code rules} and {@code packs} of a scenario or a group. */
    void check(Node owner) {
        owner.field("rules").fields().forEach(this::setting);
        List<String> packs = ids(true);
        owner.list(PACKS).forEach(pack -> Known.check(pack, packs, "rule pack", faults));
    }

    private void setting(String id, Node value) {
        if (rulebook.find(id).isEmpty()) {
            faults.name(value, "no rule is called " + Shown.quoted(id), Shown.meant(id, ids(false)));
        } else if (!faults.broken(value)) {
            rulebook.faults(id, RecordReader.read(value, setting, RuleSetting.class))
                    .forEach(line -> Lines.report(line, value, faults));
        }
    }

    private List<String> ids(boolean packs) {
        return rulebook.rules().stream()
                .filter(rule -> rule.theme().equals(PACKS) == packs)
                .map(Rule::id)
                .toList();
    }
}
