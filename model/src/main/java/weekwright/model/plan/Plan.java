package weekwright.model.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.scenario.Moment;

/**
 * What is placed, and how it stands.
 *
 * @param weekwright version of the document form, 1
 * @param scenario id of the scenario
 * @param scenarioDigest {@code sha256:} and the digest of the scenario as written, or null in a plan written by hand
 * @param published when it was given out, or null for a draft
 * @param solver how it was made, or null in a plan written by hand
 * @param placements sorted by start, then id
 * @param softened ids of the rules that the scenario changes from their usual setting
 */
public record Plan(
        int weekwright,
        String scenario,
        @Nullable String scenarioDigest,
        @Nullable Moment published,
        @Nullable Solver solver,
        List<Placement> placements,
        List<LeftOut> leftOut,
        List<String> softened,
        @Nullable Totals totals,
        List<Finding> findings) {
    public Plan {
        placements = Ids.listed(placements);
        leftOut = Ids.listed(leftOut);
        softened = Ids.listed(softened);
        findings = Ids.listed(findings);
    }

    /** The same with other placements; all else stays as written, judged or not. */
    public Plan withPlacements(List<Placement> placements) {
        return copy(published, placements, leftOut, totals, findings);
    }

    /** The same with other findings. */
    public Plan withFindings(List<Finding> findings) {
        return copy(published, placements, leftOut, totals, findings);
    }

    /** The same, given out at a time. */
    public Plan withPublished(Moment published) {
        return copy(published, placements, leftOut, totals, findings);
    }

    /** The same with other sessions placed and left out, of which nothing has been judged yet. */
    public Plan withSessions(List<Placement> placements, List<LeftOut> leftOut) {
        return copy(published, placements, leftOut, null, List.of());
    }

    private Plan copy(
            @Nullable Moment published,
            List<Placement> placements,
            List<LeftOut> leftOut,
            @Nullable Totals totals,
            List<Finding> findings) {
        return new Plan(
                weekwright,
                scenario,
                scenarioDigest,
                published,
                solver,
                placements,
                leftOut,
                softened,
                totals,
                findings);
    }
}
