package weekwright.desk.app;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * A plan as a plan of a scenario that has changed since: what no longer fits is taken out, so that a coach who drops a group or
 * a place need not begin anew.
 *
 * @param plan the plan, not judged
 * @param lost how many sessions no longer fit
 */
record Refit(Plan plan, int lost) {
    static Refit of(Plan plan, Scenario scenario) {
        List<LeftOut> heldOut =
                plan.leftOut().stream().filter(left -> left.pin() != null).toList();
        Plan bare = plan.withSessions(plan.placements(), heldOut);
        if (fits(bare, scenario)) {
            return new Refit(bare, 0);
        }
        List<Placement> kept = new ArrayList<>();
        for (Placement placement : plan.placements()) {
            Placement fitting = fitting(plan, placement, scenario);
            if (fitting != null) {
                kept.add(fitting);
            }
        }
        List<LeftOut> out = heldOut.stream()
                .filter(left -> fits(plan.withSessions(List.of(), List.of(left)), scenario))
                .toList();
        return new Refit(plan.withSessions(kept, out), plan.placements().size() - kept.size());
    }

    /** A placement as it can stay, perhaps without its place and its lead; null where it cannot. */
    private static @Nullable Placement fitting(Plan plan, Placement placement, Scenario scenario) {
        Placement loose = new Placement(
                placement.id(),
                placement.group(),
                placement.family(),
                placement.start(),
                placement.minutes(),
                null,
                null,
                placement.dose(),
                null,
                null);
        for (Placement trial : List.of(placement, placement.withPin(null), loose)) {
            if (fits(plan.withSessions(List.of(trial), List.of()), scenario)) {
                return trial;
            }
        }
        return null;
    }

    private static boolean fits(Plan plan, Scenario scenario) {
        try {
            Documents.readPlan("the plan", Documents.write(plan).getBytes(StandardCharsets.UTF_8), scenario);
            return true;
        } catch (DocumentException e) {
            return false;
        }
    }
}
