package weekwright.model.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.plan.Log;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Scenario;

/** Our few lines of data binding against Jackson's, which read the same annotations: the two must agree. */
class BindingTest {
    private static final JsonMapper JACKSON = JsonMapper.builder()
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .build();

    @Test
    void jacksonReadsTheSameScenarioOfWhatWeWrite() throws DocumentException {
        for (String name : List.of("scenario.json", "full-scenario.json")) {
            Scenario scenario = Documents.readScenario(name, Examples.bytes(Examples.text(name)));
            assertThat(JACKSON.readValue(Documents.writeAny(scenario), Scenario.class))
                    .isEqualTo(scenario);
        }
    }

    @Test
    void weReadTheSameScenarioOfWhatJacksonWrites() throws DocumentException {
        for (String name : List.of("scenario.json", "full-scenario.json")) {
            Scenario scenario = Documents.readScenario(name, Examples.bytes(Examples.text(name)));
            assertThat(Documents.readScenario("jackson.json", JACKSON.writeValueAsBytes(scenario)))
                    .isEqualTo(scenario);
        }
    }

    @Test
    void bothAgreeOnPlansAndLogs() throws DocumentException {
        Plan plan = Examples.plan();
        assertThat(JACKSON.readValue(Documents.writeAny(plan), Plan.class)).isEqualTo(plan);
        assertThat(Documents.readPlan("jackson.json", JACKSON.writeValueAsBytes(plan), Examples.scenario()))
                .isEqualTo(plan);
        Log log = Examples.log();
        assertThat(JACKSON.readValue(Documents.writeAny(log), Log.class)).isEqualTo(log);
        assertThat(Documents.readLog("jackson.json", JACKSON.writeValueAsBytes(log), Examples.scenario()))
                .isEqualTo(log);
    }

    @Test
    void bothAgreeOnTheBuiltInLists() {
        assertThat(JACKSON.readValue(
                        Documents.writeAny(Catalogue.builtIn().families()), new TypeReference<List<Family>>() {}))
                .isEqualTo(Catalogue.builtIn().families());
        assertThat(JACKSON.readValue(
                        Documents.writeRules(Rulebook.builtIn().rules()), new TypeReference<List<Rule>>() {}))
                .isEqualTo(Rulebook.builtIn().rules());
    }
}
