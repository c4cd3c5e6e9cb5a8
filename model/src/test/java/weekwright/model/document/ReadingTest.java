package weekwright.model.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Log;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Measure;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Share;

/** What stands in sound documents arrives in the records. */
class ReadingTest {
    @Test
    void aScenarioIsReadFieldByField() throws DocumentException {
        Scenario week = Examples.scenario();
        assertThat(week.id()).isEqualTo("quayside-one-match");
        assertThat(week.title()).isEqualTo("Quayside hockey, one match on Saturday");
        assertThat(week.zone()).isEqualTo(ZoneId.of("Europe/Dublin"));
        assertThat(week.firstDay()).isEqualTo(LocalDate.of(2027, 3, 1));
        assertThat(week.firstDay().getDayOfWeek()).isEqualTo(DayOfWeek.MONDAY);
        assertThat(week.days()).isEqualTo(7);
        assertThat(week.lastDay()).isEqualTo(LocalDate.of(2027, 3, 7));
        assertThat(week.gridMinutes()).isEqualTo(15);
        assertThat(week.packs()).isEmpty();
    }

    @Test
    void aGroupIsRead() throws DocumentException {
        Group squad = Examples.scenario().groups().get(0);
        assertThat(squad.kind()).isEqualTo(GroupKind.FIELD);
        assertThat(squad.phase()).isEqualTo(Phase.IN_SEASON);
        assertThat(squad.level()).isEqualTo(Level.TRAINED);
        assertThat(squad.headcount()).isEqualTo(18);
        assertThat(squad.quorum()).isEqualTo(0.8);
        assertThat(squad.windows()).hasSize(2);
        assertThat(squad.windows().get(0).holdsOn(LocalDate.of(2027, 3, 2))).isTrue();
        assertThat(squad.windows().get(1).from().minutes()).isEqualTo(600);
        assertThat(squad.away().get(0).to().local()).isEqualTo(LocalDateTime.of(2027, 3, 3, 18, 30));
        assertThat(squad.highDays().most()).isEqualTo(3);
        Aim speed = squad.aims().get(0);
        assertThat(speed.family()).isEqualTo("max-velocity");
        assertThat(speed.whom()).isEqualTo(Share.ALL);
        assertThat(speed.perWeek().most()).isEqualTo(2);
        assertThat(speed.priority()).isEqualTo(Priority.KEY);
        assertThat(speed.doses()).containsExactly(Dose.FULL, Dose.REDUCED, Dose.MICRO);
        assertThat(squad.aims().get(1).prefer().to().minutes()).isEqualTo(19 * 60);
    }

    @Test
    void anAthleteIsRead() throws DocumentException {
        Athlete ash = Examples.scenario().athletes().get(0);
        assertThat(ash.name()).isEqualTo("R. Ash");
        assertThat(ash.born()).isEqualTo(LocalDate.of(2004, 5, 9));
        assertThat(ash.marks())
                .extracting(mark -> mark.measure())
                .containsExactly(Measure.SPRINT, Measure.LIFT, Measure.AEROBIC_SPEED);
        assertThat(ash.marks().get(0).seconds()).isEqualTo(4.12);
        assertThat(ash.marks().get(1).repetitions()).isEqualTo(1);
        assertThat(ash.marks().get(2).metresPerSecond()).isEqualTo(4.4);
        assertThat(ash.restrictions().get(0).pathways())
                .containsExactly(Pathway.MAX_VELOCITY_SPRINT, Pathway.HIP_DOMINANT);
        assertThat(ash.restrictions().get(0).upTo()).isEqualTo(RestrictionLimit.LIGHT);
    }

    @Test
    void fixturesCommitmentsPlacesAndRulesAreRead() throws DocumentException {
        Scenario week = Examples.scenario();
        Fixture round = week.fixtures().get(0);
        assertThat(round.start().instant(week.zone())).isEqualTo(Instant.parse("2027-03-06T14:30:00Z"));
        assertThat(round.weight()).isEqualTo(FixtureWeight.REGULAR);
        assertThat(round.travel().backMinutes()).isEqualTo(75);
        assertThat(round.expected().get(0).minutes()).isZero();
        Commitment practice = week.commitments().get(0);
        assertThat(practice.effort()).isEqualTo(Effort.USUAL);
        assertThat(practice.lends().minutes()).isEqualTo(20);
        assertThat(week.facilities().get(1).offers()).containsExactly(FacilityKind.FIELD);
        assertThat(week.facilities().get(1).straightMetres()).isEqualTo(90);
        assertThat(week.transfers().get(0).between()).containsExactly("gym", "turf");
        assertThat(week.staff().get(0).leads("anything")).isTrue();
        assertThat(week.history().get(0).done()).isTrue();
        assertThat(week.catalogue().get(0).minutes()).isEqualTo(35);
        assertThat(week.rules().keySet()).containsExactly("no-middle-day", "load-spread", "pathway-gap");
        assertThat(week.rules().get("no-middle-day").weight()).isEqualTo(0.5);
        assertThat(week.rules().get("load-spread").level()).isEqualTo(RuleLevel.OFF);
        assertThat(week.rules().get("pathway-gap").numbers())
                .isEqualTo(Map.of("hours", Map.of("max-velocity-sprint", 60)));
    }

    @Test
    void whatIsLeftOutTakesItsUsualValue() throws DocumentException {
        Scenario least = Documents.readScenario("least.json", Examples.bytes("""
                        { "weekwright": 1, "id": "least", "zone": "UTC", "firstDay": "2027-03-01", "days": 1,
                          "groups": [ { "id": "g" } ],
                          "staff": [ { "id": "c", "leads": ["*"] } ],
                          "fixtures": [ { "id": "f", "groups": ["g"], "start": "2027-03-01T15:00", "minutes": 100 } ],
                          "history": [ { "group": "g", "family": "tempo-run", "start": "2027-02-28T10:00", "minutes": 40 } ] }
                        """));
        assertThat(least.title()).isEqualTo("least");
        assertThat(least.gridMinutes()).isEqualTo(15);
        Group group = least.groups().get(0);
        assertThat(group.label()).isEqualTo("g");
        assertThat(group.kind()).isEqualTo(GroupKind.OTHER);
        assertThat(group.phase()).isEqualTo(Phase.IN_SEASON);
        assertThat(group.level()).isEqualTo(Level.TRAINED);
        assertThat(group.headcount()).isNull();
        assertThat(group.quorum()).isEqualTo(0.8);
        assertThat(group.highDays()).isNull();
        assertThat(least.staff().get(0).atOnce()).isEqualTo(1);
        assertThat(least.fixtures().get(0).family()).isEqualTo("fixture");
        assertThat(least.fixtures().get(0).weight()).isEqualTo(FixtureWeight.REGULAR);
        LogEntry run = least.history().get(0);
        assertThat(run.done()).isTrue();
        assertThat(run.dose()).isEqualTo(Dose.FULL);
        assertThat(run.rpe()).isNull();
    }

    @Test
    void aPlanIsReadFieldByField() throws DocumentException {
        Plan plan = Examples.plan();
        assertThat(plan.solver().moves()).isEqualTo(1_830_000);
        assertThat(plan.solver().seconds()).isEqualTo(5.0);
        Placement speed = plan.placements().get(0);
        assertThat(speed.id()).isEqualTo("match-squad/max-velocity/2027-03-01/1");
        assertThat(speed.start()).isEqualTo(Moment.parse("2027-03-02T16:30"));
        assertThat(speed.start().instant(ZoneId.of("Europe/Dublin"))).isEqualTo(Instant.parse("2027-03-02T16:30:00Z"));
        assertThat(speed.minutes()).isEqualTo(60);
        assertThat(speed.held().start()).isTrue();
        assertThat(speed.held().day()).isFalse();
        assertThat(plan.placements().get(1).pin()).isNull();
        assertThat(plan.softened()).containsExactly("load-spread", "no-middle-day", "pathway-gap");
        assertThat(plan.totals().want()).isEqualTo(0.5);
        Finding margin = plan.findings().get(0);
        assertThat(margin.level()).isEqualTo(RuleLevel.WANT);
        assertThat(margin.measured()).isEqualTo(91.5);
        assertThat(margin.day()).isEqualTo(LocalDate.of(2027, 3, 2));
        assertThat(margin.remedy()).isNull();
    }

    @Test
    void aPlanByHandNeedsOnlyGroupFamilyAndStart() throws DocumentException {
        Plan plan = Documents.readPlan("hand.json", Examples.bytes("""
                        { "weekwright": 1, "scenario": "quayside-one-match",
                          "placements": [ { "group": "match-squad", "family": "max-velocity", "start": "2027-03-02T16:37" } ],
                          "leftOut": [ { "id": "match-squad/heavy-lower-knee/2027-03-01/1", "pin": { "out": true, "notDays": ["2027-03-04"] } } ] }
                        """), Examples.scenario());
        assertThat(plan.placements().get(0).id()).isNull();
        assertThat(plan.placements().get(0).dose()).isEqualTo(Dose.FULL);
        assertThat(plan.totals()).isNull();
        assertThat(plan.leftOut().get(0).pin().out()).isTrue();
        assertThat(plan.leftOut().get(0).pin().notDays()).containsExactly(LocalDate.of(2027, 3, 4));
    }

    @Test
    void anotherDigestIsNoFault() throws DocumentException {
        assertThat(Examples.plan().scenarioDigest()).isNotEqualTo(Documents.digest(Examples.scenario()));
    }

    @Test
    void aLogIsReadFieldByField() throws DocumentException {
        Log log = Examples.log();
        assertThat(log.scenario()).isEqualTo("quayside-one-match");
        assertThat(log.entries()).extracting(LogEntry::done).containsExactly(true, false, true);
        assertThat(log.entries().get(0).people().get(0).results().get(0).seconds())
                .containsExactly(4.21, 4.18);
        assertThat(log.entries().get(0).people().get(0).results().get(1).kg()).isEqualTo(102.5);
        assertThat(log.entries().get(0).people().get(0).soreness()).isEqualTo(2);
        assertThat(log.entries().get(1).except()).containsExactly("a07");
        assertThat(log.entries().get(2).rpe()).isEqualTo(8.5);
    }

    /** Clocks in Dublin go back on 31 October 2027 at 02:00 summer time, so 01:30 comes twice. */
    @ParameterizedTest
    @CsvSource({
        "2027-10-31T01:30,       2027-10-31T00:30:00Z",
        "2027-10-31T01:30+01:00, 2027-10-31T00:30:00Z",
        "2027-10-31T01:30+00:00, 2027-10-31T01:30:00Z",
        "2027-10-31T01:30Z,      2027-10-31T01:30:00Z"
    })
    void aTimeThatComesTwiceMeansTheEarlierUnlessAnOffsetIsWritten(String written, Instant meant)
            throws DocumentException {
        String autumn =
                Examples.text("scenario.json").replace("2027-03-0", "2027-10-2").replace("2027-02-27", "2027-10-19");
        Scenario week = Documents.readScenario(
                "week.json", Examples.bytes(Examples.changed(autumn, "2027-10-26T14:30", written)));
        assertThat(week.fixtures().get(0).start().instant(week.zone())).isEqualTo(meant);
    }

    @Test
    void wholeNumbersMayBeWrittenWithAPoint() throws DocumentException {
        String text = Examples.changed(Examples.text("scenario.json"), "\"days\": 7", "\"days\": 7.0");
        text = Examples.changed(text, "\"gridMinutes\": 15", "\"gridMinutes\": 1.5e1");
        assertThat(Documents.readScenario("week.json", Examples.bytes(text))).isEqualTo(Examples.scenario());
    }

    @Test
    void nullMeansNotGivenWhereAFieldMayBeLeftOut() throws DocumentException {
        String text = Examples.changed(Examples.text("scenario.json"), "\"headcount\": 18", "\"headcount\": null");
        assertThat(Documents.readScenario("week.json", Examples.bytes(text))
                        .groups()
                        .get(0)
                        .headcount())
                .isNull();
    }

    @Test
    void aByteOrderMarkIsPassedOver() throws DocumentException {
        byte[] marked = ("\uFEFF" + Examples.text("scenario.json")).getBytes(StandardCharsets.UTF_8);
        assertThat(Documents.readScenario("week.json", marked)).isEqualTo(Examples.scenario());
    }

    @Test
    void linesMayEndInAnyWay() throws DocumentException {
        String text = Examples.text("scenario.json");
        assertThat(Documents.readScenario("week.json", Examples.bytes(text.replace("\n", "\r\n"))))
                .isEqualTo(Examples.scenario());
        assertThat(Documents.readScenario("week.json", Examples.bytes(text.replace("\n", "\r"))))
                .isEqualTo(Examples.scenario());
    }
}
