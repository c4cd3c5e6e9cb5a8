package weekwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.load.Change;
import weekwright.model.load.LoadRatio;
import weekwright.model.load.Spread;
import weekwright.model.load.Spread.Divisor;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Plan;
import weekwright.model.prescription.AerobicSpeed;
import weekwright.model.prescription.Plates;
import weekwright.model.prescription.RepMax;
import weekwright.model.prescription.SprintTimes;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Ten examples with published formulas and rules, worked by hand before any of this was written. */
class WorkedExamplesTest {
    /** Epley 1985, Brzycki 1993, Lombardi 1989, Mayhew 1992, O'Conner 1989, Wathan 1994, as two listings have them. */
    @Test
    void one_five_repetitions_with_100_kg() {
        assertThat(Arrays.stream(RepMax.values()).map(formula -> round(formula.maximum(100, 5))))
                .containsExactly(116.667, 112.5, 117.462, 119.011, 112.5, 116.583);
        assertThat(Arrays.stream(RepMax.values()).map(formula -> formula.maximum(100, 1)))
                .containsOnly(100.0);
    }

    private static double round(double value) {
        return Math.round(value * 1000) / 1000.0;
    }

    /** NSCA load chart, seen in a copy. */
    @Test
    void two_the_chart_of_repetitions() {
        assertThat(IntStream.rangeClosed(1, 10).map(RepMax::chartPercent))
                .containsExactly(100, 95, 93, 90, 87, 85, 83, 80, 77, 75);
    }

    /** Nearest 2.5 kg, ties down: expert proposal. */
    @Test
    void three_85_per_cent_on_the_bar() {
        assertThat(142.5 * 0.85).isCloseTo(121.125, within(1e-9));
        assertThat(Plates.KILOGRAMS.nearest(142.5 * 0.85)).hasValue(120);
        assertThat(Plates.KILOGRAMS.side(120)).isEqualTo(50);
        assertThat(Plates.KILOGRAMS.nearest(125 * 0.85)).hasValue(105);
    }

    /** Time = best / share, by definition. */
    @Test
    void four_windows_at_95_per_cent() {
        assertThat(0.98 / 0.95).isCloseTo(1.0316, within(0.00005));
        assertThat(SprintTimes.slowest(0.98, 0.95)).isEqualTo(1.03);
        assertThat(10 / 0.98).isCloseTo(10.204, within(0.0005));
        assertThat(SprintTimes.slowest(4.12, 0.95)).isEqualTo(4.33);
    }

    /** Foster 1998, MSSE 30:1164-1168; the divisor is ours to name. */
    @Test
    void five_a_week_of_load() {
        Spread week = Spread.of(300, 480, 0, 420, 240, 630, 60);

        assertThat(week.total()).isEqualTo(2130);
        assertThat(week.mean()).isCloseTo(304.2857, within(0.00005));
        assertThat(week.deviation(Divisor.POPULATION)).isCloseTo(209.3430, within(0.00005));
        assertThat(week.deviation(Divisor.SAMPLE)).isCloseTo(226.1163, within(0.00005));
        assertThat(week.monotony(Divisor.POPULATION).orElseThrow()).isCloseTo(1.4535, within(0.00005));
        assertThat(week.monotony(Divisor.SAMPLE).orElseThrow()).isCloseTo(1.3457, within(0.00005));
        assertThat(week.strain(Divisor.POPULATION).orElseThrow()).isCloseTo(3096.01, within(0.005));
        assertThat(week.strain(Divisor.SAMPLE).orElseThrow()).isCloseTo(2866.35, within(0.005));
    }

    /** Gabbett 2016; Windt and Gabbett; Williams et al. 2017. */
    @Test
    void six_three_weeks_at_300_and_one_at_600() {
        double[] days =
                IntStream.range(0, 28).mapToDouble(day -> day < 21 ? 300 : 600).toArray();

        assertThat(LoadRatio.COUPLED.on(days).orElseThrow()).isCloseTo(1.6, within(1e-9));
        assertThat(LoadRatio.UNCOUPLED.on(days).orElseThrow()).isCloseTo(2.0, within(1e-9));
        assertThat(LoadRatio.weighted(days, 7)).isCloseTo(559.955, within(0.0005));
        assertThat(LoadRatio.weighted(days, 28)).isCloseTo(418.080, within(0.0005));
        assertThat(LoadRatio.WEIGHTED.on(days).orElseThrow()).isCloseTo(1.3394, within(0.00005));
    }

    /** Track convention, seen in secondary pages. */
    @Test
    void seven_a_hand_timed_hundred_metres() {
        assertThat(SprintTimes.electronic(100, 11.0, false)).hasValue(11.24);
    }

    /** Baker, UKSCA, seen in secondary pages. */
    @Test
    void eight_runs_by_aerobic_speed() {
        assertThat(AerobicSpeed.metres(4.4, 1.2, 15)).isCloseTo(79.2, within(1e-9));
        assertThat(AerobicSpeed.metres(4.4, 1.0, 15)).isCloseTo(66.0, within(1e-9));
        assertThat(AerobicSpeed.ofTest(1500, 330)).isCloseTo(4.5455, within(0.00005));
    }

    /** NCAA Division I, bylaw 17, seen in secondary pages: 20 h a week, a day off, a competition day counts 3 h. */
    @Test
    void nine_a_college_week_of_twenty_and_a_half_hours() {
        List<Finding> full = findings("2027-03-07T10:00", true);
        assertThat(full).extracting(Finding::measured).contains(20.5);
        assertThat(full).as("hours, and no day off").hasSize(2);

        assertThat(findings("2027-03-07T10:00", false))
                .as("18 h and Sunday off")
                .isEmpty();
    }

    private static List<Finding> findings(String sunday, boolean withSunday) {
        String weekdays = IntStream.rangeClosed(1, 5)
                .mapToObj(day -> """
                        { "id": "d%d", "groups": ["squad"], "family": "team-practice", "start": "2027-03-0%dT10:00", "minutes": 180 }\
                        """.formatted(day, day))
                .collect(Collectors.joining(","));
        Scenario scenario = scenario("""
                { "weekwright": 1, "id": "club", "zone": "America/Chicago", "firstDay": "2027-03-01", "days": 7,
                  "groups": [ { "id": "squad", "packs": ["college-in-season"] } ], "commitments": [ %s ],
                  "fixtures": [ { "id": "game", "groups": ["squad"], "start": "2027-03-06T12:00", "minutes": 300 } ] }
                """.formatted(weekdays));
        String placement = withSunday
                ? "{ \"group\": \"squad\", \"family\": \"technique\", \"start\": \"" + sunday + "\", \"minutes\": 150 }"
                : "";
        return judge(scenario, placement).stream()
                .filter(finding -> finding.rule().equals("college-in-season"))
                .toList();
    }

    /** Haugen et al. 2019: 48 to 72 h; the floor of 40 and 8 h of tolerance: expert proposal. */
    @Test
    void ten_from_one_maximal_sprinting_to_the_next() {
        assertThat(gap("2027-03-04T09:00", "pathway-gap-floor")).containsExactly(39.0);
        assertThat(gap("2027-03-04T10:00", "pathway-gap-floor")).isEmpty();
        assertThat(gap("2027-03-04T10:00", "pathway-gap"))
                .as("32 h short of 72")
                .containsExactly(40.0);
        assertThat(gap("2027-03-05T18:00", "pathway-gap")).isEmpty();
        Moment saturday = Moment.parse("2026-10-24T18:00");
        Moment sunday = Moment.parse("2026-10-25T18:00");
        java.time.ZoneId paris = java.time.ZoneId.of("Europe/Paris");
        assertThat(Duration.between(saturday.instant(paris), sunday.instant(paris)))
                .isEqualTo(Duration.ofHours(25));
    }

    private static List<Double> gap(String second, String rule) {
        Scenario scenario = scenario("""
                { "weekwright": 1, "id": "club", "zone": "Europe/Paris", "firstDay": "2027-03-01", "days": 7,
                  "groups": [ { "id": "squad" } ] }
                """);
        String placements = """
                { "group": "squad", "family": "max-velocity", "start": "2027-03-02T16:55", "minutes": 65 },
                { "group": "squad", "family": "max-velocity", "start": "%s", "minutes": 65 }""".formatted(second);
        return judge(scenario, placements).stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(Finding::measured)
                .toList();
    }

    private static List<Finding> judge(Scenario scenario, String placements) {
        String text = "{ \"weekwright\": 1, \"scenario\": \"club\", \"placements\": [" + placements + "] }";
        try {
            Plan plan = Documents.readPlan("plan.json", text.getBytes(StandardCharsets.UTF_8), scenario);
            return Engine.judge(scenario, plan).plan().findings();
        } catch (DocumentException e) {
            throw new AssertionError(e);
        }
    }

    private static Scenario scenario(String text) {
        try {
            return Documents.readScenario("scenario.json", text.getBytes(StandardCharsets.UTF_8));
        } catch (DocumentException e) {
            throw new AssertionError(e);
        }
    }

    /** West et al. 2014, JSCR 28:194-200: jump power 6100 W, then 5680, 5761, 5950 after 12, 36, 60 h. */
    @Test
    void spare_jump_power_after_a_match() {
        assertThat(Change.percent(6100, 5680).orElseThrow()).isCloseTo(-6.9, within(0.05));
        assertThat(Change.percent(6100, 5761).orElseThrow()).isCloseTo(-5.6, within(0.05));
        assertThat(Change.percent(6100, 5950).orElseThrow()).isCloseTo(-2.5, within(0.05));
    }

    /** Dupont et al. 2010, AJSM 38:1752-1758: 25.6 against 4.1 injuries in 1000 h, 6.24 times as many. */
    @Test
    void spare_one_match_a_week_or_two() {
        assertThat(1 + Change.percent(4.1, 25.6).orElseThrow() / 100).isCloseTo(6.24, within(0.005));
    }
}
