package weekwright.desk.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.model.document.Shape;

/** Adds rows to the lists of a thing and takes them out, however deep, such as in {@code people[2].results}. */
final class Rows {
    private static final Pattern STEP = Pattern.compile("([a-zA-Z]+)(?:\\[([0-9]{1,4})])?(?:\\.|$)");

    private Rows() {}

    /**
     * Adds an empty row to a list.
     *
     * @return its name, or empty where there is no such list
     */
    static String grown(Shape shape, Map<String, Object> thing, String list) {
        List<Object> rows = list(shape, thing, list);
        if (rows == null) {
            return "";
        }
        rows.add(new LinkedHashMap<String, Object>());
        return list + "[" + (rows.size() - 1) + "]";
    }

    /** Takes a row out of a list, such as {@code aims[2]}. */
    static void shrunk(Shape shape, Map<String, Object> thing, String row) {
        int open = row.lastIndexOf('[');
        if (open > 0 && row.substring(open).matches("\\[[0-9]{1,4}]")) {
            List<Object> rows = list(shape, thing, row.substring(0, open));
            int number = Integer.parseInt(row.substring(open + 1, row.length() - 1));
            if (rows != null && number < rows.size()) {
                rows.remove(number);
            }
        }
    }

    /** The rows of a list, to be changed where they lie; null where there is no such list. */
    private static @Nullable List<Object> list(Shape shape, Map<String, Object> thing, String path) {
        Matcher steps = STEP.matcher(path);
        Shape at = shape;
        Map<String, Object> fields = thing;
        while (steps.find()) {
            Shape field = at.fields().get(steps.group(1));
            Shape item = field == null ? null : field.items();
            if (item == null) {
                return null;
            }
            List<Object> rows = Paths.list(fields.get(steps.group(1)));
            fields.put(steps.group(1), rows);
            if (steps.end() == path.length()) {
                return steps.group(2) == null ? rows : null;
            }
            int row = steps.group(2) == null ? rows.size() : Integer.parseInt(steps.group(2));
            if (row >= rows.size()) {
                return null;
            }
            Map<String, Object> inside = Paths.map(rows.get(row));
            rows.set(row, inside);
            fields = inside;
            at = item;
        }
        return null;
    }
}
