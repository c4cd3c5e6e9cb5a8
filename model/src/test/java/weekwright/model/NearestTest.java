package weekwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> KNOWN = List.of("tempo-run", "primer", "testing");

    @Test
    void a_letter_wrong_missing_added_or_swapped_is_forgiven() {
        assertThat(List.of("tenpo-run", "tempo-rn", "tempo--run", "tmepo-run"))
                .allSatisfy(asked -> assertThat(Nearest.of(asked, KNOWN)).contains("tempo-run"));
    }

    @Test
    void two_letters_swapped_are_one_slip() {
        assertThat(Nearest.of("ab", List.of("xb", "ba"))).contains("xb");
        assertThat(Nearest.of("abcd", List.of("xycd", "bacd"))).contains("bacd");
    }

    @Test
    void a_word_that_is_far_from_all_has_no_neighbour() {
        assertThat(Nearest.of("swimming", KNOWN)).isEmpty();
        assertThat(Nearest.hint("swimming", KNOWN)).isEqualTo("known are tempo-run, primer, testing");
    }

    @Test
    void the_first_of_equals_is_named() {
        assertThat(Nearest.of("ax", List.of("ab", "ac"))).contains("ab");
    }
}
