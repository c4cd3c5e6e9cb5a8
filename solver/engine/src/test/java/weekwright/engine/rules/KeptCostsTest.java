package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.testing.ByLot;
import weekwright.engine.testing.CrowdedWeeks;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/** What a plan costs is what the breaches that are told of it cost, and a plan is given up only where it is hopeless. */
class KeptCostsTest {
    /** Two points for the walk, in tenths; expert proposal. */
    private static final int BEYOND = 20;

    static Stream<Scenario> scenarios() {
        Stream<Scenario> usual = Stream.of(
                Scenarios.read("one-match"),
                Scenarios.read("sprint-week"),
                Scenarios.read("two-groups"),
                SquadGenerator.tiny(2),
                oneAimOften());
        return Stream.concat(usual, CrowdedWeeks.all());
    }

    /** Often more than are wanted, and now and then fewer than are owed. */
    private static Scenario oneAimOften() {
        return squad().days(10)
                .aim("tempo-run", 1, 2, 4)
                .aim("mobility", 0, 1, 3)
                .scenario();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void a_plan_costs_what_is_told_of_it(Scenario scenario) {
        Problem problem = ProblemBuilder.of(scenario);
        Judge judge = new Judge(problem);
        Random random = new Random(3);

        for (int plan = 0; plan < 12; plan++) {
            costsWhatIsTold(problem, judge);
            problem.sessions.forEach(session -> judge.move(session, ByLot.option(session, random)));
            judge.settle();
        }
        for (int move = 0; move < 80; move++) {
            Session session = ByLot.session(problem, random);
            judge.move(session, ByLot.option(session, random));
            judge.settle();
            costsWhatIsTold(problem, judge);
            keepOrTakeBack(judge, random);
        }
    }

    private static void costsWhatIsTold(Problem problem, Judge judge) {
        Cost told = told(judge, part -> true);
        assertThat(judge.total().totals()).isEqualTo(told.totals());
        assertThat(judge.total().mustSlope).isEqualTo(told.mustSlope);
        assertThat(judge.total().beyond).isEqualTo(beyond(problem, judge));
        assertThat(judge.total().restSlope).isEqualTo(told.restSlope + BEYOND * beyond(problem, judge));
    }

    /** Heavy lower work was given out for Tuesday: 24 points for whoever is told that it is not to be. */
    @Test
    void a_session_that_people_know_of_costs_something_by_being_left_out() {
        Squad given = squad().aim("heavy-lower-knee", 0, 1, 1)
                .placed("heavy-lower-knee", "2027-03-02T16:00")
                .published("2027-02-26T12:00");
        Problem problem = ProblemBuilder.close(given.scenario(), given.plan(), null);
        Judge judge = new Judge(problem);
        Session session = problem.sessions.get(0);

        assertThat(told(judge, part -> part == Judge.OWN).want).isEqualTo(24 * Price.ONE);
        costsWhatIsTold(problem, judge);
        judge.move(session, session.before);
        judge.settle();
        assertThat(told(judge, part -> part == Judge.OWN).want).isZero();
        costsWhatIsTold(problem, judge);
        judge.move(session, null);
        judge.settle();
        costsWhatIsTold(problem, judge);
    }

    private static long beyond(Problem problem, Judge judge) {
        long beyond = 0;
        for (AimInfo aim : problem.aims) {
            for (int week = 0; week < aim.sessions.size(); week++) {
                long placed = aim.sessions.get(week).stream()
                        .filter(session -> judge.at(session) != null)
                        .count();
                beyond += Math.max(0, placed - aim.wanted(week));
            }
        }
        return beyond;
    }

    /** What the breaches cost that are told of some parts. */
    private static Cost told(Judge judge, IntPredicate ofParts) {
        Cost told = new Cost();
        CostSink counted = new CostSink().into(told);
        judge.explainByPart(part -> ofParts.test(part) ? counted : (rule, view, breach, heads) -> {});
        return told;
    }

    /** A bound that a plan is held against is never more than the plan costs, and in the end it is that. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void what_is_known_of_a_plan_so_far_is_never_more_than_it_costs(Scenario scenario) {
        Problem problem = ProblemBuilder.of(scenario);
        Judge judge = new Judge(problem);
        Random random = new Random(5);

        for (int plan = 0; plan < 40; plan++) {
            for (int moved = 0; moved < 3; moved++) {
                Session session = ByLot.session(problem, random);
                judge.move(session, ByLot.option(session, random));
            }
            List<Cost> soFar = new ArrayList<>();
            assertThat(judge.settleUnless(cost -> !soFar.add(cost.copy()))).isTrue();
            for (int i = 1; i < soFar.size(); i++) {
                assertThat(soFar.get(i).compareLevels(soFar.get(i - 1))).isNotNegative();
            }
            assertThat(soFar.get(0).totals())
                    .as("what sessions cost by themselves and in pairs")
                    .isEqualTo(told(judge, part -> part == Judge.OWN).totals());
            if (soFar.size() > 1) {
                assertThat(soFar.get(soFar.size() - 1).totals())
                        .isEqualTo(judge.total().totals());
            }
            keepOrTakeBack(judge, random);
        }
    }

    private static void keepOrTakeBack(Judge judge, Random random) {
        if (random.nextBoolean()) {
            judge.keep();
        } else {
            judge.revert();
        }
    }

    /** A plan given up half-way and taken back leaves nothing behind. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void a_plan_that_is_given_up_is_taken_back_whole(Scenario scenario) {
        Problem problem = ProblemBuilder.of(scenario);
        Judge judge = new Judge(problem);
        Random random = new Random(9);

        for (int plan = 0; plan < 40; plan++) {
            Session session = ByLot.session(problem, random);
            judge.move(session, ByLot.option(session, random));
            int patience = random.nextInt(5);
            int[] asked = {0};
            if (judge.settleUnless(cost -> asked[0]++ == patience)) {
                judge.keep();
            } else {
                judge.revert();
            }
            assertThat(judge.total().same(Judge.of(problem, judge.placements()).total()))
                    .isTrue();
        }
    }

    /** From Tuesday at 0:05 to the next Tuesday at 0:00, eight dates after the session began: five minutes less than a week. */
    @Test
    void two_sessions_are_as_close_whichever_is_placed_first() {
        Problem problem = ProblemBuilder.of(squad().days(14)
                .number("pathway-gap-floor", "hours", Map.of("max-velocity-sprint", 168))
                .aim("max-velocity", 0, 1, 1)
                .scenario());
        Session early = problem.sessions.get(0);
        Session late = problem.sessions.get(1);
        Judge judge = new Judge(problem);

        judge.move(late, starting(late, "2027-03-09T00:00", problem));
        judge.move(early, starting(early, "2027-03-01T23:00", problem));

        assertThat(judge.settle().must).isEqualTo(Price.ONE).isEqualTo(told(judge, part -> true).must);
    }

    private static Stimulus starting(Session session, String at, Problem problem) {
        int start = problem.calendar.minute(Moment.of(LocalDateTime.parse(at)));
        return Arrays.stream(session.options)
                .filter(option -> option.start == start)
                .findFirst()
                .orElseThrow();
    }

    /** Beyond its own target of one a session costs nothing that a coach reads, but of two plans as good the shorter wins. */
    @Test
    void each_session_beyond_the_number_wanted_is_counted_until_it_goes() {
        Problem problem = ProblemBuilder.of(squad().aim("tempo-run", 0, 1, 3).scenario());
        Judge judge = new Judge(problem);
        Session first = problem.sessions.get(0);
        Session second = problem.sessions.get(1);
        Session third = problem.sessions.get(2);

        judge.move(first, first.options[0]);
        assertThat(judge.settle().beyond).isZero();
        judge.move(second, second.options[second.options.length / 2]);
        assertThat(judge.settle().beyond).isEqualTo(1);
        judge.move(third, third.options[third.options.length - 1]);
        assertThat(judge.settle().beyond).isEqualTo(2);
        judge.move(second, second.options[0]);
        assertThat(judge.settle().beyond).as("it only moves").isEqualTo(2);
        judge.move(first, null);
        assertThat(judge.settle().beyond).isEqualTo(1);
        judge.move(second, null);
        assertThat(judge.settle().beyond).isZero();
    }

    /** Works from 10:00 to 11:00 on Wednesday. */
    @Test
    void a_time_at_which_all_are_elsewhere_is_wrong_by_itself() {
        Problem problem = ProblemBuilder.of(squad().commitment("works", null, "2027-03-03T10:00")
                .lasting(60)
                .aim("tempo-run", 0, 1, 1)
                .scenario());
        Judge judge = new Judge(problem);
        Session session = problem.sessions.get(0);
        Stimulus works = problem.fixed.get(0);

        assertThat(session.options)
                .anyMatch(option -> option.end <= works.start - 60)
                .allMatch(option -> judge.breaksMustAlone(session, option)
                        == (option.occupiedStart < works.end && option.occupiedEnd > works.start));
        assertThat(session.options).anyMatch(option -> judge.breaksMustAlone(session, option));
    }

    @Test
    void others_change_only_where_somebody_has_times_or_things_of_their_own() {
        Squad all = squad().athlete("ash").aim("tempo-run", 0, 1, 1);
        assertThat(new Judge(ProblemBuilder.of(all.scenario())).mayOthersChange())
                .isFalse();

        Problem problem = ProblemBuilder.of(
                all.busy("2027-03-01T00:00", "2027-03-08T00:00").scenario());
        Judge judge = new Judge(problem);
        Session session = problem.sessions.get(0);
        judge.move(session, session.options[0]);
        judge.settle();
        assertThat(judge.mayOthersChange()).isTrue();
        assertThat(judge.attended(session).cohorts).hasSize(session.options[0].cohorts.length - 1);
    }

    private static Set<String> told(Judge judge) {
        Set<String> rules = new TreeSet<>();
        judge.explain((rule, view, breach, heads) -> rules.add(rule.id()));
        return rules;
    }

    /** Heavy lower work at ten on each day of four weeks: 28 exposures in one line. */
    @Test
    void a_line_of_many_lifts_is_read_whole() {
        Problem problem = ProblemBuilder.of(squad().days(28)
                .number("maximum-repeated", "trainedWeeks", 1)
                .aim("heavy-lower-knee", 0, 7, 7)
                .scenario());
        Judge judge = new Judge(problem);
        for (int day = 0; day < 28; day++) {
            Session session = problem.sessions.get(day);
            judge.move(session, starting(session, "2027-03-" + (day < 9 ? "0" : "") + (day + 1) + "T10:00", problem));
        }
        judge.settle();

        assertThat(Lifts.of(problem, judge.placements())).as("lifts take turns").contains(0, 1);
        assertThat(told(judge)).contains("pathway-gap-floor").doesNotContain("maximum-repeated", "variant-churn");
        costsWhatIsTold(problem, judge);
    }

    /** Whoever asks what a move changes looks at no other part, and at no other session but those beside which it lies. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void what_was_not_looked_at_again_breaks_what_it_broke(Scenario scenario) {
        Problem problem = ProblemBuilder.of(scenario);
        Judge judge = new Judge(problem);
        Random random = new Random(11);

        for (int move = 0; move < 15; move++) {
            List<Cost> before = ofParts(judge);
            Session session = ByLot.session(problem, random);
            Stimulus from = judge.at(session);
            Stimulus to = ByLot.option(session, random);
            judge.move(session, to);
            judge.settle();
            List<Integer> lookedAt =
                    Arrays.stream(judge.partsLookedAt()).boxed().toList();
            assertThat(judge.sessionsLookedAt().contains(session)).isEqualTo(from != to);
            List<Cost> now = ofParts(judge);
            for (int part = 0; part < judge.parts(); part++) {
                if (!lookedAt.contains(part)) {
                    assertThat(now.get(part).totals())
                            .isEqualTo(before.get(part).totals());
                }
            }
            Cost ofAll = new Cost();
            now.forEach(ofAll::add);
            assertThat(ofAll.totals()).isEqualTo(told(judge, part -> part >= 0).totals());
            judge.keep();
            assertThat(judge.partsLookedAt()).isEmpty();
            assertThat(judge.sessionsLookedAt()).isEmpty();
        }
    }

    private static List<Cost> ofParts(Judge judge) {
        List<Cost> costs = new ArrayList<>();
        for (int part = 0; part < judge.parts(); part++) {
            Cost cost = new Cost();
            judge.explainPart(part, new CostSink().into(cost));
            costs.add(cost);
        }
        return costs;
    }

    @Test
    void a_session_tells_what_it_breaks_where_it_lies_or_by_being_left_out() {
        Problem problem = ProblemBuilder.of(squad().commitment("works", null, "2027-03-03T10:00")
                .lasting(60)
                .aim("tempo-run", 1, 1, 1)
                .scenario());
        Judge judge = new Judge(problem);
        Session session = problem.sessions.get(0);
        assertThat(brokenBy(judge, session)).isEmpty();

        Stimulus meanwhile = Arrays.stream(session.options)
                .filter(option -> option.start == problem.fixed.get(0).start)
                .findFirst()
                .orElseThrow();
        judge.move(session, meanwhile);
        judge.settle();
        assertThat(brokenBy(judge, session)).contains("one-place-at-a-time");
    }

    private static Set<String> brokenBy(Judge judge, Session session) {
        Set<String> broken = new TreeSet<>();
        judge.explainSession(session, (rule, view, breach, heads) -> broken.add(rule.id()));
        return broken;
    }

    @Test
    void a_rule_that_is_switched_off_is_not_in_force() {
        Squad one = squad().aim("tempo-run", 0, 1, 1);
        assertThat(new Judge(ProblemBuilder.of(one.scenario())).rulesInForce(0)).contains("even-spread", "week-load");
        one.level("even-spread", RuleLevel.OFF);
        assertThat(new Judge(ProblemBuilder.of(one.scenario())).rulesInForce(0))
                .contains("week-load")
                .doesNotContain("even-spread");
    }
}
