package weekwright.desk.view.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.desk.view.load.LoadReports.Sources;
import weekwright.desk.view.terminal.Ink;
import weekwright.desk.view.terminal.LoadText;
import weekwright.desk.view.terminal.Plain;
import weekwright.engine.Engine;
import weekwright.engine.explain.Judged;
import weekwright.model.answer.LoadReport;
import weekwright.model.answer.LoadReport.Series;
import weekwright.model.load.Spread.Divisor;
import weekwright.model.plan.Plan;
import weekwright.model.prescription.Units;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Demo;
import weekwright.scenarios.Scenarios;

/** Reports of load of every demo. */
class LoadReportsTest {
    static List<String> demos() {
        return Scenarios.all().stream().map(Demo::name).toList();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void weeks_add_up_and_agree_with_the_week_that_is_shown(String demo) {
        Scenario scenario = Scenarios.read(demo);
        Plan empty = new Plan(1, scenario.id(), null, null, null, List.of(), List.of(), List.of(), null, List.of());
        Judged judged = Engine.judge(scenario, empty);

        LoadReport report = LoadReports.of(
                new Sources(scenario, judged, Engine.people(scenario, judged.plan()), null),
                null,
                Divisor.SAMPLE,
                Units.METRIC);

        Map<String, Double> shown = judged.days().stream()
                .collect(Collectors.groupingBy(day -> day.group(), Collectors.summingDouble(day -> day.load())));
        report.people().stream().filter(LoadReport.Person::group).forEach(group -> {
            double planned = group.weeks().stream()
                    .filter(week -> week.series() == Series.PLANNED)
                    .mapToDouble(LoadReport.Week::total)
                    .sum();
            assertThat(planned).isCloseTo(shown.get(group.id()), within(1e-6));
        });
        assertThat(report.people())
                .allSatisfy(person -> assertThat(person.weeks()).allSatisfy(week -> {
                    assertThat(week.days().stream()
                                    .mapToDouble(Double::doubleValue)
                                    .sum())
                            .isCloseTo(week.total(), within(1e-9));
                    assertThat(week.monotony() == null).isEqualTo(week.strain() == null);
                    if (week.monotony() != null) {
                        assertThat(week.strain()).isCloseTo(week.total() * week.monotony(), within(1e-6));
                    }
                }));
        assertThat(LoadText.of(report, Ink.PLAIN).lines())
                .allSatisfy(line -> assertThat(Plain.columns(line)).isLessThanOrEqualTo(100));
    }
}
