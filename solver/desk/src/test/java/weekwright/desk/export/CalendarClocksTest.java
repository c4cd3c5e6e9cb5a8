package weekwright.desk.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.desk.export.OtherReader.Event;
import weekwright.engine.explain.Judged;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/**
 * Through both nights in which the clocks change: half an hour in Lord Howe, and going forward in October in Hobart. The dates
 * are those of the IANA time zone database.
 */
class CalendarClocksTest {
    private static final Instant NOW = Instant.parse("2027-01-01T00:00:00Z");

    @ParameterizedTest
    @CsvSource({
        "Europe/Dublin, 2027-03-28",
        "Europe/Dublin, 2027-10-31",
        "America/Chicago, 2027-03-14",
        "America/Chicago, 2027-11-07",
        "Australia/Hobart, 2027-04-04",
        "Australia/Hobart, 2027-10-03",
        "Australia/Lord_Howe, 2027-04-04",
        "Australia/Lord_Howe, 2027-10-03"
    })
    void each_quarter_of_the_night_is_read_back_as_it_was(String zone, LocalDate change) {
        Scenario scenario = night(zone, change);
        Judged nothing = Plans.judged(scenario);
        String text = Calendars.of(scenario, nothing, Whose.of(scenario, null, null), NOW, null)
                .text();
        List<Instant> meant = scenario.commitments().stream()
                .map(one -> one.start().instant(scenario.zone()))
                .toList();

        assertThat(OtherReader.of(text).validation().getEntries()).isEmpty();
        assertThat(OtherReader.of(text).events()).extracting(Event::start).containsExactlyElementsOf(meant);
        // Under a name that no machine knows, only the rules that the calendar brings can tell.
        assertThat(OtherReader.of(text.replace(zone, "Nowhere/Else")).events())
                .extracting(Event::start)
                .containsExactlyElementsOf(meant);
        assertThat(Calendars.of(
                                scenario,
                                nothing,
                                Whose.of(scenario, null, null),
                                NOW.plusSeconds(3600),
                                new Calendars.Before("night.ics", text))
                        .text())
                .isEqualTo(text);
    }

    /** Something every 30 minutes from the noon before the change to the noon after it. */
    private static Scenario night(String zone, LocalDate change) {
        var id = java.time.ZoneId.of(zone);
        Instant noon = change.minusDays(1).atTime(12, 0).atZone(id).toInstant();
        List<String> commitments = new ArrayList<>();
        for (int i = 0; i < 48; i++) {
            Moment start = Moment.at(noon.plusSeconds(1800L * i), id);
            commitments.add(
                    "{ \"id\": \"c" + i + "\", \"groups\": [\"g\"], \"start\": \"" + start + "\", \"minutes\": 20 }");
        }
        return Plans.scenario("{ \"weekwright\": 1, \"id\": \"night\", \"zone\": \"" + zone + "\", \"firstDay\": \""
                + change.minusDays(3) + "\", \"days\": 7, \"groups\": [ { \"id\": \"g\", \"label\": \"Group\" } ],"
                + " \"commitments\": " + commitments + " }");
    }
}
