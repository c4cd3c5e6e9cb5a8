package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * {@link WhatIfIsWhatComesTest} for every option of every session of every demo scenario: each is written into the plan, the
 * plan is read anew and judged from nothing. Takes a quarter of an hour and more, and so is run by hand.
 */
class EveryWhatIfComesTest {
    static List<String> demos() {
        return WhatIfIsWhatComesTest.demos();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void whatever_is_said_of_any_option_comes_true(String demo) {
        assertThat(WhatIfIsWhatComesTest.everyOption(demo)).isPositive();
    }
}
