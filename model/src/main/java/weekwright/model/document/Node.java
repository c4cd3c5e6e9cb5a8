package weekwright.model.document;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Moment;

/**
 * One value of a document, with the place where it stands.
 *
 * <p>Checks ask for what they need and get nothing where it is missing or of the wrong kind, so that one fault does not
 * hide the others.
 */
final class Node {
    /** What a value is; {@code NOTHING} where there is none. */
    enum Kind {
        OBJECT,
        LIST,
        TEXT,
        NUMBER,
        BOOLEAN,
        NULL,
        NOTHING
    }

    /** Stands for a field that is not there. */
    static final Node NOTHING = new Node(Kind.NOTHING, "nothing", -1);

    private static final Pattern ID = Pattern.compile(Ids.PATTERN);
    private static final Pattern PLAIN_NAME = Pattern.compile("[A-Za-z0-9_$*-]+");

    private final Kind kind;
    private final String written;
    private final int at;
    private final Map<String, Node> fields;
    private final List<Node> items;
    private @Nullable Node parent;
    private @Nullable String name;
    private int nameAt = -1;
    private int index = -1;

    private Node(Kind kind, String written, int at) {
        this.kind = kind;
        this.written = written;
        this.at = at;
        this.fields = kind == Kind.OBJECT ? new LinkedHashMap<>() : Map.of();
        this.items = kind == Kind.LIST ? new ArrayList<>() : List.of();
    }

    static Node object(int at) {
        return new Node(Kind.OBJECT, "", at);
    }

    static Node list(int at) {
        return new Node(Kind.LIST, "", at);
    }

    /** A value without parts; numbers keep the digits that were written. */
    static Node scalar(Kind kind, String written, int at) {
        return new Node(kind, written, at);
    }

    /** Adds a field without a place. */
    void put(String field, Node value) {
        put(field, -1, value);
    }

    /** Adds a field; where the name is taken already the earlier value stays and is returned, else nothing. */
    Node put(String field, int fieldAt, Node value) {
        value.parent = this;
        value.name = field;
        value.nameAt = fieldAt;
        Node earlier = fields.putIfAbsent(field, value);
        return earlier == null ? NOTHING : earlier;
    }

    /** Adds an item at the end of a list. */
    void add(Node value) {
        value.parent = this;
        value.index = items.size();
        items.add(value);
    }

    Kind kind() {
        return kind;
    }

    /** The text of a text, the digits of a number, {@code true}, {@code false} or {@code null}. */
    String written() {
        return written;
    }

    /** Offset of its first character in the document. */
    int at() {
        return at;
    }

    /** Offset of the first character of its name, or of itself where it has none. */
    int nameAt() {
        return nameAt < 0 ? at : nameAt;
    }

    /** Its name in the object that holds it, or that of the list that holds it. */
    String name() {
        if (name != null) {
            return name;
        }
        return parent == null ? "" : parent.name();
    }

    boolean is(Kind wanted) {
        return kind == wanted;
    }

    /** Whether there is a value; {@code null} counts as none. */
    boolean present() {
        return kind != Kind.NOTHING && kind != Kind.NULL;
    }

    /** All fields in the order of the document; none where this is no object. */
    Map<String, Node> fields() {
        return Collections.unmodifiableMap(fields);
    }

    /** All items; none where this is no list. */
    List<Node> items() {
        return Collections.unmodifiableList(items);
    }

    /** The field of this name, or {@link #NOTHING}. */
    Node field(String field) {
        return fields.getOrDefault(field, NOTHING);
    }

    /** The items of the list in a field; none where there is no list. */
    List<Node> list(String field) {
        return field(field).items();
    }

    /** The path of a field of this object, whether it is there or not. */
    String pathOf(String field) {
        String here = path();
        if (!PLAIN_NAME.matcher(field).matches()) {
            return here + "[" + Shown.quoted(field) + "]";
        }
        return here.isEmpty() ? field : here + "." + field;
    }

    /** The path from the root, such as {@code groups[1].aims[0].family}. */
    String path() {
        if (parent == null) {
            return "";
        }
        return name == null ? parent.path() + "[" + index + "]" : parent.pathOf(name);
    }

    /** The text, where it is one. */
    Optional<String> text() {
        return kind == Kind.TEXT ? Optional.of(written) : Optional.empty();
    }

    /** The text, where it has the form of an id. */
    Optional<String> id() {
        return text().filter(text -> ID.matcher(text).matches());
    }

    /** The number, where it is one. */
    OptionalDouble number() {
        return kind == Kind.NUMBER ? OptionalDouble.of(Double.parseDouble(written)) : OptionalDouble.empty();
    }

    /** The number with all its digits, where it is one. */
    Optional<BigDecimal> exact() {
        return kind == Kind.NUMBER ? Optional.of(new BigDecimal(written)) : Optional.empty();
    }

    /** Whether this is a whole number; 60.0 is one. */
    boolean isWhole() {
        return exact().filter(value -> value.stripTrailingZeros().scale() <= 0).isPresent();
    }

    /** The number, where it is a whole one that an int holds. */
    OptionalInt whole() {
        double value = isWhole() ? Double.parseDouble(written) : Double.NaN;
        return Math.abs(value) <= Integer.MAX_VALUE ? OptionalInt.of((int) value) : OptionalInt.empty();
    }

    /** Whether both say the same, fields in the same order; 5 and 5.0 are the same number. */
    boolean sameAs(Node other) {
        if (kind != other.kind || fields.size() != other.fields.size() || items.size() != other.items.size()) {
            return false;
        }
        if (kind == Kind.NUMBER) {
            return new BigDecimal(written).compareTo(new BigDecimal(other.written)) == 0;
        }
        Iterator<Node> otherFields = other.fields.values().iterator();
        Iterator<Node> otherItems = other.items.iterator();
        return written.equals(other.written)
                && List.copyOf(fields.keySet()).equals(List.copyOf(other.fields.keySet()))
                && fields.values().stream().allMatch(field -> field.sameAs(otherFields.next()))
                && items.stream().allMatch(item -> item.sameAs(otherItems.next()));
    }

    boolean isTrue() {
        return kind == Kind.BOOLEAN && written.equals("true");
    }

    /** The date, where it is one that exists. */
    Optional<LocalDate> date() {
        return text().flatMap(text -> parsed(() -> LocalDate.parse(text)));
    }

    /** The local date and time, where it is one. */
    Optional<Moment> moment() {
        return text().flatMap(text -> parsed(() -> Moment.parse(text)));
    }

    /** The time of day, where it is one. */
    Optional<ClockTime> clock() {
        return text().flatMap(text -> parsed(() -> ClockTime.parse(text)));
    }

    private static <T> Optional<T> parsed(Supplier<T> parser) {
        try {
            return Optional.of(parser.get());
        } catch (DateTimeParseException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
