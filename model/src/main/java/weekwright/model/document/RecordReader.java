package weekwright.model.document;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.Node.Kind;

/**
 * Makes records of a document that has passed all checks; whatever still does not fit is a fault of this program. No
 * value is turned into one of another kind. A field that is missing takes the value that the schema gives as usual.
 */
final class RecordReader {
    private RecordReader() {}

    /** The record that a document stands for. */
    static <T extends Record> T read(Node document, Schema schema, Class<T> type) {
        return type.cast(object(document, schema, type));
    }

    private static Object object(Node node, Schema schema, Class<?> type) {
        RecordShape shape = RecordShape.of(type);
        List<@Nullable Object> values = new ArrayList<>();
        for (RecordShape.Component component : shape.components()) {
            values.add(
                    component.others()
                            ? others(node, shape.names())
                            : field(node, schema.property(component.name()), component));
        }
        return shape.make(values);
    }

    private static @Nullable Object field(Node node, Schema schema, RecordShape.Component component) {
        Node given = node.field(component.name());
        Node value = given.is(Kind.NOTHING) ? schema.keyword("default") : given;
        if (!value.present()) {
            if (component.type() instanceof Class<?> simple && simple.isPrimitive()) {
                throw new IllegalStateException("the schema gives no usual value for \"" + component.name() + "\"");
            }
            return null;
        }
        return value(value, schema, component.type());
    }

    private static Object value(Node node, Schema schema, Type type) {
        if (type instanceof ParameterizedType generic) {
            return generic.getRawType() == Map.class
                    ? map(node, schema, generic.getActualTypeArguments())
                    : list(node, schema, generic.getActualTypeArguments()[0]);
        }
        return simple(node, schema, (Class<?>) type);
    }

    private static Object simple(Node node, Schema schema, Class<?> type) {
        Function<String, Object> scalar = RecordShape.scalar(type);
        if (scalar != null) {
            return scalar.apply(node.text().orElseThrow());
        }
        if (type.isRecord()) {
            return object(node, schema, type);
        }
        if (type == boolean.class) {
            return node.isTrue();
        }
        BigDecimal number = node.exact().orElseThrow();
        if (type == int.class || type == Integer.class) {
            return number.intValueExact();
        }
        return type == long.class ? (Object) number.longValueExact() : (Object) number.doubleValue();
    }

    private static List<Object> list(Node node, Schema schema, Type type) {
        Schema item = schema.items().orElseThrow();
        List<Object> values = new ArrayList<>();
        node.items().forEach(value -> values.add(value(value, item, type)));
        return values;
    }

    private static Map<Object, Object> map(Node node, Schema schema, Type[] types) {
        Function<String, Object> key = RecordShape.scalar((Class<?>) types[0]);
        Schema entry = schema.others().orElseThrow();
        Map<Object, Object> values = new LinkedHashMap<>();
        node.fields()
                .forEach((name, value) ->
                        values.put(key == null ? name : key.apply(name), value(value, entry, types[1])));
        return values;
    }

    /** Fields that no component names: numbers, or numbers by name. */
    private static Map<String, Object> others(Node node, List<String> names) {
        Map<String, Object> values = new LinkedHashMap<>();
        node.fields().forEach((name, value) -> {
            if (!names.contains(name) && value.present()) {
                values.put(name, plain(value));
            }
        });
        return values;
    }

    private static Object plain(Node value) {
        if (value.is(Kind.OBJECT)) {
            return others(value, List.of());
        }
        return value.whole().isPresent()
                ? (Object) value.whole().getAsInt()
                : (Object) value.number().orElseThrow();
    }
}
