package weekwright.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.testing.SmallWeeks;
import weekwright.engine.testing.SmallWeeks.Change;
import weekwright.engine.testing.SmallWeeks.Changed;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Moment;

/**
 * After a change as little moves as can. The fewest sessions that must move are proven (profile {@code bench},
 * {@code ProofTest}): for a plan as good as any by must, key and main, whatever the wishes. At most twice as many move, save
 * where each one more brings what its move is worth: an expert proposal.
 */
class SolveAgainTest {
    private static final long MOVES = 30_000;
    /** Points: the search's own price of a move, and the rule's. */
    private static final double WORTH = Scale.MOVED / 10.0 + 2;

    static List<SmallWeeks.Proven> weeks() {
        return SmallWeeks.all();
    }

    @ParameterizedTest
    @MethodSource("weeks")
    void at_most_twice_the_fewest_sessions_move_after_a_change(SmallWeeks.Proven week) {
        Plan plan = week.plan();
        for (Change change : Change.values()) {
            Integer fewest = week.fewest().get(change);
            if (fewest != null) {
                Changed changed = SmallWeeks.after(change, week.scenario(), plan);
                Plan again = again(changed);
                Totals before = Engine.judge(changed.scenario(), changed.before())
                        .plan()
                        .totals();
                double more = moved(changed.before(), again) - 2.0 * fewest;
                assertThat(again.totals().must()).as("%s", change).isZero();
                assertThat(more <= 0 || before.want() - again.totals().want() >= more * WORTH)
                        .as("%s: %s sessions more than twice %d", change, more, fewest)
                        .isTrue();
            }
        }
    }

    @Test
    void over_all_small_weeks_hardly_more_moves_than_the_fewest() {
        long moved = 0;
        long fewest = 0;
        for (SmallWeeks.Proven week : weeks()) {
            Changed changed = SmallWeeks.after(Change.FACILITY_CLOSED, week.scenario(), week.plan());
            moved += moved(changed.before(), again(changed));
            fewest += week.fewest().get(Change.FACILITY_CLOSED);
        }
        assertThat(moved).isBetween(fewest, fewest * 5 / 4);
    }

    /** What people have been given moves to another day only where it must: 24 points a session (expert proposal). */
    @Test
    void what_was_given_out_goes_to_another_day_no_more_often_than_a_draft() {
        long asDraft = 0;
        long published = 0;
        for (SmallWeeks.Proven week : weeks()) {
            Changed draft = SmallWeeks.after(Change.FACILITY_CLOSED, week.scenario(), week.plan());
            Changed given =
                    new Changed(draft.scenario(), draft.before().withPublished(Moment.parse("2026-01-01T12:00")));
            asDraft += toAnotherDay(draft.before(), again(draft));
            published += toAnotherDay(given.before(), again(given));
        }
        assertThat(published).isLessThanOrEqualTo(asDraft);
    }

    private static long toAnotherDay(Plan before, Plan after) {
        return before.placements().stream()
                .filter(old -> after.placements().stream()
                        .noneMatch(now -> now.family().equals(old.family())
                                && now.start().date().equals(old.start().date())))
                .count();
    }

    @ParameterizedTest
    @MethodSource("weeks")
    void nothing_moves_where_nothing_has_changed(SmallWeeks.Proven week) {
        Plan plan = week.plan();

        assertThat(again(new Changed(week.scenario(), plan)).placements()).isEqualTo(plan.placements());
    }

    private static Plan again(Changed changed) {
        Proposal proposal = new Proposal(changed.scenario(), changed.before(), Budget.moves(MOVES), 1, 2, null);
        return Engine.propose(proposal, Progress.SILENT).plan();
    }

    static long moved(Plan before, Plan after) {
        return before.placements().stream()
                .filter(old -> after.placements().stream().noneMatch(now -> same(now, old)))
                .count();
    }

    /** Sessions of one family are alike: what counts is that one stands where one stood. */
    private static boolean same(Placement one, Placement other) {
        return one.family().equals(other.family())
                && one.start().equals(other.start())
                && java.util.Objects.equals(one.facility(), other.facility())
                && one.dose() == other.dose();
    }
}
