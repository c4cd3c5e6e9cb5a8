package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** What a good plan looks like, shown on plans that were really searched for, with three seeds each. */
class SolvedWeeksTest {
    private static final long MOVES = 30_000;

    // Sources: order of the week, expert proposal from Malone JJ et al. 2015 and Martin-Garcia et al. 2018; MD-1 at two
    // thirds of MD-3, Clemente et al. 2019 (66 %); free day on D+2, Buchheit et al. 2023, IJSPP 18:293-299.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void one_match_on_saturday_puts_each_quality_where_a_good_coach_would(long seed) {
        Scenario scenario = Scenarios.read("one-match");
        Judged week = propose(scenario, seed);
        String group = scenario.groups().get(0).id();

        assertThat(week.plan().totals().must()).isZero();
        assertThat(week.plan().totals().key()).isZero();
        assertThat(week.plan().totals().main()).isZero();
        assertThat(matchDays(week, group, "heavy-lower-knee")).allMatch(day -> day == -4 || day == -3);
        Placement speed = placed(week, "max-velocity").get(0);
        int speedDay = matchDay(week, group, speed.start().date());
        assertThat(speedDay == -3 || (speedDay == -2 && speed.dose() == Dose.MICRO))
                .as("maximal speed on MD-3, or a micro dose on MD-2: %d %s", speedDay, speed.dose())
                .isTrue();
        assertThat(matchDays(week, group, "acceleration")).allMatch(day -> day == -4 || day == -3);
        assertThat(mostHighRunning(week, group))
                .as("never three high days running")
                .isLessThan(3);
        assertThat(load(week, group, -1)).isLessThanOrEqualTo(load(week, group, -3) * 2 / 3);
        assertThat(load(week, group, -1)).isLessThanOrEqualTo(load(week, group, -2));
        assertThat(freeDays(week, group)).contains(DayOfWeek.MONDAY);
        assertNothingHighWithin(week, scenario, Duration.ofHours(40));
    }

    // Source: minima of 40 h (micro speed 36 h), expert proposal on Haugen et al. 2019 and Thomas et al. 2018.
    private static void assertNothingHighWithin(Judged week, Scenario scenario, Duration hours) {
        var kickOff = scenario.fixtures().get(0).start().instant(scenario.zone());
        for (Placement placement : week.plan().placements()) {
            if (List.of("max-velocity", "acceleration", "heavy-lower-knee", "heavy-lower-hip")
                    .contains(placement.family())) {
                var end = placement.start().instant(scenario.zone()).plus(Duration.ofMinutes(placement.minutes()));
                Duration allowed = placement.dose() == Dose.MICRO ? Duration.ofHours(36) : hours;
                assertThat(Duration.between(end, kickOff)).as(placement.id()).isGreaterThanOrEqualTo(allowed);
            }
        }
    }

    // Source: rest between matches, Dupont et al. 2010; what is left out is named, expert proposal.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void between_two_close_matches_there_is_no_full_heavy_lower_and_no_full_speed(long seed) {
        Judged week = propose(Scenarios.read("two-matches"), seed);

        assertThat(week.plan().totals().must()).isZero();
        assertThat(week.plan().placements())
                .filteredOn(p -> List.of("max-velocity", "heavy-lower-knee").contains(p.family()))
                .allMatch(p -> p.dose() == Dose.MICRO);
        assertThat(week.plan().leftOut()).extracting(LeftOut::id).anyMatch(id -> id.contains("/heavy-lower-knee/"));
        assertThat(week.plan().leftOut())
                .allMatch(left -> left.options() > 0 && !left.text().isBlank());
    }

    // Source: 48 to 72 h between maximal sprint sessions, Haugen et al. 2019, Table 2; high and low days kept apart,
    // common practice, no source.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_sprint_group_alternates_high_and_low_days(long seed) {
        Judged week = propose(Scenarios.read("sprint-week"), seed);

        assertThat(week.plan().totals().must()).isZero();
        assertThat(week.plan().totals().key()).isZero();
        assertThat(week.days()).noneMatch(day -> day.dayClass() == DayClass.MIDDLE);
        assertThat(mostHighRunning(week, "sprinters")).isEqualTo(1);
        assertThat(week.plan().totals().want()).isLessThan(15);
    }

    // Source: expert proposal; one strength session a week keeps strength, Ronnestad et al. 2011, JSCR 25:2653-2660.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_semi_professional_squad_fits_strength_and_speed_into_two_evenings(long seed) {
        Judged week = propose(Scenarios.read("two-evenings"), seed);

        assertThat(week.plan().totals().must()).isZero();
        assertThat(week.plan().totals().key()).isZero();
        assertThat(placed(week, "full-body-strength")).isNotEmpty();
        assertThat(placed(week, "max-velocity")).isNotEmpty();
    }

    // Source: expert proposal: what cannot be held is said, with what stands in the way.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void clashing_demands_leave_sessions_out_and_say_what_stands_in_the_way(long seed) {
        Judged week = propose(Scenarios.read("clash"), seed);

        assertThat(week.plan().totals().must()).isZero();
        assertThat(week.plan().totals().key()).isPositive();
        assertThat(week.plan().leftOut())
                .filteredOn(left -> left.need().equals("least"))
                .isNotEmpty()
                .allMatch(left -> !left.blockers().isEmpty());
    }

    @Test
    void a_plan_from_a_plan_moves_nothing_when_nothing_has_changed() {
        Scenario scenario = Scenarios.read("one-match");
        Judged first = propose(scenario, 1);

        Proposal again = new Proposal(scenario, first.plan(), Budget.moves(MOVES), 2, 2, null);
        Judged second = Engine.propose(again, Progress.SILENT);

        assertThat(second.plan().placements()).isEqualTo(first.plan().placements());
    }

    private static Judged propose(Scenario scenario, long seed) {
        return Engine.propose(new Proposal(scenario, null, Budget.moves(MOVES), seed, 2, null), Progress.SILENT);
    }

    private static List<Placement> placed(Judged week, String family) {
        return week.plan().placements().stream()
                .filter(placement -> placement.family().equals(family))
                .toList();
    }

    private static List<Integer> matchDays(Judged week, String group, String family) {
        List<Integer> days = placed(week, family).stream()
                .map(placement -> matchDay(week, group, placement.start().date()))
                .toList();
        assertThat(days).as("%s is placed", family).isNotEmpty();
        return days;
    }

    private static int matchDay(Judged week, String group, LocalDate date) {
        Integer matchDay = day(week, group, date).matchDay();
        return matchDay == null ? 99 : matchDay;
    }

    private static DayPicture day(Judged week, String group, LocalDate date) {
        return week.days().stream()
                .filter(day -> day.group().equals(group) && day.date().equals(date))
                .findFirst()
                .orElseThrow();
    }

    private static double load(Judged week, String group, int matchDay) {
        return week.days().stream()
                .filter(day ->
                        day.group().equals(group) && Integer.valueOf(matchDay).equals(day.matchDay()))
                .mapToDouble(DayPicture::load)
                .sum();
    }

    private static List<DayOfWeek> freeDays(Judged week, String group) {
        return week.days().stream()
                .filter(day -> day.group().equals(group) && day.dayClass() == DayClass.FREE)
                .map(day -> day.date().getDayOfWeek())
                .toList();
    }

    private static int mostHighRunning(Judged week, String group) {
        int most = 0;
        int running = 0;
        for (DayPicture day : week.days()) {
            if (day.group().equals(group)) {
                running = day.dayClass() == DayClass.HIGH ? running + 1 : 0;
                most = Math.max(most, running);
            }
        }
        return most;
    }
}
