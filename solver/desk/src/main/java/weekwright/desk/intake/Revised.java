package weekwright.desk.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/** Scenarios with one of their lists changed. */
final class Revised {
    private Revised() {}

    static Scenario fixtures(Scenario old, List<Fixture> fixtures) {
        return of(old, old.groups(), old.athletes(), fixtures, old.facilities(), old.history());
    }

    static Scenario history(Scenario old, List<LogEntry> history) {
        return of(old, old.groups(), old.athletes(), old.fixtures(), old.facilities(), history);
    }

    static Scenario athletes(Scenario old, List<Athlete> athletes) {
        return of(old, old.groups(), athletes, old.fixtures(), old.facilities(), old.history());
    }

    static Scenario groups(Scenario old, List<Group> groups) {
        return of(old, groups, old.athletes(), old.fixtures(), old.facilities(), old.history());
    }

    static Scenario facilities(Scenario old, List<Facility> facilities) {
        return of(old, old.groups(), old.athletes(), old.fixtures(), facilities, old.history());
    }

    private static Scenario of(
            Scenario old,
            List<Group> groups,
            List<Athlete> athletes,
            List<Fixture> fixtures,
            List<Facility> facilities,
            List<LogEntry> history) {
        return new Scenario(
                old.weekwright(),
                old.id(),
                old.title(),
                old.zone(),
                old.firstDay(),
                old.days(),
                old.gridMinutes(),
                groups,
                athletes,
                fixtures,
                old.commitments(),
                facilities,
                old.transfers(),
                old.staff(),
                history,
                old.catalogue(),
                old.rules(),
                old.packs());
    }

    /** A list and one more. */
    static <T> List<T> and(List<T> list, T one) {
        List<T> more = new ArrayList<>(list);
        more.add(one);
        return more;
    }

    /** A list in which one, found by its id, is changed. */
    static <T> List<T> changed(List<T> list, Function<T, String> ids, String id, UnaryOperator<T> change) {
        return list.stream()
                .map(one -> ids.apply(one).equals(id) ? change.apply(one) : one)
                .toList();
    }
}
