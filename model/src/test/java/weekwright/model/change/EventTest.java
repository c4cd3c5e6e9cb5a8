package weekwright.model.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Scenario;

/** What happens to a scenario: what is meant changes, all else stays, and what comes out is a scenario like any other. */
class EventTest {
    private static final LocalDate WEDNESDAY = LocalDate.parse("2027-03-03");

    private static final String TWO_GROUPS = """
            { "weekwright": 1, "id": "two-groups", "zone": "Europe/Dublin", "firstDay": "2027-03-01", "days": 7,
              "groups": [ { "id": "first", "headcount": 12 }, { "id": "second" } ],
              "athletes": [ { "id": "a1", "groups": ["first"] }, { "id": "a2", "groups": ["first", "second"] },
                            { "id": "a3", "groups": ["second"] } ],
              "fixtures": [ { "id": "cup", "groups": ["first"], "start": "2027-03-06T15:00", "minutes": 110,
                              "expected": [ { "athlete": "a1", "minutes": 45 }, { "athlete": "a2", "minutes": 0 } ],
                              "played": [ { "athlete": "a1", "minutes": 50 } ] } ],
              "commitments": [
                { "id": "together", "groups": ["first", "second"], "start": "2027-03-03T10:00", "minutes": 60 },
                { "id": "alone", "groups": ["first"], "start": "2027-03-03T12:00", "minutes": 60 },
                { "id": "later", "groups": ["first"], "start": "2027-03-04T12:00", "minutes": 60 },
                { "id": "shift", "athletes": ["a1"], "start": "2027-03-03T14:00", "minutes": 60 },
                { "id": "shifts", "athletes": ["a1", "a3"], "start": "2027-03-03T16:00", "minutes": 60 } ],
              "facilities": [ { "id": "gym", "offers": ["gym"] }, { "id": "turf", "offers": ["field"] } ],
              "history": [ { "group": "first", "family": "tempo-run", "start": "2027-02-24T10:00", "minutes": 40,
                             "except": ["a1", "a2"], "people": [ { "athlete": "a1", "rpe": 7 } ] } ] }
            """;

    private final Scenario scenario = read(TWO_GROUPS);

    private static Scenario read(String json) {
        try {
            return Documents.readScenario("two-groups.json", json.getBytes(StandardCharsets.UTF_8));
        } catch (DocumentException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** What comes out can be written and read again. */
    private Scenario after(Event event) {
        Scenario changed = event.after(scenario);
        assertThat(read(Documents.write(changed))).isEqualTo(changed);
        return changed;
    }

    private static List<String> commitments(Scenario of) {
        return of.commitments().stream().map(Commitment::id).toList();
    }

    @Test
    void a_fixture_moves_and_nothing_else() {
        Scenario changed = after(new FixtureMoved("cup", Moment.parse("2027-03-07T14:00")));
        assertThat(changed.fixtures().get(0).start()).hasToString("2027-03-07T14:00");
        assertThat(after(new FixtureMoved("cup", Moment.parse("2027-03-06T15:00"))))
                .isEqualTo(scenario);
        assertThat(new FixtureMoved("cup", Moment.parse("2027-03-06T15:00")).after(changed))
                .isEqualTo(scenario);
    }

    @Test
    void a_place_is_shut_from_midnight_to_midnight() {
        Scenario changed = after(new FacilityClosed("gym", WEDNESDAY));
        assertThat(changed.facilities().get(0).closed())
                .containsExactly(new Away(Moment.parse("2027-03-03T00:00"), Moment.parse("2027-03-04T00:00"), null));
        assertThat(changed.facilities().get(1)).isEqualTo(scenario.facilities().get(1));
    }

    /** Source: tz database, Africa/Cairo, clocks forward at midnight on the last Friday of April 2027 (from memory). */
    @Test
    void a_day_that_begins_late_is_shut_from_its_first_moment() {
        Scenario cairo = read(TWO_GROUPS
                .replace("Europe/Dublin", "Africa/Cairo")
                .replace("2027-03-0", "2027-05-0")
                .replace("2027-02-24", "2027-04-24")
                .replace("\"firstDay\": \"2027-05-01\"", "\"firstDay\": \"2027-04-30\""));
        Scenario changed = new FacilityClosed("gym", LocalDate.parse("2027-04-30")).after(cairo);
        assertThat(changed.facilities().get(0).closed().get(0).from()).hasToString("2027-04-30T01:00");
        assertThat(read(Documents.write(changed))).isEqualTo(changed);
    }

    @Test
    void a_day_lost_by_all_takes_what_groups_had_fixed_on_it() {
        DayLost lost = new DayLost(WEDNESDAY, null);
        Scenario changed = after(lost);
        assertThat(changed.groups())
                .allSatisfy(group -> assertThat(group.away()).hasSize(1));
        assertThat(commitments(changed)).containsExactly("later", "shift", "shifts");
        assertThat(lost.fallingAway(scenario)).extracting(Commitment::id).containsExactly("together", "alone");
        assertThat(changed.fixtures()).isEqualTo(scenario.fixtures());
    }

    @Test
    void a_day_lost_by_one_group_leaves_the_others_theirs() {
        Scenario changed = after(new DayLost(WEDNESDAY, "first"));
        assertThat(commitments(changed)).containsExactly("together", "later", "shift", "shifts");
        assertThat(changed.commitments().get(0).groups()).containsExactly("second");
        assertThat(changed.groups().get(1)).isEqualTo(scenario.groups().get(1));
    }

    @Test
    void an_athlete_is_lost_wherever_one_is_named() {
        Scenario changed = after(new AthleteLost("a1"));
        assertThat(changed.athletes()).extracting(Athlete::id).containsExactly("a2", "a3");
        assertThat(changed.groups().get(0).headcount()).isEqualTo(11);
        assertThat(changed.fixtures().get(0).expected()).containsExactly(new Appearance("a2", 0));
        assertThat(changed.fixtures().get(0).played()).isEmpty();
        assertThat(commitments(changed)).containsExactly("together", "alone", "later", "shifts");
        assertThat(changed.commitments().get(3).athletes()).containsExactly("a3");
        assertThat(changed.history().get(0).except()).containsExactly("a2");
        assertThat(changed.history().get(0).people())
                .extracting(PersonEntry::athlete)
                .isEmpty();
        assertThat(Documents.write(changed)).doesNotContain("\"a1\"");
    }

    @Test
    void the_last_one_of_a_group_cannot_be_lost() {
        Scenario two = new AthleteLost("a2").after(scenario);
        assertThat(two.groups().get(1).headcount()).isNull();
        assertThatThrownBy(() -> new AthleteLost("a3").after(two))
                .hasMessage("nobody else is in the group \"second\": it cannot train without \"a3\"");
    }

    @Test
    void what_is_not_there_is_refused() {
        assertThatThrownBy(() -> new FixtureMoved("cop", Moment.parse("2027-03-07T14:00")).after(scenario))
                .hasMessage("no fixture is called \"cop\"");
        assertThatThrownBy(() -> new FacilityClosed("pool", WEDNESDAY).after(scenario))
                .hasMessage("no facility is called \"pool\"");
        assertThatThrownBy(() -> new DayLost(WEDNESDAY, "third").after(scenario))
                .hasMessage("no group is called \"third\"");
        assertThatThrownBy(() -> new AthleteLost("a9").after(scenario)).hasMessage("no athlete is called \"a9\"");
    }
}
