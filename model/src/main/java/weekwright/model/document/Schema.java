package weekwright.model.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import weekwright.model.document.Node.Kind;

/**
 * A JSON Schema (2020-12) as far as our own use it: type, const, enum, pattern, format, ranges, lengths, required,
 * properties, additionalProperties, propertyNames, items, default, examples, {@code $ref}, and {@code anyOf} of a schema
 * and null. Two keywords are ours: {@code x-usually} names the field whose value is the usual one, {@code x-terse} says
 * that fields at their usual value are not written.
 *
 * <p>All of it is worked out at once, so that many readers may use it at the same time.
 */
final class Schema {
    /** What is said here, and what the schemas referred to say besides. */
    private final Map<String, Node> keywords = new HashMap<>();

    private final boolean nullable;
    private final String form;
    private final List<String> types;
    private final List<String> values;
    private final List<String> required;
    private final Map<String, BigDecimal> bounds = new HashMap<>();
    private final Optional<Pattern> pattern;
    private final Map<String, Schema> properties = new LinkedHashMap<>();
    private final Optional<Schema> others;
    private final Optional<Schema> items;
    private final Optional<Schema> names;

    /**
     * Works out a schema with all its parts.
     *
     * @param definitions what references lead to
     * @param known schemas worked out before
     */
    private Schema(Node node, Node definitions, Map<Node, Schema> known) {
        known.put(node, this);
        List<Node> layers = new ArrayList<>();
        nullable = gather(node, definitions, layers);
        layers.forEach(layer -> layer.fields().forEach(keywords::putIfAbsent));
        form = layers.get(layers.size() - 1).field("description").text().orElse("another value");
        Node type = keyword("type");
        types = type.is(Kind.LIST) ? written(type) : type.text().stream().toList();
        values = keyword("const").present() ? List.of(keyword("const").written()) : written(keyword("enum"));
        required = written(keyword("required"));
        keywords.forEach((name, value) -> value.exact().ifPresent(bound -> bounds.put(name, bound)));
        pattern = keyword("pattern").text().map(Pattern::compile);
        keyword("properties").fields().forEach((name, part) -> properties.put(name, of(part, definitions, known)));
        others = part("additionalProperties", definitions, known);
        items = part("items", definitions, known);
        names = part("propertyNames", definitions, known);
    }

    /** The schema of a whole document. */
    static Schema of(Node document) {
        return of(document, document.field("$defs"), new IdentityHashMap<>());
    }

    private static Schema of(Node node, Node definitions, Map<Node, Schema> known) {
        Schema schema = known.get(node);
        return schema == null ? new Schema(node, definitions, known) : schema;
    }

    private Optional<Schema> part(String keyword, Node definitions, Map<Node, Schema> known) {
        Node node = keyword(keyword);
        return node.is(Kind.OBJECT) ? Optional.of(of(node, definitions, known)) : Optional.empty();
    }

    /** Gathers a schema and what it refers to; whether null may stand instead. */
    private static boolean gather(Node node, Node definitions, List<Node> layers) {
        layers.add(node);
        boolean orNull = false;
        List<Node> either = node.list("anyOf");
        if (!either.isEmpty()) {
            gather(either.get(0), definitions, layers);
            orNull = true;
        }
        Optional<String> ref = node.field("$ref").text();
        if (ref.isPresent()) {
            String name = ref.get().substring(ref.get().lastIndexOf('/') + 1);
            orNull |= gather(definitions.field(name), definitions, layers);
        }
        return orNull;
    }

    private static List<String> written(Node list) {
        return list.items().stream().map(Node::written).toList();
    }

    /** What a keyword says, here or in the schema referred to; nothing where it is not used. */
    Node keyword(String name) {
        return keywords.getOrDefault(name, Node.NOTHING);
    }

    /** What the innermost schema says of itself: of a form such as a date, where the outer one says what it is for. */
    String form() {
        return form;
    }

    /** Whether null may stand here. */
    boolean nullable() {
        return nullable;
    }

    Optional<String> title() {
        return keyword("title").text();
    }

    /** The types that are allowed; empty where an enum or a constant says what is. */
    List<String> types() {
        return types;
    }

    /** The values that are allowed, as they are written; empty where any are. */
    List<String> values() {
        return values;
    }

    /** Whether the values that are allowed are numbers. */
    boolean ofNumbers() {
        Node constant = keyword("const");
        return (constant.present() ? constant : keyword("enum").items().get(0)).is(Kind.NUMBER);
    }

    /** The pattern that the whole text must match. */
    Optional<Pattern> pattern() {
        return pattern;
    }

    Optional<BigDecimal> bound(String keyword) {
        return Optional.ofNullable(bounds.get(keyword));
    }

    List<String> required() {
        return required;
    }

    /** The fields that are known, in the order of the schema. */
    Map<String, Schema> properties() {
        return properties;
    }

    /**
     * The schema of a field.
     *
     * @throws IllegalStateException when the schema does not know it
     */
    Schema property(String name) {
        Schema property = properties().get(name);
        if (property == null) {
            throw new IllegalStateException("the schema does not know \"" + name + "\"");
        }
        return property;
    }

    /** What fields that are not named must be, where such are allowed. */
    Optional<Schema> others() {
        return others;
    }

    /** What items must be. */
    Optional<Schema> items() {
        return items;
    }

    /** What the names of fields must be, where that is said. */
    Optional<Schema> names() {
        return names;
    }
}
