package weekwright.model.document;

import java.util.LinkedHashMap;
import java.util.Map;
import weekwright.model.scenario.Scenario;

/** Tells one document from another, and a form of today from one of tomorrow. */
final class Kinds {
    private static final Map<String, String> MARKS = marks();

    private Kinds() {}

    /** The field that only one kind of document has. */
    private static Map<String, String> marks() {
        Map<String, String> marks = new LinkedHashMap<>();
        marks.put("scenario", "groups");
        marks.put("plan", "placements");
        marks.put("log", "entries");
        return marks;
    }

    /**
     * Refuses a document of another kind, or of a later version of the form.
     *
     * @throws DocumentException with this one fault
     */
    static void check(Node document, String kind, Faults faults) throws DocumentException {
        Node version = document.field("weekwright");
        if (version.whole().orElse(Scenario.VERSION) > Scenario.VERSION) {
            throw faults.only(
                    version,
                    "the file has form " + version.written() + ", and this program reads form " + Scenario.VERSION,
                    "Use a newer version of the program, or ask for the file in the older form.");
        }
        for (Map.Entry<String, String> other : MARKS.entrySet()) {
            boolean isOther = !other.getKey().equals(kind)
                    && document.field(other.getValue()).present();
            if (isOther && !document.field(String.valueOf(MARKS.get(kind))).present()) {
                throw faults.only(
                        document,
                        "this is a " + other.getKey() + ", not a " + kind,
                        "Give the file of the " + kind + ".");
            }
        }
    }
}
