package weekwright.model.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.Node.Kind;

/**
 * What may stand in a place of a document, as its schema says it: forms are made from it, so that a form and a file never
 * disagree.
 *
 * @param type what stands there
 * @param about what it is for, in a few words; may be empty
 * @param wanted what would be right: {@code a whole number from 1 to 84}
 * @param needed whether it must be given
 * @param optional whether it may be missing for good, and then means something of its own
 * @param values the only values that may stand there; empty where many may
 * @param usual the value where nothing is given, as it is written, or null
 * @param like name of the field beside it whose value it has where nothing is given, or null
 * @param items what stands in a list, or null
 * @param fields what stands in a set of fields, in the order in which it is written
 */
public record Shape(
        Type type,
        String about,
        String wanted,
        boolean needed,
        boolean optional,
        List<String> values,
        @Nullable String usual,
        @Nullable String like,
        @Nullable Shape items,
        Map<String, Shape> fields) {
    /** What stands in a place. */
    public enum Type {
        /** Free text. */
        TEXT,
        /** A whole number. */
        WHOLE,
        /** A number. */
        NUMBER,
        /** True or false. */
        TRUTH,
        /** A local date. */
        DATE,
        /** A local date and time. */
        MOMENT,
        /** A time of day. */
        CLOCK,
        /** Several of a kind. */
        LIST,
        /** A set of fields. */
        FIELDS,
        /** Anything else, such as values by names that are not known beforehand. */
        OTHER
    }

    public Shape {
        values = List.copyOf(values);
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    /** The shape of a document, such as {@code scenario}. */
    static Shape of(String document) {
        return of(Schemas.of(document), true);
    }

    private static Shape of(Schema schema, boolean needed) {
        Map<String, Shape> fields = new LinkedHashMap<>();
        schema.properties()
                .forEach((name, part) ->
                        fields.put(name, of(part, schema.required().contains(name))));
        Node usual = schema.keyword("default");
        return new Shape(
                type(schema),
                schema.keyword("description").text().orElse(""),
                Wanted.phrase(schema),
                needed,
                schema.nullable(),
                schema.values(),
                usual.is(Kind.NOTHING) || usual.is(Kind.LIST) || usual.is(Kind.OBJECT) ? null : usual.written(),
                schema.keyword("x-usually").text().orElse(null),
                schema.items().map(item -> of(item, true)).orElse(null),
                fields);
    }

    private static Type type(Schema schema) {
        if (!schema.values().isEmpty()) {
            return schema.ofNumbers() ? Type.WHOLE : Type.TEXT;
        }
        return switch (schema.types().get(0)) {
            case "boolean" -> Type.TRUTH;
            case "integer" -> Type.WHOLE;
            case "number" -> Type.NUMBER;
            case "array" -> Type.LIST;
            case "object" -> schema.properties().isEmpty() || schema.others().isPresent() ? Type.OTHER : Type.FIELDS;
            default -> text(schema);
        };
    }

    private static Type text(Schema schema) {
        Optional<String> format = schema.keyword("format").text();
        if (format.isPresent()) {
            return format.get().equals("date") ? Type.DATE : Type.MOMENT;
        }
        return schema.title().filter("time of day"::equals).isPresent() ? Type.CLOCK : Type.TEXT;
    }

    /** The field of a name. */
    public Shape field(String name) {
        Shape field = fields.get(name);
        if (field == null) {
            throw new IllegalArgumentException("there is no field " + name);
        }
        return field;
    }

    /**
     * A document taken apart into maps, lists, texts, numbers and truths that may be changed; written again with
     * {@link Documents#writeAny} it is the same document.
     */
    static Map<String, Object> apart(Node document) {
        Map<String, Object> fields = new LinkedHashMap<>();
        document.fields().forEach((name, value) -> put(fields, name, value));
        return fields;
    }

    private static void put(Map<String, Object> fields, String name, Node value) {
        if (value.present()) {
            fields.put(name, value(value));
        }
    }

    private static Object value(Node node) {
        return switch (node.kind()) {
            case OBJECT -> apart(node);
            case LIST -> {
                List<Object> items = new ArrayList<>();
                node.items().forEach(item -> items.add(value(item)));
                yield items;
            }
            case NUMBER -> node.exact().orElseThrow();
            case BOOLEAN -> node.isTrue();
            default -> node.written();
        };
    }
}
