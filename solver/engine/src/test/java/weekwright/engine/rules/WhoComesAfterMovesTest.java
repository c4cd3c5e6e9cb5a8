package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.testing.Squad;

/** Who comes to what while sessions move, go and are taken back. */
class WhoComesAfterMovesTest {
    /** Ash misses the squad's lesson while the sprinters, whose own she is, train at the same time. */
    @Test
    void whoever_sat_out_comes_again_when_the_move_is_taken_back() {
        Problem problem = ProblemBuilder.of(squad().athlete("ash", "sprinters", Squad.ID)
                .aim("technique", 0, 1, 1)
                .group("sprinters")
                .aim("mobility", 0, 2, 2)
                .scenario());
        Session lesson = problem.sessions.get(0);
        Judge judge = new Judge(problem);
        judge.move(lesson, starting(lesson, "2027-03-03T10:00", problem));
        judge.settle();
        judge.keep();
        assertThat(told(judge)).doesNotContain("sits-out");

        Session own = problem.sessions.get(1);
        judge.move(own, starting(own, "2027-03-03T10:00", problem));
        judge.settle();
        assertThat(told(judge)).contains("sits-out");
        judge.revert();
        assertThat(told(judge)).doesNotContain("sits-out");
        assertThat(judge.attended(lesson)).isSameAs(judge.at(lesson));
        assertThat(judge.partsLookedAt()).isEmpty();
        assertThat(judge.sessionsLookedAt()).isEmpty();

        judge.move(own, starting(own, "2027-03-03T10:00", problem));
        judge.settle();
        judge.keep();
        Session other = problem.sessions.get(2);
        judge.move(other, starting(other, "2027-03-05T10:00", problem));
        judge.settle();
        judge.revert();
        assertThat(told(judge)).as("what was kept stays").contains("sits-out");
    }

    private static Set<String> told(Judge judge) {
        Set<String> rules = new TreeSet<>();
        judge.explain((rule, view, breach, heads) -> rules.add(rule.id()));
        return rules;
    }

    /**
     * Ash belongs to three squads, in this order. Monday's heavy work of the second keeps ash from Wednesday's of the third;
     * while the first trains on Monday at the same time, ash misses the second's and comes to the third's. What happens on
     * the second Friday has it decided anew who comes on Wednesday, but not who came on Monday.
     */
    @Test
    void who_came_is_known_as_it_was_kept_when_later_sessions_are_decided_anew() {
        Problem problem = ProblemBuilder.of(squad().days(14)
                .number("pathway-gap-floor", "hours", Map.of("knee-dominant", 60))
                .athlete("ash", Squad.ID, "second", "third")
                .aim("mobility", 0, 1, 1)
                .group("second")
                .aim("heavy-lower-knee", 0, 1, 1)
                .aim("technique", 0, 1, 1)
                .group("third")
                .aim("heavy-lower-knee", 0, 1, 1)
                .scenario());
        Judge judge = new Judge(problem);
        Session first = session(problem, Squad.ID, "mobility", 0);
        Session second = session(problem, "second", "heavy-lower-knee", 0);
        Session third = session(problem, "third", "heavy-lower-knee", 0);
        Session later = session(problem, "second", "technique", 1);
        place(judge, problem, second, "2027-03-01T10:00");
        place(judge, problem, third, "2027-03-03T10:00");
        judge.keep();
        assertThat(sittingOut(judge, third)).isEqualTo(1);

        place(judge, problem, first, "2027-03-01T10:00");
        assertThat(sittingOut(judge, second)).isEqualTo(1);
        assertThat(sittingOut(judge, third)).isZero();
        judge.revert();
        place(judge, problem, later, "2027-03-12T10:00");
        assertThat(sittingOut(judge, third)).as("Monday was taken back").isEqualTo(1);
        judge.revert();

        place(judge, problem, first, "2027-03-01T10:00");
        judge.keep();
        place(judge, problem, session(problem, Squad.ID, "mobility", 1), "2027-03-14T10:00");
        judge.revert();
        place(judge, problem, later, "2027-03-12T10:00");
        assertThat(sittingOut(judge, third)).as("Monday was kept").isZero();
    }

    private static Squad threeSquads() {
        return squad().days(14).athlete("ash", Squad.ID, "second", "third");
    }

    @Test
    void whoever_was_kept_away_late_in_the_plan_comes_when_nothing_keeps_them() {
        Problem problem = ProblemBuilder.of(threeSquads()
                .aim("mobility", 0, 1, 1)
                .group("second")
                .aim("technique", 0, 1, 1)
                .group("third")
                .aim("technique", 0, 1, 1)
                .scenario());
        Judge judge = new Judge(problem);
        Session first = session(problem, Squad.ID, "mobility", 1);
        Session second = session(problem, "second", "technique", 1);
        place(judge, problem, second, "2027-03-13T10:00");
        assertThat(sittingOut(judge, second)).isZero();
        place(judge, problem, first, "2027-03-13T10:00");
        assertThat(sittingOut(judge, second)).isEqualTo(1);
        judge.move(first, null);
        judge.settle();
        assertThat(sittingOut(judge, second)).isZero();
    }

    /** Maximal sprinting of ash's own squad on Thursday leaves too few hours after Wednesday's of the guests. */
    @Test
    void what_comes_first_for_somebody_keeps_them_from_what_is_earlier() {
        Problem problem = ProblemBuilder.of(threeSquads()
                .aim("max-velocity", 0, 1, 1)
                .group("second")
                .aim("max-velocity", 0, 1, 1)
                .group("third")
                .scenario());
        Judge judge = new Judge(problem);
        Session second = session(problem, "second", "max-velocity", 0);
        place(judge, problem, second, "2027-03-03T10:00");
        assertThat(sittingOut(judge, second)).isZero();
        place(judge, problem, session(problem, Squad.ID, "max-velocity", 0), "2027-03-04T10:00");
        assertThat(sittingOut(judge, second)).isEqualTo(1);
    }

    /**
     * Sunday's work of the second squad keeps ash from the third's on the Saturday after, a week between them being asked.
     * A high day of the first on Monday is all that ash may have: ash misses Sunday's and comes on Saturday, twelve days on.
     */
    @Test
    void who_no_longer_comes_is_free_for_what_lies_far_from_what_has_moved() {
        Problem problem = ProblemBuilder.of(threeSquads()
                .number("pathway-gap-floor", "hours", Map.of("knee-dominant", 168))
                .highDays(0, 1, 1)
                .aim("acceleration", 0, 1, 1)
                .group("second")
                .aim("heavy-lower-knee", 0, 1, 1)
                .group("third")
                .aim("heavy-lower-knee", 0, 1, 1)
                .scenario());
        Judge judge = new Judge(problem);
        Session sunday = session(problem, "second", "heavy-lower-knee", 0);
        Session saturday = session(problem, "third", "heavy-lower-knee", 1);
        place(judge, problem, sunday, "2027-03-07T10:00");
        place(judge, problem, saturday, "2027-03-13T10:00");
        assertThat(sittingOut(judge, saturday)).isEqualTo(1);
        place(judge, problem, session(problem, Squad.ID, "acceleration", 0), "2027-03-01T10:00");
        assertThat(sittingOut(judge, sunday)).isEqualTo(1);
        assertThat(sittingOut(judge, saturday)).isZero();
    }

    private static Session session(Problem problem, String group, String family, int week) {
        return problem.sessions.stream()
                .filter(one -> one.group.group.id().equals(group) && one.week == week)
                .filter(one -> one.family.family.id().equals(family))
                .findFirst()
                .orElseThrow();
    }

    private static void place(Judge judge, Problem problem, Session session, String at) {
        judge.move(session, starting(session, at, problem));
        judge.settle();
    }

    private static int sittingOut(Judge judge, Session session) {
        return judge.at(session).cohorts.length - judge.attended(session).cohorts.length;
    }

    private static Stimulus starting(Session session, String at, Problem problem) {
        int start = problem.calendar.minute(LocalDateTime.parse(at));
        return Arrays.stream(session.options)
                .filter(option -> option.start == start)
                .findFirst()
                .orElseThrow();
    }
}
