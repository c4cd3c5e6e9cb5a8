package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Blocker;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Dose;

/** What a good plan looks like, shown on plans that were really searched for, with three seeds each. */
class SolvedWeeksTest {
    /** Lower-body and sprinting work that nobody does close to a match. */
    private static final List<String> HIGH =
            List.of("max-velocity", "acceleration", "heavy-lower-knee", "heavy-lower-hip");

    // Sources: order of the week, expert proposal from Malone JJ et al. 2015 and Martin-Garcia et al. 2018; MD-1 at two
    // thirds of MD-3, Clemente et al. 2019 (66 %); free day on D+2, Buchheit et al. 2023, IJSPP 18:293-299.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void one_match_on_saturday_puts_each_quality_where_a_good_coach_would(long seed) {
        SolvedWeek week = SolvedWeek.of("one-match", seed);
        String group = week.scenario().groups().get(0).id();

        assertThat(week.totals().must()).isZero();
        assertThat(week.totals().key()).isZero();
        assertThat(week.totals().main()).isZero();
        assertThat(week.matchDays("heavy-lower-knee")).isNotEmpty().isSubsetOf(-4, -3);
        Placement speed = week.placed("max-velocity").get(0);
        int speedDay = week.matchDay(speed);
        assertThat(speedDay == -3 || (speedDay == -2 && speed.dose() == Dose.MICRO))
                .as("maximal speed on MD-3, or a micro dose on MD-2: %d %s", speedDay, speed.dose())
                .isTrue();
        assertThat(week.matchDays("acceleration")).isNotEmpty().isSubsetOf(-4, -3);
        assertThat(week.mostHighRunning(group))
                .as("never three high days running")
                .isLessThan(3);
        assertThat(week.load(group, -1)).isLessThanOrEqualTo(week.load(group, -3) * 2 / 3);
        assertThat(week.load(group, -1)).isLessThanOrEqualTo(week.load(group, -2));
        assertThat(week.weekdays(group, DayClass.FREE)).contains(DayOfWeek.MONDAY);
    }

    // Source: minima of 40 h (micro speed 36 h), expert proposal on Haugen et al. 2019 and Thomas et al. 2018.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void nothing_high_lies_within_40_hours_of_kick_off(long seed) {
        SolvedWeek week = SolvedWeek.of("one-match", seed);
        String match = week.scenario().fixtures().get(0).id();

        for (Placement placement : week.plan().placements()) {
            if (HIGH.contains(placement.family())) {
                assertThat(week.hoursBefore(placement, match))
                        .as(placement.id())
                        .isGreaterThanOrEqualTo(placement.dose() == Dose.MICRO ? 36 : 40);
            }
        }
    }

    // Source: rest between matches, Dupont et al. 2010; upper body after a match, Roe et al. 2016 (authors from
    // memory);
    // what is left out is named, expert proposal.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void between_two_close_matches_there_is_no_full_heavy_lower_and_no_full_speed(long seed) {
        SolvedWeek week = SolvedWeek.of("two-matches", seed);

        assertThat(week.totals().must()).isZero();
        assertThat(week.placed("max-velocity", "heavy-lower-knee")).allMatch(one -> one.dose() == Dose.MICRO);
        assertThat(week.placed("max-velocity", "heavy-lower-knee"))
                .extracting(week::matchDay)
                .isSubsetOf(-2);
        assertThat(week.placed("upper-strength")).isNotEmpty();
        List<LeftOut> lift = week.leftOut("heavy-lower-knee");
        assertThat(lift)
                .isNotEmpty()
                .allMatch(left -> left.options() > 0 && !left.text().isBlank());
        assertThat(lift.get(0).blockers()).extracting(Blocker::rule).contains("before-fixture", "after-fixture");
    }

    // Source: 48 to 72 h between maximal sprint sessions, Haugen et al. 2019, Table 2; high and low days kept apart,
    // common practice, no source.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_sprint_group_alternates_high_and_low_days(long seed) {
        SolvedWeek week = SolvedWeek.of("sprint-week", seed);

        assertThat(week.totals().must()).isZero();
        assertThat(week.totals().key()).isZero();
        assertThat(week.scenario().groups())
                .allSatisfy(group ->
                        assertThat(week.days(group.id(), DayClass.MIDDLE)).isEmpty());
        assertThat(week.mostHighRunning("sprinters")).isEqualTo(1);
        assertThat(week.days("sprinters", DayClass.HIGH)).hasSize(3);
        assertThat(week.totals().want()).isLessThan(15);
    }

    // Source: expert proposal; one strength session a week keeps strength, Ronnestad et al. 2011, JSCR 25:2653-2660.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_semi_professional_squad_fits_strength_and_speed_into_two_evenings(long seed) {
        SolvedWeek week = SolvedWeek.of("two-evenings", seed);

        assertThat(week.totals().must()).isZero();
        assertThat(week.totals().key()).isZero();
        assertThat(week.placed("full-body-strength")).isNotEmpty();
        assertThat(week.placed("max-velocity")).isNotEmpty();
    }

    // Source: expert proposal: what cannot be held is said, with what stands in the way.
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void clashing_demands_leave_sessions_out_and_say_what_stands_in_the_way(long seed) {
        SolvedWeek week = SolvedWeek.of("clash", seed);

        assertThat(week.totals().must()).isZero();
        assertThat(week.totals().key()).isPositive();
        assertThat(week.plan().leftOut())
                .filteredOn(left -> left.need().equals("least"))
                .isNotEmpty()
                .allMatch(left -> !left.blockers().isEmpty());
    }

    @Test
    void a_plan_from_a_plan_moves_nothing_when_nothing_has_changed() {
        SolvedWeek first = SolvedWeek.of("one-match", 1);

        Proposal again = new Proposal(first.scenario(), first.plan(), Budget.moves(30_000), 2, 2, null);
        Plan second = Engine.propose(again, Progress.SILENT).plan();

        assertThat(second.placements()).isEqualTo(first.plan().placements());
    }
}
