package weekwright.model.document;

import java.util.Optional;
import weekwright.model.document.Node.Kind;

/** Leaves out of a document what goes without saying: nothing given, or the usual value. */
final class Terse {
    private Terse() {}

    /** The document without fields at their usual value, wherever its schema asks for that. */
    static Node of(Node document, Schema schema) {
        return value(document, schema, false);
    }

    private static Node value(Node node, Schema schema, boolean terse) {
        boolean here = terse || schema.keyword("x-terse").isTrue();
        if (node.is(Kind.LIST)) {
            Node list = Node.list(-1);
            node.items().forEach(item -> list.add(part(item, schema.items(), here)));
            return list;
        }
        if (!node.is(Kind.OBJECT)) {
            return Node.scalar(node.kind(), node.written(), -1);
        }
        Node object = Node.object(-1);
        node.fields().forEach((name, value) -> {
            Schema field = schema.properties().get(name);
            if (!here || field == null || schema.required().contains(name) || !usual(node, value, field)) {
                object.put(name, part(value, Optional.ofNullable(field).or(schema::others), here));
            }
        });
        return object;
    }

    private static Node part(Node node, Optional<Schema> schema, boolean terse) {
        return schema.map(known -> value(node, known, terse)).orElse(node);
    }

    private static boolean usual(Node object, Node value, Schema schema) {
        if (!value.present()) {
            return true;
        }
        Node same = schema.keyword("x-usually").text().map(object::field).orElse(Node.NOTHING);
        Node usual = schema.keyword("default");
        if (same.present() && same.written().equals(value.written())) {
            return true;
        }
        return usual.present() && usual.sameAs(value);
    }
}
