package weekwright.model.document;

import java.util.Locale;
import weekwright.model.document.Node.Kind;

/** Puts faults that the catalogue and the rulebook found, one line each, to their places in the document. */
final class Lines {
    private Lines() {}

    /**
     * Reports a line {@code path: what is wrong; what would be right}.
     *
     * @param within the value that the path begins in
     */
    static void report(String line, Node within, Faults faults) {
        int colon = line.indexOf(": ");
        String said = line.substring(colon + 2);
        Node value = within;
        String name = "";
        for (String step : line.substring(0, colon).split("\\.", -1)) {
            if (step.endsWith("]")) {
                int bracket = step.indexOf('[');
                int index = Integer.parseInt(step.substring(bracket + 1, step.length() - 1));
                value = value.list(step.substring(0, bracket)).get(index);
                continue;
            }
            if (value.field(step).is(Kind.NOTHING)) {
                faults.lacking(value, step, wrong(said, step), right(said));
                return;
            }
            value = value.field(step);
            name = step;
        }
        if (said.startsWith("is ") || said.contains(" of this name")) {
            faults.name(value, wrong(said, name), right(said));
        } else {
            faults.add(value, wrong(said, name), right(said));
        }
    }

    private static String wrong(String said, String name) {
        String wrong = said.substring(0, cut(said));
        return wrong.startsWith("is ") ? Shown.quoted(name) + " " + wrong : wrong;
    }

    private static String right(String said) {
        int cut = cut(said);
        if (cut == said.length()) {
            return "Give another value.";
        }
        String right = said.substring(cut + 2);
        String sentence = right.substring(0, 1).toUpperCase(Locale.ROOT) + right.substring(1);
        return sentence.endsWith("?") || sentence.endsWith(".") ? sentence : sentence + ".";
    }

    /** Where the advice begins. */
    private static int cut(String said) {
        int semicolon = said.indexOf("; ");
        int comma = said.indexOf(", ");
        return semicolon >= 0 ? semicolon : comma >= 0 ? comma : said.length();
    }
}
