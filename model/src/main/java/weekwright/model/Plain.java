package weekwright.model;

import java.util.Locale;

/** Numbers as they stand in sentences. */
public final class Plain {
    private Plain() {}

    /** A number without needless decimals: 8, 0.25. */
    public static String number(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }
}
