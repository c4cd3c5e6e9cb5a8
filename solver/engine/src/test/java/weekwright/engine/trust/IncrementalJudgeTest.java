package weekwright.engine.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.rules.Judge;
import weekwright.engine.testing.ByLot;
import weekwright.engine.testing.CrowdedWeeks;
import weekwright.engine.testing.RuleExamples;
import weekwright.engine.testing.Squad;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/** What the judge keeps while sessions move is what it would find on looking at the whole plan anew. */
class IncrementalJudgeTest {
    /** No more moves than this of a scenario, where the code is being changed on purpose. */
    private static final int MOST = Integer.getInteger("weekwright.moves", Integer.MAX_VALUE);

    /** 242,000 moves in all: many on small weeks, fewer on those where a fresh look takes longer. */
    static Stream<Arguments> scenarios() {
        return Stream.of(
                Arguments.of(SquadGenerator.tiny(1), 50_000),
                Arguments.of(SquadGenerator.tiny(2), 50_000),
                Arguments.of(SquadGenerator.tiny(3), 60_000),
                Arguments.of(Scenarios.read("one-match"), 10_000),
                Arguments.of(Scenarios.read("two-matches"), 10_000),
                Arguments.of(Scenarios.read("sprint-week"), 5_000),
                Arguments.of(Scenarios.read("two-evenings"), 10_000),
                Arguments.of(Scenarios.read("clash"), 5_000),
                Arguments.of(CrowdedWeeks.threeWeeks(), 10_000),
                Arguments.of(CrowdedWeeks.liftsThatRotate(), 10_000),
                Arguments.of(CrowdedWeeks.factsThatCost(), 10_000),
                Arguments.of(CrowdedWeeks.peopleWithOtherThingsToDo(), 5_000),
                Arguments.of(CrowdedWeeks.shortNights(), 2_000),
                Arguments.of(Scenarios.read("two-groups"), 3_000),
                Arguments.of(Scenarios.read("four-evenings"), 2_000),
                Arguments.of(SquadGenerator.club(1), 400),
                Arguments.of(SquadGenerator.club(4), 400));
    }

    /** Otherwise the moves above would say little of who comes. */
    @Test
    void the_people_with_other_things_to_do_sit_out_for_every_reason() {
        Problem problem = ProblemBuilder.of(CrowdedWeeks.peopleWithOtherThingsToDo());
        Judge judge = new Judge(problem);
        Random random = new Random(7);
        Set<Integer> reasons = new TreeSet<>();
        for (int plan = 0; plan < 60; plan++) {
            problem.sessions.forEach(session -> judge.move(session, ByLot.option(session, random)));
            judge.settle();
            judge.explain((rule, view, breach, heads) -> {
                if (rule.id().equals("sits-out")) {
                    reasons.add(breach.detail());
                }
            });
        }
        assertThat(reasons).containsExactly(-1, 1, 2, 3, 4, 5, 6, 7);
        assertThat(broken(CrowdedWeeks.peopleWithOtherThingsToDo())).contains("quorum", "attendance", "sits-out");
    }

    @Test
    void in_short_nights_rooms_leads_and_lessons_fall_short() {
        Problem problem = ProblemBuilder.of(CrowdedWeeks.shortNights());

        assertThat(broken(CrowdedWeeks.shortNights()))
                .contains("facility-room", "lead-free", "same-lead", "learner-frequency", "top-up");
        assertThat(problem.sessions.stream().flatMap(session -> Stream.of(session.options)))
                .anyMatch(option -> option.runsOver);
    }

    @Test
    void the_facts_that_cost_are_all_broken_now_and_then() {
        assertThat(broken(CrowdedWeeks.factsThatCost()))
                .contains(
                        "week-load",
                        "load-spread",
                        "load-ratio",
                        "marks-old",
                        "college-in-season",
                        "college-out-of-season",
                        "youth")
                .doesNotContain("fixtures-close", "softened");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void kept_costs_equal_fresh_ones_after_every_move(Scenario scenario, int moves) {
        keptEqualsFresh(ProblemBuilder.of(scenario), Math.min(moves, MOST), scenario.id());
    }

    /** All but those whose examples have nothing that moves. */
    static Stream<String> rules() {
        return RuleExamples.rules().stream()
                .filter(rule -> !example(rule).sessions.isEmpty());
    }

    private static Problem example(String rule) {
        Squad squad = RuleExamples.of(rule);
        return ProblemBuilder.of(squad.scenario(), squad.plan(), PlanUse.START);
    }

    /** Where a rule reads more of a day than its list is looked at again for: {@code Scopes.dayChanged} says what that is. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void kept_costs_equal_fresh_ones_where_a_rule_is_broken(String rule) {
        keptEqualsFresh(example(rule), 200, "the example of " + rule);
    }

    private static void keptEqualsFresh(Problem problem, int moves, String what) {
        Judge judge = new Judge(problem);
        Random random = new Random(7);
        for (int move = 0; move < moves; move++) {
            for (int together = random.nextInt(3); together >= 0; together--) {
                Session session = ByLot.session(problem, random);
                judge.move(session, ByLot.option(session, random));
            }
            Cost kept = judge.settle();
            Cost fresh = Judge.of(problem, judge.placements()).total();
            if (!kept.same(fresh)) {
                assertThat(kept.totals()).as("%s, move %d", what, move).isEqualTo(fresh.totals());
                assertThat(kept.same(fresh)).as("slopes after move %d", move).isTrue();
            }
            takeBackOrKeep(judge, problem, random);
        }
    }

    @Test
    void the_three_weeks_break_every_want_that_is_kept_by_parts() {
        assertThat(broken(CrowdedWeeks.threeWeeks()))
                .contains(
                        "primer-window",
                        "even-spread",
                        "night-rest-margin",
                        "six-days-running",
                        "strength-endurance-apart",
                        "top-up",
                        "travel-day-light",
                        "visit-size",
                        "short-wait",
                        "learner-frequency",
                        "return-dose",
                        "pathway-neglected",
                        "sprint-metres",
                        "taper");
    }

    private static Set<String> broken(Scenario scenario) {
        Problem problem = ProblemBuilder.of(scenario);
        Judge judge = new Judge(problem);
        Random random = new Random(7);
        Set<String> broken = new TreeSet<>();
        for (int plan = 0; plan < 200; plan++) {
            for (Session session : problem.sessions) {
                judge.move(session, ByLot.option(session, random));
            }
            judge.settle();
            judge.explain((rule, view, breach, heads) -> {
                if (!breach.isTold()) {
                    broken.add(rule.id());
                }
            });
        }
        return broken;
    }

    private static void takeBackOrKeep(Judge judge, Problem problem, Random random) {
        if (random.nextInt(4) == 0) {
            judge.keep();
            return;
        }
        judge.revert();
        if (random.nextInt(50) == 0) {
            assertThat(judge.total().same(Judge.of(problem, judge.placements()).total()))
                    .as("taken back whole")
                    .isTrue();
        }
    }
}
