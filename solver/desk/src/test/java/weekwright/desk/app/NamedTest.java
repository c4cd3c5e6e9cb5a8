package weekwright.desk.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** What a coach has named in a scenario is found by its id, or by what it is called there. */
class NamedTest {
    private final Scenario week = Scenarios.read("one-match");

    @Test
    void an_id_and_a_name_find_the_same() {
        assertThat(Named.athlete(week, "a05")).isSameAs(Named.athlete(week, "m. pellor"));
        assertThat(Named.facility(week, "gym")).isSameAs(Named.facility(week, "Weights room"));
        assertThat(Named.fixture(week, "round-21")).isSameAs(Named.fixture(week, "League round 21, home"));
        assertThat(Named.group(week, "first-squad")).isSameAs(Named.group(week, "First squad"));
    }

    @Test
    void what_may_be_an_id_of_earlier_days_stays_what_was_said() {
        assertThat(Named.athletes(week).idOf("M. Pellor")).isEqualTo("a05");
        assertThat(Named.athletes(week).idOf("a05")).isEqualTo("a05");
        assertThat(Named.athletes(week).idOf("a99")).isEqualTo("a99");
        assertThat(Named.facilities(week).idOf("weights room")).isEqualTo("gym");
        assertThat(Named.staff(week).idOf("H. Wrenlow, speed")).isEqualTo("c1");
    }

    @Test
    void a_name_that_two_have_is_not_guessed_at() {
        Athlete first = week.athletes().get(0);
        Athlete second = new Athlete(
                "b01", first.name(), first.groups(), null, null, List.of(), List.of(), List.of(), List.of());
        Scenario twins = week.withAthletes(List.of(first, second));

        assertThat(Named.athlete(twins, "b01")).isSameAs(second);
        assertThatThrownBy(() -> Named.athlete(twins, first.name()))
                .hasMessage(
                        "more than one athlete is called \"R. Tarrow\": give the id, one of a01 (R. Tarrow), b01 (R. Tarrow)");
    }

    @Test
    void what_nobody_is_called_is_said_with_what_was_probably_meant() {
        assertThatThrownBy(() -> Named.group(week, "first-sqaud"))
                .hasMessage("no group is called \"first-sqaud\": did you mean first-squad?");
        assertThatThrownBy(() -> Named.athlete(week, "Pelor"))
                .hasMessage("no athlete is called \"Pelor\": did you mean M. Pellor?");
        assertThatThrownBy(() -> Named.group(week, "x"))
                .hasMessage("no group is called \"x\": known are first-squad (First squad)");
        assertThatThrownBy(() -> Named.athlete(week.withAthletes(List.of()), "x"))
                .hasMessage("no athlete is called \"x\": there is none");
    }
}
