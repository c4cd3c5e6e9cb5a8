package weekwright.desk.store;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/** What is written of a revision beside its documents: a flat JSON object. */
final class RevisionFile {
    /** Its name in the revision's folder. */
    static final String NAME = "revision.json";

    private static final String FORM = "weekwright";
    private static final JsonFactory FACTORY = new JsonFactory();

    private RevisionFile() {}

    static byte[] write(Revision revision) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put(FORM, Scenario.VERSION);
        fields.putAll(revision.fields());
        return Texts.utf8(Documents.writeAny(fields));
    }

    /**
     * Reads what was written; fields that are not known are passed over.
     *
     * @throws DamagedException when something is missing or of the wrong form
     * @throws StoreFault when a newer version of the program wrote it
     */
    static Revision read(Path file, byte[] utf8, int number, boolean beside) throws DamagedException {
        try {
            Map<String, String> fields = fields(utf8);
            if (Integer.parseInt(wanted(fields, FORM)) > Scenario.VERSION) {
                throw StoreFault.newer(file);
            }
            if (Integer.parseInt(wanted(fields, "revision")) != number) {
                throw new DamagedException("it says that it is another revision");
            }
            return new Revision(
                    number,
                    Instant.parse(wanted(fields, "at")),
                    wanted(fields, "label"),
                    Integer.parseInt(wanted(fields, "shows")),
                    beside,
                    digests(fields));
        } catch (JacksonException | DateTimeException | NumberFormatException e) {
            throw new DamagedException("its particulars cannot be read");
        }
    }

    private static Map<String, String> digests(Map<String, String> fields) throws DamagedException {
        Map<String, String> digests = new LinkedHashMap<>();
        for (Part part : Part.values()) {
            if (part == Part.SCENARIO || fields.containsKey(part.file())) {
                digests.put(part.file(), wanted(fields, part.file()));
            }
        }
        return digests;
    }

    private static String wanted(Map<String, String> fields, String name) throws DamagedException {
        String value = fields.get(name);
        if (value == null) {
            throw new DamagedException("its particulars lack \"" + name + "\"");
        }
        return value;
    }

    private static Map<String, String> fields(byte[] utf8) {
        Map<String, String> fields = new LinkedHashMap<>();
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), utf8)) {
            parser.nextToken();
            while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
                String name = parser.currentName();
                if (parser.nextToken().isStructStart()) {
                    parser.skipChildren();
                } else {
                    fields.put(name, parser.getString());
                }
            }
        }
        return fields;
    }
}
