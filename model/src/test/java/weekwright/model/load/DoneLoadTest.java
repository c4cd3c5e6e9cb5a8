package weekwright.model.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.PersonEntry;

/** Session-RPE: Foster et al. 2001, JSCR 15:109-115. All figures worked by hand. */
class DoneLoadTest {
    private static LogEntry entry(
            String family, int minutes, @Nullable Double rpe, boolean done, PersonEntry... people) {
        return new LogEntry(
                null,
                null,
                null,
                "squad",
                family,
                Moment.parse("2027-02-09T10:00"),
                minutes,
                Dose.FULL,
                null,
                rpe,
                done,
                List.of("a2"),
                List.of(people),
                null);
    }

    private static PersonEntry person(@Nullable Double rpe, @Nullable Integer minutes) {
        return new PersonEntry("a1", rpe, minutes, List.of(), null, null, null);
    }

    private static double load(LogEntry entry, @Nullable String athlete) {
        return DoneLoad.of(entry, Catalogue.builtIn().family(entry.family()), null, athlete);
    }

    @Test
    void rating_times_whole_minutes() {
        assertThat(load(entry("tempo-run", 60, 5.0, true), null)).isEqualTo(300);
        assertThat(load(entry("tempo-run", 60, null, true), null))
                .as("the family's rating of 4")
                .isEqualTo(240);
        assertThat(load(entry("tempo-run", 60, 6.5, true), null)).isEqualTo(390);
    }

    @Test
    void an_athlete_s_own_rating_and_minutes_go_first() {
        assertThat(load(entry("tempo-run", 60, 5.0, true, person(7.0, 40)), "a1"))
                .isEqualTo(280);
        assertThat(load(entry("tempo-run", 60, 5.0, true, person(7.0, null)), "a1"))
                .isEqualTo(420);
        assertThat(load(entry("tempo-run", 60, 5.0, true, person(7.0, 40)), null))
                .as("the group's")
                .isEqualTo(300);
    }

    @Test
    void missed_is_nothing() {
        assertThat(load(entry("tempo-run", 60, 5.0, false), null)).isZero();
        assertThat(load(entry("tempo-run", 60, 5.0, true), "a2")).isZero();
    }

    /** (90 + 25) min × 8 = 920 AU; 45 of 90 min played: half of it. */
    @Test
    void a_match_counts_its_play_and_warm_up_by_the_minutes_played() {
        assertThat(load(entry("fixture", 110, 8.0, true), null)).isEqualTo(920);
        assertThat(load(entry("fixture", 110, 8.0, true, person(null, 45)), "a1"))
                .isEqualTo(460);
        assertThat(load(entry("fixture", 110, 8.0, true, person(null, 0)), "a1"))
                .isZero();
    }
}
