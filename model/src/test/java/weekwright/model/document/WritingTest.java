package weekwright.model.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.plan.Blocker;
import weekwright.model.plan.CheapestOption;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Log;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Remedy;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** What is written can be read again, loses nothing, and is the same to the byte every time. */
class WritingTest {
    @Test
    void aScenarioSurvivesWritingAndReading() throws DocumentException {
        Scenario week = Examples.scenario();
        String written = Documents.write(week);
        Scenario again = Documents.readScenario("again.json", Examples.bytes(written));
        assertThat(again).isEqualTo(week);
        assertThat(Documents.write(again)).isEqualTo(written);
    }

    @Test
    void aPlanSurvivesWritingAndReading() throws DocumentException {
        Plan plan = Examples.plan();
        String written = Documents.write(plan);
        Plan again = Documents.readPlan("again.json", Examples.bytes(written), Examples.scenario());
        assertThat(again).isEqualTo(plan);
        assertThat(Documents.write(again)).isEqualTo(written);
    }

    @Test
    void aLogSurvivesWritingAndReading() throws DocumentException {
        Log log = Examples.log();
        String written = Documents.write(log);
        Log again = Documents.readLog("again.json", Examples.bytes(written), Examples.scenario());
        assertThat(again).isEqualTo(log);
        assertThat(Documents.write(again)).isEqualTo(written);
    }

    @Test
    void eachFieldOfAScenarioSurvives() throws DocumentException {
        String full = Examples.text("full-scenario.json");
        Scenario scenario = Documents.readScenario("full.json", Examples.bytes(full));
        String written = Documents.write(scenario);
        assertThat(Documents.readScenario("again.json", Examples.bytes(written)))
                .isEqualTo(scenario);
        assertThat(written).as("nothing in it is at its usual value").isEqualToIgnoringWhitespace(full);
    }

    @Test
    void whatIsAtItsUsualValueIsNotWritten() throws DocumentException {
        String least = """
                {
                  "weekwright": 1,
                  "id": "least",
                  "zone": "UTC",
                  "firstDay": "2027-03-01",
                  "days": 1,
                  "groups": [{ "id": "g" }]
                }
                """;
        assertThat(Documents.write(Documents.readScenario("least.json", Examples.bytes(least))))
                .isEqualTo(least);
    }

    @Test
    void whatSaysTheSameHasTheSameDigest() throws DocumentException {
        Scenario week = Examples.scenario();
        String plainer = Examples.changed(Examples.text("scenario.json"), "\"gridMinutes\": 15,", "");
        assertThat(Documents.digest(Documents.readScenario("plainer.json", Examples.bytes(plainer))))
                .isEqualTo(Documents.digest(week));
        String other = Examples.changed(Examples.text("scenario.json"), "\"headcount\": 18", "\"headcount\": 19");
        assertThat(Documents.digest(Documents.readScenario("other.json", Examples.bytes(other))))
                .isNotEqualTo(Documents.digest(week));
    }

    /** Plans name the digest: a change of how a scenario is written makes all of them look stale. */
    @Test
    void theDigestOfTheExampleStaysAsItIs() throws DocumentException {
        assertThat(Documents.digest(Examples.scenario()))
                .isEqualTo("sha256:aa319f7d2ccff96f8ff9a58728520a4ed0ebc460aa9be2aabb3f846dde41e369");
    }

    @Test
    void anEmptyListOfAChangedFamilyMeansSomethingAndStays() throws DocumentException {
        String text = Examples.changed(
                Examples.text("scenario.json"),
                "{ \"id\": \"max-velocity\", \"minutes\": 35 }",
                "{ \"id\": \"max-velocity\", \"facility\": [], \"straightMetres\": null }");
        Scenario anywhere = Documents.readScenario("week.json", Examples.bytes(text));
        assertThat(Documents.write(anywhere))
                .contains("\"catalogue\": [{ \"id\": \"max-velocity\", \"facility\": [] }]");
    }

    @Test
    void aPlanIsWrittenWithAllItsFields() {
        Plan bare = new Plan(
                1,
                "week",
                null,
                null,
                null,
                List.of(new Placement(
                        null,
                        "squad",
                        "tempo-run",
                        Moment.parse("2027-03-02T16:30"),
                        null,
                        null,
                        null,
                        Dose.FULL,
                        null,
                        null)),
                List.of(),
                List.of(),
                null,
                List.of());
        assertThat(Documents.write(bare)).isEqualTo("""
                        {
                          "weekwright": 1,
                          "scenario": "week",
                          "scenarioDigest": null,
                          "published": null,
                          "solver": null,
                          "placements": [
                            {
                              "id": null,
                              "group": "squad",
                              "family": "tempo-run",
                              "start": "2027-03-02T16:30",
                              "minutes": null,
                              "facility": null,
                              "lead": null,
                              "dose": "full",
                              "variant": null,
                              "pin": null
                            }
                          ],
                          "leftOut": [],
                          "softened": [],
                          "totals": null,
                          "findings": []
                        }
                        """);
    }

    @Test
    void placementsAreWrittenByStartThenId() {
        Plan plan = new Plan(
                1,
                "week",
                null,
                null,
                null,
                List.of(
                        at("2027-10-31T01:30+00:00", "a"),
                        at("2027-10-31T01:30", "c"),
                        at("2027-10-31T01:30", "b"),
                        at("2027-10-30T18:00", "d")),
                List.of(),
                List.of(),
                null,
                List.of());
        assertThat(Pattern.compile("\"id\": \"(.)\"")
                        .matcher(Documents.write(plan))
                        .results()
                        .map(found -> found.group(1)))
                .containsExactly("d", "b", "c", "a");
    }

    private static Placement at(String start, String id) {
        return new Placement(id, "squad", "tempo-run", Moment.parse(start), 40, null, null, Dose.FULL, null, null);
    }

    @Test
    void pinsAndSessionsLeftOutSurvive() throws DocumentException {
        Plan example = Examples.plan();
        Totals change = new Totals(0, -1, 0, 2.5);
        Plan plan = new Plan(
                1,
                example.scenario(),
                example.scenarioDigest(),
                Moment.parse("2027-03-01T08:00"),
                example.solver(),
                example.placements(),
                List.of(new LeftOut(
                        "match-squad/max-velocity/2027-03-01/2",
                        "target",
                        RuleLevel.WANT,
                        16,
                        new Pin(false, false, false, false, false, false, true, List.of()),
                        312,
                        List.of(new Blocker("facility-open", 96, 40)),
                        new CheapestOption(Moment.parse("2027-03-04T16:00"), null, Dose.MICRO, change),
                        "There is no room for it.")),
                List.of(),
                example.totals(),
                example.findings().stream()
                        .map(finding -> new weekwright.model.plan.Finding(
                                finding.rule(),
                                finding.title(),
                                finding.level(),
                                finding.cost(),
                                finding.heads(),
                                finding.groups(),
                                List.of("a07"),
                                finding.placements(),
                                finding.fixtures(),
                                List.of("tactics-wed"),
                                List.of("match-squad/fixture/2027-02-27T14:30"),
                                "gym",
                                "c1",
                                finding.week(),
                                finding.day(),
                                finding.measured(),
                                finding.limit(),
                                finding.unit(),
                                finding.text(),
                                new Remedy(
                                        List.of("Move it."),
                                        change,
                                        List.of("short-wait"),
                                        false,
                                        "Move it to Thursday."),
                                null))
                        .toList());
        String written = Documents.write(plan);
        assertThat(written)
                .contains("\"pin\": { \"out\": true }")
                .contains("\"key\": -1")
                .contains("\"want\": 2.5");
        assertThat(Documents.readPlan("again.json", Examples.bytes(written), Examples.scenario()))
                .isEqualTo(plan);
    }

    @Test
    void bytesAreTheSameWhereverTheyAreWritten() throws DocumentException {
        String written = Documents.write(Examples.scenario());
        assertThat(written)
                .endsWith("}\n")
                .doesNotContain("\r")
                .doesNotContain("\t")
                .doesNotContain(".0");
        assertThat(written.lines().map(String::length).filter(length -> length > 112))
                .isEmpty();
        assertThat(written.lines()
                        .allMatch(line -> (line.length() - line.stripLeading().length()) % 2 == 0))
                .isTrue();
    }

    @Test
    void numbersAreWrittenInFull() {
        assertThat(Documents.writeAny(Map.of("n", List.of(5.0, 0.5, -0.0, 1e21, 1e-7, 1_830_000L, 42, 102.50))))
                .isEqualTo("{\n  \"n\": [5, 0.5, 0, 1000000000000000000000, 0.0000001, 1830000, 42, 102.5]\n}\n");
    }

    @Test
    void textIsEscapedWhereItMustBe() throws DocumentException {
        String text = Examples.changed(
                Examples.text("log.json"), "power cut", "first\\n\\\"second\\\"\\t\\\\ \\u00fcber \\ud83d\\ude00");
        Log log = Documents.readLog("log.json", Examples.bytes(text), Examples.scenario());
        assertThat(log.entries().get(1).note()).isEqualTo("first\n\"second\"\t\\ über 😀");
        String written = Documents.write(log);
        assertThat(written).contains("\"note\": \"first\\n\\\"second\\\"\\t\\\\ über 😀\"");
        assertThat(Documents.readLog("again.json", Examples.bytes(written), Examples.scenario()))
                .isEqualTo(log);
    }

    @Test
    void theCatalogueIsWrittenSoThatAScenarioTakesIt() throws DocumentException {
        String families = Documents.writeCatalogue(Catalogue.builtIn().families());
        String text = Examples.changed(
                Examples.text("scenario.json"),
                "\"catalogue\": [ { \"id\": \"max-velocity\", \"minutes\": 35 } ]",
                "\"catalogue\": " + families);
        Scenario all = Documents.readScenario("week.json", Examples.bytes(text));
        assertThat(Catalogue.builtIn().with(all.catalogue()).families())
                .isEqualTo(Catalogue.builtIn().families());
    }

    @Test
    void theRulesAreWrittenWithAllTheyAre() {
        List<weekwright.model.rulebook.Rule> rules = Rulebook.builtIn().rules();
        String written = Documents.writeRules(rules);
        assertThat(Documents.readBuiltIn(
                        "rules.json", Examples.bytes(written), "rules", weekwright.model.rulebook.Rule.class))
                .isEqualTo(rules);
    }
}
