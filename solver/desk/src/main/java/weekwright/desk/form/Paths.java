package weekwright.desk.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Paths of fields, and parts of documents taken apart. */
final class Paths {
    private Paths() {}

    static String join(String path, String field) {
        return path.isEmpty() ? field : path + "." + field;
    }

    /** A set of fields; empty where there is none. */
    static Map<String, Object> map(@Nullable Object value) {
        Map<String, Object> map = new LinkedHashMap<>();
        if (value instanceof Map<?, ?> known) {
            known.forEach((key, part) -> map.put(String.valueOf(key), part));
        }
        return map;
    }

    /** A list; empty where there is none. */
    static List<Object> list(@Nullable Object value) {
        return value instanceof List<?> known ? new ArrayList<>(known) : new ArrayList<>();
    }

    /** A value as a coach types it. */
    static String text(@Nullable Object value) {
        if (value instanceof Double || value instanceof BigDecimal) {
            return new BigDecimal(value.toString()).stripTrailingZeros().toPlainString();
        }
        return value == null ? "" : value.toString();
    }
}
