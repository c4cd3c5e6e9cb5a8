package weekwright.desk.intake.calendar;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.InputFault;
import weekwright.desk.intake.Limits;

/**
 * Takes a calendar apart into content lines.
 *
 * <p>Lines are joined as bytes before they are read as text, because folding may cut a character in two (RFC 5545, 3.1);
 * any line end is taken, and blank lines are passed over.
 */
final class ContentLines {
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9-]{1,100}");
    /** A parameter's value in quotes, or up to the next sign that ends it. */
    private static final Pattern PARAMETER = Pattern.compile(";([A-Za-z0-9-]{1,100})=(\"[^\"]*+\"|[^\";:]*+)");

    private final Charset charset;
    private final List<ContentLine> lines = new ArrayList<>();
    private final List<Integer> unreadable = new ArrayList<>();

    private ContentLines(Charset charset) {
        this.charset = charset;
    }

    /**
     * What was found.
     *
     * @param lines the content lines in order
     * @param unreadable numbers of the lines that are none
     */
    record Found(List<ContentLine> lines, List<Integer> unreadable) {}

    /**
     * Reads content lines.
     *
     * @param named the encoding that the coach names, or null for UTF-8
     * @throws InputFault when there is too much, or a line cannot be read as text
     */
    static Found read(byte[] bytes, @Nullable Charset named) {
        if (bytes.length > Limits.BYTES) {
            throw new InputFault(
                    "the calendar is larger than 16 MiB: a season needs a fraction of that; export the season only");
        }
        boolean wide = bytes.length > 1 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFE + 0xFF;
        byte[] utf8 =
                wide ? new String(bytes, StandardCharsets.UTF_16).getBytes(StandardCharsets.UTF_8) : withoutMark(bytes);
        ContentLines reading = new ContentLines(wide || named == null ? StandardCharsets.UTF_8 : named);
        reading.split(utf8);
        return new Found(List.copyOf(reading.lines), List.copyOf(reading.unreadable));
    }

    /** Without the mark that some programs put before UTF-8. */
    private static byte[] withoutMark(byte[] bytes) {
        boolean marked = bytes.length >= 3
                && (bytes[0] & 0xFF) == 0xEF
                && (bytes[1] & 0xFF) == 0xBB
                && (bytes[2] & 0xFF) == 0xBF;
        return marked ? java.util.Arrays.copyOfRange(bytes, 3, bytes.length) : bytes;
    }

    private void split(byte[] bytes) {
        ByteArrayOutputStream joined = new ByteArrayOutputStream();
        int begun = 1;
        int number = 1;
        int at = 0;
        while (at < bytes.length) {
            int end = endOfLine(bytes, at);
            boolean goesOn = end > at && (bytes[at] == ' ' || bytes[at] == '\t');
            if (!goesOn) {
                add(begun, joined);
                begun = number;
            }
            joined.write(bytes, at + (goesOn ? 1 : 0), end - at - (goesOn ? 1 : 0));
            at = end + (end + 1 < bytes.length && bytes[end] == '\r' && bytes[end + 1] == '\n' ? 2 : 1);
            number++;
        }
        add(begun, joined);
    }

    private static int endOfLine(byte[] bytes, int from) {
        int end = from;
        while (end < bytes.length && bytes[end] != '\n' && bytes[end] != '\r') {
            end++;
        }
        return end;
    }

    private void add(int number, ByteArrayOutputStream joined) {
        String text = text(number, joined.toByteArray());
        joined.reset();
        if (text.isBlank()) {
            return;
        }
        line(number, text).ifPresentOrElse(lines::add, () -> unreadable.add(number));
        if (lines.size() > Limits.LINES) {
            throw new InputFault("the calendar has more than 500,000 lines: export the season only");
        }
    }

    private String text(int number, byte[] bytes) {
        try {
            return charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            throw new InputFault("line " + number + " is not text in " + charset.name()
                    + ": save the file in UTF-8, or say how its letters are written, such as windows-1252");
        }
    }

    private static Optional<ContentLine> line(int number, String text) {
        Matcher name = NAME.matcher(text);
        if (!name.lookingAt()) {
            return Optional.empty();
        }
        Map<String, String> parameters = new LinkedHashMap<>();
        Matcher parameter = PARAMETER.matcher(text);
        int at = name.end();
        while (parameter.find(at) && parameter.start() == at) {
            parameters.putIfAbsent(upper(parameter.group(1)), unquoted(parameter.group(2)));
            at = parameter.end();
        }
        if (at >= text.length() || text.charAt(at) != ':') {
            return Optional.empty();
        }
        return Optional.of(new ContentLine(number, upper(name.group()), parameters, text.substring(at + 1), text));
    }

    private static String unquoted(String value) {
        return value.startsWith("\"") ? value.substring(1, value.length() - 1) : value;
    }

    private static String upper(String name) {
        return name.toUpperCase(Locale.ROOT);
    }
}
