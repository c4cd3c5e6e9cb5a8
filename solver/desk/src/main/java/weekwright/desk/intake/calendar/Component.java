package weekwright.desk.intake.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A component of a calendar: what stands between {@code BEGIN} and {@code END}.
 *
 * @param name its name in capitals, such as {@code VEVENT}
 * @param line where it begins in the file
 * @param properties its own lines in order
 * @param parts components inside it, in order
 */
public record Component(String name, int line, List<ContentLine> properties, List<Component> parts) {
    public Component {
        properties = List.copyOf(properties);
        parts = List.copyOf(parts);
    }

    /** The first property of a name. */
    public Optional<ContentLine> property(String named) {
        return all(named).findFirst();
    }

    /** All properties of a name. */
    public Stream<ContentLine> all(String named) {
        return properties.stream().filter(line -> line.name().equals(named));
    }

    /** The value of a property as written, or null where there is none. */
    public @Nullable String value(String named) {
        return property(named).map(ContentLine::value).orElse(null);
    }

    /** The text of a property, or an empty one where there is none. */
    public String text(String named) {
        return property(named).map(ContentLine::text).orElse("");
    }

    /** The parts of a name. */
    public Stream<Component> parts(String named) {
        return parts.stream().filter(part -> part.name().equals(named));
    }

    /** All lines as written, with those that begin and end it. */
    public List<String> raw() {
        List<String> raw = new ArrayList<>();
        raw.add("BEGIN:" + name);
        properties.forEach(line -> raw.add(line.raw()));
        parts.forEach(part -> raw.addAll(part.raw()));
        raw.add("END:" + name);
        return raw;
    }
}
