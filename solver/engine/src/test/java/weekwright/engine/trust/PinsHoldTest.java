package weekwright.engine.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.RandomPlans;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/** Whatever is pinned in whatever plan, every pin holds after a search. */
class PinsHoldTest {
    private static final int PLANS = 48;

    @Test
    void every_pin_of_random_plans_holds() {
        int[] held = new int[8];
        for (int seed = 1; seed <= PLANS; seed++) {
            Random random = new Random(seed);
            Scenario scenario = scenario(seed);
            Plan drawn = Engine.judge(scenario, RandomPlans.randomPlan(scenario, random))
                    .plan();
            Plan pinned = pinned(drawn, random);
            Proposal proposal = new Proposal(scenario, pinned, Budget.moves(300), seed, 1, null);
            Plan found = Engine.propose(proposal, Progress.SILENT).plan();
            for (Placement before : pinned.placements()) {
                holds("seed " + seed + ", " + before, before, found, held);
            }
            assertThat(Engine.judge(scenario, found).plan().totals())
                    .as("seed %d, checked", seed)
                    .isEqualTo(found.totals());
        }
        assertThat(java.util.Arrays.stream(held).min().orElse(0))
                .as("pins held of the rarest kind")
                .isGreaterThan(5);
    }

    private static Scenario scenario(int seed) {
        return switch (seed % 6) {
            case 0 -> Scenarios.read("sprint-week");
            case 1 -> Scenarios.read("one-match");
            case 2 -> Scenarios.read("clash");
            default -> SquadGenerator.tiny(seed);
        };
    }

    private static Plan pinned(Plan plan, Random random) {
        List<Placement> placements = new ArrayList<>();
        for (Placement placement : plan.placements()) {
            placements.add(random.nextInt(3) == 0 ? placement : withPin(placement, pin(placement, random)));
        }
        return new Plan(
                plan.weekwright(),
                plan.scenario(),
                plan.scenarioDigest(),
                plan.published(),
                null,
                placements,
                plan.leftOut(),
                plan.softened(),
                null,
                List.of());
    }

    private static Pin pin(Placement placement, Random random) {
        List<LocalDate> barred = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            barred.add(placement.start().date().plusDays(random.nextInt(5) - 2));
        }
        boolean out = random.nextInt(8) == 0;
        return new Pin(
                random.nextInt(4) == 0,
                random.nextInt(4) == 0,
                placement.facility() != null && random.nextInt(4) == 0,
                placement.lead() != null && random.nextInt(4) == 0,
                random.nextInt(4) == 0,
                placement.variant() != null && random.nextInt(2) == 0,
                out,
                barred.stream().distinct().sorted().toList());
    }

    private static Placement withPin(Placement placement, Pin pin) {
        return new Placement(
                placement.id(),
                placement.group(),
                placement.family(),
                placement.start(),
                placement.minutes(),
                placement.facility(),
                placement.lead(),
                placement.dose(),
                placement.variant(),
                pin);
    }

    private static void holds(String what, Placement before, Plan found, int[] held) {
        Pin pin = before.held();
        Map<String, Placement> byId = found.placements().stream()
                .collect(Collectors.toMap(placement -> String.valueOf(placement.id()), Function.identity()));
        Placement now = byId.get(before.id());
        if (pin.out()) {
            assertThat(now).as(what).isNull();
            held[6]++;
            return;
        }
        boolean stays = pin.start() || pin.day() || pin.facility() || pin.lead() || pin.dose() || pin.variant();
        if (now == null) {
            assertThat(stays).as(what).isFalse();
            if (!pin.isNone()) {
                assertThat(found.leftOut()).as(what).extracting(LeftOut::pin).contains(pin);
            }
            return;
        }
        assertThat(now.held()).as(what).isEqualTo(pin);
        holds(what, pin.start(), before.start(), now.start(), held, 0);
        holds(what, pin.day(), before.start().date(), now.start().date(), held, 1);
        holds(what, pin.facility(), before.facility(), now.facility(), held, 2);
        holds(what, pin.lead(), before.lead(), now.lead(), held, 3);
        holds(what, pin.dose(), before.dose(), now.dose(), held, 4);
        holds(what, pin.variant(), before.variant(), now.variant(), held, 5);
        boolean atOdds = pin.notDays().contains(before.start().date()) && (pin.start() || pin.day());
        if (!pin.notDays().isEmpty() && !atOdds) {
            assertThat(pin.notDays()).as(what).doesNotContain(now.start().date());
            held[7]++;
        }
    }

    private static void holds(String what, boolean pinned, Object before, Object now, int[] held, int kind) {
        if (pinned) {
            assertThat(now).as(what).isEqualTo(before);
            held[kind]++;
        }
    }
}
