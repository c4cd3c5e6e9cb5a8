package weekwright.model.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import weekwright.model.document.Node.Kind;

/** The schemas that come with the program, each read when it is first asked for. */
final class Schemas {
    /** The documents that have a schema. */
    static final List<String> NAMES = List.of(
            "scenario",
            "plan",
            "log",
            "catalogue",
            "rules",
            "check",
            "whynot",
            "tradeoffs",
            "compare",
            "sheet",
            "load",
            "history");

    private static final String FOLDER = "/weekwright/model/schema/";
    private static final String DEFINITIONS = "$defs";
    private static final Map<String, Schema> READ = new ConcurrentHashMap<>();

    private Schemas() {}

    /** The schema of a document. */
    static Schema of(String name) {
        return READ.computeIfAbsent(name, asked -> Schema.of(whole(asked)));
    }

    /** A schema with everything that it refers to. */
    static Node whole(String name) {
        Node document = load(name);
        Node base = document.field("$ref").text().map(Schemas::load).orElse(Node.NOTHING);
        Node whole = Node.object(-1);
        copy(document, whole);
        copy(base, whole);
        Node own = base.present() ? base.field(DEFINITIONS) : document.field(DEFINITIONS);
        Node definitions = Node.object(-1);
        own.fields().forEach(definitions::put);
        addCommon(whole, definitions);
        whole.put(DEFINITIONS, definitions);
        return whole;
    }

    private static void copy(Node from, Node to) {
        from.fields().forEach((keyword, value) -> {
            if (!keyword.equals(DEFINITIONS) && !keyword.equals("$ref")) {
                to.put(keyword, value);
            }
        });
    }

    /** Adds the common definitions that are referred to, and those that they refer to. */
    private static void addCommon(Node whole, Node definitions) {
        Node common = load("common").field(DEFINITIONS);
        Set<String> asked = new LinkedHashSet<>();
        references(whole, asked);
        references(definitions, asked);
        Set<String> reached = new LinkedHashSet<>();
        asked.forEach(name -> reach(name, common, reached));
        common.fields().forEach((name, node) -> {
            if (reached.contains(name)) {
                definitions.put(name, node);
            }
        });
    }

    private static void reach(String name, Node common, Set<String> reached) {
        if (common.field(name).present() && reached.add(name)) {
            Set<String> further = new LinkedHashSet<>();
            references(common.field(name), further);
            further.forEach(next -> reach(next, common, reached));
        }
    }

    private static void references(Node node, Set<String> into) {
        node.field("$ref").text().ifPresent(ref -> into.add(ref.substring(ref.lastIndexOf('/') + 1)));
        node.fields().values().forEach(part -> references(part, into));
        node.items().forEach(part -> references(part, into));
    }

    private static Node load(String name) {
        String file = name.endsWith(".json") ? name : name + ".json";
        try (InputStream in = Schemas.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException("the schema " + file + " is missing: build the program anew");
            }
            Source source = Source.of(file, new String(in.readAllBytes(), StandardCharsets.UTF_8));
            Node node = TokenWalk.read(source, new Faults(source));
            if (!node.is(Kind.OBJECT)) {
                throw new IllegalStateException("the schema " + file + " is no object: build the program anew");
            }
            return node;
        } catch (IOException e) {
            throw new UncheckedIOException("the schema " + file + " cannot be read", e);
        } catch (DocumentException e) {
            throw new IllegalStateException("the schema " + file + " is damaged: build the program anew", e);
        }
    }
}
