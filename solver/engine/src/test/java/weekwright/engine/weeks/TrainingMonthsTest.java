package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.weeks.SolvedWeek.daysBetween;
import static weekwright.engine.weeks.SolvedWeek.runs;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Dose;

/** What the notes of the demo weeks without close fixtures expect of a good coach, on plans that were searched for. */
class TrainingMonthsTest {
    /** Work that tires nobody: demand of 3 points and less. */
    private static final List<String> EASY = List.of("trunk-and-balance", "mobility", "easy-bike");

    // Source: 2 to 4 short blocks of a new skill a week on separate days, fresh, expert proposal; spaced blocks, Shea
    // et
    // al. 2000, Hum Mov Sci 19:737-760.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void who_learns_to_hurdle_does_so_three_or_four_times_a_week_on_days_of_their_own_and_fresh(long seed) {
        SolvedWeek fortnight = SolvedWeek.of("hurdle-learners", seed);

        assertThat(fortnight.totals().must()).isZero();
        assertThat(fortnight.totals().key()).isZero();
        assertThat(fortnight.totals().main()).isZero();
        List<LocalDate> skill = fortnight.dates("technique");
        assertThat(skill).doesNotHaveDuplicates();
        LocalDate secondWeek = fortnight.scenario().firstDay().plusDays(7);
        assertThat(skill.stream().filter(day -> day.isBefore(secondWeek)).count())
                .isBetween(3L, 4L);
        assertThat(skill.stream().filter(day -> !day.isBefore(secondWeek)).count())
                .isBetween(3L, 4L);
        for (Placement block : fortnight.placed("technique")) {
            assertThat(block.minutes()).isLessThanOrEqualTo(40);
            assertThat(fortnight.before(block))
                    .as("before %s", block.id())
                    .extracting(Placement::family)
                    .isSubsetOf(EASY);
        }
    }

    // Source: 48 h between maximal sprint sessions, Haugen et al. 2019, Sports Med Open 5:44, Table 2; two high days,
    // expert proposal.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void learners_sprint_two_days_apart_and_have_no_more_than_two_high_days_a_week(long seed) {
        SolvedWeek fortnight = SolvedWeek.of("hurdle-learners", seed);

        assertThat(daysBetween(fortnight.dates("max-velocity", "acceleration")))
                .hasSize(3)
                .allMatch(days -> days >= 2);
        for (int week = 0; week < 2; week++) {
            assertThat(fortnight.week("learners", week))
                    .filteredOn(day -> day.dayClass() == DayClass.HIGH)
                    .hasSizeLessThanOrEqualTo(2);
        }
    }

    // Source: 48 to 72 h between maximal sprint sessions, Haugen et al. 2019, Table 2; high and low days kept apart,
    // common practice, no source.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void sprinters_have_three_high_days_on_alternate_days_and_low_days_that_stay_low(long seed) {
        SolvedWeek month = SolvedWeek.of("sprint-month", seed);

        assertThat(month.totals().must()).isZero();
        assertThat(month.totals().key()).isZero();
        assertThat(month.totals().main()).isZero();
        assertThat(month.mostHighRunning("sprinters")).isEqualTo(1);
        assertThat(month.days("sprinters", DayClass.MIDDLE)).isEmpty();
        for (int week = 0; week < 4; week++) {
            assertThat(month.week("sprinters", week))
                    .filteredOn(day -> day.dayClass() == DayClass.HIGH)
                    .as("week %d", week + 1)
                    .hasSize(3);
        }
    }

    // Source: near-maximal speed every 5 to 7 days, expert proposal grounded in Malone S et al. 2017 (from memory);
    // volume
    // falls and intensity is kept, Bosquet et al. 2007, MSSE 39:1358-1365.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void in_the_week_of_exams_the_hours_shrink_before_the_quality_does(long seed) {
        SolvedWeek month = SolvedWeek.of("sprint-month", seed);

        List<LocalDate> speed = month.dates("max-velocity");
        assertThat(daysBetween(speed)).allMatch(days -> days <= 7);
        assertThat(speed).hasSize(8);
        assertThat(month.placed("max-velocity")).allMatch(one -> one.dose() != Dose.MICRO);
        List<Double> loads = IntStream.range(0, 4)
                .mapToObj(week -> month.week("sprinters", week).stream()
                        .mapToDouble(day -> day.load())
                        .sum())
                .toList();
        assertThat(loads.get(2))
                .as("%s", loads)
                .isLessThan(loads.get(1))
                .isLessThan((loads.get(0) + loads.get(1) + loads.get(3)) / 3);
    }

    // Source: a maximal lift for 1 to 3 weeks running with advanced lifters, common practice, no source; the tested
    // lift
    // stays in rotation, expert proposal grounded in Kassiano et al. 2022, JSCR 36:1753-1762.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void lifters_have_one_heavy_knee_and_one_heavy_hip_lift_a_week_and_change_them_in_time(long seed) {
        SolvedWeek weeks = SolvedWeek.of("rotating-lifts", seed);

        assertThat(weeks.totals().must()).isZero();
        assertThat(weeks.totals().key()).isZero();
        assertThat(weeks.totals().main()).isZero();
        for (String family : List.of("heavy-lower-knee", "heavy-lower-hip")) {
            List<Placement> line = weeks.placed(family);
            assertThat(line.stream().map(one -> week(weeks, one))).as(family).containsExactly(0L, 1L, 2L, 3L, 4L, 5L);
            assertThat(runs(line.stream().map(Placement::variant).toList()))
                    .as("weeks running of %s", family)
                    .allMatch(run -> run <= 3);
            String tested = family.equals("heavy-lower-knee") ? "back-squat" : "deadlift";
            assertThat(daysBetween(withEnds(weeks, line, tested)))
                    .as("days without %s", tested)
                    .allMatch(days -> days <= 28);
        }
        assertThat(weeks.dates("heavy-lower-knee")).doesNotContainAnyElementsOf(weeks.dates("heavy-lower-hip"));
    }

    private static long week(SolvedWeek weeks, Placement placement) {
        return ChronoUnit.DAYS.between(
                        weeks.scenario().firstDay(), placement.start().date())
                / 7;
    }

    private static List<LocalDate> withEnds(SolvedWeek weeks, List<Placement> line, String variant) {
        List<LocalDate> dates = new ArrayList<>(List.of(weeks.scenario().firstDay()));
        line.stream()
                .filter(one -> variant.equals(one.variant()))
                .forEach(one -> dates.add(one.start().date()));
        dates.add(weeks.scenario().lastDay());
        return dates;
    }

    // Source: a room holds so many, a coach is in one place: no source needed; skills fresh, expert proposal; hours
    // before a
    // match, expert proposal on Haugen et al. 2019 and Thomas et al. 2018, MSSE 50:2526-2535.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void eight_squads_find_a_place_each_and_nobody_is_in_two(long seed) {
        SolvedWeek week = SolvedWeek.of("academy", seed);

        assertThat(week.totals().must()).isZero();
        assertThat(week.totals().key()).isZero();
        for (Placement one : week.plan().placements()) {
            assertThat(1
                            + sharing(week, one).stream()
                                    .filter(other -> led(one, other))
                                    .count())
                    .as("led by %s during %s", one.lead(), one.id())
                    .isLessThanOrEqualTo(atOnce(week, one));
            assertThat(groupsIn(week, one))
                    .as("in %s during %s", one.facility(), one.id())
                    .isLessThanOrEqualTo(room(week, one));
        }
    }

    private static List<Placement> sharing(SolvedWeek week, Placement one) {
        return week.plan().placements().stream()
                .filter(other -> other != one
                        && !week.start(other).isAfter(week.start(one))
                        && week.end(other).isAfter(week.start(one)))
                .toList();
    }

    private static int atOnce(SolvedWeek week, Placement one) {
        return week.scenario().staff().stream()
                .filter(member -> member.id().equals(one.lead()))
                .mapToInt(member -> member.atOnce())
                .findFirst()
                .orElse(Integer.MAX_VALUE);
    }

    private static boolean led(Placement one, Placement other) {
        return one.lead() != null && one.lead().equals(other.lead());
    }

    private static long groupsIn(SolvedWeek week, Placement one) {
        long placed = sharing(week, one).stream()
                .filter(other -> one.facility() != null && one.facility().equals(other.facility()))
                .count();
        long fixed = week.scenario().commitments().stream()
                .filter(fix -> fix.facility() != null && fix.facility().equals(one.facility()))
                .filter(fix -> runsAt(fix.start().local().atZone(week.scenario().zone()), fix.minutes(), week, one))
                .mapToLong(fix -> fix.groups().size())
                .sum();
        return 1 + placed + fixed;
    }

    private static boolean runsAt(ZonedDateTime start, int minutes, SolvedWeek week, Placement one) {
        return !start.toInstant().isAfter(week.start(one))
                && start.plusMinutes(minutes).toInstant().isAfter(week.start(one));
    }

    private static int room(SolvedWeek week, Placement one) {
        return week.scenario().facilities().stream()
                .filter(facility -> facility.id().equals(one.facility()) && facility.room() != null)
                .map(facility -> facility.room().groups())
                .filter(groups -> groups != null)
                .findFirst()
                .orElse(Integer.MAX_VALUE);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_youngest_learn_fresh_and_lift_nothing_and_the_oldest_lift_and_sprint_well_before_saturday(long seed) {
        SolvedWeek week = SolvedWeek.of("academy", seed);

        for (String young : List.of("under-9", "under-10", "under-11", "under-12")) {
            assertThat(week.plan().placements())
                    .filteredOn(one -> one.group().equals(young))
                    .noneMatch(one -> "gym".equals(one.facility()));
            for (Placement block : week.placedFor(young, "technique")) {
                assertThat(week.before(block)).extracting(Placement::family).isSubsetOf(EASY);
            }
        }
        for (String old : List.of("under-16", "under-18")) {
            Placement lift = week.placedFor(old, "heavy-lower-knee").get(0);
            Placement sprint = week.placedFor(old, "max-velocity").get(0);
            assertThat(week.hoursBefore(lift, "match-" + old)).isGreaterThanOrEqualTo(64);
            assertThat(week.hoursBefore(sprint, "match-" + old))
                    .isGreaterThanOrEqualTo(sprint.dose() == Dose.MICRO ? 36 : 40);
        }
    }
}
