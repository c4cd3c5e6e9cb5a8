package weekwright.model.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.Node.Kind;

/** Holds a document against its schema and reports every difference; gathers its times on the way. */
final class Structure {
    private final Faults faults;
    private final List<Node> moments = new ArrayList<>();

    private Structure(Faults faults) {
        this.faults = faults;
    }

    /** Reports what differs; returns the local times that are well formed, for the zone to be asked. */
    static List<Node> check(Node document, Schema schema, Faults faults) {
        Structure structure = new Structure(faults);
        structure.value(document, schema, true);
        return structure.moments;
    }

    private void value(Node value, Schema schema, boolean needed) {
        if (faults.full() || faults.isBroken(value) || (value.is(Kind.NULL) && schema.nullable())) {
            return;
        }
        if (value.is(Kind.NULL)) {
            faults.form(value, "null is no value here", Wanted.instead(schema, needed));
        } else if (!schema.values().isEmpty()) {
            if (!schema.values().contains(canonical(value)) || value.is(Kind.NUMBER) != schema.ofNumbers()) {
                faults.form(value, Wanted.notOneOf(value, schema), Wanted.oneOf(value, schema));
            }
        } else if (schema.types().stream().noneMatch(type -> fits(value, type))) {
            faults.form(value, Wanted.wrongType(value, schema), Wanted.ofType(value, schema));
        } else {
            parts(value, schema);
        }
    }

    private static String canonical(Node value) {
        return value.exact()
                .map(number -> number.abs().compareTo(BigDecimal.valueOf(1_000_000)) > 0
                        ? value.written()
                        : JsonPrinter.plain(number))
                .orElse(value.written());
    }

    private static boolean fits(Node value, String type) {
        return switch (type) {
            case "object" -> value.is(Kind.OBJECT);
            case "array" -> value.is(Kind.LIST);
            case "string" -> value.is(Kind.TEXT);
            case "boolean" -> value.is(Kind.BOOLEAN);
            case "integer" -> value.isWhole();
            default -> value.is(Kind.NUMBER);
        };
    }

    private void parts(Node value, Schema schema) {
        switch (value.kind()) {
            case OBJECT -> object(value, schema);
            case LIST -> list(value, schema);
            case TEXT -> text(value, schema);
            case NUMBER -> number(value, schema);
            default -> {}
        }
    }

    private void object(Node object, Schema schema) {
        Map<String, Schema> known = schema.properties();
        Optional<Schema> others = schema.others();
        Set<String> meant = new HashSet<>();
        object.fields().forEach((name, value) -> {
            Schema field = known.get(name);
            if (field != null) {
                value(value, field, schema.required().contains(name));
            } else if (faults.full()) {
                return;
            } else if (others.isEmpty()) {
                unknown(name, value, known.keySet().stream().toList(), meant);
            } else if (named(name, value, schema)) {
                value(value, others.get(), false);
            }
        });
        for (String name : schema.required()) {
            // A misspelt name is one fault, not an unknown field and a missing one.
            if (object.field(name).is(Kind.NOTHING) && !meant.contains(name)) {
                faults.missing(object, name, Wanted.added(name, schema.property(name)));
            }
        }
    }

    private void unknown(String name, Node value, List<String> known, Set<String> meant) {
        Shown.nearest(name, known).ifPresent(meant::add);
        faults.name(value, "no field is called " + Shown.quoted(name) + " here", Shown.meant(name, known));
    }

    private boolean named(String name, Node value, Schema schema) {
        Optional<Schema> names = schema.names();
        if (names.isEmpty() || names.get().values().contains(name)) {
            return true;
        }
        String what = names.get().title().orElse("name");
        faults.name(
                value,
                Shown.quoted(name) + " is no " + what,
                Shown.meant(name, names.get().values()));
        return false;
    }

    private void list(Node list, Schema schema) {
        int size = list.items().size();
        if (beyond(size, schema.bound("minItems"), schema.bound("maxItems"))) {
            faults.form(list, Wanted.size(size), Wanted.items(schema));
        }
        schema.items().ifPresent(item -> list.items().forEach(value -> value(value, item, true)));
        if (schema.keyword("uniqueItems").isTrue()) {
            twice(list);
        }
    }

    private void twice(Node list) {
        Map<String, Node> seen = new HashMap<>();
        for (Node item : list.items()) {
            Node first = seen.putIfAbsent(item.kind() + item.written(), item);
            if (first != null) {
                faults.add(item, Shown.value(item) + " is there twice", "Name it once.");
            }
        }
    }

    private void text(Node text, Schema schema) {
        String written = text.written();
        int length = written.codePointCount(0, written.length());
        if (beyond(length, schema.bound("minLength"), schema.bound("maxLength"))) {
            faults.form(text, Wanted.length(length), Wanted.characters(schema));
        } else if (schema.pattern().filter(p -> !p.matcher(written).matches()).isPresent()) {
            faults.form(text, Wanted.noMatch(text, schema), Wanted.match(text, schema));
        } else {
            format(text, schema.keyword("format").text().orElse(""));
        }
    }

    /** The patterns take care of all but the length of months. */
    private void format(Node text, String format) {
        boolean exists = switch (format) {
            case "date" -> text.date().isPresent();
            case "local-date-time" -> text.moment().isPresent();
            default -> true;
        };
        if (!exists) {
            faults.form(text, text.written() + " does not exist", Wanted.lastOfMonth(text.written()));
        } else if (format.equals("local-date-time")) {
            moments.add(text);
        }
    }

    private void number(Node number, Schema schema) {
        BigDecimal value = number.exact().orElseThrow();
        @Nullable BigDecimal above = schema.bound("exclusiveMinimum").orElse(null);
        boolean low = above != null && value.compareTo(above) <= 0;
        if (low || beyond(value, schema.bound("minimum"), schema.bound("maximum"))) {
            faults.form(number, Wanted.outside(number, schema), "Give " + Wanted.phrase(schema) + ".");
        }
    }

    private static boolean beyond(int size, Optional<BigDecimal> least, Optional<BigDecimal> most) {
        return beyond(BigDecimal.valueOf(size), least, most);
    }

    private static boolean beyond(BigDecimal value, Optional<BigDecimal> least, Optional<BigDecimal> most) {
        return least.filter(bound -> value.compareTo(bound) < 0).isPresent()
                || most.filter(bound -> value.compareTo(bound) > 0).isPresent();
    }
}
