package weekwright.desk.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.desk.form.Look.Offer;
import weekwright.desk.view.page.FormField;
import weekwright.desk.view.page.FormField.Choice;
import weekwright.desk.view.page.FormField.Control;
import weekwright.model.document.Shape;

/** Makes the fields of a form from the shape of a document, what stands in it and what is wrong with it. */
final class Fields {
    private final Offers offers;
    private final Wrong wrong;
    private final String fresh;

    /**
     * Fields of a form.
     *
     * @param fresh name of the row that was just added, or empty
     */
    Fields(Offers offers, Wrong wrong, String fresh) {
        this.offers = offers;
        this.wrong = wrong;
        this.fresh = fresh;
    }

    /** All fields of a thing that are shown. */
    List<FormField> of(Shape shape, Map<String, Object> values, String path, String name) {
        List<FormField> fields = new ArrayList<>();
        shape.fields().forEach((field, part) -> {
            String at = Paths.join(path, field);
            Looks.of(at).ifPresent(look -> {
                Object value = values.get(field);
                if (value == null && part.like() != null) {
                    value = values.get(part.like());
                }
                fields.add(field(part, look, at, Paths.join(name, field), value));
            });
        });
        return fields;
    }

    private FormField field(Shape shape, Look look, String path, String name, @Nullable Object value) {
        return switch (shape.type()) {
            case FIELDS -> part(shape, look, path, name, value);
            case LIST -> list(shape, look, path, name, value);
            case TRUTH ->
                plain(
                        Control.YES,
                        shape,
                        look,
                        name,
                        Paths.text(value == null ? Objects.requireNonNullElse(shape.usual(), "false") : value));
            default -> scalar(shape, look, path, name, value);
        };
    }

    private FormField part(Shape shape, Look look, String path, String name, @Nullable Object value) {
        List<FormField> parts = of(shape, Paths.map(value), path, name);
        return field(Control.PART, shape, look, name, "", List.of(), parts, faults(shape, wrong.take(name)));
    }

    private FormField list(Shape shape, Look look, String path, String name, @Nullable Object value) {
        Shape item = Objects.requireNonNull(shape.items());
        List<Object> values = Paths.list(value);
        if (item.type() == Shape.Type.FIELDS) {
            return rows(shape, item, look, path, name, values);
        }
        List<String> texts = values.stream().map(Paths::text).toList();
        List<String> faults = faults(shape, wrong.takeAll(name));
        if (item.values().isEmpty() && look.offer() == Offer.NOTHING) {
            return field(Control.NUMBERS, shape, look, name, String.join(" ", texts), List.of(), List.of(), faults);
        }
        List<String> chosen = value == null && path.endsWith(".doses") ? List.of("full") : texts;
        List<Choice> choices = choices(item, look, path, chosen, false);
        return field(Control.MANY, shape, look, name, "", choices, List.of(), faults);
    }

    private FormField rows(Shape shape, Shape item, Look look, String path, String name, List<Object> values) {
        List<FormField> rows = new ArrayList<>();
        for (int row = 0; row < values.size(); row++) {
            String at = name + "[" + row + "]";
            List<FormField> parts = of(item, Paths.map(values.get(row)), path, at);
            rows.add(new FormField(
                    Control.PART,
                    at,
                    look.label() + " " + (row + 1),
                    "",
                    "",
                    false,
                    false,
                    "",
                    "",
                    List.of(),
                    parts,
                    wrong.take(at),
                    at.equals(fresh)));
        }
        return field(Control.ROWS, shape, look, name, "", List.of(), rows, faults(shape, wrong.take(name)));
    }

    private FormField scalar(Shape shape, Look look, String path, String name, @Nullable Object value) {
        boolean chosen = !shape.values().isEmpty() || look.offer() != Offer.NOTHING;
        String text = Paths.text(value);
        if (chosen) {
            String now = value == null && shape.usual() != null ? shape.usual() : text;
            boolean none = shape.optional() || (shape.usual() == null && now.isEmpty());
            List<Choice> choices = choices(shape, look, path, now.isEmpty() ? List.of() : List.of(now), none);
            return field(Control.ONE, shape, look, name, now, choices, List.of(), faults(shape, wrong.take(name)));
        }
        return plain(control(shape.type()), shape, look, name, text);
    }

    private static Control control(Shape.Type type) {
        return switch (type) {
            case WHOLE, NUMBER -> Control.NUMBER;
            case DATE -> Control.DATE;
            case MOMENT -> Control.MOMENT;
            case CLOCK -> Control.CLOCK;
            default -> Control.LINE;
        };
    }

    private FormField plain(Control control, Shape shape, Look look, String name, String value) {
        return field(control, shape, look, name, value, List.of(), List.of(), faults(shape, wrong.take(name)));
    }

    private static FormField field(
            Control control,
            Shape shape,
            Look look,
            String name,
            String value,
            List<Choice> choices,
            List<FormField> parts,
            List<String> faults) {
        String help =
                look.help().isEmpty() ? sentence(shape.about()) : look.help().strip();
        String other = OtherUnits.help(look.unit(), value);
        boolean needed = look.name() || (shape.needed() && control != Control.PART && control != Control.ROWS);
        return new FormField(
                control,
                name,
                look.label(),
                (help + " " + other).strip(),
                look.unit(),
                needed,
                look.rare(),
                look.only(),
                value,
                choices,
                parts,
                faults,
                false);
    }

    private static String sentence(String about) {
        return about.isEmpty() ? "" : Character.toUpperCase(about.charAt(0)) + about.substring(1) + ".";
    }

    /** What is missing is said in words that fit a form. */
    private static List<String> faults(Shape shape, List<String> found) {
        return found.stream()
                .map(text -> text.isEmpty() ? "This is missing. Give " + shape.wanted() + "." : text)
                .toList();
    }

    /** What there is to choose; what is chosen and no longer there stays in sight. */
    private List<Choice> choices(Shape shape, Look look, String path, List<String> chosen, boolean none) {
        Map<String, String> known = new LinkedHashMap<>();
        if (none) {
            known.put("", "–");
        }
        shape.values().forEach(value -> known.put(value, Looks.value(path, value)));
        known.putAll(offers.of(look.offer()));
        chosen.forEach(value -> known.putIfAbsent(value, value));
        return known.entrySet().stream()
                .map(entry -> new Choice(
                        entry.getKey(),
                        entry.getValue(),
                        chosen.contains(entry.getKey()) || (entry.getKey().isEmpty() && chosen.isEmpty())))
                .toList();
    }
}
