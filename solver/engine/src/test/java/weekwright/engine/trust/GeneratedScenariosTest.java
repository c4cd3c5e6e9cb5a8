package weekwright.engine.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.recalculation.Oracle;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;
import weekwright.scenarios.Grown;
import weekwright.scenarios.RandomPlans;
import weekwright.scenarios.SquadGenerator;

/**
 * What must hold of any scenario whatever, tried on 200 that are made up; the one that fails is named by its seed.
 * {@code -Dweekwright.generated=1000} tries more.
 */
class GeneratedScenariosTest {
    private static final int SCENARIOS = Integer.getInteger("weekwright.generated", 200);
    private static final int CLUBS = 2;
    private static final long MOVES = 300;
    private static final Comparator<Totals> BY_LEVELS = Comparator.comparingDouble(Totals::must)
            .thenComparingDouble(Totals::key)
            .thenComparingDouble(Totals::main)
            .thenComparingDouble(Totals::want);

    private static Stream<Scenario> scenarios() {
        return Stream.concat(
                LongStream.rangeClosed(1, SCENARIOS - CLUBS).mapToObj(SquadGenerator::tiny),
                LongStream.rangeClosed(1, CLUBS).mapToObj(SquadGenerator::club));
    }

    private static Plan proposed(Scenario scenario, @Nullable Plan from) {
        return Engine.propose(new Proposal(scenario, from, Budget.moves(MOVES), 1, 1, null), Progress.SILENT)
                .plan();
    }

    @Test
    void pins_are_kept_and_a_plan_from_a_plan_is_never_worse_and_judged_truly() {
        int held = 0;
        for (Scenario scenario : scenarios().toList()) {
            Random random = new Random(scenario.id().hashCode());
            Plan careless = pinned(
                    Engine.judge(scenario, RandomPlans.randomPlan(scenario, random))
                            .plan(),
                    random);
            Plan plan = proposed(scenario, careless);
            for (Placement before : careless.placements()) {
                if (before.pin() != null) {
                    assertKept(scenario, before, plan);
                    held++;
                }
            }
            assertNotWorse(scenario, plan, Engine.judge(scenario, careless).plan());
            assertTrue(scenario, plan);
        }
        assertThat(held).as("pins held, or this says little").isGreaterThan(SCENARIOS);
    }

    @Test
    void one_more_facility_or_hour_never_makes_a_plan_worse_and_nothing_passes_the_most() {
        int better = 0;
        for (Scenario scenario : scenarios().toList()) {
            Random random = new Random(scenario.id().hashCode());
            Plan plan = proposed(scenario, null);
            assertNothingPastMost(scenario, plan);
            assertTrue(scenario, plan);
            for (Scenario grown : List.of(Grown.byAFacility(scenario, random), Grown.byAnHour(scenario, random))) {
                Plan again = proposed(grown, plan);
                assertNotWorse(grown, again, plan);
                assertNothingPastMost(grown, again);
                assertTrue(grown, again);
                better += BY_LEVELS.compare(totals(again), totals(plan)) < 0 ? 1 : 0;
            }
        }
        assertThat(better).as("plans that more room made better").isPositive();
    }

    /** Some hold their start, some the day and the place, some the dose. */
    private static Plan pinned(Plan plan, Random random) {
        List<Placement> placements = new ArrayList<>();
        for (Placement one : plan.placements()) {
            Pin pin = switch (random.nextInt(5)) {
                case 0 -> new Pin(true, false, false, false, false, false, false, List.of());
                case 1 -> new Pin(false, true, one.facility() != null, false, false, false, false, List.of());
                case 2 -> new Pin(false, false, false, false, true, false, false, List.of());
                default -> null;
            };
            placements.add(new Placement(
                    one.id(),
                    one.group(),
                    one.family(),
                    one.start(),
                    one.minutes(),
                    one.facility(),
                    one.lead(),
                    one.dose(),
                    one.variant(),
                    pin));
        }
        return new Plan(
                plan.weekwright(),
                plan.scenario(),
                plan.scenarioDigest(),
                null,
                null,
                placements,
                plan.leftOut(),
                plan.softened(),
                null,
                List.of());
    }

    private static void assertKept(Scenario scenario, Placement before, Plan plan) {
        Placement now = plan.placements().stream()
                .filter(one -> Objects.equals(one.id(), before.id()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(scenario.id() + ": held, and gone: " + before));
        Pin pin = before.held();
        String what = scenario.id() + ", " + before.id();
        if (pin.start()) {
            assertThat(now.start()).as(what).isEqualTo(before.start());
        }
        if (pin.day()) {
            assertThat(now.start().date()).as(what).isEqualTo(before.start().date());
        }
        if (pin.facility()) {
            assertThat(now.facility()).as(what).isEqualTo(before.facility());
        }
        if (pin.dose()) {
            assertThat(now.dose()).as(what).isEqualTo(before.dose());
        }
    }

    private static void assertNotWorse(Scenario scenario, Plan after, Plan before) {
        assertThat(BY_LEVELS.compare(totals(after), totals(before)))
                .as("%s: %s from %s", scenario.id(), totals(after), totals(before))
                .isNotPositive();
    }

    private static Totals totals(Plan plan) {
        return Objects.requireNonNull(plan.totals());
    }

    /** What the findings cost, rule by rule, and the totals, against the second calculation. */
    private static void assertTrue(Scenario scenario, Plan plan) {
        Map<String, Long> found = new TreeMap<>();
        for (Finding finding : plan.findings()) {
            if (finding.cost() > 0) {
                found.merge(finding.rule(), Math.round(finding.cost() * 10), Long::sum);
            }
        }
        Map<String, Long> costs = Oracle.costs(scenario, plan);
        assertThat(found).as(scenario.id()).isEqualTo(costs);
        Totals totals = totals(plan);
        assertThat(Math.round(10 * (totals.must() + totals.key() + totals.main() + totals.want())))
                .as(scenario.id())
                .isEqualTo(costs.values().stream().mapToLong(Long::longValue).sum());
    }

    private static void assertNothingPastMost(Scenario scenario, Plan plan) {
        for (Group group : scenario.groups()) {
            for (Aim aim : group.aims()) {
                for (int week = 0; week < scenario.weeks(); week++) {
                    LocalDate first = scenario.firstDay().plusWeeks(week);
                    String start = group.id() + "/" + aim.key() + "/" + first + "/";
                    long placed = plan.placements().stream()
                            .filter(one -> String.valueOf(one.id()).startsWith(start))
                            .count();
                    long fixed = aim.whom() == Share.ALL ? commitments(scenario, group, aim, first) : 0;
                    int days = Math.min(7, scenario.days() - 7 * week);
                    int most = (aim.perWeek().most() * days + 6) / 7;
                    assertThat(placed)
                            .as("%s, %s: at most %d with %d fixed", scenario.id(), start, most, fixed)
                            .isLessThanOrEqualTo(Math.max(0, most - fixed));
                }
            }
        }
    }

    private static long commitments(Scenario scenario, Group group, Aim aim, LocalDate first) {
        return scenario.commitments().stream()
                .filter(one -> one.groups().contains(group.id()) && aim.family().equals(one.family()))
                .map(Commitment::start)
                .filter(start -> !start.date().isBefore(first)
                        && ChronoUnit.DAYS.between(first, start.date()) < 7
                        && !start.date().isAfter(scenario.lastDay()))
                .count();
    }
}
