package weekwright.model.document;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Places and the ways between them. */
final class PlaceChecks {
    private final Node scenario;
    private final Known known;
    private final TimeChecks times;
    private final Faults faults;

    PlaceChecks(Node scenario, Known known, TimeChecks times, Faults faults) {
        this.scenario = scenario;
        this.known = known;
        this.times = times;
        this.faults = faults;
    }

    void check() {
        for (Node facility : scenario.list("facilities")) {
            times.windows(facility.list("open"));
            times.spans(facility.list("closed"));
        }
        Map<List<String>, Node> ways = new HashMap<>();
        scenario.list("transfers").forEach(way -> way(way, ways));
    }

    private void way(Node way, Map<List<String>, Node> seen) {
        Node between = way.field("between");
        between.items().forEach(id -> known.facility(id, faults));
        List<String> ends = between.items().stream().map(Node::written).sorted().toList();
        Node first = ends.size() == 2 ? seen.putIfAbsent(ends, way) : null;
        if (first != null) {
            faults.add(
                    way,
                    "a second way between " + Shown.quoted(ends.get(0)) + " and " + Shown.quoted(ends.get(1))
                            + "; the first is at " + faults.place(first),
                    "Keep one; it holds either way.");
        }
    }
}
