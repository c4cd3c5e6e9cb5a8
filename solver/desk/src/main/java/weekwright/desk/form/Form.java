package weekwright.desk.form;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.page.FormField;
import weekwright.desk.view.page.FormField.Control;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.document.Problem;
import weekwright.model.document.Shape;
import weekwright.model.scenario.Scenario;

/**
 * One thing of a scenario in a form. What is sent becomes a part of the document, and the whole document is read as if it came
 * from a file: a form can save nothing that a file could not hold, and says the same of it.
 */
public final class Form implements Editable {
    private static final String SCENARIO = "scenario";
    private static final List<String> WEEK = List.of("title", "zone", "firstDay", "days", "gridMinutes", "packs");

    private final Scenario scenario;
    private final Part part;
    private final int index;
    private final Map<String, Object> document;
    private Map<String, Object> thing;
    private Wrong wrong = Wrong.nothing();
    private String fresh = "";
    private @Nullable Scenario changed;

    private Form(Scenario scenario, Part part, int index) {
        this.scenario = scenario;
        this.part = part;
        this.index = index;
        this.document = Documents.apart(scenario);
        this.thing = part == Part.WEEK ? document : Paths.map(index < list().size() ? list().get(index) : null);
    }

    /** The form of a thing that is there; of one that is new where it has the number that follows the last. */
    public static Form of(Scenario scenario, Part part, int index) {
        return new Form(scenario, part, index);
    }

    /** The form of a new thing, with what goes without saying filled in. */
    public static Form fresh(Scenario scenario, Part part) {
        Form form = new Form(scenario, part, size(scenario, part));
        boolean together = part == Part.FIXTURES || part == Part.COMMITMENTS || part == Part.ATHLETES;
        if (together && scenario.groups().size() == 1) {
            form.thing.put(
                    "groups", new ArrayList<>(List.of(scenario.groups().get(0).id())));
        }
        return form;
    }

    /** How many there are of a part. */
    public static int size(Scenario scenario, Part part) {
        return Paths.list(Documents.apart(scenario).get(part.id())).size();
    }

    /**
     * The number of a thing in its list, by its id, or by its number from 1 where such things have no id.
     *
     * @return empty where there is none
     */
    public static OptionalInt find(Scenario scenario, Part part, String key) {
        List<Object> list = Paths.list(Documents.apart(scenario).get(part.id()));
        for (int i = 0; i < list.size(); i++) {
            if (key(list.get(i), i).equals(key)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static String key(Object thing, int index) {
        Object id = Paths.map(thing).get("id");
        return id == null ? Integer.toString(index + 1) : id.toString();
    }

    private List<Object> list() {
        return Paths.list(document.get(part.id()));
    }

    private Shape shape() {
        Shape whole = Documents.shape(SCENARIO);
        if (part != Part.WEEK) {
            return java.util.Objects.requireNonNull(whole.field(part.id()).items());
        }
        Map<String, Shape> fields = new LinkedHashMap<>(whole.fields());
        fields.keySet().retainAll(WEEK);
        return new Shape(whole.type(), whole.about(), whole.wanted(), true, false, List.of(), null, null, null, fields);
    }

    private String path() {
        return part == Part.WEEK ? "" : part.id();
    }

    /** Fills the form with what was sent. */
    public Form filled(Map<String, List<String>> sent) {
        Map<String, Object> fields = new Sent(sent).fields(shape(), thing, path(), "");
        if (part == Part.WEEK) {
            WEEK.forEach(document::remove);
            Map<String, Object> whole = new LinkedHashMap<>(document);
            document.clear();
            document.putAll(fields);
            whole.forEach(document::putIfAbsent);
        } else {
            thing = fields;
        }
        return this;
    }

    @Override
    public void grow(String list) {
        fresh = Rows.grown(shape(), thing, list);
    }

    @Override
    public void shrink(String row) {
        Rows.shrunk(shape(), thing, row);
    }

    @Override
    public boolean read(boolean half) {
        List<Object> list = list();
        if (part != Part.WEEK) {
            if (index < list.size()) {
                list.set(index, thing);
            } else {
                list.add(named());
            }
            document.put(part.id(), list);
        }
        return whole(part == Part.WEEK ? "" : part.id() + "[" + index + "]", half);
    }

    @Override
    public boolean without() {
        List<Object> list = list();
        if (index < list.size()) {
            list.remove(index);
        }
        document.put(part.id(), list);
        return whole("-", false);
    }

    private boolean whole(String root, boolean half) {
        changed = null;
        try {
            Scenario read = Documents.readScenario(
                    "the form", Documents.writeAny(document).getBytes(StandardCharsets.UTF_8));
            wrong = Wrong.nothing();
            changed = read;
        } catch (DocumentException e) {
            List<Problem> problems = e.problems();
            wrong = Wrong.of(problems, root, half, this::where);
        }
        if (!half && !naming().isEmpty() && !thing.containsKey(naming())) {
            wrong.add(naming(), "");
        }
        return wrong.isEmpty() && changed != null;
    }

    private String naming() {
        return part == Part.WEEK ? "title" : part.naming();
    }

    /** A new thing gets an id from its name; a coach never sees it. */
    private Map<String, Object> named() {
        if (!shape().fields().containsKey("id")) {
            return thing;
        }
        List<String> taken = list().stream()
                .map(other -> Paths.text(Paths.map(other).get("id")))
                .toList();
        String stem = stem(Paths.text(thing.get(naming())));
        String id = stem;
        for (int number = 2; taken.contains(id); number++) {
            id = stem + "-" + number;
        }
        Map<String, Object> named = new LinkedHashMap<>();
        named.put("id", id);
        named.putAll(thing);
        return named;
    }

    private String stem(String name) {
        StringBuilder plain = new StringBuilder();
        Normalizer.normalize(name, Normalizer.Form.NFD)
                .codePoints()
                .map(Character::toLowerCase)
                .forEach(letter -> {
                    if ((letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9')) {
                        plain.appendCodePoint(letter);
                    } else if (Character.getType(letter) != Character.NON_SPACING_MARK) {
                        plain.append('-');
                    }
                });
        String tidy = plain.toString().replaceAll("-+", "-").replaceAll("^-|-$", "");
        String stem = tidy.substring(0, Math.min(tidy.length(), 40)).replaceAll("-$", "");
        return stem.isEmpty() ? part.one().replace(' ', '-') : stem;
    }

    /** A place of the document in words: list and name. */
    private String where(String path) {
        Matcher at = Pattern.compile("([a-zA-Z]+)(?:\\[([0-9]+)])?.*").matcher(path);
        if (!at.matches()) {
            return path.isEmpty() ? "The whole" : path;
        }
        String list = Part.named(at.group(1)).map(Part::title).orElse(at.group(1));
        if (at.group(2) == null) {
            return list;
        }
        List<Object> things = Paths.list(document.get(at.group(1)));
        int number = Integer.parseInt(at.group(2));
        Map<String, Object> one = Paths.map(number < things.size() ? things.get(number) : null);
        Object label = one.getOrDefault("label", one.getOrDefault("name", one.get("id")));
        return list + ", " + (label == null ? "number " + (number + 1) : label);
    }

    /** The scenario with the thing as it was sent; only where nothing is wrong. */
    public Scenario changed() {
        if (changed == null) {
            throw new IllegalStateException("what is wrong has to be mended first");
        }
        return changed;
    }

    /** What the thing is called. */
    public String label() {
        String name = Paths.text(thing.get(naming()));
        return name.isEmpty() ? Paths.text(thing.getOrDefault("id", part.one())) : name;
    }

    @Override
    public FormField shown() {
        List<FormField> parts = new Fields(new Offers(scenario), wrong, fresh).of(shape(), thing, path(), "");
        return new FormField(Control.PART, "", "", "", "", false, false, "", "", List.of(), parts, List.of(), false);
    }

    @Override
    public List<String> elsewhere() {
        return wrong.rest();
    }

    /** Things of a part in short: where each is found, what it is called. */
    public static Map<String, String> labels(Scenario scenario, Part part) {
        Map<String, String> labels = new LinkedHashMap<>();
        List<Object> list = Paths.list(Documents.apart(scenario).get(part.id()));
        for (int i = 0; i < list.size(); i++) {
            Map<String, Object> thing = Paths.map(list.get(i));
            Object label = thing.getOrDefault("label", thing.getOrDefault("name", thing.get("id")));
            labels.put(key(thing, i), label == null ? part.one() + " " + BigDecimal.valueOf(i + 1L) : label.toString());
        }
        return labels;
    }
}
