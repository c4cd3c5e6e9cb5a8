package weekwright.desk.form;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.model.prescription.Units;

/** Weights and lengths typed in pounds and yards; documents hold kilograms and metres. */
final class OtherUnits {
    private static final String KG = Units.METRIC.weight();
    private static final String M = Units.METRIC.length();
    private static final Pattern TYPED = Pattern.compile("([0-9]{1,6}(?:[.,][0-9]{1,3})?)\\s*(lb|yd)s?");
    private static final int HUNDREDTHS = 2;

    private OtherUnits() {}

    /**
     * What was typed, in the unit of its field: {@code 265 lb} is {@code 120.2} in a field of kilograms, {@code 40 yd} is
     * {@code 36.58} in one of metres. All else stays as it was typed.
     *
     * @param whole whether the field holds whole numbers only
     */
    static String read(String text, String unit, boolean whole) {
        Matcher typed = TYPED.matcher(text);
        if (!typed.matches()) {
            return text;
        }
        double amount = new BigDecimal(typed.group(1).replace(',', '.')).doubleValue();
        if (unit.equals(KG) && typed.group(2).equals(Units.IMPERIAL.weight())) {
            return rounded(Units.IMPERIAL.kilograms(amount), whole ? 0 : 1);
        }
        if (unit.equals(M) && typed.group(2).equals(Units.IMPERIAL.length())) {
            return rounded(Units.IMPERIAL.metres(amount), whole ? 0 : HUNDREDTHS);
        }
        return text;
    }

    /** What to say beside a field: its value in the other unit, or how that is typed; empty where there is no other. */
    static String help(String unit, String value) {
        boolean weight = unit.equals(KG);
        if (!weight && !unit.equals(M)) {
            return "";
        }
        String other = weight ? Units.IMPERIAL.weight() : Units.IMPERIAL.length();
        if (!value.matches("[0-9]{1,6}(\\.[0-9]{1,9})?")) {
            return "Or in " + other + ": " + (weight ? "265" : "40") + " " + other + ".";
        }
        double amount = new BigDecimal(value).doubleValue();
        double converted = weight ? Units.IMPERIAL.ofKilograms(amount) : Units.IMPERIAL.ofMetres(amount);
        return "These are " + rounded(converted, 1) + " " + other + ".";
    }

    private static String rounded(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
