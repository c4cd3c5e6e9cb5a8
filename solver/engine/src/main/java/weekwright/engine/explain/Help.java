package weekwright.engine.explain;

import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Remedy;

/** What would help with a finding, or why nothing does: one of the two. */
record Help(@Nullable Remedy remedy, @Nullable String noRemedy) {
    static final Help COSTS_NOTHING = no("It costs nothing, so no remedy was looked for.");
    static final Help TOO_SMALL = no("It costs less than 2 points, so no remedy was looked for.");

    static final Help NOT_ASKED = no("No remedy was looked for.");

    static Help no(String why) {
        return new Help(null, why);
    }
}
