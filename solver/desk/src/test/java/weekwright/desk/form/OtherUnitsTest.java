package weekwright.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pounds and yards by the international yard and pound agreement of 1959: 0.45359237 kg and 0.9144 m. */
class OtherUnitsTest {
    @ParameterizedTest
    @CsvSource({
        "265 lb, kg, false, 120.2",
        "45lbs, kg, false, 20.4",
        "'132,5 lb', kg, false, 60.1",
        "40 yd, m, false, 36.58",
        "100 yd, m, true, 91",
        "0 lb, kg, false, 0",
        // What is not meant for the field stays for the reader of documents to refuse.
        "265 lb, m, false, 265 lb",
        "265 stone, kg, false, 265 stone",
        "120, kg, false, 120",
        "265 lb, min, false, 265 lb"
    })
    void what_is_typed_in_the_other_unit_is_kept_in_that_of_the_field(
            String typed, String unit, boolean whole, String kept) {
        assertThat(OtherUnits.read(typed, unit, whole)).isEqualTo(kept);
    }

    @ParameterizedTest
    @CsvSource({
        "kg, 120.2, These are 265 lb.",
        "m, 36.58, These are 40 yd.",
        "kg, '', Or in lb: 265 lb.",
        "m, soon, Or in yd: 40 yd.",
        "min, 60, ''"
    })
    void the_other_unit_stands_beside_the_field(String unit, String value, String said) {
        assertThat(OtherUnits.help(unit, value)).isEqualTo(said);
    }
}
