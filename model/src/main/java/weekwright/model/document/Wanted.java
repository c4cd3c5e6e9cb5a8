package weekwright.model.document;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.model.document.Node.Kind;

/** Says in a coach's words what a schema wants and how a value differs from it. */
final class Wanted {
    private static final int LONGEST_EXAMPLE = 110;
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}\\u2028\\u2029\\u202a-\\u202e\\u2066-\\u2069]");
    private static final Pattern LOOSE_CLOCK = Pattern.compile("([0-9]):([0-5][0-9])");
    private static final Pattern LOOSE_MOMENT =
            Pattern.compile("([0-9]{4}-[0-9]{2}-[0-9]{2})[T ]([0-9]{1,2}:[0-9]{2})(:[0-9]{2}(\\.[0-9]+)?)?");

    private Wanted() {}

    /** What stands rightly in a place: {@code a whole number from 1 to 84}. */
    static String phrase(Schema schema) {
        List<String> values = schema.values();
        if (!values.isEmpty()) {
            return values.size() == 1 ? values.get(0) : "one of " + String.join(", ", values);
        }
        String type = schema.types().get(0);
        return switch (type) {
            case "boolean" -> "true or false";
            case "integer" -> "a whole number" + range(schema);
            case "number" -> "a number" + range(schema);
            case "object" -> "fields in { }" + suchAs(schema);
            case "array" -> "a list in [ ]" + suchAs(schema);
            default ->
                (schema.pattern().isPresent() ? "a " + schema.title().orElse("text") : "text")
                                .replaceFirst("^a (?=[aeiou])", "an ")
                        + suchAs(schema);
        };
    }

    private static String range(Schema schema) {
        Optional<BigDecimal> least = schema.bound("minimum").filter(Wanted::tellable);
        Optional<BigDecimal> most = schema.bound("maximum").filter(Wanted::tellable);
        Optional<BigDecimal> above = schema.bound("exclusiveMinimum");
        if (above.isPresent()) {
            return " above " + plain(above) + (most.isPresent() ? ", up to " + plain(most) : "");
        }
        if (least.isPresent()) {
            return most.isPresent() ? " from " + plain(least) + " to " + plain(most) : ", " + plain(least) + " or more";
        }
        return "";
    }

    /** What is bounded only by the size of a number in memory is not bounded for a coach. */
    private static boolean tellable(BigDecimal bound) {
        return bound.abs().compareTo(BigDecimal.valueOf(Integer.MAX_VALUE)) < 0;
    }

    private static String plain(Optional<BigDecimal> bound) {
        return bound.map(JsonPrinter::plain).orElse("");
    }

    private static String suchAs(Schema schema) {
        return example(schema).map(example -> ", such as " + example).orElse("");
    }

    private static Optional<String> example(Schema schema) {
        return schema.keyword("examples").items().stream()
                .findFirst()
                .map(JsonPrinter::flat)
                .filter(example -> example.length() <= LONGEST_EXAMPLE);
    }

    /** Advice where null stands. */
    static String instead(Schema schema, boolean needed) {
        return "Give " + phrase(schema) + (needed ? "." : ", or leave the field out where it is not needed.");
    }

    /** Advice where a field is missing. */
    static String added(String name, Schema schema) {
        return "Add it: "
                + example(schema).map(example -> "\"" + name + "\": " + example).orElseGet(() -> phrase(schema)) + ".";
    }

    static String notOneOf(Node value, Schema schema) {
        String what = schema.title().orElse("value for " + Shown.quoted(value.name()));
        return Shown.value(value) + (value.is(Kind.TEXT) ? " is no " + what : " cannot stand here");
    }

    static String oneOf(Node value, Schema schema) {
        if (schema.ofNumbers() && schema.values().contains(value.written())) {
            return "Write " + value.written() + " without quotes.";
        }
        return value.text()
                .flatMap(text -> Shown.nearest(text, schema.values()))
                .map(near -> "Did you mean \"" + near + "\"?")
                .orElseGet(() -> "Give " + phrase(schema) + ".");
    }

    static String wrongType(Node value, Schema schema) {
        List<String> types = schema.types();
        if (value.is(Kind.NUMBER) && types.equals(List.of("integer"))) {
            return Shown.value(value) + " is not a whole number";
        }
        return Shown.value(value) + (value.is(Kind.TEXT) ? " is text, not " : " is not ") + kind(types.get(0));
    }

    private static String kind(String type) {
        return switch (type) {
            case "boolean" -> "true or false";
            case "integer" -> "a whole number";
            case "number" -> "a number";
            case "object" -> "a set of fields";
            case "array" -> "a list";
            default -> "a text";
        };
    }

    static String ofType(Node value, Schema schema) {
        String type = schema.types().get(0);
        String text = value.text().orElse("");
        String unquoted = switch (type) {
            case "integer" -> "-?[0-9]{1,9}";
            case "number" -> "-?[0-9]{1,9}(\\.[0-9]{1,9})?";
            case "boolean" -> "true|false";
            default -> "";
        };
        if (!text.isEmpty() && text.matches(unquoted)) {
            return "Write " + text + " without quotes.";
        }
        return type.equals("array") && !value.is(Kind.OBJECT) && !value.is(Kind.LIST)
                ? "Put it into a list: [" + Shown.value(value) + "]."
                : "Give " + phrase(schema) + ".";
    }

    static String outside(Node number, Schema schema) {
        boolean high = schema.bound("maximum")
                .filter(most -> number.exact().orElse(BigDecimal.ZERO).compareTo(most) > 0)
                .isPresent();
        return Shown.value(number) + " is too " + (high ? "large" : "small");
    }

    static String size(int size) {
        return size == 0 ? "the list is empty" : size == 1 ? "the list has 1 item" : "the list has " + size + " items";
    }

    static String items(Schema schema) {
        String least = plain(schema.bound("minItems"));
        String most = plain(schema.bound("maxItems"));
        String count = least.isEmpty()
                ? "at most " + most
                : most.isEmpty() ? "at least " + least : least.equals(most) ? least : least + " to " + most;
        return "Give " + count + suchAs(schema) + ".";
    }

    static String length(int characters) {
        return characters == 0 ? "the text is empty" : "the text has " + characters + " characters";
    }

    static String characters(Schema schema) {
        return "Give 1 to " + plain(schema.bound("maxLength"))
                + " characters, or leave the field out where it is not needed.";
    }

    static String noMatch(Node text, Schema schema) {
        Matcher control = CONTROL.matcher(text.written());
        return control.find()
                ? "the text holds the control character "
                        + Shown.escape(control.group().codePointAt(0))
                : Shown.quoted(text.written()) + " is no " + schema.title().orElse("text");
    }

    static String match(Node text, Schema schema) {
        if (CONTROL.matcher(text.written()).find()) {
            return "Leave it out.";
        }
        return suggestion(text.written(), schema)
                .map(better -> "Did you mean \"" + better + "\"?")
                .orElseGet(() -> "Give " + schema.form() + suchAs(schema) + ".");
    }

    /** What was probably meant by a text of the wrong form. */
    private static Optional<String> suggestion(String text, Schema schema) {
        if (text.length() > 100) {
            return Optional.empty();
        }
        Matcher clock = LOOSE_CLOCK.matcher(text);
        Matcher moment = LOOSE_MOMENT.matcher(text);
        String better = clock.matches() ? "0" + text : moment.matches() ? moment(moment) : hyphened(text);
        return Optional.of(better)
                .filter(meant -> schema.pattern().orElseThrow().matcher(meant).matches());
    }

    private static String moment(Matcher loose) {
        String time = loose.group(2);
        return loose.group(1) + "T" + (time.length() == 4 ? "0" + time : time);
    }

    private static String hyphened(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
    }

    static String lastOfMonth(String text) {
        LocalDate first = LocalDate.parse(text.substring(0, 8) + "01");
        return "That month ends on " + first.withDayOfMonth(first.lengthOfMonth()) + ".";
    }
}
