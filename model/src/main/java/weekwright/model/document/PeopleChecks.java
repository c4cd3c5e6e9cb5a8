package weekwright.model.document;

import java.time.LocalDate;
import java.util.Optional;

/** Athletes with their marks and restrictions, and staff. */
final class PeopleChecks {
    private final Node scenario;
    private final Known known;
    private final TimeChecks times;
    private final Faults faults;

    PeopleChecks(Node scenario, Known known, TimeChecks times, Faults faults) {
        this.scenario = scenario;
        this.known = known;
        this.times = times;
        this.faults = faults;
    }

    void check() {
        scenario.list("athletes").forEach(this::athlete);
        scenario.list("staff").forEach(this::member);
    }

    private void athlete(Node athlete) {
        athlete.list("groups").forEach(id -> known.group(id, faults));
        times.windows(athlete.list("windows"));
        times.spans(athlete.list("away"));
        born(athlete.field("born"));
        athlete.list("marks").forEach(mark -> Measures.mark(mark, faults));
        athlete.list("restrictions")
                .forEach(restriction -> times.dates(restriction.field("from"), restriction.field("to")));
    }

    private void born(Node born) {
        Optional<LocalDate> first = faults.sound(scenario.field("firstDay")).date();
        Optional<LocalDate> birth = born.date();
        if (first.isPresent() && birth.isPresent() && !birth.get().isBefore(first.get())) {
            faults.add(born, born.written() + " is not before the first day of the plan", "Give the date of birth.");
        }
    }

    private void member(Node member) {
        member.list("leads").forEach(family -> known.family(family, faults));
        times.windows(member.list("windows"));
        times.spans(member.list("away"));
    }
}
