package weekwright.desk.export;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.SequenceWriter;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;
import tools.jackson.dataformat.csv.CsvWriteFeature;

/**
 * A table as text (RFC 4180) that a spreadsheet opens without harm: no text begins like a formula.
 *
 * <p>It begins with the mark by which spreadsheets know UTF-8. Numbers keep their decimals whole.
 */
final class CsvText {
    /** Before UTF-8 in files for spreadsheets. */
    static final String MARK = "\uFEFF";

    /** Signs with which a spreadsheet takes text for a formula, also in their wide forms. */
    private static final String FORMULA = "=+-@\t\r＝＋－＠";

    private final boolean semicolons;
    private final List<List<String>> rows = new ArrayList<>();

    /**
     * An empty table.
     *
     * @param semicolons whether columns are parted by semicolons and decimals by a comma, as spreadsheets of many countries
     *     expect, and not by commas and points
     */
    CsvText(boolean semicolons, String... headings) {
        this.semicolons = semicolons;
        rows.add(List.of(headings));
    }

    /** Adds a row of texts, numbers and empty cells. */
    void row(@Nullable Object... cells) {
        List<String> row = new ArrayList<>();
        for (Object cell : cells) {
            row.add(cell == null ? "" : cell instanceof Number number ? number(number) : guarded(cell.toString()));
        }
        rows.add(row);
    }

    private String number(Number number) {
        double value = number.doubleValue();
        String text = value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : Double.toString(Math.round(value * 1000) / 1000.0);
        return semicolons ? text.replace('.', ',') : text;
    }

    /** A text that no spreadsheet takes for a formula: an apostrophe stands before it where it would. */
    static String guarded(String text) {
        return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    @Override
    public String toString() {
        CsvMapper mapper = CsvMapper.builder()
                .enable(CsvWriteFeature.STRICT_CHECK_FOR_QUOTING)
                .build();
        CsvSchema schema = CsvSchema.emptySchema()
                .withColumnSeparator(semicolons ? ';' : ',')
                .withLineSeparator("\r\n");
        StringWriter text = new StringWriter();
        text.write(MARK);
        try (SequenceWriter writer = mapper.writerFor(List.class).with(schema).writeValues(text)) {
            writer.writeAll(rows);
        }
        return text.toString();
    }
}
