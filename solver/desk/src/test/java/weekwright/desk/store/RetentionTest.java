package weekwright.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RetentionTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
    private static final Retention BARE = new Retention(30, 0);
    private static final Instant NOW = Instant.parse("2027-03-31T12:00:00Z");

    private static Revision at(int number, String at) {
        return new Revision(number, Instant.parse(at), "x", number, false, Map.of());
    }

    private static List<Integer> over(Retention retention, Revision... all) {
        return retention.over(List.of(all), NOW, ZONE).stream()
                .map(Revision::number)
                .toList();
    }

    @Test
    void all_of_thirty_days_are_kept() {
        Revision justOver = at(1, "2027-03-01T11:59:59Z");
        Revision exactly = at(2, "2027-03-01T12:00:00Z");
        Revision justUnder = at(3, "2027-03-01T12:00:01Z");

        assertThat(over(BARE, justOver, exactly, justUnder)).containsExactly(1);
    }

    @Test
    void then_the_last_of_each_day_is_kept() {
        assertThat(over(
                        BARE,
                        at(1, "2027-01-10T08:00:00Z"),
                        at(2, "2027-01-10T09:00:00Z"),
                        at(3, "2027-01-11T08:00:00Z"),
                        at(4, "2027-03-31T08:00:00Z")))
                .containsExactly(1);
    }

    /** Dublin keeps summer time: 23:30 UTC on 9 July is half an hour into the 10th there (tz database). */
    @Test
    void days_are_those_of_the_scenario_s_zone() {
        Instant autumn = Instant.parse("2027-11-01T00:00:00Z");
        List<Revision> all =
                List.of(at(1, "2027-07-09T22:30:00Z"), at(2, "2027-07-09T23:30:00Z"), at(3, "2027-07-10T08:00:00Z"));

        assertThat(BARE.over(all, autumn, ZONE)).extracting(Revision::number).containsExactly(2);
    }

    @Test
    void the_version_in_force_stays_whatever_its_age() {
        assertThat(over(BARE, at(1, "2026-01-01T08:00:00Z"), at(2, "2026-01-01T09:00:00Z")))
                .containsExactly(1);
    }

    @Test
    void what_is_kept_beside_goes_after_thirty_days_and_stands_for_no_day() {
        Revision beside = new Revision(2, Instant.parse("2027-01-10T09:00:00Z"), "x", 2, true, Map.of());

        assertThat(over(BARE, at(1, "2027-01-10T08:00:00Z"), beside, at(3, "2027-03-31T08:00:00Z")))
                .containsExactly(2);
    }

    @Test
    void a_clock_that_runs_wild_costs_no_recent_work() {
        Revision[] oneDay = IntStream.rangeClosed(1, 25)
                .mapToObj(number -> at(number, "2020-01-01T08:00:00Z"))
                .toArray(Revision[]::new);

        assertThat(over(Retention.USUAL, oneDay)).hasSize(5).doesNotContain(6);
    }

    @Test
    void a_folder_is_thinned_out_once_a_day_and_undo_passes_over_what_is_gone() throws Exception {
        Path folder = Path.of("/desk");
        FrailDisk disk = new FrailDisk().with(folder);
        disk.byHand(folder.resolve("scenario.json"), Harbour.SCENARIO);
        Hands clock = new Hands("2027-01-01T08:00:00Z");
        Store store = Store.open(new Store(folder, disk, clock, BARE, 0));
        store.commit(1, "One", Harbour.week(1));
        store.commit(2, "Two", Harbour.week(2));
        clock.move(Duration.ofDays(1));
        store.commit(3, "Three", Harbour.week(3));
        clock.move(Duration.ofDays(60));

        Store later = Store.open(new Store(folder, disk, clock, BARE, 0));

        assertThat(Harbour.labels(later)).containsExactly("4 Three", "3 Two");
        assertThat(later.undo(4).head().contents()).isEqualTo(Harbour.week(2));
        assertThat(later.undo(5)).isInstanceOf(Outcome.Same.class);
        assertThat(later.redo(5).head().contents()).isEqualTo(Harbour.week(3));
    }

    /** A season of eight months with five changes a day: what a folder comes to. */
    @Test
    void a_season_comes_to_a_few_hundred_revisions() throws IOException {
        List<Revision> kept = new ArrayList<>();
        Instant at = Instant.parse("2027-01-01T08:00:00Z");
        for (int number = 1; number <= 240 * 5; number++) {
            kept.add(new Revision(number, at, "x", number, false, Map.of()));
            kept.removeAll(Retention.USUAL.over(kept, at, ZONE));
            at = at.plus(number % 5 == 0 ? Duration.ofHours(16) : Duration.ofHours(2));
        }
        assertThat(kept).hasSizeBetween(350, 370);
    }
}
