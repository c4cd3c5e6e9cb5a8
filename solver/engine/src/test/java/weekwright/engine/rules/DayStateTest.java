package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDateTime;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.testing.Squad;
import weekwright.model.catalogue.DayClass;

/** A Wednesday on which a session lies from 10:00 to 10:40, beside what is fixed. */
class DayStateTest {
    private static DayState wednesday(Squad squad) {
        return wednesday(squad, "tempo-run");
    }

    private static DayState wednesday(Squad squad, String family) {
        Problem problem = ProblemBuilder.of(squad.aim(family, 0, 1, 1).scenario());
        Session session = problem.sessions.get(0);
        int ten = problem.calendar.minute(LocalDateTime.parse("2027-03-03T10:00"));
        Stimulus at = Arrays.stream(session.options)
                .filter(option -> option.start == ten)
                .findFirst()
                .orElseThrow();
        Judge judge = new Judge(problem);
        judge.move(session, at);
        judge.settle();
        return judge.day(0, 2);
    }

    private static Squad practice(String at, int minutes) {
        return squad().practice("practice", "2027-03-03T" + at).lasting(minutes);
    }

    @Test
    void a_day_of_recovery_alone_is_free() {
        assertThat(wednesday(squad(), "mobility").dayClass()).isEqualTo(DayClass.FREE);
        assertThat(wednesday(squad(), "tempo-run").dayClass()).isEqualTo(DayClass.LOW);
    }

    /** The largest of the catalogue's three figures (expert proposal): 1, and 9 of nerves. */
    @Test
    void its_demand_is_that_of_its_one_session() {
        assertThat(wednesday(squad(), "mobility").demand()).isEqualTo(1);
        assertThat(wednesday(squad(), "max-velocity").demand()).isEqualTo(9);
    }

    /** A night too short is the coach's to mend where the first thing of the morning is placed, or the last of the evening. */
    @Test
    void the_morning_is_ours_where_what_we_placed_begins_it() {
        assertThat(wednesday(squad()).firstPlaced).isTrue();
        assertThat(wednesday(practice("10:00", 20)).firstPlaced)
                .as("both at ten")
                .isTrue();
        assertThat(wednesday(practice("10:00", 85)).firstPlaced)
                .as("both at ten")
                .isTrue();
        assertThat(wednesday(practice("09:00", 20)).firstPlaced).isFalse();
        assertThat(wednesday(practice("11:00", 20)).firstPlaced).isTrue();
    }

    @Test
    void a_journey_that_begins_before_it_begins_the_day() {
        Squad away = squad().fixture("cup-tie", "2027-03-03T15:00").travelling(400, 60);
        assertThat(wednesday(away).firstPlaced).isFalse();
    }

    @Test
    void the_evening_is_ours_where_what_we_placed_ends_it() {
        assertThat(wednesday(squad()).lastPlaced).isTrue();
        assertThat(wednesday(practice("09:40", 60)).lastPlaced)
                .as("both until 10:40")
                .isTrue();
        assertThat(wednesday(practice("10:20", 20)).lastPlaced)
                .as("both until 10:40")
                .isTrue();
        assertThat(wednesday(practice("10:20", 60)).lastPlaced).isFalse();
        assertThat(wednesday(practice("09:00", 120)).lastPlaced).isFalse();
        assertThat(wednesday(practice("09:00", 20)).lastPlaced).isTrue();
    }
}
