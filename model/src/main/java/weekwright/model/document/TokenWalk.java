package weekwright.model.document;

import java.util.ArrayDeque;
import java.util.Deque;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.core.json.JsonFactory;
import weekwright.model.document.Node.Kind;

/** Turns JSON (RFC 8259) into values with their places; finds what is no JSON and fields written twice. */
final class TokenWalk {
    /** The deepest nesting that is read. */
    static final int DEEPEST = 64;
    /** The most values that are read. */
    static final int MOST_VALUES = 1_000_000;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNameLength(256)
                    .maxNumberLength(100)
                    .maxNestingDepth(2 * DEEPEST)
                    .build())
            .build();

    private final JsonParser parser;
    private final Faults faults;
    private final Deque<Node> open = new ArrayDeque<>();
    private int values;

    private TokenWalk(JsonParser parser, Faults faults) {
        this.parser = parser;
        this.faults = faults;
    }

    /**
     * The whole document.
     *
     * @throws DocumentException when it is no JSON, with that one fault and the fields written twice before it
     */
    static Node read(Source source, Faults faults) throws DocumentException {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), source.text())) {
            TokenWalk walk = new TokenWalk(parser, faults);
            try {
                return walk.document();
            } catch (JacksonException e) {
                SyntaxWords.report(e, parser.currentLocation(), source.text(), walk.open.peek(), faults);
                faults.throwIfAny();
                throw new IllegalStateException("a fault of syntax is always reported", e);
            }
        }
    }

    private Node document() throws DocumentException {
        JsonToken first = parser.nextToken();
        if (first == null) {
            throw faults.only(0, "the file is empty", "Begin with { and end with }.");
        }
        Node root = started(first);
        finish(root);
        nothingFollows();
        return root;
    }

    private void nothingFollows() throws DocumentException {
        try {
            if (parser.nextToken() == null) {
                return;
            }
        } catch (StreamReadException e) {
            throw afterEnd((int) e.getLocation().getCharOffset());
        }
        throw afterEnd(here());
    }

    private DocumentException afterEnd(int offset) {
        return faults.only(offset, "something follows after the end", "Take it out; a file holds one document.");
    }

    /** The value that begins here, still without its parts. */
    private Node started(JsonToken token) throws DocumentException {
        int at = here();
        if (++values > MOST_VALUES) {
            throw faults.only(at, "the file holds more than a million values", "Give one document of this program.");
        }
        return switch (token) {
            case START_OBJECT -> Node.object(at);
            case START_ARRAY -> Node.list(at);
            case VALUE_STRING -> Node.scalar(Kind.TEXT, parser.getString(), at);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Node.scalar(Kind.NUMBER, parser.getString(), at);
            case VALUE_TRUE -> Node.scalar(Kind.BOOLEAN, "true", at);
            case VALUE_FALSE -> Node.scalar(Kind.BOOLEAN, "false", at);
            default -> Node.scalar(Kind.NULL, "null", at);
        };
    }

    /** Reads the parts of a value that has its place in the document already, so that faults can name their path. */
    private void finish(Node node) throws DocumentException {
        switch (node.kind()) {
            case OBJECT -> object(node);
            case LIST -> list(node);
            case TEXT -> whole(node.written(), node.at(), node);
            case NUMBER -> finite(node);
            default -> {}
        }
    }

    private void object(Node object) throws DocumentException {
        open(object);
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            int at = here();
            String name = parser.currentName();
            Node value = started(parser.nextToken());
            Node earlier = object.put(name, at, value);
            if (!earlier.is(Kind.NOTHING)) {
                faults.twice(value, earlier);
            }
            whole(name, at, value);
            finish(value);
        }
        open.pop();
    }

    private void list(Node list) throws DocumentException {
        open(list);
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            Node item = started(token);
            list.add(item);
            finish(item);
        }
        open.pop();
    }

    private void open(Node node) throws DocumentException {
        open.push(node);
        if (open.size() > DEEPEST) {
            throw faults.only(
                    node.at(),
                    "lists and fields are nested more than " + DEEPEST + " deep",
                    "No document needs a tenth of that: take brackets out.");
        }
    }

    private void finite(Node number) {
        if (Double.isInfinite(Double.parseDouble(number.written()))) {
            faults.form(number, Shown.cut(number.written()) + " is too large a number", "Give one with fewer digits.");
        }
    }

    /** An escape can write half of a character, which no file could hold. */
    private void whole(String text, int at, Node value) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isSurrogate(text.charAt(i))) {
                if (i + 1 == text.length() || !Character.isSurrogatePair(text.charAt(i), text.charAt(i + 1))) {
                    faults.at(
                            at,
                            value,
                            "the text holds half of a character, " + Shown.escape(text.charAt(i)),
                            "Leave it out.");
                    return;
                }
                i++;
            }
        }
    }

    private int here() {
        return (int) parser.currentTokenLocation().getCharOffset();
    }
}
