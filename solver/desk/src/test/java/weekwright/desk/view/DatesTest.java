package weekwright.desk.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DatesTest {
    @ParameterizedTest
    @CsvSource({
        "2027-03-01,2027-03-07,1 to 7 March 2027",
        "2027-02-26,2027-03-04,26 February to 4 March 2027",
        "2026-12-28,2027-01-03,28 December 2026 to 3 January 2027",
        "2027-03-01,2027-03-01,1 March 2027",
    })
    void a_span_says_each_month_and_year_once(LocalDate first, LocalDate last, String words) {
        assertThat(Dates.span(first, last)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"-6,MD−6", "-1,MD−1", "0,MD", "2,MD+2", ",''"})
    void match_days_are_counted_towards_and_from_the_match(Integer distance, String words) {
        assertThat(Dates.matchDay(distance)).isEqualTo(words);
    }

    @Test
    void days_and_numbers_are_said_in_english_whatever_the_machine_speaks() {
        assertThat(Dates.day(LocalDate.of(2027, 9, 3))).isEqualTo("Fri 3 Sep");
        assertThat(Dates.number(12.40)).isEqualTo("12.4");
        assertThat(Dates.number(3)).isEqualTo("3");
        assertThat(Dates.grouped(1_830_000)).isEqualTo("1,830,000");
    }
}
