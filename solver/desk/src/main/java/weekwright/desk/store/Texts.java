package weekwright.desk.store;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Log;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** The bytes of a revision's documents. */
final class Texts {
    private final Map<Part, byte[]> bytes;

    Texts(Map<Part, byte[]> bytes) {
        this.bytes = new EnumMap<>(Part.class);
        this.bytes.putAll(bytes);
    }

    /** The documents as the program writes them. */
    static Texts of(Contents contents) {
        Map<Part, byte[]> bytes = new EnumMap<>(Part.class);
        bytes.put(Part.SCENARIO, utf8(Documents.write(contents.scenario())));
        Plan plan = contents.plan();
        if (plan != null) {
            bytes.put(Part.PLAN, utf8(Documents.write(plan)));
        }
        Log log = contents.log();
        if (log != null) {
            bytes.put(Part.LOG, utf8(Documents.write(log)));
        }
        return new Texts(bytes);
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** The bytes of one document, or null where there is none. */
    byte @Nullable [] get(Part part) {
        return bytes.get(part);
    }

    /** Whether all documents are byte for byte the same. */
    boolean same(Texts other) {
        return Arrays.stream(Part.values()).allMatch(part -> Arrays.equals(get(part), other.get(part)));
    }

    /** The digest of each document that is there, by the name of its file. */
    Map<String, String> digests() {
        Map<String, String> digests = new LinkedHashMap<>();
        bytes.forEach((part, text) -> digests.put(part.file(), Documents.digest(text)));
        return digests;
    }

    /**
     * The documents read.
     *
     * @throws DocumentException when one of them cannot be used; then with all that is wrong with it
     */
    Contents read() throws DocumentException {
        byte[] scenarioText = bytes.getOrDefault(Part.SCENARIO, new byte[0]);
        Scenario scenario = Documents.readScenario(Part.SCENARIO.file(), scenarioText);
        byte[] plan = get(Part.PLAN);
        byte[] log = get(Part.LOG);
        return new Contents(
                scenario,
                plan == null ? null : Documents.readPlan(Part.PLAN.file(), plan, scenario),
                log == null ? null : readLog(log, scenario));
    }

    private static Log readLog(byte[] log, Scenario scenario) throws DocumentException {
        return Documents.readLog(Part.LOG.file(), log, scenario);
    }
}
