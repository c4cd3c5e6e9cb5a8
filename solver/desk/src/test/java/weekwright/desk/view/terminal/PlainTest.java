package weekwright.desk.view.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Widths after Unicode Standard Annex 11, from memory. */
class PlainTest {
    @Test
    void what_could_steer_a_terminal_is_written_out() {
        assertThat(Plain.text("a\tb\u001b[31m\u009b2J\u0007\u200f\u2066\ufeff\ue000"))
                .isEqualTo("a<U+0009>b<U+001B>[31m<U+009B>2J<U+0007><U+200F><U+2066><U+FEFF><U+E000>");
    }

    @Test
    void half_a_character_is_written_out() {
        assertThat(Plain.text("a\ud83db")).isEqualTo("a<U+D83D>b");
    }

    @Test
    void letters_of_all_scripts_stay_as_they_are() {
        String names = "Zoë Ó Briain, İpek Çağlar, Žofie, 山田, محمد, דוד, नेहा, 👟";
        assertThat(Plain.text(names)).isEqualTo(names);
    }

    @Test
    void marks_cannot_be_piled_up_over_other_lines() {
        assertThat(Plain.text("a" + "\u0301".repeat(50) + "b")).isEqualTo("a" + "\u0301".repeat(4) + "b");
    }

    @ParameterizedTest
    @CsvSource({"'',0", "abc,3", "山田,4", "e\u0301,1", "👟,2", "İ,1", "ﾊﾝ,2", "한국,4"})
    void a_text_is_measured_as_a_terminal_shows_it(String text, int columns) {
        assertThat(Plain.columns(text)).isEqualTo(columns);
    }

    @ParameterizedTest
    @CsvSource({"abc,5,'abc  '", "abcdef,5,abcd…", "abcde,5,abcde", "山田山,5,山田…", "山田山,4,'山… '", "'ab cd',4,'ab… '"})
    void a_text_is_fitted_to_its_columns(String text, int columns, String fitted) {
        assertThat(Plain.fit(text, columns)).isEqualTo(fitted);
    }

    @Test
    void a_text_is_wrapped_between_words_and_a_long_word_is_broken() {
        assertThat(Plain.wrap("one two three", 8)).containsExactly("one two", "three");
        assertThat(Plain.wrap("to abcdefghijkl end", 5)).containsExactly("to", "abcde", "fghij", "kl", "end");
        assertThat(Plain.wrap("", 5)).containsExactly("");
    }
}
