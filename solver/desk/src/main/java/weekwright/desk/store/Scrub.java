package weekwright.desk.store;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/**
 * Takes one athlete out of any document: the entry, every mention by id, whatever was the athlete's alone, and the name in
 * every text. It walks the JSON and knows no record, so that a field added tomorrow is not passed over.
 */
final class Scrub {
    /** Stands in texts where the name stood. */
    static final String SOMEONE = "someone";

    /** Fields that hold free text even where it is one word. */
    private static final Set<String> FREE = Set.of("label", "title", "why", "note", "text", "noRemedy", "source", "do");
    /** Lists of athletes' ids. */
    private static final Set<String> LISTS = Set.of("athletes", "except");

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private final String athlete;
    private final List<Pattern> words;
    private final Set<String> commitments = new TreeSet<>();
    private final Map<String, String> digests = new HashMap<>();

    /**
     * @param athlete the athlete's id
     * @param names every name that the athlete has had
     */
    Scrub(String athlete, Set<String> names) {
        this.athlete = athlete;
        this.words = words(athlete, names);
    }

    /** The longest first, so that no rest of a name stays. An id is one only where no other id goes on round it. */
    private static List<Pattern> words(String athlete, Set<String> names) {
        Set<String> spelt = new TreeSet<>(
                Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()));
        for (String name : names) {
            spelt.add(name);
            spelt.add(Normalizer.normalize(name, Normalizer.Form.NFC));
            spelt.add(Normalizer.normalize(name, Normalizer.Form.NFD));
        }
        List<Pattern> words = new ArrayList<>();
        for (String name : spelt) {
            int flags = name.contains(" ") ? Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE : 0;
            words.add(Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])", flags));
        }
        words.add(Pattern.compile("(?<![\\p{L}\\p{N}-])" + Pattern.quote(athlete) + "(?![\\p{L}\\p{N}-])"));
        return words;
    }

    /** A text without the athlete. */
    String text(String text) {
        String clean = text;
        for (Pattern word : words) {
            clean = word.matcher(clean).replaceAll(SOMEONE);
        }
        return clean;
    }

    /** A version's documents without the athlete, read again to be sure of them. The oldest version comes first. */
    Texts texts(Version version) {
        Contents contents = version.contents();
        Texts old = Texts.of(contents);
        Map<Part, byte[]> texts = new EnumMap<>(Part.class);
        try {
            Scenario scenario = Documents.readScenario(Part.SCENARIO.file(), cleaned(old, Part.SCENARIO));
            texts.put(Part.SCENARIO, Texts.utf8(Documents.write(scenario)));
            digests.put(Documents.digest(contents.scenario()), Documents.digest(scenario));
            for (Part part : List.of(Part.PLAN, Part.LOG)) {
                if (old.get(part) != null) {
                    texts.put(part, cleaned(old, part));
                }
            }
            return Texts.of(new Texts(texts).read());
        } catch (DocumentException e) {
            throw new StoreFault("Revision " + version.number() + " could not be rewritten without the athlete: "
                    + e.problems().get(0) + " Nothing was changed.");
        }
    }

    /** A plan goes on naming the scenario that it was made for. */
    private byte[] cleaned(Texts old, Part part) {
        byte[] text = old.get(part);
        ObjectNode clean = (ObjectNode) value("", MAPPER.readTree(text == null ? new byte[0] : text));
        String made = clean.path("scenarioDigest").asString("");
        if (digests.containsKey(made)) {
            clean.put("scenarioDigest", digests.get(made));
        }
        return MAPPER.writeValueAsBytes(clean);
    }

    private JsonNode value(String field, JsonNode node) {
        if (node instanceof ObjectNode object) {
            ObjectNode clean = JsonNodeFactory.instance.objectNode();
            object.properties().forEach(entry -> clean.set(entry.getKey(), value(entry.getKey(), entry.getValue())));
            return clean;
        }
        if (node instanceof ArrayNode list) {
            ArrayNode clean = JsonNodeFactory.instance.arrayNode();
            for (JsonNode item : list) {
                if (!concernsOnlyTheAthlete(field, item)) {
                    clean.add(value(field, item));
                }
            }
            return clean;
        }
        if (node instanceof StringNode) {
            return JsonNodeFactory.instance.stringNode(string(field, node.stringValue()));
        }
        return node;
    }

    /** Names of others stay, even where two people share one; ids and times have no spaces. */
    private String string(String field, String text) {
        boolean free = FREE.contains(field) || (text.contains(" ") && !field.equals("name"));
        return free ? text(text) : text;
    }

    private boolean concernsOnlyTheAthlete(String list, JsonNode item) {
        if (item instanceof StringNode) {
            String id = item.stringValue();
            return (LISTS.contains(list) && id.equals(athlete))
                    || (list.equals("commitments") && commitments.contains(id));
        }
        if (is(item.path("athlete")) || (list.equals("athletes") && is(item.path("id")))) {
            return true;
        }
        if (list.equals("commitments") && isForTheAthleteAlone(item)) {
            commitments.add(item.path("id").asString(""));
            return true;
        }
        return false;
    }

    private boolean isForTheAthleteAlone(JsonNode commitment) {
        JsonNode people = commitment.path("athletes");
        return commitment.path("groups").isEmpty() && people.size() == 1 && is(people.path(0));
    }

    private boolean is(JsonNode id) {
        return id instanceof StringNode && id.stringValue().equals(athlete);
    }
}
