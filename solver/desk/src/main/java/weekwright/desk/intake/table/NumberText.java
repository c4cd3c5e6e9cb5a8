package weekwright.desk.intake.table;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.desk.intake.Answers;

/**
 * Reads numbers as tables write them. Whether a comma or a point parts off the decimals is found out from all numbers of the
 * table; where that stays open, it is asked.
 */
public final class NumberText {
    private static final Pattern NUMBER = Pattern.compile("(\\d+)(?:([.,])(\\d+))?");
    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(?:([.,' \u00A0\u202F])\\d{3})+(?:([.,])(\\d+))?");

    /** Comma or point; null where nobody knows. */
    private final @Nullable String decimal;

    private final Answers answers;

    private NumberText(@Nullable String decimal, Answers answers) {
        this.decimal = decimal;
        this.answers = answers;
    }

    /** A reader for numbers that were written by one hand. */
    public static NumberText of(List<String> cells, Answers answers) {
        Optional<Boolean> said = answers.either(Answers.DECIMAL_COMMA, Answers.DECIMAL_POINT);
        if (said.isPresent()) {
            return new NumberText(said.get() ? "," : ".", answers);
        }
        boolean comma = cells.stream().anyMatch(cell -> tells(cell, ","));
        boolean point = cells.stream().anyMatch(cell -> tells(cell, "."));
        return new NumberText(comma == point ? null : comma ? "," : ".", answers);
    }

    /** Whether a number can only be read with this sign before the decimals: other than three digits follow it. */
    private static boolean tells(String cell, String sign) {
        Matcher number = NUMBER.matcher(cell);
        boolean notByThree = number.matches()
                && sign.equals(number.group(2))
                && number.group(3).length() != 3;
        return notByThree
                || cell.matches("\\d{1,3}(?:[.,' \u00A0\u202F]\\d{3})+" + Pattern.quote(sign) + "\\d{1,2}")
                || cell.matches("0" + Pattern.quote(sign) + "\\d+");
    }

    /**
     * A number, without its unit.
     *
     * @throws IllegalArgumentException when it is none, or could be two; the message says so
     */
    public double number(String cell) {
        String text = cell.strip().replaceFirst("(?i)\\s*(kg|kilos?|m|s|sec|min|m/s|reps?|x)\\.?$", "");
        Matcher number = NUMBER.matcher(text);
        Matcher grouped = GROUPED.matcher(text);
        if (text.length() > 15 || !(number.matches() || grouped.matches())) {
            throw new IllegalArgumentException("\"" + Table.cut(cell) + "\" is no number");
        }
        if (!number.matches()) {
            return grouped(grouped, text);
        }
        String sign = number.group(2);
        if (sign == null || sign.equals(decimal) || number.group(3).length() != 3) {
            return Double.parseDouble(text.replace(',', '.'));
        }
        if (decimal == null) {
            throw new IllegalArgumentException(Table.cut(cell) + " is " + text.replaceAll("[.,]", "") + " or "
                    + text.replace(',', '.') + "; say " + answers.way(Answers.DECIMAL_COMMA) + " or "
                    + answers.way(Answers.DECIMAL_POINT));
        }
        return Double.parseDouble(text.replace(sign, ""));
    }

    private static double grouped(Matcher grouped, String text) {
        String decimals = grouped.group(3);
        String whole = decimals == null ? text : text.substring(0, text.length() - decimals.length() - 1);
        return Double.parseDouble(whole.replaceAll("\\D", "") + (decimals == null ? "" : "." + decimals));
    }

    /** A whole number; throws {@link IllegalArgumentException} when it is none. */
    public int whole(String cell) {
        double number = number(cell);
        if (number != Math.rint(number) || number > 100_000) {
            throw new IllegalArgumentException("\"" + Table.cut(cell) + "\" is no whole number");
        }
        return (int) number;
    }
}
