package weekwright.desk.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.desk.intake.Takes.rows;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.SeasonFile;

/**
 * Six real seasons, and 238 real changes of dates, as tables. Source: openfootball public football data (CC0 1.0), clubs
 * replaced by codes; the counts were made from the same rows beforehand.
 */
class RealSeasonsTest {
    private static final Answers MINUTES = Answers.NONE.with(Answers.MINUTES, "110");

    /** Twelve weeks of a club in London, with the fixtures that are known. */
    private static Scenario weeks(LocalDate firstDay, List<Fixture> known) {
        Scenario plain =
                Takes.scenario("{ \"weekwright\": 1, \"id\": \"season\", \"zone\": \"Europe/London\", \"firstDay\": \""
                        + firstDay + "\", \"days\": 84, \"groups\": [ { \"id\": \"squad\" } ] }");
        return plain.withFixtures(known);
    }

    @ParameterizedTest
    @CsvSource({"1, 58", "2, 57", "3, 56", "4, 56", "5, 48", "6, 48"})
    void a_season_comes_in_whole_and_a_second_time_adds_nothing(int club, int matches) {
        List<Instant> taken = new ArrayList<>();
        for (LocalDate first = LocalDate.of(2024, 8, 5); first.getYear() < 2026; first = first.plusDays(84)) {
            Scenario scenario = weeks(first, List.of());
            Preview preview = Intake.preview(SeasonFile.table(club), scenario, Wanted.FIXTURES, MINUTES);
            assertThat(preview.open()).isEmpty();
            assertThat(preview.rows()).hasSize(matches);
            Scenario with = preview.take(false);
            with.fixtures().stream()
                    .filter(fixture -> !fixture.start().date().isAfter(scenario.lastDay()))
                    .forEach(fixture -> taken.add(fixture.start().instant(scenario.zone())));
            assertThat(Intake.preview(SeasonFile.table(club), with, Wanted.FIXTURES, MINUTES)
                            .take(false))
                    .isEqualTo(with);
        }

        assertThat(taken)
                .containsExactlyElementsOf(SeasonFile.club(club).matches().stream()
                        .map(match -> match.start().instant(SeasonFile.ZONE))
                        .toList());
    }

    @Test
    void the_gaps_of_what_was_taken_are_those_of_the_season() {
        // 20 gaps of club 1 are 80 h or shorter; club 3's shortest is 51 h 15 min.
        assertThat(gaps(1).filter(gap -> gap.compareTo(Duration.ofHours(80)) <= 0))
                .hasSize(20);
        assertThat(gaps(3).min(Duration::compareTo)).contains(Duration.ofMinutes(51 * 60 + 15));
    }

    private static Stream<Duration> gaps(int club) {
        List<Instant> starts = new ArrayList<>();
        for (LocalDate first = LocalDate.of(2024, 8, 5); first.getYear() < 2026; first = first.plusDays(84)) {
            Scenario scenario = weeks(first, List.of());
            Intake.preview(SeasonFile.table(club), scenario, Wanted.FIXTURES, MINUTES).take(false).fixtures().stream()
                    .filter(fixture -> !fixture.start().date().isAfter(scenario.lastDay()))
                    .forEach(fixture -> starts.add(fixture.start().instant(scenario.zone())));
        }
        return java.util.stream.IntStream.range(1, starts.size())
                .mapToObj(i -> Duration.between(starts.get(i - 1), starts.get(i)));
    }

    /** Every change as its home club reads it, sixteen weeks after sixteen weeks. */
    private static List<String> changes() {
        Set<String> all = new LinkedHashSet<>();
        for (int club = 1; club <= 44; club++) {
            String only = String.format(Locale.ROOT, "club-%02d –", club);
            for (LocalDate day = LocalDate.of(2025, 7, 28);
                    day.isBefore(LocalDate.of(2026, 7, 1));
                    day = day.plusDays(112)) {
                Preview preview = Intake.preview(
                        SeasonFile.reschedules(),
                        weeks(day, List.of()),
                        Wanted.FIXTURES,
                        MINUTES.with(Answers.ONLY, only));
                for (Row row : preview.rows()) {
                    String line = row.number() + " " + rows(preview).get(row.number() - 1);
                    // What is asked about is asked in all weeks: it is one row all the same.
                    if (row.verdict() != Verdict.PASSED_OVER || line.contains("moves it on")) {
                        all.add(line);
                    }
                }
            }
        }
        return List.copyOf(all);
    }

    @Test
    void of_238_real_changes_each_is_told_for_what_it_is() {
        List<String> changes = changes();

        assertThat(changes).hasSize(238);
        assertThat(changes)
                .filteredOn(row -> row.contains("only the year differs"))
                .hasSize(12);
        assertThat(changes)
                .filteredOn(row -> row.contains("is the month right?"))
                .containsExactly(
                        "86 asked: Wed 2026-02-18 20:00 · league-1, club-17 – club-06 | it moves by 31 days to an"
                                + " earlier day: it was Sat 2026-03-21; is the month right?");
        // First times: 146 on the day that was known and 52 on another, of which 23 were moved on later.
        assertThat(changes).filteredOn(row -> row.contains("moves it on")).hasSize(23);
        assertThat(changes)
                .filteredOn(row -> row.contains("only the day was known"))
                .hasSize(126);
        assertThat(changes)
                .filteredOn(row -> row.contains("its first time; it was "))
                .hasSize(49);
        assertThat(changes).filteredOn(row -> row.contains("moved from ")).hasSize(27);
        assertThat(changes)
                .contains(
                        "9 new: Mon 2025-11-03 20:00 to 21:50 · league-1, club-07 – club-09 | its first time; it was Sat"
                                + " 2025-11-01",
                        "2 new: Sat 2025-09-13 20:00 to 21:50 · league-1, club-03 – club-01 | moved from Sat 2025-09-13"
                                + " 15:00",
                        "24 passed over: Sun 2025-12-21 14:00 · league-1, club-09 – club-06 | row 34 moves it on",
                        "227 asked: Mon 2025-12-29 18:00 · league-2, club-23 – club-24 | only the year differs: it was Tue"
                                + " 2026-12-29 18:00; which is right?");
    }

    @Test
    void dates_before_the_change_show_the_twelve_wrong_years_by_themselves() {
        // The same rows as a plain list of fixtures, without what they were changed to.
        String before = new String(SeasonFile.reschedules(), java.nio.charset.StandardCharsets.UTF_8)
                .lines()
                .map(line -> line.split(",", -1))
                .map(cells -> String.join(",", cells[0], cells[1], cells[2], cells[3], cells[4]))
                .distinct()
                .collect(java.util.stream.Collectors.joining("\n"))
                .replace("date_before,time_before", "date,time");

        Preview preview = Intake.preview(
                before.getBytes(java.nio.charset.StandardCharsets.UTF_8),
                weeks(LocalDate.of(2025, 8, 1), List.of()),
                Wanted.FIXTURES,
                MINUTES);

        assertThat(rows(preview))
                .filteredOn(row -> row.contains("is the year 2025 meant?"))
                .hasSize(12)
                .allMatch(row -> row.startsWith("asked: Tue 2026-12-29 "));
    }

    @Test
    void a_change_of_a_fixture_that_is_known_moves_it() {
        Scenario known = Intake.preview(
                        "id,date,time,competition,home,away\n7,2025-09-13,15:00,league-1,club-03,club-01\n"
                                .getBytes(java.nio.charset.StandardCharsets.UTF_8),
                        weeks(LocalDate.of(2025, 8, 1), List.of()),
                        Wanted.FIXTURES,
                        MINUTES)
                .take(false);

        Preview preview = Intake.preview(
                SeasonFile.reschedules(), known, Wanted.FIXTURES, MINUTES.with(Answers.ONLY, "club-03 – club-01"));

        assertThat(rows(preview))
                .filteredOn(row -> !row.startsWith("passed over"))
                .containsExactly("moved: Sat 2025-09-13 20:00 to 21:50 · league-1, club-03 – club-01 | moved from Sat"
                        + " 2025-09-13 15:00");
        assertThat(preview.take(false).fixtures()).hasSize(1);
    }
}
