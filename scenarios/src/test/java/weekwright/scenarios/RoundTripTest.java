package weekwright.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/** Whatever this module makes is a document that the strict reader takes, and reads back as it was. */
class RoundTripTest {
    private static final int SEEDS = 4;

    @Test
    void demosAndJudgedWeeksReadBackAsTheyWere() throws DocumentException {
        for (Demo demo : Scenarios.all()) {
            assertThat(reread(Scenarios.read(demo.name()))).isEqualTo(Scenarios.read(demo.name()));
        }
        for (JudgedWeek week : Scenarios.weeks()) {
            assertThat(reread(week.scenario())).isEqualTo(week.scenario());
            assertThat(reread(week.plan(), week.scenario())).isEqualTo(week.plan());
        }
    }

    @Test
    void stretchesOfTheSeasonsReadBackAsTheyWere() throws DocumentException {
        for (int club : new int[] {1, 3}) {
            SeasonFile season = SeasonFile.club(club);
            for (int week = 0; week < 40; week += 4) {
                Scenario scenario =
                        season.stretch(season.matches().get(0).date().plusWeeks(week), 14);
                assertThat(reread(scenario)).isEqualTo(scenario);
            }
        }
    }

    @Test
    void madeUpSquadsReadBackAsTheyWere() throws DocumentException {
        for (long seed = 0; seed < SEEDS; seed++) {
            Scenario tiny = SquadGenerator.tiny(seed);
            assertThat(reread(tiny)).as("tiny " + seed).isEqualTo(tiny);
            Scenario squads = SquadGenerator.squad(seed, 3, 45, 2);
            assertThat(reread(squads)).as("squad " + seed).isEqualTo(squads);
        }
        Scenario large = SquadGenerator.squad(Long.MIN_VALUE, 8, 224, 1);
        assertThat(reread(large)).isEqualTo(large);
    }

    @Test
    void randomPlansReadBackAsTheyWere() throws DocumentException {
        for (long seed = 0; seed < SEEDS; seed++) {
            Scenario scenario = SquadGenerator.squad(seed, 2, 24, 2);
            Plan plan = RandomPlans.randomPlan(scenario, new Random(seed));
            assertThat(reread(plan, scenario).placements())
                    .as("seed " + seed)
                    .containsExactlyElementsOf(plan.placements());
        }
    }

    private static Scenario reread(Scenario scenario) throws DocumentException {
        return Documents.readScenario(scenario.id(), Documents.write(scenario).getBytes(StandardCharsets.UTF_8));
    }

    private static Plan reread(Plan plan, Scenario scenario) throws DocumentException {
        return Documents.readPlan(plan.scenario(), Documents.write(plan).getBytes(StandardCharsets.UTF_8), scenario);
    }
}
