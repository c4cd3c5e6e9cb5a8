package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Demo;
import weekwright.scenarios.RandomPlans;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/**
 * What is said of a session's other times comes true: the plan is rewritten with the session there, read anew and judged
 * from nothing, and the totals have changed by what was said.
 *
 * <p>Every session of every demo scenario is asked for, and one of its options is carried out; all of them are in profile
 * {@code bench} ({@code EveryWhatIfComesTest}).
 */
class WhatIfIsWhatComesTest {
    private static final int ALL = Integer.MAX_VALUE;
    /** Steps of this share of a list never meet the same place twice. */
    private static final double GOLDEN = 0.6180339887;

    private static final int RANDOM_PLANS = 12;

    static List<String> demos() {
        return Scenarios.all().stream().map(Demo::name).toList();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void of_every_session_of_every_demo(String demo) {
        Scenario scenario = Scenarios.read(demo);
        Plan plan = early(scenario);

        int carriedOut = carriedOut(demo, scenario, plan, 1);

        assertThat(carriedOut).isGreaterThanOrEqualTo(plan.placements().size());
    }

    /** Carries out every option of every session of a demo, and says how many there were. */
    static int everyOption(String demo) {
        Scenario scenario = Scenarios.read(demo);
        return carriedOut(demo, scenario, early(scenario), ALL);
    }

    private static Plan early(Scenario scenario) {
        Proposal proposal = new Proposal(scenario, null, Budget.moves(400), 1, 1, null);
        return Engine.propose(proposal, Progress.SILENT).plan();
    }

    /** Plans that nobody would make: sessions anywhere, most of them against the rules. */
    @Test
    void of_every_session_of_random_plans() {
        int carriedOut = 0;
        for (int seed = 1; seed <= RANDOM_PLANS; seed++) {
            Scenario scenario = seed % 3 == 0 ? Scenarios.read("clash") : SquadGenerator.tiny(seed);
            Plan drawn = RandomPlans.randomPlan(scenario, new Random(seed));
            Problem problem = ProblemBuilder.of(scenario, drawn, PlanUse.START);
            List<Placement> named = problem.sessions.stream()
                    .filter(session -> session.before != null)
                    .map(session -> placed(problem, session, Objects.requireNonNull(session.before)))
                    .toList();
            carriedOut += carriedOut("seed " + seed, scenario, plan(drawn, named), 1);
        }
        assertThat(carriedOut).isGreaterThan(50);
    }

    private static Placement placed(Problem problem, Session session, Stimulus at) {
        return new Placement(
                session.id,
                session.group.group.id(),
                session.family.family.id(),
                problem.calendar.moment(at.start),
                session.aim == null ? at.minutes() : null,
                at.facility < 0
                        ? null
                        : problem.facilities.get(at.facility).facility.id(),
                null,
                at.dose,
                null,
                null);
    }

    private static int carriedOut(String what, Scenario scenario, Plan plan, int each) {
        Problem problem = ProblemBuilder.of(scenario, plan, PlanUse.START);
        Judge judge = Judge.of(problem, standing(problem));
        WhatIf whatIf = new WhatIf(problem, judge);
        Totals before = judged(scenario, rewritten(plan, null, null));
        assertThat(judge.total().totals()).as("%s, as it stands", what).isEqualTo(before);
        int carriedOut = 0;
        for (Session session : problem.sessions) {
            List<Stimulus> options = sample(problem.thinkable(session), session.index, each);
            for (Stimulus option : options) {
                assertThat(judged(scenario, rewritten(plan, session, placed(problem, session, option))))
                        .as("%s, %s at %s", what, session.id, problem.calendar.moment(option.start))
                        .isEqualTo(
                                sum(before, whatIf.of(session, option).change().totals()));
            }
            carriedOut += options.size();
        }
        return carriedOut;
    }

    /** Some of many, evenly over them. */
    private static <T> List<T> sample(List<T> options, int from, int each) {
        if (options.size() <= each) {
            return options;
        }
        List<T> some = new ArrayList<>();
        for (int i = 0; i < each; i++) {
            double share = (from * GOLDEN + (double) i / each) % 1;
            some.add(options.get((int) (share * options.size())));
        }
        return some;
    }

    /** The plan with a session elsewhere; leads and lifts are filled anew unless they are held. */
    private static Plan rewritten(Plan plan, @Nullable Session session, @Nullable Placement there) {
        List<Placement> placements = new ArrayList<>();
        for (Placement placed : plan.placements()) {
            if (session == null || !session.id.equals(placed.id())) {
                placements.add(anew(placed));
            }
        }
        if (there != null) {
            placements.add(there);
        }
        return plan(plan, placements);
    }

    private static Placement anew(Placement placed) {
        return new Placement(
                placed.id(),
                placed.group(),
                placed.family(),
                placed.start(),
                placed.minutes(),
                placed.facility(),
                placed.held().lead() ? placed.lead() : null,
                placed.dose(),
                placed.held().variant() ? placed.variant() : null,
                placed.pin());
    }

    private static Plan plan(Plan plan, List<Placement> placements) {
        return new Plan(
                Scenario.VERSION,
                plan.scenario(),
                plan.scenarioDigest(),
                plan.published(),
                null,
                placements,
                List.of(),
                List.of(),
                null,
                List.of());
    }

    private static Totals judged(Scenario scenario, Plan plan) {
        Problem problem = ProblemBuilder.of(scenario, plan, PlanUse.CHECK);
        return Judge.of(problem, standing(problem)).total().totals();
    }

    private static @Nullable Stimulus[] standing(Problem problem) {
        @Nullable Stimulus[] at = new @Nullable Stimulus[problem.sessions.size()];
        problem.sessions.forEach(session -> at[session.index] = session.before);
        return at;
    }

    private static Totals sum(Totals a, Totals b) {
        return new Totals(
                tenths(a.must() + b.must()),
                tenths(a.key() + b.key()),
                tenths(a.main() + b.main()),
                tenths(a.want() + b.want()));
    }

    private static double tenths(double value) {
        return Math.round(value * 10) / 10.0;
    }
}
