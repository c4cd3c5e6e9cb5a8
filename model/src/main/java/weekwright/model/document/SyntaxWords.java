package weekwright.model.document;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import weekwright.model.document.Node.Kind;

/** Says in plain words why a text is no JSON. */
final class SyntaxWords {
    private static final Pattern TOKEN = Pattern.compile("[Tt]oken '([^']*)'");

    private final String text;
    private final Faults faults;
    private final Node inside;

    private SyntaxWords(String text, Faults faults, Node inside) {
        this.text = text;
        this.faults = faults;
        this.inside = inside;
    }

    /**
     * Reports the fault that ended the reading.
     *
     * @param reached how far the reading came, for faults that do not say where they are
     * @param inside the innermost list or object that was still open, or null
     */
    static void report(
            JacksonException fault, TokenStreamLocation reached, String text, @Nullable Node inside, Faults faults) {
        TokenStreamLocation place = fault.getLocation() == null ? reached : fault.getLocation();
        int offset = (int) Math.min(place.getCharOffset(), text.length());
        String said = String.valueOf(fault.getOriginalMessage());
        SyntaxWords words = new SyntaxWords(text, faults, inside == null ? Node.NOTHING : inside);
        if (fault instanceof StreamConstraintsException) {
            words.say(offset, "a name, a number or a text is far too long", "Shorten it.");
        } else {
            words.explain(Math.max(offset, 0), said);
        }
    }

    private void explain(int offset, String said) {
        Matcher token = TOKEN.matcher(said);
        char here = offset < text.length() ? text.charAt(offset) : ' ';
        if (said.startsWith("Unexpected end-of-input")) {
            tooEarly(said);
        } else if (said.startsWith("Non-standard token") && token.find()) {
            say(offset - token.group(1).length(), token.group(1) + " is no number", "Give a number, or leave it out.");
        } else if (said.startsWith("Unrecognized token") && token.find()) {
            bareWord(offset, token.group(1));
        } else if (here == '/' || here == '#') {
            say(offset, "a comment is not allowed here", "Take it out, or write it into a note.");
        } else if (said.contains("close marker")) {
            say(
                    offset,
                    "\"" + here + "\" stands where " + closer() + " is due",
                    "Close first what begins at " + begin() + ".");
        } else if (said.contains("numeric value")) {
            number(offset, said);
        } else if (said.contains("unquoted character")) {
            control(offset, here);
        } else if (said.contains("hex-digit")) {
            say(offset, "the four digits after \\u are not whole", "Write such as \\u00e9, or the sign itself.");
        } else if (said.contains("character escape")) {
            say(
                    offset,
                    "\\" + here + " means nothing in a text",
                    "Write \\\\ for a backslash, \\n for a new line, \\u and four digits for a sign.");
        } else {
            structure(offset, here, said);
        }
    }

    private void structure(int offset, char here, String said) {
        if (said.contains("was expecting comma")) {
            say(offset, "a comma is missing before this", "Put a comma between one and the next.");
        } else if (said.contains("was expecting a colon")) {
            say(offset, "a colon is missing between the name and its value", "Write \"name\": value.");
        } else if (here == '\'') {
            say(offset, "' does not begin a text", "Write names and texts in double quotes, \"so\".");
        } else if (here == '}' || here == ']') {
            boolean comma = before(offset) == ',';
            say(
                    offset,
                    comma ? "a comma stands before " + here : "a value is missing before " + here,
                    comma ? "Take the comma away." : "Give the value, or take the name out.");
        } else if (here == ',') {
            say(offset, "nothing stands before this comma", "Take the comma away.");
        } else if (here == '.') {
            say(offset, "a number begins with a point", "Write 0.5, not .5.");
        } else if (said.contains("double-quote to start")) {
            say(offset, "a field's name stands without quotes", "Write the name in double quotes.");
        } else {
            say(offset, "no value can begin here", "Look for a missing comma, quote or bracket just before.");
        }
    }

    private void tooEarly(String said) {
        boolean quote = said.contains("closing quote");
        if (quote || inside.is(Kind.NOTHING)) {
            say(
                    text.length(),
                    quote ? "a text is not closed" : "the file ends too early",
                    quote ? "Close it with \"." : "Give the rest.");
        } else {
            say(
                    text.length(),
                    "the file ends too early: " + closer() + " is missing",
                    "Close what begins at " + begin() + ".");
        }
    }

    private void bareWord(int offset, String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        String shown = Shown.cut(word);
        switch (lower) {
            case "true", "false", "null" -> say(offset, shown + " is not known", "Write " + lower + ".");
            case "none", "nil", "undefined" ->
                say(offset, shown + " is not known", "Write null, or leave the field out.");
            default ->
                say(
                        offset,
                        shown.isEmpty() ? "no value can begin here" : shown + " stands without quotes",
                        "Write text in double quotes.");
        }
    }

    private void number(int offset, String said) {
        if (said.contains("eading zero")) {
            say(offset, "a number begins with 0", "Write 7, not 07.");
        } else if (said.contains("plus sign")) {
            say(offset, "a number begins with +", "Leave the sign out.");
        } else {
            say(offset, "the number is not finished", "Write it with all its digits, such as 5 or 0.5.");
        }
    }

    private void control(int offset, char here) {
        switch (here) {
            case '\n', '\r' ->
                say(offset, "a text runs over the end of its line", "Close it with \", or write a new line as \\n.");
            case '\t' -> say(offset, "a tab stands inside a text", "Write it as \\t, or use a space.");
            default ->
                say(offset, "the control character " + Shown.escape(here) + " stands inside a text", "Take it out.");
        }
    }

    private char before(int offset) {
        return text.substring(0, offset).stripTrailing().endsWith(",") ? ',' : ' ';
    }

    private String closer() {
        return inside.is(Kind.LIST) ? "]" : "}";
    }

    private String begin() {
        return faults.place(inside.at());
    }

    private void say(int offset, String wrong, String right) {
        faults.at(offset, inside, wrong, right);
    }
}
