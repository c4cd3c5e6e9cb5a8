package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.weeks.SolvedWeek.daysBetween;
import static weekwright.engine.weeks.SolvedWeek.runs;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.Engine;
import weekwright.engine.explain.DayPicture;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;

/** What the notes of the demo weeks with fixtures expect of a good coach, on plans that were searched for. */
class FixtureWeeksTest {
    // Source: court games recover sooner than football codes, Doeven et al. 2018, BMJ Open SEM 4:e000264; 64 h before a
    // game for whole doses of lower strength and 36 h for micro ones, expert proposal.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void before_two_games_strength_is_done_on_monday_as_large_as_the_hours_allow(long seed) {
        SolvedWeek week = SolvedWeek.of("court-week", seed);

        assertThat(week.totals().must()).isZero();
        assertThat(week.totals().key()).isZero();
        assertThat(week.totals().main()).isZero();
        Placement strength = week.placed("full-body-strength").get(0);
        assertThat(strength.start().date().getDayOfWeek()).isEqualTo(DayOfWeek.MONDAY);
        assertThat(strength.dose() == Dose.MICRO && week.hoursBefore(strength, "game-18") < 64)
                .as("a whole dose would need 64 h, a micro one 36: %s", week.hoursBefore(strength, "game-18"))
                .isTrue();
        assertThat(week.placed("full-body-strength", "intensive-plyometrics", "change-of-direction"))
                .allMatch(one -> one.start().date().getDayOfWeek() == DayOfWeek.MONDAY);
        assertThat(week.dates("upper-strength"))
                .extracting(LocalDate::getDayOfWeek)
                .containsExactly(DayOfWeek.MONDAY);
    }

    // Source: recovery work on the day after, common practice, no source; who did not play trains on the day after,
    // seen by
    // Martin-Garcia et al. 2018, JSCR 32:3511-3518; low work on days of long journeys, expert proposal.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_day_after_a_game_is_for_recovery_and_for_those_on_the_bench(long seed) {
        SolvedWeek week = SolvedWeek.of("court-week", seed);

        assertThat(week.dates("pool-recovery"))
                .extracting(LocalDate::getDayOfWeek)
                .containsExactly(DayOfWeek.THURSDAY, DayOfWeek.SUNDAY);
        assertThat(week.dates("aerobic-intervals"))
                .extracting(LocalDate::getDayOfWeek)
                .containsExactly(DayOfWeek.THURSDAY);
        assertThat(week.day("first-team", LocalDate.parse("2027-02-12")).dayClass())
                .isEqualTo(DayClass.LOW);
    }

    // Source: order of the week, expert proposal from Malone JJ et al. 2015, IJSPP 10:489-497, and Martin-Garcia et al.
    // 2018, JSCR 32:3511-3518.
    @ParameterizedTest
    @CsvSource({
        "clocks-forward, 1",
        "clocks-forward, 2",
        "clocks-forward, 3",
        "clocks-back, 1",
        "clocks-back, 2",
        "clocks-back, 3"
    })
    void lifting_and_sprinting_lie_four_and_three_days_before_a_match_on_tuesday(String demo, long seed) {
        SolvedWeek week = SolvedWeek.of(demo, seed);

        assertThat(week.totals().must()).isZero();
        assertThat(week.totals().key()).isZero();
        assertThat(week.totals().main()).isZero();
        assertThat(week.matchDays("heavy-lower-knee")).containsExactly(-4);
        assertThat(week.matchDays("max-velocity")).containsExactly(-3);
        DayPicture monday = week.days("squad").get(5);
        assertThat(monday.matchDay()).isEqualTo(-1);
        assertThat(monday.dayClass()).isEqualTo(DayClass.LOW);
        assertThat(monday.load()).isLessThanOrEqualTo(week.load("squad", -3) * 2 / 3);
    }

    // Source: clock changes of the IANA time zone database, Dublin 28 March 2027 01:00, Hobart 4 April 2027 03:00.
    @ParameterizedTest
    @CsvSource({"clocks-forward, 2027-03-26T22:30, 91", "clocks-back, 2027-04-02T22:30, 92.5"})
    void hours_to_the_match_are_hours_that_pass(String demo, String late, double hours) {
        SolvedWeek week = SolvedWeek.of(demo, 1);
        Placement lift = week.placed("heavy-lower-knee").get(0);
        List<Placement> moved = new ArrayList<>(week.plan().placements());
        moved.set(moved.indexOf(lift), at(lift, late));

        Plan plan = Engine.judge(week.scenario(), of(week.plan(), moved)).plan();

        // 92 of the 96 hours that are wanted count as enough.
        assertThat(plan.findings().stream()
                        .filter(finding -> finding.rule().equals("before-fixture-margin"))
                        .filter(finding -> finding.placements().contains(lift.id()))
                        .map(Finding::measured))
                .isEqualTo(hours < 92 ? List.of(hours) : List.of());
    }

    private static Placement at(Placement one, String start) {
        return new Placement(
                one.id(),
                one.group(),
                one.family(),
                Moment.parse(start),
                one.minutes(),
                one.facility(),
                one.lead(),
                one.dose(),
                one.variant(),
                one.pin());
    }

    private static Plan of(Plan plan, List<Placement> placements) {
        return new Plan(
                plan.weekwright(),
                plan.scenario(),
                null,
                null,
                null,
                placements,
                List.of(),
                List.of(),
                null,
                List.of());
    }

    // Source: those who did not play make up for it by the day after, Martin-Garcia et al. 2018, JSCR 32:3511-3518
    // (that it
    // was examined), expert proposal.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void on_sunday_those_who_played_recover_and_those_who_did_not_run(long seed) {
        SolvedWeek week = SolvedWeek.of("bench-sunday", seed);

        assertThat(week.totals().must()).isZero();
        assertThat(week.totals().key()).isZero();
        assertThat(week.totals().main()).isZero();
        assertThat(week.plan().placements())
                .filteredOn(one -> one.start().date().getDayOfWeek() == DayOfWeek.SUNDAY)
                .extracting(Placement::id)
                .containsExactlyInAnyOrder(
                        "squad/repeated-sprint+not-played/2027-08-16/1", "squad/pool-recovery+played/2027-08-16/1");
        assertThat(week.matchDays("heavy-lower-knee")).isSubsetOf(-4, -3);
        Placement speed = week.placed("max-velocity").get(0);
        assertThat(week.matchDay(speed) == -3 || (week.matchDay(speed) == -2 && speed.dose() == Dose.MICRO))
                .isTrue();
        assertThat(week.weekdays("squad", DayClass.FREE)).contains(DayOfWeek.MONDAY);
    }

    // Source: order of the week as above; congested weeks with small doses, expert proposal; light days on long
    // journeys,
    // expert proposal.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void twelve_weeks_are_the_same_good_week_again_and_again(long seed) {
        SolvedWeek weeks = SolvedWeek.of("twelve-weeks", seed);

        assertThat(weeks.totals().must()).isZero();
        assertThat(weeks.totals().key()).isZero();
        assertThat(weeks.totals().main()).isZero();
        assertThat(weeks.mostHighRunning("squad")).isLessThan(3);
        assertThat(weeks.placed("max-velocity")).hasSize(12);
        assertThat(weeks.placed("heavy-lower-knee")).hasSize(12);
        for (Placement one : weeks.placed("max-velocity", "heavy-lower-knee")) {
            if (weeks.matchDay(one) == -2 || weeks.matchDay(one) == -1) {
                assertThat(one.dose()).as(one.id()).isEqualTo(Dose.MICRO);
            }
        }
        assertThat(weeks.placed("max-velocity"))
                .as("whole sessions of speed but between close matches")
                .filteredOn(one -> one.dose() == Dose.MICRO)
                .allMatch(one ->
                        List.of("2027-09-20", "2027-10-25").contains(one.id().split("/")[2]));
    }

    // Source: the same maximum for no more than 3 to 6 weeks running, common practice, no source; each quality within
    // ten
    // days, expert proposal.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void over_twelve_weeks_the_squat_changes_and_nothing_is_forgotten(long seed) {
        SolvedWeek weeks = SolvedWeek.of("twelve-weeks", seed);

        List<String> squats = weeks.placed("heavy-lower-knee").stream()
                .filter(one -> one.dose() == Dose.FULL)
                .map(Placement::variant)
                .toList();
        assertThat(runs(squats)).as("%s", squats).allMatch(run -> run <= 6);
        assertThat(squats).contains("back-squat").hasSizeGreaterThan(6);
        assertThat(new java.util.TreeSet<>(squats)).hasSizeGreaterThan(1);
        for (String family : List.of("max-velocity", "heavy-lower-knee", "upper-strength")) {
            assertThat(daysBetween(weeks.dates(family))).as(family).allMatch(days -> days <= 10);
        }
        LocalDate journey = weeks.scenario().fixtures().stream()
                .filter(fixture -> fixture.travel() != null && fixture.travel().outMinutes() > 120)
                .map(fixture -> fixture.start().date())
                .findFirst()
                .orElseThrow();
        assertThat(weeks.plan().placements())
                .filteredOn(one -> one.start().date().equals(journey))
                .allMatch(one ->
                        List.of("primer", "trunk-and-balance", "recovery").contains(one.family()));
    }
}
