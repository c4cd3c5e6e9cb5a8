package weekwright.model.document;

import java.util.Collection;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.Node.Kind;

/** Turns records into documents. */
final class RecordWriter {
    private RecordWriter() {}

    /** The value of a document that stands for a record, a list, a map, a number, a truth or a text. */
    static Node node(@Nullable Object value) {
        if (value == null) {
            return Node.scalar(Kind.NULL, "null", -1);
        }
        if (value instanceof Collection<?> items) {
            Node list = Node.list(-1);
            items.forEach(item -> list.add(node(item)));
            return list;
        }
        if (value instanceof Map<?, ?> entries) {
            Node object = Node.object(-1);
            put(entries, object);
            return object;
        }
        if (value instanceof Boolean) {
            return Node.scalar(Kind.BOOLEAN, value.toString(), -1);
        }
        if (value instanceof Number) {
            return Node.scalar(Kind.NUMBER, value.toString(), -1);
        }
        boolean whole = value instanceof Record && RecordShape.scalar(value.getClass()) == null;
        return whole ? object(value) : Node.scalar(Kind.TEXT, RecordShape.written(value), -1);
    }

    private static void put(Map<?, ?> entries, Node object) {
        entries.forEach((key, value) -> object.put(RecordShape.written(key), node(value)));
    }

    private static Node object(Object value) {
        Node object = Node.object(-1);
        for (RecordShape.Component component : RecordShape.of(value.getClass()).components()) {
            Object part = RecordShape.get(component, value);
            if (component.others() && part instanceof Map<?, ?> entries) {
                put(entries, object);
            } else {
                object.put(component.name(), node(part));
            }
        }
        return object;
    }
}
