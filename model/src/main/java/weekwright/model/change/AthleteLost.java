package weekwright.model.change;

import java.util.List;
import java.util.function.Predicate;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/**
 * An athlete is not with the squad: the scenario goes on without, the groups with one less.
 *
 * @param athlete the athlete's id
 */
public record AthleteLost(String athlete) implements Event {
    @Override
    public Scenario after(Scenario scenario) {
        Draft draft = new Draft(scenario);
        Athlete lost = scenario.athletes().stream()
                .filter(one -> one.id().equals(athlete))
                .findFirst()
                .orElseThrow(() -> Draft.unknown("athlete", athlete));
        draft.athletes.remove(lost);
        draft.groups.replaceAll(one -> lost.groups().contains(one.id()) ? oneLess(one, scenario) : one);
        draft.fixtures.replaceAll(this::without);
        draft.commitments.removeIf(one -> one.athletes().equals(List.of(athlete)));
        draft.commitments.replaceAll(this::without);
        draft.history.replaceAll(this::without);
        return draft.scenario();
    }

    private Group oneLess(Group group, Scenario scenario) {
        long listed = scenario.athletes().stream()
                .filter(one -> one.groups().contains(group.id()))
                .count();
        Integer headcount = group.headcount();
        if (Math.max(listed, headcount == null ? 0 : headcount) <= 1) {
            throw new IllegalArgumentException(
                    "nobody else is in the group \"" + group.id() + "\": it cannot train without \"" + athlete + "\"");
        }
        return headcount == null ? group : group.withHeadcount(headcount - 1);
    }

    private Fixture without(Fixture one) {
        return one.withExpected(others(one.expected(), this::athlete)).withPlayed(others(one.played(), this::athlete));
    }

    private boolean athlete(Appearance appearance) {
        return appearance.athlete().equals(athlete);
    }

    private Commitment without(Commitment one) {
        return Draft.with(one, one.groups(), others(one.athletes(), athlete::equals));
    }

    private LogEntry without(LogEntry one) {
        return one.withPeople(
                others(one.except(), athlete::equals),
                others(one.people(), person -> person.athlete().equals(athlete)));
    }

    private static <T> List<T> others(List<T> all, Predicate<T> lost) {
        return all.stream().filter(lost.negate()).toList();
    }
}
