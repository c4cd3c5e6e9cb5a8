package weekwright.model.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Marks and results: each measure has fields of its own. */
final class Measures {
    private static final Map<String, List<String>> OF_MARKS = marks();
    private static final Map<String, List<String>> OF_RESULTS = results();

    private Measures() {}

    private static Map<String, List<String>> marks() {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        fields.put("sprint", List.of("metres", "seconds", "start", "timing"));
        fields.put("lift", List.of("lift", "kg", "repetitions"));
        fields.put("aerobic-speed", List.of("metresPerSecond"));
        return fields;
    }

    private static Map<String, List<String>> results() {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        fields.put("sprint", List.of("metres", "seconds"));
        fields.put("lift", List.of("lift", "kg", "repetitions"));
        return fields;
    }

    /** A measured best. */
    static void mark(Node mark, Faults faults) {
        check(mark, OF_MARKS, "mark", faults);
    }

    /** What was measured in a session. */
    static void result(Node result, Faults faults) {
        Node measure = result.field("measure");
        if (measure.written().equals("aerobic-speed")) {
            faults.add(
                    measure,
                    "an aerobic speed is no result of a session",
                    "Give sprint or lift here; write an aerobic speed as a mark of the athlete.");
        }
        check(result, OF_RESULTS, "result", faults);
    }

    private static void check(Node entry, Map<String, List<String>> fields, String kind, Faults faults) {
        String measure = entry.field("measure").written();
        List<String> needed = fields.get(measure);
        if (needed == null) {
            return;
        }
        for (String field : needed) {
            Node value = entry.field(field);
            if (!isGiven(value)) {
                faults.missing(entry, field, "A " + measure + " " + kind + " needs " + String.join(", ", needed) + ".");
            }
        }
        for (String other : all(fields)) {
            Node value = entry.field(other);
            if (!needed.contains(other) && isGiven(value)) {
                faults.add(
                        value,
                        "\"" + other + "\" does not belong to a " + measure + " " + kind,
                        "Take it out, or make a " + kind + " of its own of it.");
            }
        }
    }

    private static boolean isGiven(Node value) {
        return value.is(Node.Kind.LIST) ? !value.items().isEmpty() : value.present();
    }

    private static Iterable<String> all(Map<String, List<String>> fields) {
        TreeSet<String> all = new TreeSet<>();
        fields.values().forEach(all::addAll);
        return all;
    }
}
