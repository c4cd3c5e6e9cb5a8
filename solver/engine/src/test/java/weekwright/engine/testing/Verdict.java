package weekwright.engine.testing;

import java.util.List;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.Finding;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Totals;

/** How a plan stands, with a few questions that tests ask. */
public record Verdict(Judged judged) {
    /** All findings. */
    public List<Finding> findings() {
        return judged.plan().findings();
    }

    /** The findings of one rule, in the order in which they are shown. */
    public List<Finding> of(String rule) {
        return findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .toList();
    }

    /** The figures of the findings of one rule. */
    public List<Amount> amounts(String rule) {
        return of(rule).stream().map(Amount::of).toList();
    }

    /** The one finding of a rule. */
    public Finding only(String rule) {
        List<Finding> found = of(rule);
        if (found.size() != 1) {
            throw new AssertionError("one finding of " + rule + " was expected, found " + found);
        }
        return found.get(0);
    }

    /** The one session that is left out. */
    public LeftOut leftOut() {
        List<LeftOut> all = judged.plan().leftOut();
        if (all.size() != 1) {
            throw new AssertionError("one session left out was expected, found " + all);
        }
        return all.get(0);
    }

    /** The totals. */
    public Totals totals() {
        return java.util.Objects.requireNonNull(judged.plan().totals());
    }
}
