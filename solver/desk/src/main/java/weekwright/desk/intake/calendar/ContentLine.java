package weekwright.desk.intake.calendar;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A content line of a calendar, unfolded: {@code NAME;PARAMETER=VALUE:VALUE} (RFC 5545, 3.1).
 *
 * @param line where it begins in the file, counted from 1
 * @param name its name in capitals
 * @param parameters parameters by name in capitals, quotes taken off
 * @param value its value as written
 * @param raw the whole line as written
 */
public record ContentLine(int line, String name, Map<String, String> parameters, String value, String raw) {
    public ContentLine {
        parameters = Map.copyOf(parameters);
    }

    /** A parameter, or null. */
    public @Nullable String parameter(String named) {
        return parameters.get(named);
    }

    /** The value as text, escapes undone (RFC 5545, 3.3.11). */
    public String text() {
        StringBuilder text = new StringBuilder(value.length());
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == '\\' && i + 1 < value.length()) {
                i++;
                char escaped = value.charAt(i);
                text.append(escaped == 'n' || escaped == 'N' ? '\n' : escaped);
            } else {
                text.append(c);
            }
        }
        return text.toString();
    }
}
