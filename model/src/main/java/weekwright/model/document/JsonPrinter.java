package weekwright.model.document;

import java.math.BigDecimal;
import java.util.Iterator;
import java.util.Map;
import weekwright.model.document.Node.Kind;

/**
 * Writes JSON that reads well and compares well: two spaces a step, LF, whole numbers without a point; a list or object
 * stands on one line where it fits into {@value #WIDTH} characters.
 */
final class JsonPrinter {
    private static final int WIDTH = 110;
    private static final int UNLIMITED = Integer.MAX_VALUE;

    private final StringBuilder out = new StringBuilder();

    private JsonPrinter() {}

    /** A whole document with a line break at its end. */
    static String print(Node node) {
        JsonPrinter printer = new JsonPrinter();
        printer.tall(node, 0);
        return printer.out.append('\n').toString();
    }

    /** A value on one line. */
    static String flat(Node node) {
        JsonPrinter printer = new JsonPrinter();
        printer.flat(node, UNLIMITED);
        return printer.out.toString();
    }

    /** A number without exponent and without needless decimals. */
    static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private void value(Node node, int depth) {
        int begin = out.length();
        int lineBegin = out.lastIndexOf("\n") + 1;
        if (!flat(node, lineBegin + WIDTH)) {
            out.setLength(begin);
            tall(node, depth);
        }
    }

    private void tall(Node node, int depth) {
        boolean object = node.is(Kind.OBJECT);
        boolean bare = node.fields().isEmpty() && node.items().isEmpty();
        if (bare) {
            flat(node, UNLIMITED);
            return;
        }
        String step = "\n" + "  ".repeat(depth + 1);
        out.append(object ? '{' : '[');
        String separator = "";
        for (Map.Entry<String, Node> field : node.fields().entrySet()) {
            out.append(separator).append(step);
            text(field.getKey());
            out.append(": ");
            value(field.getValue(), depth + 1);
            separator = ",";
        }
        for (Node item : node.items()) {
            out.append(separator).append(step);
            value(item, depth + 1);
            separator = ",";
        }
        out.append('\n').append("  ".repeat(depth)).append(object ? '}' : ']');
    }

    /** Writes on one line as long as the text stays below an end; whether it did. */
    private boolean flat(Node node, int end) {
        switch (node.kind()) {
            case TEXT -> text(node.written());
            case NUMBER -> out.append(plain(new BigDecimal(node.written())));
            case OBJECT -> flatObject(node, end);
            case LIST -> flatList(node, end);
            default -> out.append(node.written());
        }
        return out.length() <= end;
    }

    private void flatObject(Node node, int end) {
        out.append('{');
        String separator = " ";
        for (Map.Entry<String, Node> field : node.fields().entrySet()) {
            out.append(separator);
            text(field.getKey());
            out.append(": ");
            if (!flat(field.getValue(), end)) {
                return;
            }
            separator = ", ";
        }
        out.append(node.fields().isEmpty() ? "}" : " }");
    }

    private void flatList(Node node, int end) {
        out.append('[');
        for (Iterator<Node> items = node.items().iterator(); items.hasNext(); ) {
            if (!flat(items.next(), end)) {
                return;
            }
            out.append(items.hasNext() ? ", " : "");
        }
        out.append(']');
    }

    private void text(String text) {
        out.append('"');
        if (text.chars().allMatch(c -> c >= ' ' && c < 0x7f && c != '"' && c != '\\')) {
            out.append(text);
        } else {
            text.codePoints().forEach(this::character);
        }
        out.append('"');
    }

    private void character(int c) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\n' -> out.append("\\n");
            case '\t' -> out.append("\\t");
            default -> {
                if (Shown.harmless(c)) {
                    out.appendCodePoint(c);
                } else {
                    out.append(Shown.escape(c));
                }
            }
        }
    }
}
