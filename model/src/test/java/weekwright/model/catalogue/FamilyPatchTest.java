package weekwright.model.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;
import weekwright.model.scenario.FacilityKind;

/** What a coach may change of a family, and how a family of one's own is made. */
class FamilyPatchTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String OWN = """
            { "id": "stair-runs", "demand": { "neural": 6, "metabolic": 6.5, "tissue": 5 }, "rpe": 6, "minutes": 20,
              "warmUpMinutes": 15, "pathways": { "acceleration": "high" }, "againHours": { "must": 40, "want": 48 },
              "crossHours": { "must": 16 }, "beforeFixtureHours": { "must": 40, "want": 72 } }
            """;

    private final Catalogue catalogue = Catalogue.builtIn();

    private static FamilyPatch patch(String json) {
        return JSON.readValue(json, FamilyPatch.class);
    }

    private List<String> faults(String json) {
        return catalogue.faults(patch(json));
    }

    @Test
    void a_change_holds_for_the_fields_given_and_no_others() {
        Family usual = catalogue.family("max-velocity");
        Family changed = catalogue
                .with(List.of(patch("{ \"id\": \"max-velocity\", \"minutes\": 35, \"facility\": [\"hall\"] }")))
                .family("max-velocity");
        assertThat(changed.minutes()).isEqualTo(35);
        assertThat(changed.facility()).containsExactly(FacilityKind.HALL);
        assertThat(changed)
                .usingRecursiveComparison()
                .ignoringFields("minutes", "facility")
                .isEqualTo(usual);
        assertThat(catalogue.family("max-velocity")).isSameAs(usual);
    }

    @Test
    void every_field_may_be_changed() {
        Family changed = catalogue.with(List.of(patch("""
                                { "id": "tempo-run", "label": "Easy runs", "role": "recovery",
                                  "demand": { "neural": 1, "metabolic": 2, "tissue": 3 }, "rpe": 2.5, "minutes": 21,
                                  "warmUpMinutes": 7, "facility": ["track"], "straightMetres": 60,
                                  "pathways": { "aerobic": "high" }, "againHours": { "must": 1, "want": 2 },
                                  "crossHours": { "must": 3 }, "beforeFixtureHours": { "must": 4, "want": 5 },
                                  "beforeFixtureMicroHours": { "must": 2, "want": 3 }, "order": 5,
                                  "variants": [ { "id": "grass", "label": "Grass", "tested": true } ],
                                  "content": [], "note": "Barefoot.", "source": "the coach" }
                                """))).family("tempo-run");
        assertThat(JSON.writeValueAsString(changed))
                .isEqualTo("{\"id\":\"tempo-run\",\"label\":\"Easy runs\",\"role\":\"recovery\","
                        + "\"demand\":{\"neural\":1.0,\"metabolic\":2.0,\"tissue\":3.0},\"rpe\":2.5,\"minutes\":21,"
                        + "\"warmUpMinutes\":7,\"facility\":[\"track\"],\"straightMetres\":60,"
                        + "\"pathways\":{\"aerobic\":\"high\"},\"againHours\":{\"must\":1.0,\"want\":2.0},"
                        + "\"crossHours\":{\"must\":3.0},"
                        + "\"beforeFixtureHours\":{\"must\":4.0,\"want\":5.0},"
                        + "\"beforeFixtureMicroHours\":{\"must\":2.0,\"want\":3.0},\"afterHours\":{},\"order\":5,"
                        + "\"variants\":[{\"id\":\"grass\",\"label\":\"Grass\",\"tested\":true}],\"content\":[],"
                        + "\"note\":\"Barefoot.\",\"source\":\"the coach\"}");
    }

    @Test
    void a_family_of_ones_own_comes_last_and_takes_its_id_for_a_label() {
        Catalogue wider = catalogue.with(List.of(patch(OWN)));
        assertThat(wider.families()).hasSize(41).last().isEqualTo(wider.family("stair-runs"));
        Family own = wider.family("stair-runs");
        assertThat(own.label()).isEqualTo("stair-runs");
        assertThat(own.role()).isEqualTo(Role.SESSION);
        assertThat(own.facility()).isEmpty();
        assertThat(own.demand().metabolic()).isEqualTo(6.5);
    }

    @Test
    void hours_after_a_fixture_are_changed_all_together() {
        String own = "{ \"id\": \"fixture\", \"afterHours\": { \"other-high\": { \"must\": 30 } } }";
        assertThat(catalogue.with(List.of(patch(own))).family("fixture").afterHours())
                .containsExactly(Map.entry("other-high", new Hours(30, null)));
    }

    @Test
    void a_fixture_of_ones_own_has_no_spacing_but_the_hours_after_it() {
        String own = """
                { "id": "friendly", "role": "fixture", "demand": { "neural": 8, "metabolic": 8, "tissue": 8 },
                  "rpe": 7, "minutes": 70, "warmUpMinutes": 20, "pathways": {},
                  "afterHours": { "other-high": { "must": 24 } } }
                """;
        assertThat(faults(own)).isEmpty();
        Family friendly = catalogue.with(List.of(patch(own))).family("friendly");
        assertThat(List.of(friendly.againHours(), friendly.crossHours(), friendly.beforeFixtureHours()))
                .containsOnly(new Hours(0, null));
        assertThat(friendly.source()).isEqualTo("the coach's own");
    }

    @Test
    void a_family_of_ones_own_needs_all_that_is_judged() {
        assertThat(faults("{ \"id\": \"stair-runs\" }"))
                .containsExactly(
                        "demand: is missing; a family that is not built in needs neural, metabolic and tissue demand,"
                                + " each 0 to 10",
                        "rpe: is missing; a family that is not built in needs planned exertion, 0 to 10",
                        "minutes: is missing; a family that is not built in needs main minutes of a full session",
                        "warmUpMinutes: is missing; a family that is not built in needs minutes of warm-up, 0 for none",
                        "pathways: is missing; a family that is not built in needs the qualities it trains, { } for"
                                + " none",
                        "againHours: is missing; a family that is not built in needs hours before the same quality"
                                + " comes again",
                        "crossHours: is missing; a family that is not built in needs hours before the next high day",
                        "beforeFixtureHours: is missing; a family that is not built in needs hours by which it ends"
                                + " before a fixture");
        assertThat(faults(OWN)).isEmpty();
    }

    @Test
    void a_fixture_of_ones_own_needs_hours_after_it_and_no_spacing() {
        assertThat(faults("""
                        { "id": "friendly", "role": "fixture", "demand": { "neural": 8, "metabolic": 8, "tissue": 8 },
                          "rpe": 7, "minutes": 0, "warmUpMinutes": 20, "pathways": {} }
                        """))
                .containsExactly(
                        "afterHours: a fixture needs other-high, the hours before any other high work",
                        "minutes: a fixture has at least 1 minute of play");
    }

    @Test
    void figures_outside_their_range_are_refused_with_the_range() {
        assertThat(faults("""
                        { "id": "tempo-run", "demand": { "neural": 11, "metabolic": -1, "tissue": 5.25 }, "rpe": 10.5,
                          "minutes": 601, "warmUpMinutes": -5, "straightMetres": 0, "order": 10,
                          "crossHours": { "must": 241 } }
                        """))
                .containsExactly(
                        "demand.neural: 11 is outside 0 to 10",
                        "demand.metabolic: -1 is outside 0 to 10",
                        "demand.tissue: 5.25 is finer than a tenth; give it with one decimal",
                        "rpe: 10.5 is outside 0 to 10",
                        "minutes: 601 is outside 0 to 600",
                        "warmUpMinutes: -5 is outside 0 to 120",
                        "straightMetres: 0 is outside 1 to 1000",
                        "order: 10 is outside 0 to 9",
                        "crossHours.must: 241 is outside 0 to 240");
    }

    @Test
    void hours_wanted_are_never_fewer_than_those_that_must_be() {
        assertThat(faults("{ \"id\": \"tempo-run\", \"againHours\": { \"must\": 24, \"want\": 23.5 } }"))
                .containsExactly("againHours.want: 23.5 h wanted is less than the 24 h that must be; give the same or"
                        + " more");
        assertThat(faults("{ \"id\": \"tempo-run\", \"againHours\": { \"must\": 24, \"want\": 24 } }"))
                .isEmpty();
    }

    @Test
    void hours_after_a_fixture_go_by_quality_or_kind_of_work() {
        assertThat(faults("{ \"id\": \"fixture\", \"afterHours\": { \"other-hihg\": { \"must\": 40 } } }"))
                .containsExactly(
                        "afterHours.other-hihg: is no quality and no kind of work; did you mean other-high?",
                        "afterHours: a fixture needs other-high, the hours before any other high work");
        assertThat(faults("{ \"id\": \"tempo-run\", \"afterHours\": { \"other-high\": { \"must\": 40 } } }"))
                .containsExactly("afterHours: only a fixture has hours after it; give role fixture or leave them out");
    }

    @Test
    void a_variant_is_named_once() {
        assertThat(faults("{ \"id\": \"tempo-run\", \"variants\": [ { \"id\": \"a\", \"tested\": false }, { \"id\":"
                        + " \"a\", \"tested\": false } ] }"))
                .containsExactly("variants: a is there twice; give each variant its own id");
    }

    @Test
    void a_change_with_faults_is_not_used() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> catalogue.with(List.of(patch("{ \"id\": \"primer\", \"rpe\": 12 }"))))
                .withMessage("family primer cannot be used: rpe: 12 is outside 0 to 10");
    }

    /** Each line of a session has what its kind needs. */
    @Test
    void a_line_of_a_session_says_what_its_kind_needs() {
        assertThat(line("\"kind\": \"sprint\""))
                .containsExactly(
                        "content[0].metres: is missing; a sprint is over a distance",
                        "content[0].repetitions: is missing; a sprint is run a number of times");
        assertThat(line("\"kind\": \"lift\""))
                .containsExactly("content[0].repetitions: is missing; a lift has repetitions");
        assertThat(line("\"kind\": \"jump\"")).containsExactly("content[0].repetitions: is missing; jumps are counted");
        assertThat(line("\"kind\": \"run\""))
                .containsExactly(
                        "content[0].repetitions: is missing; runs are counted",
                        "content[0].metres: a run is over metres (a share of top speed) or over seconds (a share of"
                                + " aerobic speed); give one of the two");
        assertThat(line("\"kind\": \"run\", \"repetitions\": 4, \"metres\": 60, \"seconds\": 15"))
                .hasSize(1);
        assertThat(line("\"kind\": \"run\", \"repetitions\": 4, \"seconds\": 15"))
                .isEmpty();
        assertThat(line("\"kind\": \"words\"")).isEmpty();
    }

    @Test
    void shares_of_a_line_go_upwards_and_begin_somewhere() {
        String lift = "\"kind\": \"lift\", \"repetitions\": 3, ";
        assertThat(line(lift + "\"percentFrom\": 80, \"percentTo\": 79"))
                .containsExactly("content[0].percentTo: is less than percentFrom; give the same or more");
        assertThat(line(lift + "\"percentFrom\": 80, \"percentTo\": 80")).isEmpty();
        assertThat(line(lift + "\"percentTo\": 80"))
                .containsExactly("content[0].percentTo: stands without percentFrom; give the least share too");
    }

    private List<String> line(String fields) {
        return faults("{ \"id\": \"tempo-run\", \"content\": [ { \"label\": \"A line\", \"sets\": 1, \"runIn\": 0, "
                + fields + " } ] }");
    }

    @Test
    void hours_and_figures_lie_within_their_limits() {
        assertThat(faults("{ \"id\": \"tempo-run\", \"rpe\": 10, \"minutes\": 600, \"order\": 9 }"))
                .isEmpty();
        assertThat(faults("{ \"id\": \"tempo-run\", \"rpe\": 0, \"warmUpMinutes\": 120 }"))
                .isEmpty();
        assertThat(faults("{ \"id\": \"tempo-run\", \"againHours\": { \"must\": 240, \"want\": 240 } }"))
                .isEmpty();
        assertThat(faults("{ \"id\": \"tempo-run\", \"againHours\": { \"must\": 241, \"want\": 242 } }"))
                .containsExactly(
                        "againHours.must: 241 is outside 0 to 240", "againHours.want: 242 is outside 0 to 240");
        assertThat(faults("{ \"id\": \"tempo-run\", \"crossHours\": { \"must\": 241 } }"))
                .containsExactly("crossHours.must: 241 is outside 0 to 240");
        assertThat(faults("{ \"id\": \"tempo-run\", \"beforeFixtureMicroHours\": { \"must\": 3, \"want\": 2 } }"))
                .anyMatch(fault -> fault.startsWith("beforeFixtureMicroHours.want: 2 h wanted is less than the 3 h"));
    }

    @Test
    void hours_of_every_kind_are_held_inside_ten_days() {
        assertThat(faults("""
                { "id": "tempo-run", "beforeFixtureHours": { "must": 241 } }""")).containsExactly("beforeFixtureHours.must: 241 is outside 0 to 240");
        assertThat(faults("""
                { "id": "fixture", "afterHours": { "other-high": { "must": 50, "want": 40 } } }"""))
                .containsExactly(
                        "afterHours.other-high.want: 40 h wanted is less than the 50 h that must be; give the same or"
                                + " more");
    }

    /** 6.5 points are 715 AU: 8 × (75 + 15) = 720, 8 × (74 + 15) = 712. */
    @Test
    void the_class_of_a_family_counts_its_warm_up() {
        String walk = """
                { "id": "hill-walk", "demand": { "neural": 2, "metabolic": 2, "tissue": 2 }, "rpe": 8, "minutes": %d,
                  "warmUpMinutes": 15, "pathways": { "aerobic": "high" }, "againHours": { "must": 16 },
                  "crossHours": { "must": 16 }, "beforeFixtureHours": { "must": 16 } }
                """;

        assertThat(classOf(walk.formatted(75))).isEqualTo(DayClass.HIGH);
        assertThat(classOf(walk.formatted(74))).isEqualTo(DayClass.MIDDLE);
    }

    private DayClass classOf(String json) {
        return Demands.classOf(catalogue.with(List.of(patch(json))).family("hill-walk"), false);
    }
}
