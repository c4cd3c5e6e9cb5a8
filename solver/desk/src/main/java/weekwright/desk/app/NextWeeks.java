package weekwright.desk.app;

import java.util.List;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.store.Contents;
import weekwright.model.change.AsPlanned;
import weekwright.model.change.NextWeek;
import weekwright.model.plan.Log;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/** A week that begins from an earlier one, ready to be kept in a folder of its own. */
public final class NextWeeks {
    private NextWeeks() {}

    /**
     * What the new folder begins with.
     *
     * @param asPlanned whether what was not written down is taken as done as planned
     * @param held whether what is held in the earlier week is held at the same times of the new one
     * @throws InputFault when the first day is not whole weeks later
     */
    public static Contents contents(Seen seen, NextWeek next, boolean asPlanned, boolean held, Planner planner) {
        Scenario before = seen.scenario();
        Plan plan = seen.judged().plan();
        try {
            Scenario after = next.after(before, done(seen, asPlanned));
            if (!held) {
                return new Contents(after, null, null);
            }
            Plan fitting = Refit.of(next.held(before, plan), after).plan();
            return new Contents(after, planner.quick().judge(after, fitting).plan(), null);
        } catch (IllegalArgumentException e) {
            throw new InputFault("the first day " + e.getMessage());
        }
    }

    private static List<LogEntry> done(Seen seen, boolean asPlanned) {
        Log log = seen.log();
        if (!asPlanned) {
            return log == null ? List.of() : log.entries();
        }
        List<Placement> placements = seen.judged().plan().placements();
        return AsPlanned.done(seen.scenario(), placements, log);
    }
}
