package weekwright.desk.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/**
 * Documents in force with others put in their place.
 *
 * @param texts all of them afterwards, as the program writes them
 * @param changed those that now say something else
 * @param unfit those that did not fit a changed scenario any more and are left out
 */
record Merge(Texts texts, List<Part> changed, List<Part> unfit) {
    /** What becomes of a document that cannot be used: it is passed over, unless this throws. */
    interface Unusable {
        void found(Part part, DocumentException why) throws DocumentException, IOException;
    }

    /** A document that cannot be used ends it all. */
    static final Unusable REFUSED = (part, why) -> {
        throw why;
    };

    /**
     * Puts documents in their places.
     *
     * @param base the documents in force
     * @param offered the bytes of others
     * @throws DocumentException when an offered one cannot be used and {@code unusable} throws it
     */
    static Merge of(Texts base, Map<Part, byte[]> offered, Unusable unusable) throws DocumentException, IOException {
        Map<Part, byte[]> merged = new EnumMap<>(Part.class);
        List<Part> changed = new ArrayList<>();
        List<Part> unfit = new ArrayList<>();
        for (Part part : Part.values()) {
            byte[] kept = base.get(part);
            byte[] given = offered.get(part);
            if (given != null) {
                try {
                    byte[] text = written(part, given, merged);
                    merged.put(part, text);
                    if (!Arrays.equals(text, kept)) {
                        changed.add(part);
                    }
                    continue;
                } catch (DocumentException e) {
                    unusable.found(part, e);
                }
            }
            if (kept != null) {
                if (fits(part, kept, merged, changed)) {
                    merged.put(part, kept);
                } else {
                    unfit.add(part);
                }
            }
        }
        return new Merge(new Texts(merged), List.copyOf(changed), List.copyOf(unfit));
    }

    private static boolean fits(Part part, byte[] kept, Map<Part, byte[]> merged, List<Part> changed) {
        if (!changed.contains(Part.SCENARIO)) {
            return true;
        }
        try {
            return written(part, kept, merged).length > 0;
        } catch (DocumentException e) {
            return false;
        }
    }

    /** A document read against the scenario before it, as the program writes it. */
    private static byte[] written(Part part, byte[] text, Map<Part, byte[]> merged) throws DocumentException {
        String file = part.file();
        if (part == Part.SCENARIO) {
            return Texts.utf8(Documents.write(Documents.readScenario(file, text)));
        }
        Scenario scenario =
                Documents.readScenario(Part.SCENARIO.file(), merged.getOrDefault(Part.SCENARIO, new byte[0]));
        return Texts.utf8(
                part == Part.PLAN
                        ? Documents.write(Documents.readPlan(file, text, scenario))
                        : Documents.write(Documents.readLog(file, text, scenario)));
    }
}
