package weekwright.model.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.json.JsonMapper;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Intensity;
import weekwright.model.scenario.Pathway;

/** The families against the table that they were agreed in. All figures: expert proposal. */
class CatalogueTest {
    private static final Map<String, Pathway> LETTERS = Map.of(
            "mv", Pathway.MAX_VELOCITY_SPRINT,
            "ac", Pathway.ACCELERATION,
            "kd", Pathway.KNEE_DOMINANT,
            "hd", Pathway.HIP_DOMINANT,
            "up", Pathway.UPPER_PUSH,
            "ul", Pathway.UPPER_PULL,
            "jl", Pathway.JUMP_LANDING,
            "cd", Pathway.CHANGE_OF_DIRECTION,
            "ae", Pathway.AEROBIC);

    private final Catalogue catalogue = Catalogue.builtIn();

    /** One row of the table, as written there. */
    record Row(
            String id,
            String label,
            String scores,
            String hint,
            String rpe,
            String time,
            String place,
            String pathways,
            String again,
            String game) {
        static Row of(String line) {
            String[] cells = line.split("\\|", -1);
            String[] c = Stream.of(cells).map(String::strip).toArray(String[]::new);
            return new Row(c[1], c[2], c[3], c[4], c[5], c[6], c[7], c[8], c[9], c[10]);
        }

        @Override
        public String toString() {
            return id;
        }

        Hours hours(String cell) {
            Matcher pair = Pattern.compile("^(\\d+)/(\\d+)").matcher(cell);
            return pair.find() && !fixture()
                    ? new Hours(Double.parseDouble(pair.group(1)), Double.valueOf(pair.group(2)))
                    : new Hours(0, null);
        }

        boolean fixture() {
            return place.equals("venue");
        }

        Map<Pathway, Intensity> qualities() {
            Map<Pathway, Intensity> read = new LinkedHashMap<>();
            for (String word : pathways.split(" ", -1)) {
                Pathway pathway = LETTERS.get(word.toLowerCase(Locale.ROOT));
                if (pathway != null) {
                    read.put(pathway, Character.isUpperCase(word.charAt(0)) ? Intensity.HIGH : Intensity.LIGHT);
                }
            }
            return read;
        }

        List<FacilityKind> kinds() {
            return Stream.of(place.split("[ ,]+", -1))
                    .filter(word -> !place.contains("ANY"))
                    .flatMap(word -> Stream.of(FacilityKind.values())
                            .filter(kind -> kind.name().equals(word)))
                    .toList();
        }
    }

    static List<Row> rows() throws IOException {
        try (InputStream table = CatalogueTest.class.getResourceAsStream("/weekwright/model/session-families.md")) {
            return new String(table.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith("| ") && !line.startsWith("| Id "))
                    .map(Row::of)
                    .toList();
        }
    }

    @Test
    void holds_every_family_of_the_table_in_its_order() throws IOException {
        assertThat(catalogue.families())
                .extracting(Family::id)
                .containsExactlyElementsOf(rows().stream().map(Row::id).toList());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void demand_exertion_and_minutes_are_those_of_the_table(Row row) {
        Family family = catalogue.family(row.id());
        Demand demand = family.demand();
        assertThat("%.0f/%.0f/%.0f".formatted(demand.neural(), demand.metabolic(), demand.tissue()))
                .isEqualTo(row.scores());
        assertThat(family.rpe()).isEqualTo(Double.parseDouble(row.rpe()));
        assertThat(family.minutes() + "+" + family.warmUpMinutes()).isEqualTo(row.time());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void qualities_and_places_are_those_of_the_table(Row row) {
        Family family = catalogue.family(row.id());
        assertThat(family.pathways()).isEqualTo(row.qualities());
        assertThat(family.facility()).isEqualTo(row.kinds());
        Matcher straight = Pattern.compile(">=(\\d+) m").matcher(row.place());
        assertThat(family.straightMetres()).isEqualTo(straight.find() ? Integer.valueOf(straight.group(1)) : null);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void hours_are_those_of_the_table(Row row) {
        Family family = catalogue.family(row.id());
        assertThat(family.againHours()).isEqualTo(row.hours(row.again()));
        assertThat(family.beforeFixtureHours()).isEqualTo(row.hours(row.game()));
        Matcher micro = Pattern.compile("micro (\\d+)/(\\d+)").matcher(row.game());
        assertThat(family.beforeFixtureMicroHours())
                .isEqualTo(
                        micro.find()
                                ? new Hours(Double.parseDouble(micro.group(1)), Double.valueOf(micro.group(2)))
                                : null);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void hours_to_the_next_high_day_are_40_after_the_costliest_and_none_after_what_is_not_high(Row row) {
        Family family = catalogue.family(row.id());
        boolean costliest = List.of(
                        "speed-endurance", "repeated-sprint", "lower-hypertrophy", "contact-practice", "testing")
                .contains(row.id());
        int otherwise = Demands.classOf(family, false) == DayClass.HIGH ? 16 : 0;
        assertThat(family.crossHours()).isEqualTo(new Hours(costliest ? 40 : otherwise, null));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | technique, skill-at-speed",
                "1 | max-velocity, acceleration, resisted-acceleration, speed-endurance, change-of-direction",
                "2 | intensive-plyometrics, extensive-plyometrics, weightlifting-power",
                "3 | team-practice, contact-practice",
                "4 | heavy-lower-knee, heavy-lower-hip, heavy-upper-push, heavy-upper-pull, full-body-strength,"
                        + " upper-strength",
                "5 | upper-hypertrophy, lower-hypertrophy, low-day-hypertrophy",
                "6 | tempo-run, aerobic-intervals, repeated-sprint, small-sided-games, repeat-run-capacity",
                "7 | hamstring-eccentric"
            })
    void freshest_work_has_the_lowest_place_in_the_order(int order, String ids) {
        assertThat(catalogue.families().stream()
                        .filter(family -> Integer.valueOf(order).equals(family.order()))
                        .map(Family::id))
                .containsExactlyInAnyOrder(ids.split(", +", -1));
    }

    @Test
    void fixtures_practices_primer_and_recovery_have_their_roles() {
        assertThat(withRole(Role.FIXTURE)).containsExactly("fixture", "court-fixture", "meet-sprint", "meet-lift");
        assertThat(withRole(Role.PRACTICE)).containsExactly("team-practice", "contact-practice");
        assertThat(withRole(Role.PRIMER)).containsExactly("primer");
        assertThat(withRole(Role.RECOVERY)).containsExactly("mobility", "pool-recovery", "recovery");
    }

    private List<String> withRole(Role role) {
        return catalogue.families().stream()
                .filter(family -> family.role() == role)
                .map(Family::id)
                .toList();
    }

    /** Expert proposal, grounded in Silva et al. 2018, Rhodes et al. 2019, West et al. 2014, Doeven et al. 2018. */
    @ParameterizedTest
    @CsvSource({
        "fixture,       max-velocity-sprint, 64, 72",
        "fixture,       hip-dominant,        64, 72",
        "fixture,       other-high,          40, 48",
        "fixture,       upper-push,          16,   ",
        "fixture,       upper-pull,          16,   ",
        "fixture,       easy-aerobic,        16,   ",
        "fixture,       micro-speed,         36, 48",
        "fixture,       micro-strength,      36, 48",
        "court-fixture, max-velocity-sprint, 40, 72",
        "court-fixture, hip-dominant,        40, 72",
        "court-fixture, other-high,          16, 48",
        "court-fixture, upper-push,          16,   ",
        "court-fixture, upper-pull,          16,   ",
        "court-fixture, easy-aerobic,        16,   ",
        "court-fixture, micro-speed,         16,   ",
        "court-fixture, micro-strength,      16,   ",
        "meet-sprint,   max-velocity-sprint, 40, 72",
        "meet-sprint,   acceleration,        40, 72",
        "meet-sprint,   other-high,          16, 48",
        "meet-sprint,   upper-push,          16,   ",
        "meet-sprint,   upper-pull,          16,   ",
        "meet-lift,     knee-dominant,       64, 72",
        "meet-lift,     hip-dominant,        64, 72",
        "meet-lift,     upper-push,          64, 72",
        "meet-lift,     upper-pull,          16,   ",
        "meet-lift,     other-high,          40, 48"
    })
    void hours_after_a_fixture_go_by_its_kind(String fixture, String after, double must, Double want) {
        assertThat(catalogue.family(fixture).afterHours().get(after)).isEqualTo(new Hours(must, want));
    }

    @Test
    void only_fixtures_have_hours_after_them_and_none_besides_those_named() {
        Map<String, Integer> entries = new LinkedHashMap<>();
        catalogue.families().stream()
                .filter(family -> !family.afterHours().isEmpty())
                .forEach(family -> entries.put(family.id(), family.afterHours().size()));
        assertThat(entries)
                .containsExactly(
                        Map.entry("fixture", 8),
                        Map.entry("court-fixture", 8),
                        Map.entry("meet-sprint", 5),
                        Map.entry("meet-lift", 5));
    }

    @Test
    void heavy_lower_lifting_rotates_and_one_lift_of_each_is_tested() {
        assertThat(catalogue.family("heavy-lower-knee").variants())
                .filteredOn(Variant::tested)
                .extracting(Variant::id)
                .containsExactly("back-squat");
        assertThat(catalogue.family("heavy-lower-hip").variants())
                .filteredOn(Variant::tested)
                .extracting(Variant::id)
                .containsExactly("deadlift");
    }

    @Test
    void every_family_says_where_its_figures_come_from() {
        assertThat(catalogue.families())
                .allSatisfy(family -> assertThat(family.source())
                        .matches("expert proposal.*|common practice, no source")
                        .doesNotContain("ection "));
    }

    @Test
    void a_family_that_is_written_out_is_read_back_the_same() {
        JsonMapper mapper = JsonMapper.builder().build();
        assertThat(catalogue.families())
                .allSatisfy(family -> assertThat(mapper.readValue(mapper.writeValueAsString(family), Family.class))
                        .isEqualTo(family));
    }

    @Test
    void families_that_are_written_out_may_stand_in_a_scenario() {
        JsonMapper mapper = JsonMapper.builder().build();
        List<FamilyPatch> patches = catalogue.families().stream()
                .map(family -> mapper.readValue(mapper.writeValueAsString(family), FamilyPatch.class))
                .toList();
        assertThat(patches)
                .allSatisfy(patch -> assertThat(catalogue.faults(patch)).isEmpty());
        assertThat(catalogue.with(patches).families()).isEqualTo(catalogue.families());
    }

    @Test
    void a_misspelt_family_is_answered_with_the_nearest() {
        assertThat(catalogue.find("max-velosity")).isEqualTo(Optional.empty());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> catalogue.family("max-velosity"))
                .withMessage("no session family is called \"max-velosity\": did you mean max-velocity?");
    }
}
