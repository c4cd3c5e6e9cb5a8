package weekwright.model.document;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** The text of a file, which knows the line and column of every character. */
final class Source {
    /** The largest file that is read, in bytes. */
    static final int MOST_BYTES = 16 * 1024 * 1024;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final String file;
    private final String text;
    private final int[] lineStarts;

    private Source(String file, String text) {
        this.file = file;
        this.text = text;
        this.lineStarts = lineStarts(text);
    }

    /**
     * Reads bytes strictly as UTF-8; a byte order mark at the begin is passed over.
     *
     * @throws DocumentException when the file is too large or not UTF-8
     */
    static Source of(String file, byte[] utf8) throws DocumentException {
        if (utf8.length > MOST_BYTES) {
            throw new Faults(new Source(file, ""))
                    .only(
                            0,
                            "the file is larger than 16 MiB",
                            "Give one document of this program; a season of eight squads takes a tenth of that.");
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer out = CharBuffer.allocate(utf8.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(utf8), out, true);
        String text = out.flip().toString();
        boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        Source source = new Source(file, marked ? text.substring(1) : text);
        if (result.isError()) {
            throw new Faults(source)
                    .only(
                            source.text.length(),
                            "from here on the file is not UTF-8",
                            "Save it with the encoding UTF-8.");
        }
        return source;
    }

    /** A text that comes with the program. */
    static Source of(String file, String text) {
        return new Source(file, text);
    }

    String text() {
        return text;
    }

    /** A problem at a character. */
    Problem problem(int offset, String path, String wrong, String right) {
        int line = lineOf(offset);
        return new Problem(file, path, line + 1, offset - lineStarts[line] + 1, wrong, right);
    }

    /** Line and column of a character as a reader says it: {@code line 12:18}. */
    String place(int offset) {
        int line = lineOf(offset);
        return "line " + (line + 1) + ":" + (offset - lineStarts[line] + 1);
    }

    private int lineOf(int offset) {
        int found = Arrays.binarySearch(lineStarts, offset);
        return found >= 0 ? found : -found - 2;
    }

    /** Lines end with LF, CR LF or CR. */
    private static int[] lineStarts(String text) {
        int[] starts = new int[16];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean returned = c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n');
            if (c == '\n' || returned) {
                if (count == starts.length) {
                    starts = Arrays.copyOf(starts, 2 * count);
                }
                starts[count++] = i + 1;
            }
        }
        return Arrays.copyOf(starts, count);
    }
}
