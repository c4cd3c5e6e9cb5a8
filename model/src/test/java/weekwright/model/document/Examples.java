package weekwright.model.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import weekwright.model.plan.Log;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** The documents of the tests: one week of one squad, sound or broken in one place. */
final class Examples {
    private Examples() {}

    /**
     * A document that is broken on purpose.
     *
     * @param what what is wrong with it
     * @param text the broken document
     * @param faults the lines that must be said of it
     */
    record Broken(String what, String text, List<String> faults) {
        @Override
        public String toString() {
            return what;
        }
    }

    static String text(String name) {
        try (InputStream in = Examples.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static Scenario scenario() throws DocumentException {
        return Documents.readScenario("week.json", bytes(text("scenario.json")));
    }

    static Plan plan() throws DocumentException {
        return Documents.readPlan("plan.json", bytes(text("plan.json")), scenario());
    }

    static Log log() throws DocumentException {
        return Documents.readLog("log.json", bytes(text("log.json")), scenario());
    }

    /** The text with one passage exchanged, which must be there exactly once. */
    static String changed(String text, String passage, String instead) {
        int at = text.indexOf(passage);
        if (at < 0 || text.indexOf(passage, at + 1) >= 0) {
            throw new IllegalArgumentException("not there exactly once: " + passage);
        }
        return text.substring(0, at) + instead + text.substring(at + passage.length());
    }

    /**
     * The broken forms of a sound document. In the file a line begins with == (what is broken), - (a passage), + (what
     * stands in its place) or ! (a line that must be said).
     */
    static List<Broken> broken(String sound, String file) {
        List<Broken> all = new ArrayList<>();
        for (String block : text(file).split("(?m)^== ", -1)) {
            if (!block.isBlank()) {
                all.add(one(text(sound), block.lines().toList()));
            }
        }
        return all;
    }

    private static Broken one(String sound, List<String> lines) {
        String text = sound;
        String passage = "";
        List<String> faults = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String rest = line.length() > 2 ? line.substring(2) : "";
            switch (line.charAt(0)) {
                case '-' -> passage = rest;
                case '+' -> text = changed(text, passage, rest);
                case '!' -> faults.add(rest);
                default -> throw new IllegalArgumentException("no such line: " + line);
            }
        }
        return new Broken(lines.get(0), text, faults);
    }

    static List<Broken> brokenScenarios() {
        return broken("scenario.json", "broken-scenarios.txt");
    }

    static List<Broken> brokenPlans() {
        return broken("plan.json", "broken-plans.txt");
    }

    static List<Broken> brokenLogs() {
        return broken("log.json", "broken-logs.txt");
    }
}
