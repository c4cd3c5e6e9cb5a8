package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/** Who leads what: ash leads technique alone and is taken first, birch leads anything. */
class LeadsTest {
    private static final int ASH = 0;
    private static final int BIRCH = 1;

    private final Problem problem = ProblemBuilder.of(squad().staff("ash", "technique")
            .staff("birch", "*")
            .aim("technique", 0, 3, 3)
            .mainMinutes(50)
            .aim("mobility", 0, 1, 1)
            .mainMinutes(120)
            .scenario());

    private Stimulus at(int session, String time) {
        Session of = problem.sessions.get(session);
        int start = problem.calendar.minute(LocalDateTime.parse("2027-03-03T" + time));
        return Arrays.stream(of.options)
                .filter(option -> option.start == start)
                .findFirst()
                .orElseThrow();
    }

    private int[] led(Stimulus... placed) {
        Leads leads = Leads.of(problem, placed);
        return IntStream.range(0, placed.length).map(leads::lead).toArray();
    }

    @Test
    void somebody_leads_one_session_at_a_time() {
        assertThat(led(at(0, "10:00"), at(1, "10:00"), at(2, "10:00"))).containsExactly(ASH, BIRCH, Leads.NOBODY);
    }

    @Test
    void who_has_just_finished_is_free_for_the_next() {
        assertThat(at(0, "10:00").end).isEqualTo(at(1, "11:00").start);

        assertThat(led(at(0, "10:00"), at(1, "11:00"))).containsExactly(ASH, ASH);
        assertThat(led(at(0, "10:00"), at(1, "11:00"), at(3, "17:00")))
                .as("two hours of mobility in the evening are birch's")
                .containsExactly(ASH, ASH, BIRCH);
    }

    @Test
    void who_is_held_to_a_session_is_free_until_it_starts() {
        assertThat(led(at(0, "10:00"), at(1, "11:00").with(ASH, -1))).containsExactly(ASH, ASH);
        assertThat(led(at(0, "10:00"), at(1, "10:00").with(ASH, -1))).containsExactly(BIRCH, ASH);
    }
}
