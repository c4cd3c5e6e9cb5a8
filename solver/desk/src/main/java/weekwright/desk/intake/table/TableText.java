package weekwright.desk.intake.table;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;
import weekwright.desk.app.InputFault;
import weekwright.desk.intake.Limits;

/**
 * The cells of a table of text: encoding and delimiter found out, quotes taken off.
 *
 * @param rows rows that are not blank
 * @param how how it was read, as a sentence
 */
public record TableText(List<Cells> rows, String how) {
    private static final Map<Character, String> DELIMITERS = delimiters();
    /** Rows by which the delimiter is found out. */
    private static final int SAMPLE = 50;

    /** A row: the line in which it begins, and its cells, stripped. */
    public record Cells(int line, List<String> cells) {}

    private static Map<Character, String> delimiters() {
        Map<Character, String> delimiters = new LinkedHashMap<>();
        delimiters.put(',', "commas");
        delimiters.put(';', "semicolons");
        delimiters.put('\t', "tabs");
        delimiters.put('|', "bars");
        return delimiters;
    }

    /**
     * Reads a table.
     *
     * @param named the encoding that the coach names, or null
     * @throws InputFault when it is no text, no table or too large
     */
    public static TableText read(byte[] bytes, @Nullable Charset named) {
        if (bytes.length > Limits.BYTES) {
            throw new InputFault("the table is larger than 16 MiB: a season needs a fraction of that");
        }
        String text = text(bytes, named);
        Optional<Character> said = said(text);
        String table = said.isPresent() ? text.substring(text.indexOf('\n') + 1) : text;
        char delimiter = said.orElseGet(() -> delimiter(table));
        List<Cells> rows = cells(table, delimiter, said.isPresent() ? 1 : 0, Limits.ENTRIES + SAMPLE);
        if (rows.size() > Limits.ENTRIES) {
            throw new InputFault("the table has more than 10,000 rows: a season has some hundreds");
        }
        if (rows.isEmpty()) {
            throw new InputFault("the table is empty");
        }
        return new TableText(rows, "Columns parted by " + DELIMITERS.get(delimiter) + ".");
    }

    private static String text(byte[] bytes, @Nullable Charset named) {
        boolean wide = bytes.length > 1 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFE + 0xFF;
        Charset charset = wide ? StandardCharsets.UTF_16 : named == null ? StandardCharsets.UTF_8 : named;
        try {
            String text = charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            if (text.indexOf('\0') >= 0) {
                throw new InputFault("this is no table of text: save it from the spreadsheet as CSV");
            }
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new InputFault("the table is not text in " + charset.name()
                    + ": save it as \"CSV UTF-8\", or say how its letters are written, such as windows-1252");
        }
    }

    /** Some spreadsheets say in a first line {@code sep=;}. */
    private static Optional<Character> said(String text) {
        boolean says = text.length() > 5
                && text.regionMatches(true, 0, "sep=", 0, 4)
                && DELIMITERS.containsKey(text.charAt(4))
                && (text.charAt(5) == '\n' || text.startsWith("\r\n", 5));
        return says ? Optional.of(text.charAt(4)) : Optional.empty();
    }

    /** The delimiter that gives most rows the same number of columns, and the most of them. */
    private static char delimiter(String text) {
        String sample = sample(text);
        char best = ',';
        long most = 0;
        for (char delimiter : DELIMITERS.keySet()) {
            long fit = fit(sample, delimiter);
            if (fit > most) {
                best = delimiter;
                most = fit;
            }
        }
        return best;
    }

    private static String sample(String text) {
        int end = 0;
        for (int line = 0; line < SAMPLE && end >= 0; line++) {
            end = text.indexOf('\n', end + 1);
        }
        int cut = end < 0 ? text.length() : end;
        return text.substring(0, Math.min(cut, 100_000));
    }

    private static long fit(String sample, char delimiter) {
        try {
            Map<Integer, Long> rowsByColumns = new LinkedHashMap<>();
            cells(sample, delimiter, 0, SAMPLE)
                    .forEach(row -> rowsByColumns.merge(row.cells().size(), 1L, Long::sum));
            return rowsByColumns.entrySet().stream()
                    .filter(entry -> entry.getKey() > 1)
                    .mapToLong(entry -> entry.getValue() * entry.getValue() * entry.getKey())
                    .max()
                    .orElse(0);
        } catch (InputFault e) {
            return 0;
        }
    }

    private static List<Cells> cells(String text, char delimiter, int linesBefore, int most) {
        CsvMapper mapper =
                CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();
        CsvSchema schema =
                CsvSchema.emptySchema().withColumnSeparator(delimiter).withQuoteChar('"');
        List<Cells> rows = new ArrayList<>();
        int line = linesBefore + 1;
        try (JsonParser parser = mapper.readerFor(String[].class).with(schema).createParser(text)) {
            List<String> cells = new ArrayList<>();
            for (JsonToken token = parser.nextToken();
                    token != null && rows.size() < most;
                    token = parser.nextToken()) {
                if (token == JsonToken.VALUE_STRING) {
                    line = cells.isEmpty()
                            ? linesBefore + parser.currentTokenLocation().getLineNr()
                            : line;
                    cells.add(parser.getString().strip());
                } else if (token == JsonToken.END_ARRAY) {
                    add(rows, line, cells);
                    cells = new ArrayList<>();
                }
            }
        } catch (JacksonException e) {
            throw new InputFault(
                    "line " + (linesBefore + Math.max(1, e.getLocation().getLineNr()))
                            + ": a cell's quotes do not match; save the table again");
        }
        return rows;
    }

    private static void add(List<Cells> rows, int line, List<String> cells) {
        if (cells.size() > Limits.COLUMNS) {
            throw new InputFault("line " + line + " has more than " + Limits.COLUMNS + " columns");
        }
        if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
            rows.add(new Cells(line, List.copyOf(cells)));
        }
    }
}
