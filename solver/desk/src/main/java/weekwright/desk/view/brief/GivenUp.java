package weekwright.desk.view.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.Words;
import weekwright.model.plan.Blocker;
import weekwright.model.plan.CheapestOption;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** What a group was to do in a week and does not, or not in full, each with its reason in a few words. */
final class GivenUp {
    private static final int MOST_REASONS = 3;

    private final Plan plan;
    private final Group group;
    private final Names names;
    private final LocalDate first;
    private final LocalDate last;

    GivenUp(Scenario scenario, Plan plan, Group group, LocalDate first, LocalDate last) {
        this.plan = plan;
        this.group = group;
        this.first = first;
        this.last = last;
        names = new Names(scenario);
    }

    /** What is missing, the most important first, then what is done in a smaller dose than it could be. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        Map<String, List<LeftOut>> byAim = new LinkedHashMap<>();
        plan.leftOut().stream()
                .filter(left ->
                        left.id().startsWith(group.id() + "/") && left.id().contains("/" + first + "/"))
                .sorted(Comparator.comparing(LeftOut::level))
                .forEach(left -> byAim.computeIfAbsent(aim(left.id()), aim -> new ArrayList<>())
                        .add(left));
        byAim.forEach((aim, missing) -> lines.add(missing(aim, missing)));
        smallDoses(lines);
        return lines;
    }

    /** {@code family} or {@code family+whom} of {@code group/family+whom/week/n}. */
    private static String aim(String id) {
        String rest = id.substring(id.indexOf('/') + 1);
        return rest.substring(0, rest.indexOf('/'));
    }

    private String missing(String aim, List<LeftOut> missing) {
        LeftOut one = missing.get(0);
        String importance =
                one.level() == RuleLevel.WANT ? "" : " (" + one.level().id() + ")";
        boolean others = plan.placements().stream()
                .anyMatch(session ->
                        session.id() != null && session.id().startsWith(group.id() + "/" + aim + "/" + first + "/"));
        String count = !others
                ? "none this week"
                : missing.size() == 1 ? "one fewer than wanted" : missing.size() + " fewer than wanted";
        return label(aim) + importance + ": " + count + "; " + why(one) + ".";
    }

    private String label(String aim) {
        return Words.brief(names.family(aim.replaceFirst("\\+.*", "")));
    }

    private static String why(LeftOut one) {
        if (one.pin() != null && one.pin().out()) {
            return "left out on purpose";
        }
        CheapestOption best = one.cheapest();
        if (best == null) {
            return "no free time is long enough for it";
        }
        if (best.change().must() <= 0) {
            return "it would find a place, on " + Dates.day(best.start().date()) + " at " + Dates.clock(best.start())
                    + " at best, "
                    + (better(best.change())
                            ? "and the plan would be better for it"
                            : "but bring no more than it costs");
        }
        List<String> reasons = one.blockers().stream()
                .limit(MOST_REASONS)
                .map(Blocker::rule)
                .map(InTheWay::of)
                .toList();
        return "wherever it could lie, " + Words.joined(reasons, " or ");
    }

    /** Whether the gravest level that changes at all changes for the better. */
    private static boolean better(Totals change) {
        double[] levels = {change.must(), change.key(), change.main(), change.want()};
        return Arrays.stream(levels).filter(level -> level != 0).findFirst().orElse(0) < 0;
    }

    private void smallDoses(List<String> lines) {
        plan.placements().stream()
                .filter(session -> session.group().equals(group.id()) && session.dose() != Dose.FULL)
                .filter(session -> !session.start().date().isBefore(first)
                        && !session.start().date().isAfter(last))
                .filter(session -> couldBeFull(session.family()))
                .forEach(session -> lines.add(Words.brief(names.family(session.family())) + ": a "
                        + Words.dose(session.dose()) + " only, on "
                        + Dates.day(session.start().date()) + "."));
    }

    private boolean couldBeFull(String family) {
        return group.aims().stream()
                .filter(aim -> aim.family().equals(family))
                .map(Aim::doses)
                .anyMatch(doses -> doses.isEmpty() || doses.contains(Dose.FULL));
    }
}
