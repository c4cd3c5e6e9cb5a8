package weekwright.engine.rules;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Hours;
import weekwright.model.scenario.Pathway;

/** How far rules about two things reach: as far as the largest hours that a family or a rule's numbers ask for. */
final class PairReach {
    private static final int DAY = 24 * 60;
    /** A clock that is put back makes a day longer by at most so much. */
    private static final int CLOCK_CHANGE = 2 * 60;

    private PairReach() {}

    /** Days between the dates of two things beyond which no gap between them can be too short. */
    static int days(Problem problem) {
        int hours = 0;
        int longest = 0;
        for (Session session : problem.sessions) {
            hours = Math.max(hours, asked(session.family));
            for (Stimulus option : session.options) {
                longest = Math.max(longest, option.minutes());
            }
        }
        for (Stimulus fixed : problem.fixed) {
            hours = Math.max(hours, fixed.family == null ? 0 : asked(fixed.family));
            longest = Math.max(longest, fixed.occupiedEnd - fixed.occupiedStart);
        }
        hours = Math.max(hours, asked(problem.shortAppearance));
        for (GroupInfo group : problem.groups) {
            hours = Math.max(hours, asked(group));
        }
        return (hours + longest + CLOCK_CHANGE) / DAY + 1;
    }

    private static int asked(FamilyInfo info) {
        Family family = info.family;
        List<@Nullable Hours> all = new ArrayList<>(family.afterHours().values());
        all.add(family.againHours());
        all.add(family.crossHours());
        all.add(family.beforeFixtureHours());
        all.add(family.beforeFixtureMicroHours());
        int most = 0;
        for (Hours hours : all) {
            most = Math.max(most, Math.max(FamilyInfo.must(hours), FamilyInfo.want(hours)));
        }
        return most;
    }

    private static int asked(GroupInfo group) {
        double most = 0;
        for (Pathway pathway : Pathway.values()) {
            for (String rule : List.of("pathway-gap-floor", "pathway-gap")) {
                most = Math.max(
                        most, group.settings.keyed(rule, "hours", pathway.id()).orElse(0));
            }
        }
        return (int) Math.round(most * 60);
    }
}
