package weekwright.engine.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import java.util.Map;
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
import weekwright.engine.problem.Session;
import weekwright.engine.rules.Judge;
import weekwright.engine.testing.ByLot;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.LendsAt;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;
import weekwright.model.scenario.StaffMember;
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
                Arguments.of(threeWeeks(), 10_000),
                Arguments.of(liftsThatRotate(), 10_000),
                Arguments.of(factsThatCost(), 10_000),
                Arguments.of(peopleWithOtherThingsToDo(), 5_000),
                Arguments.of(shortNights(), 2_000),
                Arguments.of(Scenarios.read("two-groups"), 3_000),
                Arguments.of(Scenarios.read("four-evenings"), 2_000),
                Arguments.of(SquadGenerator.club(1), 400),
                Arguments.of(SquadGenerator.club(4), 400));
    }

    /** Two squads with sprinters in common, an exam, a shift, a second club, a bench and minutes that practice lends. */
    private static Scenario peopleWithOtherThingsToDo() {
        return squad().days(16)
                .heads(10)
                .highDays(0, 2, 2)
                .athlete("ash", Squad.ID, "sprinters")
                .athlete("birch", "sprinters", Squad.ID)
                .athlete("cedar")
                .busy("2027-03-03T08:00", "2027-03-05T12:00")
                .athlete("date")
                .comes("08:00", "13:00")
                .athlete("elm")
                .level("sits-out", RuleLevel.WANT)
                .window("08:00", "20:00")
                .done("fixture", "2027-02-27T15:00")
                .without("ash", "elm")
                .fixture("cup-tie", "2027-03-06T15:00")
                .expecting("ash", 0)
                .expecting("elm", 0)
                .practice("practice", "2027-03-03T17:00")
                .lending(20, LendsAt.START)
                .practice("next-practice", "2027-03-10T17:00")
                .lending(20, LendsAt.END)
                .commitment("shift", null, "2027-03-02T09:00")
                .lasting(300)
                .only("date", "elm")
                .commitment("club", "heavy-lower-knee", "2027-03-09T10:00")
                .only("ash")
                .commitment("school", "small-sided-games", "2027-03-11T10:00")
                .only("birch")
                .aim("heavy-lower-knee", 1, 2, 2)
                .doses(Dose.FULL, Dose.MICRO)
                .aim("acceleration", 0, 1, 2)
                .doses(Dose.FULL, Dose.MICRO)
                .aim("technique", 0, 2, 3)
                .learning()
                .aim("repeated-sprint", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .aim("pool-recovery", 0, 1, 1)
                .whom(Share.PLAYED)
                .group("sprinters")
                .heads(6)
                .kind(GroupKind.SPRINT)
                .highDays(0, 3, 3)
                .window("08:00", "20:00")
                .aim("max-velocity", 1, 2, 3)
                .aim("lower-hypertrophy", 0, 2, 2)
                .aim("tempo-run", 0, 2, 3)
                .scenario();
    }

    /** Otherwise the moves above would say little of who comes. */
    @Test
    void the_people_with_other_things_to_do_sit_out_for_every_reason() {
        Problem problem = ProblemBuilder.of(peopleWithOtherThingsToDo());
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
        assertThat(broken(peopleWithOtherThingsToDo())).contains("quorum", "attendance", "sits-out");
    }

    /** Lifts with short runs, so that hardly a line can be filled for nothing, and leads who are away now and then. */
    private static Scenario liftsThatRotate() {
        return squad().days(21)
                .level(Level.ADVANCED)
                .window("10:00", "13:00")
                .rule("maximum-repeated", null, null, Map.of("advancedWeeks", 1))
                .rule("variant-churn", null, null, Map.of("advancedExposures", 2, "testedWeeks", 1))
                .staff(new StaffMember(
                        "alder",
                        "Alder",
                        List.of("*"),
                        1,
                        List.of(),
                        List.of(Squad.absence("2027-03-04T00:00", "2027-03-06T11:00"))))
                .staff("birch", "heavy-lower-knee", "technique")
                .aim("heavy-lower-knee", 0, 2, 2)
                .doses(Dose.FULL, Dose.REDUCED, Dose.MICRO)
                .aim("heavy-lower-hip", 0, 1, 2)
                .aim("technique", 0, 2, 3)
                .group("guests")
                .window("10:00", "13:00")
                .aim("heavy-lower-knee", 0, 1, 1)
                .done("heavy-lower-knee", "2027-02-24T10:00")
                .lift("front-squat")
                .scenario();
    }

    /** Two squads and somebody of both in the four hours round midnight, with one room, two leads, lessons and a bench. */
    private static Scenario shortNights() {
        return squad().days(4)
                .highDays(0, 2, 4)
                .athlete("ash", Squad.ID, "sprinters")
                .athlete("birch")
                .window("22:00", "24:00")
                .window("00:00", "02:00")
                .room("weights-room", 1, null)
                .staff("alder", "*")
                .staff(new StaffMember(
                        "birch-senior",
                        "Birch senior",
                        List.of("*"),
                        1,
                        List.of(),
                        List.of(Squad.absence("2027-03-02T23:30", "2027-03-03T12:00"))))
                .fixture("cup-tie", "2027-03-02T15:00")
                .expecting("birch", 0)
                .aim("heavy-lower-knee", 0, 2, 2)
                .doses(Dose.FULL, Dose.REDUCED)
                .mainMinutes(80)
                .aim("technique", 0, 2, 3)
                .learning()
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .group("sprinters")
                .window("22:00", "24:00")
                .window("00:00", "02:00")
                .aim("technique", 0, 3, 3)
                .learning()
                .aim("upper-strength", 0, 2, 3)
                .mainMinutes(80)
                .scenario();
    }

    @Test
    void in_short_nights_rooms_leads_and_lessons_fall_short() {
        Problem problem = ProblemBuilder.of(shortNights());

        assertThat(broken(shortNights()))
                .contains("facility-room", "lead-free", "same-lead", "learner-frequency", "top-up");
        assertThat(problem.sessions.stream().flatMap(session -> Stream.of(session.options)))
                .anyMatch(option -> option.runsOver);
    }

    /** All facts that can cost something do, and so do all packs, the days off of one of them as a must. */
    private static Scenario factsThatCost() {
        return squad().days(20)
                .heads(4)
                .athlete("ash")
                .born("2012-05-01")
                .mark(Measure.LIFT, "2026-12-05")
                .athlete("birch", Squad.ID, "juniors")
                .born("2012-06-01")
                .window("08:00", "20:00")
                .level("week-load", RuleLevel.WANT)
                .level("load-spread", RuleLevel.WANT)
                .level("load-ratio", RuleLevel.WANT)
                .level("marks-old", RuleLevel.WANT)
                .level("fixtures-close", RuleLevel.WANT)
                .pack("college-in-season")
                .rule("college-in-season", null, null, Map.of("weekHours", 4, "dayHours", 1))
                .done("tempo-run", "2027-02-08T10:00")
                .done("heavy-lower-knee", "2027-02-24T10:00")
                .without("ash")
                .fixture("cup-tie", "2027-03-06T15:00")
                .expecting("ash", 0)
                .fixture("replay", "2027-03-09T15:00")
                .practice("practice", "2027-03-03T18:00")
                .aim("heavy-lower-knee", 0, 2, 3)
                .doses(Dose.FULL, Dose.MICRO)
                .aim("tempo-run", 0, 4, 6)
                .group("juniors")
                .heads(3)
                .window("08:00", "20:00")
                .groupRule("youth", RuleLevel.WANT, null, Map.of("daysOff", 6, "hoursAYear", 0.1))
                .groupRule("college-out-of-season", RuleLevel.MUST, null, Map.of("daysOff", 5))
                .aim("acceleration", 0, 2, 3)
                .aim("mobility", 0, 2, 2)
                .scenario();
    }

    @Test
    void the_facts_that_cost_are_all_broken_now_and_then() {
        assertThat(broken(factsThatCost()))
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
        Problem problem = ProblemBuilder.of(scenario);
        Judge judge = new Judge(problem);
        Random random = new Random(7);
        for (int move = 0; move < Math.min(moves, MOST); move++) {
            for (int together = random.nextInt(3); together >= 0; together--) {
                Session session = ByLot.session(problem, random);
                judge.move(session, ByLot.option(session, random));
            }
            Cost kept = judge.settle();
            Cost fresh = Judge.of(problem, judge.placements()).total();
            if (!kept.same(fresh)) {
                assertThat(kept.totals()).as("%s, move %d", scenario.id(), move).isEqualTo(fresh.totals());
                assertThat(kept.same(fresh)).as("slopes after move %d", move).isTrue();
            }
            takeBackOrKeep(judge, problem, random);
        }
    }

    /** Three weeks of two groups, in which every want about sessions, days and lines can be missed. */
    private static Scenario threeWeeks() {
        return squad().days(20)
                .heads(6)
                .athlete("ash")
                .athlete("birch", Squad.ID, "sprinters")
                .window("06:00", "22:00")
                .done("heavy-lower-knee", "2027-02-20T10:00")
                .done("tempo-run", "2027-02-10T10:00")
                .done("fixture", "2027-02-28T15:00")
                .without("ash")
                .fixture("cup-tie", "2027-03-06T15:00")
                .expecting("ash", 0)
                .travelling(150, 150)
                .fixture("final", "2027-03-20T15:00")
                .tapering(8)
                .practice("practice", "2027-03-03T18:00")
                .commitment("works", null, "2027-03-10T09:00")
                .aim("technique", 1, 3, 6)
                .learning()
                .aim("heavy-lower-knee", 1, 2, 2)
                .doses(Dose.FULL, Dose.MICRO)
                .power()
                .aim("aerobic-intervals", 0, 1, 2)
                .aim("primer", 0, 1, 1)
                .priority(Priority.SPARE)
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .aim("tempo-run", 0, 2, 3)
                .group("sprinters")
                .heads(5)
                .kind(GroupKind.SPRINT)
                .window("06:00", "22:00")
                .done("max-velocity", "2027-02-12T10:00")
                .of("sprinters")
                .aim("max-velocity", 1, 2, 3)
                .doses(Dose.FULL, Dose.REDUCED, Dose.MICRO)
                .metres(160, 430)
                .aim("hamstring-eccentric", 0, 2, 2)
                .aim("testing", 0, 1, 1)
                .scenario();
    }

    @Test
    void the_three_weeks_break_every_want_that_is_kept_by_parts() {
        assertThat(broken(threeWeeks()))
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
