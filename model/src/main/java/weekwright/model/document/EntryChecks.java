package weekwright.model.document;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Entries of a history or a log. */
final class EntryChecks {
    private final Known known;
    private final Faults faults;

    EntryChecks(Known known, Faults faults) {
        this.known = known;
        this.faults = faults;
    }

    void check(List<Node> entries) {
        entries.forEach(this::entry);
    }

    private void entry(Node entry) {
        Node family = entry.field("family");
        known.group(entry.field("group"), faults);
        known.family(family, faults);
        known.variant(entry.field("variant"), family, faults);
        entry.list("except").forEach(id -> known.athlete(id, faults));
        Set<String> seen = new HashSet<>();
        for (Node person : entry.list("people")) {
            Node athlete = person.field("athlete");
            known.athlete(athlete, faults);
            person.list("results").forEach(result -> Measures.result(result, faults));
            if (athlete.id().isPresent() && !seen.add(athlete.written())) {
                faults.add(athlete, Shown.value(athlete) + " is there twice", "Put all of one athlete into one entry.");
            }
        }
    }
}
