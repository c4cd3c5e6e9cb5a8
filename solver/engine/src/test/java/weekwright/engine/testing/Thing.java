package weekwright.engine.testing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Lends;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Travel;

/** Something at a time, as it is told: a session placed, a fixture, a commitment or an entry of history. */
final class Thing {
    enum Kind {
        PLACED,
        FIXTURE,
        COMMITMENT,
        DONE
    }

    final Kind kind;
    final String id;
    final @Nullable String family;
    final Moment start;
    List<String> groups;

    @Nullable
    Integer minutes;

    @Nullable
    String facility;

    Dose dose = Dose.FULL;
    Pin pin = Pin.NONE;

    @Nullable
    String lead;

    @Nullable
    String variant;

    @Nullable
    Effort effort;

    @Nullable
    Double rpe;

    @Nullable
    Lends lends;

    FixtureWeight weight = FixtureWeight.REGULAR;
    Travel travel = Travel.NONE;

    @Nullable
    Integer playMinutes;

    @Nullable
    Integer taperDays;

    boolean done = true;
    final List<String> athletes = new ArrayList<>();
    final List<Appearance> expected = new ArrayList<>();
    final List<Appearance> played = new ArrayList<>();
    final List<PersonEntry> people = new ArrayList<>();

    Thing(Kind kind, String id, @Nullable String family, String start, String group) {
        this.kind = kind;
        this.id = id;
        this.family = family;
        this.start = Moment.parse(start);
        groups = List.of(group);
    }

    Placement placement(Naming naming) {
        return new Placement(
                null,
                naming.id(groups.get(0)),
                given(family),
                start,
                minutes,
                facility == null ? null : naming.id(facility),
                lead == null ? null : naming.id(lead),
                dose,
                variant,
                pin.isNone() ? null : pin);
    }

    Fixture fixture(Naming naming) {
        return new Fixture(
                naming.id(id),
                Naming.label(id),
                naming.ids(groups),
                given(family),
                start,
                given(minutes),
                playMinutes,
                weight,
                travel,
                taperDays,
                appearances(expected, naming),
                appearances(played, naming));
    }

    Commitment commitment(Naming naming) {
        return new Commitment(
                naming.id(id),
                Naming.label(id),
                athletes.isEmpty() ? naming.ids(groups) : List.of(),
                naming.ids(athletes),
                family,
                start,
                given(minutes),
                facility == null ? null : naming.id(facility),
                effort,
                lends);
    }

    LogEntry entry(Naming naming) {
        return new LogEntry(
                null,
                null,
                null,
                naming.id(groups.get(0)),
                given(family),
                start,
                given(minutes),
                dose,
                variant,
                rpe,
                done,
                naming.ids(athletes),
                people.stream().map(person -> person(person, naming)).toList(),
                null);
    }

    private static PersonEntry person(PersonEntry person, Naming naming) {
        return new PersonEntry(
                naming.id(person.athlete()), null, person.minutes(), List.of(), person.topSpeedShare(), null, null);
    }

    private static List<Appearance> appearances(List<Appearance> all, Naming naming) {
        return all.stream()
                .map(one -> new Appearance(naming.id(one.athlete()), one.minutes()))
                .toList();
    }

    private static <T> T given(@Nullable T value) {
        return java.util.Objects.requireNonNull(value);
    }
}
