package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Asked;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Priority;

/** All that a scenario asks for and that a plan holds, and the problems in which only some of it is asked for. */
final class Wishes {
    private final Problem problem;
    private final Plan plan;
    private final Names names;
    private final Map<String, Wish> all = new LinkedHashMap<>();
    /** Names of all that can be asked for, what is not owed too. */
    private final Set<String> everything = new HashSet<>();

    private final Map<String, String> aimOf = new HashMap<>();

    /**
     * Wishes of a problem.
     *
     * @param plan the plan that the problem was built from, every session with its id
     */
    Wishes(Problem problem, Plan plan) {
        this.problem = problem;
        this.plan = plan;
        names = new Names(problem);
        problem.sessions.forEach(this::addHeld);
        problem.aims.forEach(this::addAim);
        problem.groups.forEach(this::addHighDays);
    }

    /** All of them: what is held first, then what is owed, in the order of the documents. */
    List<Wish> all() {
        return List.copyOf(all.values());
    }

    /** The wish of a name, or null. */
    @Nullable
    Wish named(String id) {
        return all.get(id);
    }

    private void add(Wish wish) {
        all.put(wish.id(), wish);
    }

    private void addHeld(Session session) {
        boolean extra = session.aim == null && session.before != null;
        if (!session.pin.isNone() || extra) {
            String id = "pin " + session.id;
            add(new Wish(id, RuleLevel.MUST, session.group, session.week, null, session, held(session, extra)));
        }
        if (session.aim != null) {
            aimOf.put(session.id, name(session.aim, session.week));
        }
    }

    private String held(Session session, boolean extra) {
        String what = subject(session);
        if (extra && session.pin.isNone()) {
            return "the extra session " + what;
        }
        return session.pin.out() ? "the pin that leaves out " + what : "the pin of " + what;
    }

    /** A session with its time, if it has one. */
    String subject(Session session) {
        Stimulus at = session.before;
        String when = at == null ? "" : " (" + Names.moment(problem.calendar.moment(at.start)) + ")";
        return session.family.family.label() + of(session.group) + when;
    }

    private String name(AimInfo aim, int week) {
        return Asked.aim(aim.group.group.id(), aim.aim.key(), problem.calendar.date(7 * week));
    }

    private void addAim(AimInfo aim) {
        boolean spare = aim.aim.priority() == Priority.SPARE;
        boolean judged = owes(aim.group, "aim-least");
        for (int week = 0; week < problem.calendar.weeks(); week++) {
            String id = name(aim, week);
            everything.add(id);
            int owed = aim.least(week) - aim.commitments[week];
            if (owed > 0 && judged && !spare) {
                RuleLevel level = aim.aim.priority() == Priority.KEY ? RuleLevel.KEY : RuleLevel.MAIN;
                String times = owed == 1 ? "" : owed == 2 ? " twice" : " " + owed + " times";
                String name = aim.family.family.label() + times + of(aim.group) + in(week);
                add(new Wish(id, level, aim.group, week, aim, null, name));
            }
        }
    }

    private void addHighDays(GroupInfo group) {
        for (int week = 0; week < problem.calendar.weeks(); week++) {
            String id = Asked.highDays(group.group.id(), problem.calendar.date(7 * week));
            everything.add(id);
            PerWeek days = group.highDays(week);
            boolean judged = owes(group, "high-days-least");
            if (days != null && days.least() > 0 && judged) {
                String name = Names.count(days.least(), "high day") + of(group) + in(week);
                add(new Wish(id, RuleLevel.KEY, group, week, null, null, name));
            }
        }
    }

    private static boolean owes(GroupInfo group, String rule) {
        return group.settings.level(rule).compareTo(RuleLevel.MAIN) <= 0;
    }

    private String of(GroupInfo group) {
        return problem.groups.size() < 2 ? "" : " of " + group.group.label();
    }

    private String in(int week) {
        return problem.calendar.weeks() < 2 ? "" : " in " + names.week(7 * week);
    }

    /** All but some wishes. */
    static Asked without(Collection<Wish> some) {
        return new Asked(some.stream().map(Wish::id).collect(Collectors.toSet()));
    }

    /** The problem in which only some wishes are asked for; sessions that serve none of them are not there. */
    Problem of(Collection<Wish> some) {
        Set<String> wanted = some.stream().map(Wish::id).collect(Collectors.toSet());
        Set<String> aside = new HashSet<>(everything);
        aside.removeAll(wanted);
        List<Placement> placements = new ArrayList<>();
        for (Placement placement : plan.placements()) {
            String id = Objects.requireNonNull(placement.id());
            String pin = "pin " + id;
            boolean served = wanted.contains(aimOf.getOrDefault(id, ""));
            if (all.containsKey(pin) ? wanted.contains(pin) : served) {
                placements.add(placement);
            }
        }
        List<LeftOut> leftOut = plan.leftOut().stream()
                .filter(left -> wanted.contains("pin " + left.id()))
                .toList();
        return ProblemBuilder.of(
                problem.scenario, Plans.with(plan, placements, leftOut), PlanUse.START, new Asked(aside));
    }
}
