package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.engine.testing.TightWeeks;
import weekwright.model.answer.GiveUp;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** The documents of each thing that could go, judged from nothing, stand as was promised. */
class WhatGoesComesTrueTest {
    private static final int WEEKS = 4;
    private static final long MOVES = 1_000;

    @Test
    void in_weeks_that_cannot_hold_all() {
        int tried = assertAllComeTrue(Scenarios.read("clash"));
        for (long number : LongStream.rangeClosed(1, WEEKS).toArray()) {
            tried += assertAllComeTrue(TightWeeks.week(number));
        }
        assertThat(tried).as("or this says little").isGreaterThan(10);
    }

    private static int assertAllComeTrue(Scenario week) {
        Traded traded = Engine.tradeOffs(
                new Proposal(week, null, Budget.moves(MOVES), 1, 1, null), Progress.SILENT, what -> {});
        assertThat(traded.without()).hasSameSizeAs(traded.answer().couldGo());
        for (int i = 0; i < traded.without().size(); i++) {
            GiveUp promise = traded.answer().couldGo().get(i);
            Remedied then = traded.without().get(i);
            Totals totals = Objects.requireNonNull(
                    Engine.judge(then.scenario(), then.plan()).plan().totals());
            Totals before = traded.answer().totals();
            assertThat(totals.must())
                    .as(promise.text())
                    .isEqualTo(before.must() + promise.change().must());
            assertThat(totals.key())
                    .as(promise.text())
                    .isEqualTo(before.key() + promise.change().key());
            assertThat(totals.main())
                    .as(promise.text())
                    .isEqualTo(before.main() + promise.change().main());
            assertThat(totals.want())
                    .as(promise.text())
                    .isCloseTo(before.want() + promise.change().want(), within(0.05));
        }
        return traded.without().size();
    }
}
