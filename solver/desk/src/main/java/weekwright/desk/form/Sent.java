package weekwright.desk.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.desk.form.Look.Offer;
import weekwright.model.document.Shape;

/**
 * Makes a part of a document of what a form has sent. It judges nothing: what is no number stays the text that it is, and the
 * reader of documents says so.
 */
final class Sent {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,9}(?:[.,][0-9]{1,9})?");
    /** The most rows of a list that are read from a form. */
    private static final int MOST_ROWS = 400;

    private final Map<String, List<String>> sent;

    Sent(Map<String, List<String>> sent) {
        this.sent = sent;
    }

    /**
     * The fields of a thing.
     *
     * @param kept what it was before; fields that no form shows stay as they are in it
     * @param path its path without numbers
     * @param name name under which its fields are sent; empty at the top
     */
    Map<String, Object> fields(Shape shape, Map<String, Object> kept, String path, String name) {
        Map<String, Object> fields = new LinkedHashMap<>();
        shape.fields().forEach((field, part) -> {
            String at = Paths.join(path, field);
            Object value = Looks.of(at).isPresent()
                    ? value(part, at, Paths.join(name, field), kept.get(field))
                    : kept.get(field);
            if (value != null && belongs(at, fields)) {
                fields.put(field, value);
            }
        });
        return fields;
    }

    /** Whether a field goes with the choice that was made beside it. */
    private static boolean belongs(String path, Map<String, Object> fields) {
        String only = Looks.of(path).map(Look::only).orElse("");
        return only.isEmpty() || only.equals(fields.get("measure"));
    }

    private @Nullable Object value(Shape shape, String path, String name, @Nullable Object kept) {
        return switch (shape.type()) {
            case FIELDS -> set(shape, path, name, kept);
            case LIST -> list(shape, path, name, kept);
            case TRUTH -> truth(shape, name);
            default -> scalar(shape, path, name);
        };
    }

    private @Nullable Object set(Shape shape, String path, String name, @Nullable Object kept) {
        Map<String, Object> fields = fields(shape, Paths.map(kept), path, name);
        return fields.isEmpty() && !shape.needed() ? null : fields;
    }

    private @Nullable Object list(Shape shape, String path, String name, @Nullable Object kept) {
        Shape item = shape.items();
        List<Object> list = item != null && item.type() == Shape.Type.FIELDS
                ? rows(item, path, name, Paths.list(kept))
                : inOldOrder(chosen(item, path, name), Paths.list(kept));
        return list.isEmpty() && !shape.needed() ? null : list;
    }

    /** What was chosen before keeps its order, since the first may mean something; what is new follows. */
    private static List<Object> inOldOrder(List<Object> chosen, List<Object> before) {
        boolean texts = chosen.stream().allMatch(String.class::isInstance);
        if (!texts) {
            return chosen;
        }
        List<Object> ordered = new ArrayList<>(before);
        ordered.retainAll(chosen);
        chosen.stream().filter(one -> !before.contains(one)).forEach(ordered::add);
        return ordered;
    }

    private List<Object> rows(Shape item, String path, String name, List<Object> kept) {
        List<Object> rows = new ArrayList<>();
        for (int row : numbers(name)) {
            Object before = row < kept.size() ? kept.get(row) : null;
            rows.add(fields(item, Paths.map(before), path, name + "[" + row + "]"));
        }
        return rows;
    }

    /** Numbers of the rows that were sent, in order: each has a field of its own that only says that it is there. */
    private List<Integer> numbers(String name) {
        Pattern row = Pattern.compile(Pattern.quote(name) + "\\[([0-9]{1,4})]");
        TreeSet<Integer> numbers = new TreeSet<>();
        for (String field : sent.keySet()) {
            Matcher matcher = row.matcher(field);
            if (matcher.matches()) {
                numbers.add(Integer.parseInt(matcher.group(1)));
            }
        }
        return numbers.stream().limit(MOST_ROWS).toList();
    }

    private List<Object> chosen(@Nullable Shape item, String path, String name) {
        boolean typed = item != null
                && item.values().isEmpty()
                && Looks.of(path).map(Look::offer).orElse(Offer.NOTHING) == Offer.NOTHING;
        List<Object> chosen = new ArrayList<>();
        for (String value : sent.getOrDefault(name, List.of())) {
            if (typed) {
                for (String one : value.strip().split("[\\s;]+|,(?=\\s)", -1)) {
                    add(chosen, one.strip());
                }
            } else {
                chosen.add(value);
            }
        }
        return chosen;
    }

    private static void add(List<Object> list, String text) {
        if (!text.isEmpty()) {
            list.add(number(text));
        }
    }

    /** What usually holds is written down only where it does not. */
    private @Nullable Object truth(Shape shape, String name) {
        boolean yes = sent.containsKey(name);
        boolean asUsual = Boolean.toString(yes).equals(shape.usual());
        if (asUsual && !shape.needed()) {
            return null;
        }
        return yes;
    }

    private @Nullable Object scalar(Shape shape, String path, String name) {
        String text = String.join(" ", sent.getOrDefault(name, List.of())).strip();
        if (text.isEmpty()) {
            return null;
        }
        boolean number = shape.type() == Shape.Type.WHOLE || shape.type() == Shape.Type.NUMBER;
        if (!number) {
            return text;
        }
        String unit = Looks.of(path).map(Look::unit).orElse("");
        return number(OtherUnits.read(text, unit, shape.type() == Shape.Type.WHOLE));
    }

    private static Object number(String text) {
        return NUMBER.matcher(text).matches() ? new BigDecimal(text.replace(',', '.')) : text;
    }
}
