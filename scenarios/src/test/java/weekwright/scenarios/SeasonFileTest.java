package weekwright.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/** Facts of the seasons (openfootball public football data, CC0 1.0) and of the weeks made from them. */
class SeasonFileTest {
    private static final SeasonFile CLUB_1 = SeasonFile.club(1);
    private static final SeasonFile CLUB_3 = SeasonFile.club(3);

    @Test
    void club1Plays58MatchesWith20GapsOf80HoursOrShorter() {
        assertThat(CLUB_1.matches()).hasSize(58);
        assertThat(CLUB_1.gaps())
                .filteredOn(gap -> gap.compareTo(Duration.ofHours(80)) <= 0)
                .hasSize(20);
    }

    @Test
    void theSixSeasonsHaveTheirMatches() {
        assertThat(IntStream.rangeClosed(1, SeasonFile.CLUBS)
                        .map(club -> SeasonFile.club(club).matches().size()))
                .containsExactly(58, 57, 56, 56, 48, 48);
    }

    @Test
    void theShortestGapOfClub3Is51HoursAndAQuarterFromKickOffToKickOff() {
        assertThat(CLUB_3.matches()).hasSize(56);
        assertThat(CLUB_3.gaps().stream().min(Duration::compareTo))
                .contains(Duration.ofHours(51).plusMinutes(15));
    }

    @Test
    void theBusiest30DaysOfClub1Hold9Matches() {
        assertThat(CLUB_1.busiest(30)).isEqualTo(9);
        assertThat(CLUB_3.busiest(30)).isEqualTo(8);
    }

    @Test
    void aGapIsElapsedTimeSoTheNightWithoutAnHourCounts() {
        // the clocks of Europe/London went forward on 30 March 2025: 16 March 13:30 to 1 April 19:45
        int match =
                CLUB_1.matches().stream().map(SeasonFile.Match::date).toList().indexOf(LocalDate.of(2025, 4, 1));

        assertThat(CLUB_1.gaps().get(match - 1))
                .isEqualTo(Duration.ofDays(16).plusHours(5).plusMinutes(15));
    }

    @Test
    void theQuietFortnightOfClub1HoldsOneMatchAWeek() {
        LocalDate monday = CLUB_1.quietFortnight();

        assertThat(monday).isEqualTo("2025-02-10");
        assertThat(monday.getDayOfWeek()).isEqualTo(DayOfWeek.MONDAY);
        assertThat(inHorizon(CLUB_1.stretch(monday, 14)))
                .extracting(fixture -> fixture.start().toString())
                .containsExactly("2025-02-15T12:30", "2025-02-22T15:00");
    }

    @Test
    void theFortnightOfTheShortestGapHoldsBothItsMatchesAndNamesTheBusyDaysRoundThem() {
        LocalDate monday = CLUB_3.fortnightOfShortestGap();

        assertThat(monday).isEqualTo("2024-09-16");
        assertThat(inHorizon(CLUB_3.stretch(monday, 14)))
                .extracting(fixture -> fixture.start().toString())
                .containsExactly("2024-09-18T20:00", "2024-09-22T16:30", "2024-09-24T19:45", "2024-09-28T12:30");
    }

    @Test
    void aStretchCarriesTheMatchesOfTheDaysBeforeAndAfterIt() {
        Scenario scenario = CLUB_1.stretch(CLUB_1.quietFortnight(), 14);

        assertThat(scenario.zone().getId()).isEqualTo("Europe/London");
        assertThat(scenario.history())
                .filteredOn(entry -> entry.family().equals("fixture"))
                .extracting(entry -> entry.start().date().toString())
                .containsExactly(
                        "2025-01-15",
                        "2025-01-18",
                        "2025-01-22",
                        "2025-01-25",
                        "2025-01-29",
                        "2025-02-02",
                        "2025-02-05");
        assertThat(scenario.fixtures())
                .allMatch(fixture -> fixture.minutes() == 110)
                .extracting(fixture -> fixture.start().date().toString())
                .containsExactly(
                        "2025-02-15",
                        "2025-02-22",
                        "2025-02-26",
                        "2025-03-04",
                        "2025-03-09",
                        "2025-03-12",
                        "2025-03-16");
        assertThat(scenario.fixtures().get(0).travel().outMinutes()).isEqualTo(110);
        assertThat(scenario.fixtures().get(1).travel().outMinutes()).isZero();
    }

    @Test
    void theInventedTrainingNeverFollowsAMatchAtOnceNorRepeatsSpeedTheNextDay() {
        for (SeasonFile season : List.of(CLUB_1, CLUB_3)) {
            for (int week = 4; week < 36; week++) {
                LocalDate monday = LocalDate.of(2024, 8, 19).plusWeeks(week);
                Scenario scenario = season.stretch(monday, 14);
                assertThat(days(scenario, "max-velocity")).allSatisfy(day -> {
                    assertThat(days(scenario, "max-velocity")).doesNotContain(day.plusDays(1));
                    assertThat(days(scenario, "fixture")).doesNotContain(day, day.minusDays(1), day.minusDays(2));
                });
            }
        }
    }

    @Test
    void aRowOfAnotherFormIsRefusedWithItsLine() {
        assertThatThrownBy(() ->
                        SeasonFile.parse("club", "date,kickoff_local,competition,venue\n2025-02-15,12:30,league\n"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("line 2 [2025-02-15,12:30,league] must hold date,kickoff_local,competition,venue,"
                        + " the venue being home or away");
        assertThatThrownBy(() -> SeasonFile.club(7)).hasMessage("there is no season of club [7]: there are 1 to 6");
    }

    private static List<Fixture> inHorizon(Scenario scenario) {
        return scenario.fixtures().stream()
                .filter(fixture -> !fixture.start().date().isAfter(scenario.lastDay()))
                .toList();
    }

    private static List<LocalDate> days(Scenario scenario, String family) {
        return scenario.history().stream()
                .filter(entry -> entry.family().equals(family))
                .map(LogEntry::start)
                .map(start -> start.date())
                .toList();
    }
}
