package weekwright.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;

/** Made-up squads are the same for the same seed, and of the size that was asked for. */
class SquadGeneratorTest {
    private static final int SEEDS = 60;

    @Test
    void theSameSeedGivesTheSameSquadAndAnotherSeedAnotherOne() {
        assertThat(SquadGenerator.squad(7, 3, 40, 2)).isEqualTo(SquadGenerator.squad(7, 3, 40, 2));
        assertThat(SquadGenerator.tiny(7)).isEqualTo(SquadGenerator.tiny(7));
        assertThat(LongStream.range(0, SEEDS).mapToObj(SquadGenerator::tiny)).doesNotHaveDuplicates();
        assertThat(SquadGenerator.squad(7, 3, 40, 2).groups())
                .isNotEqualTo(SquadGenerator.squad(8, 3, 40, 2).groups());
    }

    @Test
    void aSquadWantsAboutTheSessionsThatWereAskedFor() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Scenario scenario = SquadGenerator.squad(seed, 4, 50, 1);
            int wanted = scenario.groups().stream()
                    .flatMap(group -> group.aims().stream())
                    .mapToInt(aim -> aim.perWeek().target())
                    .sum();
            assertThat(wanted).as("seed " + seed).isBetween(50, 54);
            assertThat(scenario.groups()).hasSize(4);
        }
        assertThat(targets(SquadGenerator.squad(1, 1, 28, 1))).isBetween(28, 29);
    }

    private static int targets(Scenario scenario) {
        return scenario.groups().stream()
                .flatMap(group -> group.aims().stream())
                .mapToInt(aim -> aim.perWeek().target())
                .sum();
    }

    @Test
    void eachSquadFallsInto3To8Cohorts() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Scenario scenario = SquadGenerator.squad(seed, 1, 12, 1);
            // every athlete who differs from the rest differs in another way from each other one
            long apart = scenario.athletes().stream()
                    .filter(athlete -> differs(scenario, athlete))
                    .count();
            assertThat(apart + 1).as("seed " + seed).isBetween(3L, 8L);
        }
    }

    private static boolean differs(Scenario scenario, Athlete athlete) {
        boolean minutes = scenario.fixtures().stream()
                .flatMap(fixture -> fixture.expected().stream())
                .anyMatch(one -> one.athlete().equals(athlete.id()));
        boolean missed =
                scenario.history().stream().anyMatch(entry -> entry.except().contains(athlete.id()));
        return minutes || missed || !athlete.restrictions().isEmpty();
    }

    @Test
    void tinySquadsWant3To5SessionsIn4To7DaysAndSomeHaveAFixture() {
        List<Scenario> all =
                LongStream.range(0, SEEDS).mapToObj(SquadGenerator::tiny).toList();

        assertThat(all).allSatisfy(scenario -> {
            assertThat(scenario.groups()).hasSize(1);
            assertThat(scenario.days()).isBetween(4, 7);
            assertThat(scenario.gridMinutes()).isEqualTo(60);
            assertThat(targets(scenario)).isBetween(3, 5);
        });
        assertThat(all).anyMatch(scenario -> scenario.fixtures().isEmpty());
        assertThat(all).anyMatch(scenario -> !scenario.fixtures().isEmpty());
        assertThat(all).anyMatch(scenario -> !scenario.commitments().isEmpty());
        assertThat(all)
                .anyMatch(scenario -> !scenario.athletes().stream()
                        .allMatch(athlete -> athlete.restrictions().isEmpty()));
    }

    @Test
    void fixturesLieFromTheFirstDayToFourWeeksPastTheEndAndNoneTwiceADay() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Scenario scenario = SquadGenerator.squad(seed, 3, 30, 2);
            assertThat(scenario.fixtures())
                    .allMatch(fixture -> !fixture.start().date().isBefore(scenario.firstDay())
                            && !fixture.start()
                                    .date()
                                    .isAfter(scenario.lastDay().plusDays(Scenario.EDGE_DAYS)));
            assertThat(scenario.fixtures()).extracting(Fixture::id).doesNotHaveDuplicates();
            assertThat(scenario.history())
                    .allMatch(entry -> entry.start().date().isBefore(scenario.firstDay())
                            && !entry.start()
                                    .date()
                                    .isBefore(scenario.firstDay().minusDays(Scenario.EDGE_DAYS)));
        }
    }

    @Test
    void sizesThatMakeNoSenseAreRefused() {
        assertThatThrownBy(() -> SquadGenerator.squad(1, 0, 10, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a generated scenario has at least 1 group, a session for each and 1 to 12 weeks,"
                        + " not [0, 10, 1]");
    }

    @Test
    void aRandomPlanIsTheSameForTheSameSeedAndLiesInsideTheDaysOfItsWeeks() {
        Set<String> families = new LinkedHashSet<>();
        int outside = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Scenario scenario = SquadGenerator.squad(seed, 2, 20, 2);
            Plan plan = RandomPlans.randomPlan(scenario, new Random(seed));
            assertThat(plan).isEqualTo(RandomPlans.randomPlan(scenario, new Random(seed)));
            assertThat(plan.scenario()).isEqualTo(scenario.id());
            List<String> ids = new ArrayList<>();
            for (Placement placement : plan.placements()) {
                LocalDate day = placement.start().date();
                assertThat(day).isBetween(scenario.firstDay(), scenario.lastDay());
                families.add(placement.family());
                if (placement.id() == null) {
                    outside++;
                } else {
                    ids.add(placement.id());
                    LocalDate secondWeek = scenario.firstDay().plusDays(7);
                    LocalDate week = day.isBefore(secondWeek) ? scenario.firstDay() : secondWeek;
                    assertThat(placement.id()).contains("/" + week + "/");
                }
            }
            assertThat(ids).doesNotHaveDuplicates();
        }
        assertThat(outside).as("sessions beyond the most").isPositive();
        assertThat(families).contains("max-velocity", "heavy-lower-knee", "mobility");
    }

    @Test
    void aRandomPlanNamesOnlyAimsOfItsScenario() {
        Scenario scenario = SquadGenerator.tiny(3);
        List<String> aims =
                scenario.groups().get(0).aims().stream().map(Aim::family).toList();

        for (long seed = 0; seed < SEEDS; seed++) {
            assertThat(RandomPlans.randomPlan(scenario, new Random(seed)).placements())
                    .allMatch(placement -> aims.contains(placement.family()));
        }
    }
}
