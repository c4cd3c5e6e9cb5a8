package weekwright.model.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.Node.Kind;

/**
 * A JSON Schema (2020-12) as far as our own use it: type, const, enum, pattern, format, ranges, lengths, required,
 * properties, additionalProperties, propertyNames, items, default, examples, {@code $ref}, and {@code anyOf} of a schema
 * and null. Two keywords are ours: {@code x-usually} names the field whose value is the usual one, {@code x-terse} says
 * that fields at their usual value are not written.
 */
final class Schema {
    private final Node root;
    private final Map<Node, Schema> known;
    /** The schema itself first, then what it refers to. */
    private final List<Node> layers = new ArrayList<>();

    private boolean nullable;
    private @Nullable Pattern pattern;
    private @Nullable Map<String, Schema> properties;

    private Schema(Node root, Node node, Map<Node, Schema> known) {
        this.root = root;
        this.known = known;
        gather(node);
    }

    /** The schema of a whole document. */
    static Schema of(Node root) {
        return of(root, root, new IdentityHashMap<>());
    }

    private static Schema of(Node root, Node node, Map<Node, Schema> known) {
        Schema schema = known.get(node);
        if (schema == null) {
            schema = new Schema(root, node, known);
            known.put(node, schema);
        }
        return schema;
    }

    private void gather(Node node) {
        layers.add(node);
        List<Node> either = node.list("anyOf");
        if (!either.isEmpty()) {
            nullable = true;
            gather(either.get(0));
        }
        node.field("$ref").text().ifPresent(ref -> gather(target(ref)));
    }

    private Node target(String ref) {
        return root.field("$defs").field(ref.substring(ref.lastIndexOf('/') + 1));
    }

    /** What a keyword says, here or in the schema referred to; nothing where it is not used. */
    Node keyword(String name) {
        return layers.stream()
                .map(layer -> layer.field(name))
                .filter(Node::present)
                .findFirst()
                .orElse(Node.NOTHING);
    }

    /** What the innermost schema says of itself: of a form such as a date, where the outer one says what it is for. */
    String form() {
        return layers.get(layers.size() - 1).field("description").text().orElse("another value");
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
        Node type = keyword("type");
        return type.is(Kind.LIST)
                ? type.items().stream().map(Node::written).toList()
                : type.text().stream().toList();
    }

    /** The values that are allowed, as they are written; empty where any are. */
    List<String> values() {
        Node constant = keyword("const");
        return constant.present()
                ? List.of(constant.written())
                : keyword("enum").items().stream().map(Node::written).toList();
    }

    /** The pattern that the whole text must match. */
    Optional<Pattern> pattern() {
        if (pattern == null) {
            pattern = keyword("pattern").text().map(Pattern::compile).orElse(null);
        }
        return Optional.ofNullable(pattern);
    }

    Optional<BigDecimal> bound(String keyword) {
        return keyword(keyword).exact();
    }

    List<String> required() {
        return keyword("required").items().stream().map(Node::written).toList();
    }

    /** The fields that are known, in the order of the schema. */
    Map<String, Schema> properties() {
        if (properties == null) {
            Map<String, Schema> found = new LinkedHashMap<>();
            keyword("properties").fields().forEach((name, node) -> found.put(name, of(root, node, known)));
            properties = found;
        }
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
        return sub("additionalProperties");
    }

    /** What the names of fields must be, where that is said. */
    Optional<Schema> names() {
        return sub("propertyNames");
    }

    /** What items must be. */
    Optional<Schema> items() {
        return sub("items");
    }

    private Optional<Schema> sub(String keyword) {
        Node node = keyword(keyword);
        return node.is(Kind.OBJECT) ? Optional.of(of(root, node, known)) : Optional.empty();
    }
}
