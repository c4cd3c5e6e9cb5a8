package weekwright.scenarios;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;
import weekwright.model.Nearest;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/** The demo weeks and the judged weeks that come with the program. All people, places and teams in them are invented. */
public final class Scenarios {
    private Scenarios() {}

    /** The demo scenarios, in the order in which they are shown. */
    public static List<Demo> all() {
        // Read token by token: to have it bound would keep the first page of the desk waiting.
        List<Demo> demos = new ArrayList<>();
        try (JsonParser index = new JsonFactory().createParser(ObjectReadContext.empty(), resource("index.json"))) {
            index.nextToken();
            while (index.nextToken() == JsonToken.START_OBJECT) {
                demos.add(demo(index));
            }
        }
        return List.copyOf(demos);
    }

    private static Demo demo(JsonParser index) {
        Map<String, String> fields = new HashMap<>();
        for (String field = index.nextName(); field != null; field = index.nextName()) {
            fields.put(field, index.nextStringValue());
        }
        return new Demo(field(fields, "name"), field(fields, "title"), field(fields, "note"));
    }

    private static String field(Map<String, String> fields, String name) {
        return Objects.requireNonNull(fields.get(name), () -> "a demo without its " + name);
    }

    /**
     * Reads a demo scenario.
     *
     * @param name one of the names in {@link #all}
     * @throws IllegalArgumentException when there is none of that name
     */
    public static Scenario read(String name) {
        return scenario(name + ".json", bytes(name));
    }

    /**
     * The file of a demo scenario as it was written, in UTF-8.
     *
     * @throws IllegalArgumentException when there is none of that name
     */
    public static byte[] bytes(String name) {
        if (!known(name)) {
            List<String> names = all().stream().map(Demo::name).toList();
            throw new IllegalArgumentException(
                    "no demo scenario is called \"" + name + "\": " + Nearest.hint(name, names));
        }
        return resource(name + ".json");
    }

    /** Whether a file of that name is there; the index is read only where it is asked for, for reading it takes time. */
    private static boolean known(String name) {
        boolean plain = name.matches("[a-z0-9][a-z0-9-]*") && !name.equals("index");
        return plain && Scenarios.class.getResource(name + ".json") != null;
    }

    /**
     * Reads a judged week with its plan.
     *
     * @param letter A to E, small or capital
     * @throws IllegalArgumentException when it is another letter
     */
    public static JudgedWeek week(char letter) {
        String week = String.valueOf(letter).toLowerCase(Locale.ROOT);
        WorkedWeek worked = workedWeeks().stream()
                .filter(one -> one.week().equals(week))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("no judged week is called [" + letter + "]: there are A to E"));
        String name = "judged-weeks/week-" + week;
        Scenario scenario = scenario(name + ".scenario.json", resource(name + ".scenario.json"));
        try {
            String file = name + ".plan.json";
            return new JudgedWeek(
                    week.toUpperCase(Locale.ROOT).charAt(0),
                    scenario,
                    Documents.readPlan(file, resource(file), scenario),
                    worked.worked());
        } catch (DocumentException e) {
            throw new IllegalStateException("the judged week " + letter + " cannot be read", e);
        }
    }

    /** All judged weeks, best first. */
    public static List<JudgedWeek> weeks() {
        return workedWeeks().stream().map(one -> week(one.week().charAt(0))).toList();
    }

    /** A file that lies with the scenarios. */
    static byte[] resource(String name) {
        try (InputStream data = Scenarios.class.getResourceAsStream(name)) {
            if (data == null) {
                throw new IllegalStateException("the file " + name + " is missing: build the program anew");
            }
            return data.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the file " + name + " cannot be read", e);
        }
    }

    private static Scenario scenario(String file, byte[] utf8) {
        try {
            return Documents.readScenario(file, utf8);
        } catch (DocumentException e) {
            throw new IllegalStateException("the scenario " + file + " cannot be read", e);
        }
    }

    private static List<WorkedWeek> workedWeeks() {
        return JsonMapper.shared()
                .readValue(resource("judged-weeks/index.json"), new TypeReference<List<WorkedWeek>>() {});
    }

    private record WorkedWeek(String week, List<JudgedWeek.Worked> worked) {}
}
