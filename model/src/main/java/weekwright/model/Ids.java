package weekwright.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The written form of names in documents, and the defaults of fields that a document leaves out. */
public final class Ids {
    /** What an id looks like: lower case letters, digits and hyphens, 1 to 48 characters. */
    public static final String PATTERN = "[a-z0-9][a-z0-9-]{0,47}";

    private Ids() {}

    /** The written form of a constant: {@code NOT_PLAYED} is written {@code not-played}. */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** An unmodifiable copy; a missing list is empty. */
    public static <T> List<T> listed(@Nullable List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }

    /** An unmodifiable copy in the order of the document; a missing map is empty. */
    public static <K, V> Map<K, V> mapped(@Nullable Map<K, V> map) {
        return map == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
