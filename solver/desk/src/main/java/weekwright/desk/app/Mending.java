package weekwright.desk.app;

import java.util.List;
import weekwright.desk.app.Workplace.Seen;
import weekwright.engine.Engine;
import weekwright.engine.explain.Judged;
import weekwright.engine.explain.Remedied;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Remedy;
import weekwright.model.scenario.Scenario;

/** Does what would help with a finding: one session elsewhere, or one thing of the coach's. */
public final class Mending {
    private Mending() {}

    /**
     * What came of it.
     *
     * @param text what was done and what it changed, in a sentence
     */
    public record Mended(Scenario scenario, Judged judged, String text) {}

    /**
     * The documents after what would help was done, judged anew.
     *
     * @param seen a revision with what would help
     * @param number number of the finding among those of the plan, from 0
     * @throws InputFault when nothing would help with it
     */
    public static Mended of(Planner planner, Seen seen, int number) {
        List<Finding> findings = seen.judged().plan().findings();
        Remedy remedy = number < findings.size() ? findings.get(number).remedy() : null;
        Remedied remedied = remedy == null
                ? null
                : Engine.remedied(seen.scenario(), seen.judged().plan(), number);
        if (remedy == null || remedied == null) {
            throw new InputFault("nothing is known that would help there: load the page again");
        }
        return new Mended(remedied.scenario(), planner.judge(remedied.scenario(), remedied.plan()), remedy.text());
    }
}
