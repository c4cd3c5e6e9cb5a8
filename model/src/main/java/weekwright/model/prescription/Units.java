package weekwright.model.prescription;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** The units of a sheet. */
public enum Units {
    METRIC("kg", 1, "m", 1),
    /** Pounds and yards: 1 lb = 0.45359237 kg, 1 yd = 0.9144 m (international yard and pound agreement of 1959). */
    IMPERIAL("lb", 0.45359237, "yd", 0.9144);

    private final String weight;
    private final double kilograms;
    private final String length;
    private final double metres;

    Units(String weight, double kilograms, String length, double metres) {
        this.weight = weight;
        this.kilograms = kilograms;
        this.length = length;
        this.metres = metres;
    }

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }

    /** Sign of the unit of weight. */
    public String weight() {
        return weight;
    }

    /** Sign of the unit of length. */
    public String length() {
        return length;
    }

    /** A weight in this unit. */
    public double ofKilograms(double kg) {
        return kg / kilograms;
    }

    /** A length in this unit. */
    public double ofMetres(double m) {
        return m / metres;
    }

    /** Kilograms of a weight in this unit. */
    public double kilograms(double weight) {
        return weight * kilograms;
    }

    /** Metres of a length in this unit. */
    public double metres(double length) {
        return length * metres;
    }

    /** The bar and plates of a gym in this unit. */
    public Plates plates() {
        return this == METRIC ? Plates.KILOGRAMS : Plates.POUNDS;
    }
}
