package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.explain.TakingPart;
import weekwright.engine.testing.Squad;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.LendsAt;
import weekwright.model.scenario.Weekday;

/** Weeks of people who are not all the same: one in two groups, one with an exam, one on a shift, the young. */
class PeopleWeeksTest {
    private static void assertNothingOwed(SolvedWeek week) {
        assertThat(week.totals().must()).isZero();
        assertThat(week.totals().key()).isZero();
        assertThat(week.totals().main()).isZero();
    }

    private static Map<String, List<String>> sittingOut(SolvedWeek week) {
        return week.plan().findings().stream()
                .filter(finding -> finding.rule().equals("sits-out"))
                .collect(Collectors.toMap(finding -> finding.placements().get(0), Finding::athletes));
    }

    // Source: expert proposal: one athlete of two groups costs neither of them a session; hockey comes first for her.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void an_athlete_in_two_groups_sits_out_what_comes_too_soon_and_neither_group_loses_a_session(long seed) {
        SolvedWeek week = SolvedWeek.of("two-groups", seed);

        assertNothingOwed(week);
        assertThat(week.placedFor("hockey", "acceleration", "full-body-strength"))
                .hasSize(2);
        assertThat(week.placedFor("sprint-club", "max-velocity", "heavy-lower-knee"))
                .hasSizeGreaterThanOrEqualTo(2);
        Map<String, List<String>> sitOut = sittingOut(week);
        assertThat(sitOut.keySet()).isNotEmpty().allMatch(session -> session.startsWith("sprint-club/"));
        assertThat(sitOut.values()).allMatch(List.of("p01")::equals);
        TakingPart part = TakingPart.of(week.scenario(), week.plan());
        assertThat(week.placedFor("hockey", "acceleration", "full-body-strength"))
                .allMatch(session -> part.inSession(id(session), "p01"));
        assertThat(sitOut.keySet())
                .allMatch(session -> !part.inSession(session, "p01") && part.inSession(session, "p04"));
    }

    private static String id(Placement placement) {
        return java.util.Objects.requireNonNull(placement.id());
    }

    // Source: expert proposal: an exam and a work shift do not close an evening for the other twenty-two; two gym slots
    // are filled, the later in a smaller dose (nothing full within 72 h of a match, Thomas et al. 2018, MSSE
    // 50:2526-2535).
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void an_exam_and_a_shift_close_no_evening_and_two_gym_slots_are_filled(long seed) {
        SolvedWeek week = SolvedWeek.of("four-evenings", seed);

        assertNothingOwed(week);
        List<Placement> strength = week.placed("full-body-strength");
        assertThat(strength).extracting(Placement::facility).containsExactly("gym", "gym");
        assertThat(strength)
                .extracting(session -> session.start().date())
                .containsExactly(LocalDate.of(2027, 10, 5), LocalDate.of(2027, 10, 7));
        assertThat(strength.get(1).dose()).isNotEqualTo(Dose.FULL);
        assertThat(week.placed("max-velocity")).hasSize(1);
        assertThat(sittingOut(week)).containsEntry(id(strength.get(0)), List.of("r02", "r04"));
        assertThat(sittingOut(week)).doesNotContainKey(id(strength.get(1)));
    }

    // Source: expert proposal: where practice takes both evenings whole, small doses lie in the minutes that it lends.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void where_practice_takes_both_evenings_small_doses_lie_in_the_minutes_that_it_lends(long seed) {
        Squad evenings = squad().window("18:30", "21:00", Weekday.TUE, Weekday.THU)
                .transfer("turf-pitch", "weights-room", 5)
                .practice("practice-tue", "2027-03-02T18:30")
                .lasting(150)
                .at("turf-pitch")
                .lending(20, LendsAt.END)
                .practice("practice-thu", "2027-03-04T18:30")
                .lasting(150)
                .at("turf-pitch")
                .lending(20, LendsAt.START)
                .fixture("cup-tie", "2027-03-06T15:00")
                .aim("full-body-strength", 1, 1, 1)
                .doses(Dose.FULL, Dose.MICRO)
                .microCounts()
                .aim("max-velocity", 1, 1, 1)
                .doses(Dose.FULL, Dose.MICRO)
                .microCounts();
        SolvedWeek week = SolvedWeek.of(evenings.scenario(), seed);

        assertNothingOwed(week);
        Placement strength = week.placed("full-body-strength").get(0);
        Placement speed = week.placed("max-velocity").get(0);
        assertThat(strength.start()).hasToString("2027-03-02T20:45");
        assertThat(speed.start().toString()).isBetween("2027-03-04T18:45", "2027-03-04T18:50");
        assertThat(List.of(strength, speed)).allMatch(one -> one.dose() == Dose.MICRO && minutes(one) == 15);
    }

    private static int minutes(Placement placement) {
        return java.util.Objects.requireNonNull(placement.minutes());
    }

    // Source: hours a week no more than years of age and two days off, NATA youth specialization statement 2019
    // (secondary
    // pages only); skills fresh and on days of their own, expert proposal.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_young_train_no_more_hours_than_they_have_years_with_two_days_off_and_learn_fresh(long seed) {
        SolvedWeek week = SolvedWeek.of("under-15", seed);

        assertNothingOwed(week);
        assertThat(week.costs("youth")).isEmpty();
        assertThat(week.days("under-15", DayClass.FREE)).hasSizeGreaterThanOrEqualTo(2);
        assertThat(week.plan().placements().stream()
                        .mapToInt(PeopleWeeksTest::minutes)
                        .sum())
                .as("minutes placed, beside 150 of practice and 85 of the match, of 14 hours")
                .isLessThanOrEqualTo(14 * 60 - 150 - 85);
        assertThat(week.dates("technique")).hasSizeGreaterThanOrEqualTo(2).doesNotHaveDuplicates();
        assertThat(week.placed("technique"))
                .allSatisfy(lesson -> assertThat(week.before(lesson)).isEmpty());
        assertThat(week.mostHighRunning("under-15")).isLessThan(3);
    }
}
