package weekwright.model.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** A scenario while it is being changed. */
final class Draft {
    final List<Group> groups;
    final List<Athlete> athletes;
    final List<Fixture> fixtures;
    final List<Commitment> commitments;
    final List<Facility> facilities;
    final List<LogEntry> history;
    private final Scenario of;

    Draft(Scenario of) {
        this.of = of;
        groups = new ArrayList<>(of.groups());
        athletes = new ArrayList<>(of.athletes());
        fixtures = new ArrayList<>(of.fixtures());
        commitments = new ArrayList<>(of.commitments());
        facilities = new ArrayList<>(of.facilities());
        history = new ArrayList<>(of.history());
    }

    Scenario scenario() {
        return of.withGroups(groups)
                .withAthletes(athletes)
                .withFixtures(fixtures)
                .withCommitments(commitments)
                .withFacilities(facilities)
                .withHistory(history);
    }

    /** All of a local date, from its first moment: midnight is not one in every zone on every day. */
    Away wholeDay(LocalDate day) {
        return new Away(first(day), first(day.plusDays(1)), null);
    }

    private Moment first(LocalDate day) {
        return Moment.at(day.atStartOfDay(of.zone()).toInstant(), of.zone());
    }

    /** Changes those that are meant, of which there must be one. */
    static <T> void change(List<T> all, Predicate<T> meant, UnaryOperator<T> change, String what, String id) {
        if (all.stream().noneMatch(meant)) {
            throw unknown(what, id);
        }
        all.replaceAll(one -> meant.test(one) ? change.apply(one) : one);
    }

    static IllegalArgumentException unknown(String what, String id) {
        return new IllegalArgumentException("no " + what + " is called \"" + id + "\"");
    }

    static <T> List<T> with(List<T> all, T one) {
        List<T> more = new ArrayList<>(all);
        more.add(one);
        return more;
    }

    static Commitment with(Commitment one, List<String> groups, List<String> athletes) {
        return new Commitment(
                one.id(),
                one.label(),
                groups,
                athletes,
                one.family(),
                one.start(),
                one.minutes(),
                one.facility(),
                one.effort(),
                one.lends());
    }
}
