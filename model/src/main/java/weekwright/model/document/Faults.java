package weekwright.model.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/** Gathers what is wrong with one document. */
final class Faults {
    /** More than a reader would ever mend in one go; a hostile file could hold millions. */
    static final int MOST = 500;

    private final Source source;
    private final List<Problem> found = new ArrayList<>();
    private final Set<Node> broken = Collections.newSetFromMap(new IdentityHashMap<>());

    Faults(Source source) {
        this.source = source;
    }

    /** Something is wrong at a character of a value. */
    void at(int offset, Node value, String wrong, String right) {
        report(offset, value::path, wrong, right);
    }

    /** A value has not the form that it should have; nothing else will be said of it. */
    void form(Node value, String wrong, String right) {
        broken.add(value);
        report(value.at(), value::path, wrong, right);
    }

    /** A field should not be there, or its name is not the right one. */
    void name(Node value, String wrong, String right) {
        broken.add(value);
        report(value.nameAt(), value::path, wrong, right);
    }

    /** A field is there for the second time. */
    void twice(Node second, Node first) {
        report(
                second.nameAt(),
                second::path,
                "\"" + second.name() + "\" is there twice, first at " + source.place(first.nameAt()),
                "Keep one of them.");
    }

    /** An object lacks a field. */
    void missing(Node object, String field, String right) {
        lacking(object, field, "\"" + field + "\" is missing", right);
    }

    /** Something is wrong with a field that an object has not. */
    void lacking(Node object, String field, String wrong, String right) {
        report(object.at(), () -> object.pathOf(field), wrong, right);
    }

    /** A value has the right form, and yet cannot be. */
    void add(Node value, String wrong, String right) {
        if (!broken.contains(value)) {
            report(value.at(), value::path, wrong, right);
        }
    }

    /** Whether a value has not the form that it should have. */
    boolean isBroken(Node value) {
        return broken.contains(value);
    }

    /** The value, or nothing where it has not the form that it should have. */
    Node sound(Node value) {
        return isBroken(value) ? Node.NOTHING : value;
    }

    /** Whether nothing more is taken in: advice need not be thought of any longer. */
    boolean full() {
        return found.size() > MOST;
    }

    /** Whether a value, or anything in it, has not the form that it should have. */
    boolean broken(Node value) {
        return broken.contains(value)
                || value.items().stream().anyMatch(this::broken)
                || value.fields().values().stream().anyMatch(this::broken);
    }

    /** Where a value stands: {@code line 12:18}. */
    String place(Node value) {
        return source.place(value.at());
    }

    /** Line and column of a character: {@code line 12:18}. */
    String place(int offset) {
        return source.place(offset);
    }

    /** Gives up with one fault, which makes all others pointless. */
    DocumentException only(int offset, String wrong, String right) {
        return new DocumentException(List.of(source.problem(offset, "", wrong, right)));
    }

    /** Gives up with one fault of a value, which makes all others pointless. */
    DocumentException only(Node value, String wrong, String right) {
        return new DocumentException(List.of(source.problem(value.at(), value.path(), wrong, right)));
    }

    /** Ends the reading where anything is wrong. */
    void throwIfAny() throws DocumentException {
        if (!found.isEmpty()) {
            throw new DocumentException(found.stream().sorted().toList());
        }
    }

    private void report(int offset, Supplier<String> path, String wrong, String right) {
        if (found.size() < MOST) {
            found.add(source.problem(offset, path.get(), wrong, right));
        } else if (!full()) {
            found.add(source.problem(
                    source.text().length(), "", "there are more faults than " + MOST, "Mend these first."));
        }
    }
}
