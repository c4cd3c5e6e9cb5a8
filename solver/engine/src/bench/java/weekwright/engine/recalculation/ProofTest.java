package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import weekwright.engine.Engine;
import weekwright.engine.recalculation.Proof.Proven;
import weekwright.engine.testing.SmallWeeks;
import weekwright.engine.testing.SmallWeeks.Change;
import weekwright.engine.testing.SmallWeeks.Changed;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.SquadGenerator;
import weekwright.scenarios.Yardstick;

/**
 * Small weeks proven again by CP-SAT: the kept optimum, and that the engine judges the proven plan the same. With
 * {@code -Dweekwright.proven=write} the data are made anew.
 */
class ProofTest {
    private static final long WEEKS = 12;
    private static final double SECONDS = 120;
    private static final Path DATA = Path.of("src/test/resources", SmallWeeks.FOLDER);

    static List<SmallWeeks.Proven> kept() throws IOException {
        if ("write".equals(System.getProperty("weekwright.proven"))) {
            write();
        }
        return JsonMapper.shared()
                .readValue(
                        Files.readAllBytes(DATA.resolve("index.json")),
                        new tools.jackson.core.type.TypeReference<List<SmallWeeks.Proven>>() {});
    }

    @ParameterizedTest
    @MethodSource("kept")
    void the_optimum_is_proven_again_and_judged_the_same(SmallWeeks.Proven kept) {
        Scenario scenario = kept.scenario();
        Proven proven = Proof.best(scenario, SECONDS).orElseThrow();

        assertThat(totals(proven)).isEqualTo(new Totals(0, kept.key(), kept.main(), kept.want()));
        assertThat(Engine.judge(scenario, proven.plan()).plan().totals()).isEqualTo(totals(proven));
    }

    @ParameterizedTest
    @MethodSource("kept")
    void the_fewest_sessions_moved_are_proven_again(SmallWeeks.Proven kept) {
        assertThat(fewest(kept.scenario(), kept.plan())).isEqualTo(kept.fewest());
    }

    /** A week whose sums are worked out by hand: a proof that could not fail proves nothing. */
    @Test
    void hours_short_cost_one_point_each_to_twelve_and_two_beyond() {
        assertThat(ProofWeek.hourPoints(72 * 60, 68 * 60)).isZero();
        assertThat(ProofWeek.hourPoints(72 * 60, 67 * 60)).isEqualTo(10);
        assertThat(ProofWeek.hourPoints(72 * 60, 56 * 60)).isEqualTo(120);
        assertThat(ProofWeek.hourPoints(72 * 60, 54 * 60)).isEqualTo(160);
    }

    private static Totals totals(Proven proven) {
        return new Totals(0, proven.key() / 10.0, proven.main() / 10.0, proven.want() / 10.0);
    }

    /** Changes after which no plan keeps every must have no number. */
    private static Map<Change, Integer> fewest(Scenario scenario, Plan plan) {
        Map<Change, Integer> fewest = new EnumMap<>(Change.class);
        for (Change change : Change.values()) {
            Changed changed = SmallWeeks.after(change, scenario, plan);
            Proof.fewestMoved(changed.scenario(), changed.before(), SECONDS)
                    .ifPresent(proven -> fewest.put(change, proven.moved()));
        }
        return fewest;
    }

    private static void write() throws IOException {
        Files.createDirectories(DATA);
        List<SmallWeeks.Proven> all = new ArrayList<>();
        for (long seed : LongStream.rangeClosed(1, WEEKS).toArray()) {
            Scenario scenario = SquadGenerator.small(seed);
            Scenario yardstick = Yardstick.of(scenario);
            Optional<Proven> proven = Proof.best(yardstick, SECONDS);
            if (proven.isPresent()) {
                Plan plan = Engine.judge(yardstick, proven.get().plan()).plan();
                Files.writeString(DATA.resolve(scenario.id() + ".scenario.json"), Documents.write(scenario));
                Files.writeString(DATA.resolve(scenario.id() + ".plan.json"), Documents.write(plan));
                Totals totals = totals(proven.get());
                all.add(new SmallWeeks.Proven(
                        scenario.id(), totals.key(), totals.main(), totals.want(), fewest(yardstick, plan)));
            }
        }
        JsonMapper mapper =
                JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
        Files.writeString(DATA.resolve("index.json"), mapper.writeValueAsString(all) + "\n");
    }
}
