package weekwright.desk.view.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Names;
import weekwright.desk.view.Words;
import weekwright.desk.view.plan.PlanPage.Entry;
import weekwright.desk.view.plan.PlanPage.Kind;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Travel;

/** All that lies in a plan's days: fixtures, what is fixed, and the sessions placed. */
public final class Entries {
    private final Scenario scenario;
    private final Names names;
    private final List<Laid> all;

    /** The entries of a plan. */
    public Entries(Scenario scenario, Names names, Plan plan) {
        this.scenario = scenario;
        this.names = names;
        all = Stream.of(
                        scenario.fixtures().stream().map(this::laid),
                        scenario.commitments().stream().map(this::laid),
                        plan.placements().stream().map(this::laid))
                .flatMap(found -> found)
                .sorted(Comparator.comparing(laid -> laid.entry().start().instant(scenario.zone())))
                .toList();
    }

    /**
     * An entry with what it belongs to.
     *
     * @param id its id in the document
     * @param groups ids of the groups that it is for
     * @param athletes ids of the athletes that it is for by name, where it is for no group
     * @param facility id of its place, or null
     * @param placement the placement that it shows, or null where it is fixed
     */
    public record Laid(
            String id,
            List<String> groups,
            List<String> athletes,
            @Nullable String facility,
            @Nullable Placement placement,
            Entry entry) {
        LocalDate date() {
            return entry.start().date();
        }
    }

    /** All entries in order of time. */
    public List<Laid> all() {
        return all;
    }

    /** What a group has on a date, in order of time. */
    List<Entry> of(String group, LocalDate date) {
        return all.stream()
                .filter(laid -> laid.groups().contains(group) && laid.date().equals(date))
                .map(Laid::entry)
                .toList();
    }

    private Laid laid(Fixture fixture) {
        List<String> notes = new ArrayList<>();
        if (fixture.weight() != FixtureWeight.REGULAR) {
            notes.add(fixture.weight().id() + " fixture");
        }
        if (!fixture.travel().equals(Travel.NONE)) {
            notes.add("travel " + fixture.travel().outMinutes() + " min out, "
                    + fixture.travel().backMinutes() + " back");
        }
        Entry entry = new Entry(
                Kind.FIXTURE,
                fixture.start(),
                end(fixture.start(), fixture.minutes()),
                fixture.label(),
                null,
                null,
                notes);
        return new Laid(fixture.id(), fixture.groups(), List.of(), null, null, entry);
    }

    private Laid laid(Commitment commitment) {
        String effort = commitment.effort() == null
                ? "fixed"
                : "fixed, " + commitment.effort().id();
        Entry entry = new Entry(
                Kind.FIXED,
                commitment.start(),
                end(commitment.start(), commitment.minutes()),
                commitment.label(),
                null,
                names.facility(commitment.facility()),
                List.of(effort));
        return new Laid(
                commitment.id(), commitment.groups(), commitment.athletes(), commitment.facility(), null, entry);
    }

    private Laid laid(Placement placement) {
        Integer minutes = placement.minutes();
        Entry entry = new Entry(
                Kind.SESSION,
                placement.start(),
                minutes == null ? null : end(placement.start(), minutes),
                names.family(placement.family()),
                Words.dose(placement.dose()),
                names.facility(placement.facility()),
                Stream.of(
                                names.variant(placement.family(), placement.variant()),
                                Words.whom(placement),
                                names.staff(placement.lead()),
                                Words.pinned(placement.held()))
                        .filter(Objects::nonNull)
                        .toList());
        String id = Objects.requireNonNullElse(placement.id(), "");
        return new Laid(id, List.of(placement.group()), List.of(), placement.facility(), placement, entry);
    }

    private Moment end(Moment start, int minutes) {
        Instant end = start.instant(scenario.zone()).plusSeconds(60L * minutes);
        return Moment.at(end, scenario.zone());
    }
}
