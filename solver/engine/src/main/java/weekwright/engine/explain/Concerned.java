package weekwright.engine.explain;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.model.scenario.Pathway;

/** Which sessions might mend a finding: those that it is about, and those that are missing where something is missing. */
final class Concerned {
    private final Problem problem;
    private final Judge judge;

    Concerned(Problem problem, Judge judge) {
        this.problem = problem;
        this.judge = judge;
    }

    /** The sessions of a finding. */
    List<Session> by(Fact fact) {
        Set<Session> all = new LinkedHashSet<>();
        if (fact.session() != null) {
            all.add(fact.session());
        }
        fact.things().stream()
                .filter(Stimulus::placed)
                .map(thing -> problem.sessions.get(thing.index))
                .forEach(all::add);
        boolean ofAim = fact.aim() != null && fact.session() == null;
        if (ofAim) {
            addMissing(Objects.requireNonNull(fact.aim()), week(fact.firstDay()), all);
        }
        if (!ofAim && (fact.things().isEmpty() || all.isEmpty()) && fact.session() == null) {
            addOnDays(fact, all);
        }
        return List.copyOf(all);
    }

    /** Where a quality is missing, only sessions that train it hard can mend that. */
    private static boolean wanted(Fact fact, FamilyInfo family) {
        return switch (fact.rule().id()) {
            case "speed-exposure" -> family.family.high(Pathway.MAX_VELOCITY_SPRINT);
            case "pathway-neglected" -> family.family.high(Pathway.values()[fact.detail()]);
            default -> true;
        };
    }

    private int week(int day) {
        return Math.floorDiv(Math.max(0, Math.min(problem.calendar.days() - 1, day)), 7);
    }

    /** The sessions of an aim's week are alike: the first that is missing stands for all. */
    private void addMissing(AimInfo aim, int week, Set<Session> all) {
        aim.sessions.get(week).stream()
                .filter(session -> judge.at(session) == null)
                .min(java.util.Comparator.comparing(session -> session.pin.out()))
                .ifPresent(all::add);
    }

    /** What a finding about days may come from: what lies on them or beside them, and what is missing in their weeks. */
    private void addOnDays(Fact fact, Set<Session> all) {
        for (Session session : problem.sessions) {
            Stimulus at = judge.at(session);
            boolean near = at != null && at.day >= fact.firstDay() - 1 && at.day <= fact.lastDay() + 1;
            if (near && session.group == fact.group() && wanted(fact, session.family)) {
                all.add(session);
            }
        }
        List<AimInfo> aims = problem.aims.stream()
                .filter(aim -> aim.group == fact.group() && wanted(fact, aim.family))
                .toList();
        for (int week = week(fact.firstDay()); week <= week(fact.lastDay()); week++) {
            for (AimInfo aim : aims) {
                addMissing(aim, week, all);
            }
        }
    }
}
