package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Scopes.Kind;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Share;

/** A move looks again at the parts of the plan that it may concern, and at no others: that is what keeps it quick. */
class LookedAgainTest {
    /** From Monday 1 March: Saturday's cup tie, and a final on the second Saturday with a taper of three days. */
    private static Squad twoWeeks() {
        return squad().days(14)
                .staff("alder", "*")
                .fixture("cup-tie", "2027-03-06T15:00")
                .fixture("final", "2027-03-13T15:00")
                .tapering(3)
                .aim("heavy-lower-knee", 0, 1, 1)
                .doses(Dose.FULL, Dose.MICRO)
                .aim("mobility", 0, 2, 2);
    }

    private final Problem problem = ProblemBuilder.of(twoWeeks().scenario());

    /** Runs are numbered by their first day, five days before the plan being number 0. */
    @Test
    void hard_work_on_wednesday_concerns_its_day_both_nights_runs_week_and_links() {
        assertThat(looked(problem, "heavy-lower-knee", "2027-03-03T10:00"))
                .containsExactlyInAnyOrder(
                        "DAY 0/2",
                        "NIGHT 0/2",
                        "NIGHT 0/3",
                        "RUN 0/2",
                        "RUN 0/3",
                        "RUN 0/4",
                        "RUN 0/5",
                        "RUN 0/6",
                        "RUN 0/7",
                        "STRETCH 0/2",
                        "STRETCH 0/3",
                        "STRETCH 0/4",
                        "STRETCH 0/5",
                        "STRETCH 0/6",
                        "STRETCH 0/7",
                        "STRETCH 0/8",
                        "WEEK 0/0",
                        "AIM 0/0",
                        "LINK 0/2",
                        "LINK 0/13",
                        "FIXTURE 0/0",
                        "TAPER 0/0",
                        "STAFF 0/2",
                        "LIFT 0/0");
    }

    @Test
    void low_work_concerns_no_run_of_hard_days_no_week_no_link_and_no_lift() {
        assertThat(looked(problem, "mobility", "2027-03-03T10:00"))
                .containsExactlyInAnyOrder(
                        "DAY 0/2",
                        "NIGHT 0/2",
                        "NIGHT 0/3",
                        "AIM 1/0",
                        "FIXTURE 0/0",
                        "TAPER 0/0",
                        "STAFF 0/2",
                        "LEADS 1/0");
    }

    @Test
    void hard_work_on_the_last_day_concerns_nothing_beyond_the_plan() {
        assertThat(looked(problem, "heavy-lower-knee", "2027-03-14T10:00"))
                .containsExactlyInAnyOrder(
                        "DAY 0/13",
                        "NIGHT 0/13",
                        "NIGHT 0/14",
                        "RUN 0/13",
                        "RUN 0/14",
                        "RUN 0/15",
                        "RUN 0/16",
                        "RUN 0/17",
                        "RUN 0/18",
                        "STRETCH 0/13",
                        "WEEK 0/1",
                        "AIM 0/1",
                        "LINK 0/13",
                        "FIXTURE 1/0",
                        "STAFF 0/13",
                        "LIFT 0/0");
    }

    /** Three days before it the work must begin to fall; on the second day after it the legs may still be tired. */
    @ParameterizedTest
    @CsvSource({
        "2027-03-02T10:00, ",
        "2027-03-03T10:00, FIXTURE 0/0",
        "2027-03-06T10:00, FIXTURE 0/0",
        "2027-03-08T10:00, FIXTURE 0/0",
        "2027-03-09T10:00, ",
        "2027-03-10T10:00, FIXTURE 1/0"
    })
    void a_fixture_is_concerned_from_three_days_before_it_to_two_after(String at, String fixture) {
        assertThat(looked(problem, "mobility", at).stream().filter(part -> part.startsWith("FIXTURE")))
                .isEqualTo(fixture == null ? List.of() : List.of(fixture));
    }

    /** The final's taper of three days is measured against the week before: from the second Wednesday to Friday. */
    @ParameterizedTest
    @CsvSource({
        "2027-03-02T10:00, false",
        "2027-03-03T10:00, true",
        "2027-03-12T10:00, true",
        "2027-03-13T10:00, false",
        "2027-03-14T10:00, false"
    })
    void a_taper_is_concerned_by_its_days_and_the_weeks_before(String at, boolean concerned) {
        Problem oneWeek =
                ProblemBuilder.of(twoWeeks().number("taper", "weeks", 1).scenario());

        assertThat(looked(oneWeek, "mobility", at).contains("TAPER 0/0")).isEqualTo(concerned);
    }

    /** Who did not play on Saturday may train then, or on Sunday. */
    @ParameterizedTest
    @CsvSource({"2027-03-05T10:00, false", "2027-03-06T18:00, true", "2027-03-07T10:00, true", "2027-03-08T10:00, false"
    })
    void a_top_up_is_concerned_on_the_day_of_the_fixture_and_the_next(String at, boolean concerned) {
        Problem bench = ProblemBuilder.of(squad().days(14)
                .fixture("cup-tie", "2027-03-06T15:00")
                .aim("mobility", 0, 1, 1)
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .scenario());

        assertThat(looked(bench, "top-up-run", at).contains("TOP_UP 0/0")).isEqualTo(concerned);
        assertThat(looked(bench, "mobility", at)).doesNotContain("TOP_UP 0/0");
    }

    @Test
    void a_top_up_that_goes_elsewhere_is_looked_for_where_it_was() {
        Problem bench = ProblemBuilder.of(squad().fixture("cup-tie", "2027-03-06T15:00")
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .scenario());
        Moves moves = new Moves(bench);

        assertThat(moves.looked(0, "2027-03-06T18:00")).contains("TOP_UP 0/0");
        assertThat(moves.looked(0, "2027-03-04T18:00")).contains("TOP_UP 0/0");
        assertThat(moves.looked(0, null)).contains("AIM 0/0").doesNotContain("TOP_UP 0/0");
    }

    /** Played on the Sunday before the plan: the top-up is wanted by Monday. After a Sunday's it is the next plan's. */
    @Test
    void a_top_up_is_wanted_in_the_plan_where_its_last_day_lies_in_it() {
        Squad bench = squad().aim("top-up-run", 0, 1, 1).whom(Share.NOT_PLAYED);
        Problem before =
                ProblemBuilder.of(bench.done("fixture", "2027-02-28T15:00").scenario());
        Problem atEnd = ProblemBuilder.of(squad().fixture("cup-tie", "2027-03-07T15:00")
                .aim("top-up-run", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .scenario());

        assertThat(looked(before, "top-up-run", "2027-03-01T10:00")).contains("TOP_UP 0/0");
        assertThat(looked(before, "top-up-run", "2027-03-02T10:00")).doesNotContain("TOP_UP 0/0");
        assertThat(looked(atEnd, "top-up-run", "2027-03-07T18:00"))
                .contains("AIM 0/0")
                .noneMatch(part -> part.startsWith("TOP_UP"));
    }

    @Test
    void a_fixture_of_two_squads_is_looked_at_for_those_whose_day_has_changed() {
        Problem both = ProblemBuilder.of(squad().fixture("cup-tie", "2027-03-06T15:00")
                .of(Squad.ID, "sprinters")
                .tapering(3)
                .aim("mobility", 0, 1, 1)
                .group("sprinters")
                .aim("tempo-run", 0, 1, 1)
                .scenario());

        assertThat(looked(both, "mobility", "2027-03-04T10:00"))
                .contains("FIXTURE 0/0", "TAPER 0/0")
                .doesNotContain("FIXTURE 1/0", "TAPER 1/0");
        assertThat(looked(both, "tempo-run", "2027-03-04T10:00"))
                .contains("FIXTURE 1/0", "TAPER 1/0")
                .doesNotContain("FIXTURE 0/0", "TAPER 0/0");
    }

    @Test
    void a_fixture_of_others_is_not_looked_at() {
        Problem two = ProblemBuilder.of(squad().fixture("cup-tie", "2027-03-06T15:00")
                .group("sprinters")
                .aim("tempo-run", 0, 1, 1)
                .scenario());

        assertThat(looked(two, "tempo-run", "2027-03-05T10:00"))
                .contains("DAY 1/4")
                .noneMatch(part -> part.startsWith("FIXTURE"));
    }

    /** Hours from quality to quality are asked of a group by its own aims. */
    @Test
    void the_line_of_a_quality_is_kept_where_all_train_it_and_that_of_maximal_speed_where_anybody_does() {
        Problem two = ProblemBuilder.of(squad().athlete("ash", Squad.ID, "sprinters")
                .done("fixture", "2027-02-28T15:00")
                .without("ash")
                .aim("max-velocity", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .aim("heavy-upper-push", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .group("sprinters")
                .aim("heavy-upper-pull", 0, 1, 1)
                .aim("heavy-lower-knee", 0, 1, 1)
                .scenario());

        assertThat(linked(two, "max-velocity")).containsExactly("LINK 0/2", "LINK 0/6");
        assertThat(linked(two, "heavy-upper-push")).isEmpty();
        assertThat(linked(two, "heavy-lower-knee")).hasSize(2).doesNotContainAnyElementsOf(linked(two, "max-velocity"));
    }

    private static List<String> linked(Problem problem, String family) {
        return looked(problem, family, "2027-03-03T10:00").stream()
                .filter(part -> part.startsWith("LINK"))
                .toList();
    }

    @Test
    void another_room_at_the_same_time_concerns_the_two_rooms_and_who_leads() {
        Problem rooms = ProblemBuilder.of(twoWeeks()
                .facility("garage", FacilityKind.GYM)
                .room("weights-room", 1, null)
                .room("garage", null, 10)
                .scenario());
        Session heavy = session(rooms, "heavy-lower-knee", 0);
        List<Stimulus> there = Arrays.stream(heavy.options)
                .filter(option -> option.start == minute(rooms, "2027-03-03T10:00"))
                .toList();
        Judge judge = new Judge(rooms);
        judge.move(heavy, there.get(0));
        looked(rooms, judge);

        judge.move(heavy, there.get(0));
        assertThat(looked(rooms, judge)).as("it stays").isEmpty();
        Stimulus elsewhere = there.stream()
                .filter(other -> other.facility != there.get(0).facility && other.dose == there.get(0).dose)
                .findFirst()
                .orElseThrow();
        judge.move(heavy, elsewhere);
        assertThat(looked(rooms, judge)).containsExactlyInAnyOrder("STAFF 0/2", "BOOKINGS 0/2", "BOOKINGS 2/2");
        Stimulus shorter = there.stream()
                .filter(other -> other.facility == elsewhere.facility && other.dose != elsewhere.dose)
                .findFirst()
                .orElseThrow();
        judge.move(heavy, shorter);
        assertThat(looked(rooms, judge)).contains("AIM 0/0", "LIFT 0/0", "DAY 0/2");
    }

    @Test
    void another_lift_concerns_the_line_and_another_lead_does_not() {
        Session heavy = session(problem, "heavy-lower-knee", 0);
        Stimulus at = option(problem, heavy, "2027-03-03T10:00");
        Judge judge = new Judge(problem);
        judge.move(heavy, at);
        looked(problem, judge);

        judge.move(heavy, at.with(0, -1));
        assertThat(looked(problem, judge)).containsExactly("STAFF 0/2");
        judge.move(heavy, at.with(-1, 1));
        assertThat(looked(problem, judge)).containsExactlyInAnyOrder("STAFF 0/2", "LIFT 0/0");
    }

    @Test
    void novices_keep_to_one_lift_so_that_no_line_is_looked_at() {
        Problem novices = ProblemBuilder.of(twoWeeks().level(Level.NOVICE).scenario());

        assertThat(looked(novices, "heavy-lower-knee", "2027-03-03T10:00"))
                .contains("AIM 0/0")
                .doesNotContain("LIFT 0/0");
    }

    @Test
    void where_nobody_is_named_to_lead_nobody_is_looked_for() {
        Problem alone = ProblemBuilder.of(squad().aim("mobility", 0, 2, 2).scenario());

        assertThat(looked(alone, "mobility", "2027-03-03T10:00"))
                .containsExactlyInAnyOrder("DAY 0/2", "NIGHT 0/2", "NIGHT 0/3", "AIM 0/0");
    }

    /** Ash leads little and is taken first; where ash is elsewhere birch leads, and the lessons of the week have two leads. */
    @Test
    void who_leads_the_lessons_of_a_week_is_looked_at_again_where_a_move_changes_it() {
        Moves moves = new Moves(ProblemBuilder.of(squad().staff("ash", "technique", "mobility")
                .staff("birch", "*")
                .aim("technique", 0, 2, 2)
                .aim("mobility", 0, 1, 1)
                .mainMinutes(90)
                .scenario()));
        moves.looked(0, "2027-03-02T11:00");
        moves.looked(1, "2027-03-03T11:00");

        assertThat(moves.looked(2, "2027-03-03T17:00")).as("ash leads all").doesNotContain("LEADS 0/0");
        assertThat(moves.looked(2, "2027-03-03T10:00")).as("until after eleven").contains("LEADS 0/0");
        assertThat(moves.looked(2, "2027-03-04T10:00")).as("ash is free again").contains("LEADS 0/0");
        assertThat(moves.looked(2, "2027-03-03T08:00")).as("over before eleven").doesNotContain("LEADS 0/0");
        assertThat(moves.looked(2, null)).doesNotContain("LEADS 0/0");
    }

    /** Sessions of 80 minutes and more that begin at 23:00 end on the next date. */
    private static Problem nights() {
        return ProblemBuilder.of(squad().days(5)
                .window("22:00", "24:00")
                .window("00:00", "02:00")
                .room("weights-room", 1, null)
                .staff("alder", "*")
                .aim("upper-strength", 0, 4, 4)
                .mainMinutes(80)
                .scenario());
    }

    private static final String[] LATE = {
        "2027-03-01T23:00", "2027-03-02T23:00", "2027-03-03T23:00", "2027-03-04T23:00", "2027-03-05T23:00"
    };

    @Test
    void sessions_that_run_over_midnight_tie_the_leads_of_neighbouring_days_together() {
        Moves moves = new Moves(nights());

        assertThat(moves.staff(0, LATE[0])).containsExactly(0, 1);
        assertThat(moves.staff(1, LATE[1])).containsExactly(0, 1, 2);
        assertThat(moves.staff(2, "2027-03-03T22:00"))
                .as("over before midnight, after two nights")
                .containsExactly(0, 1, 2);
        assertThat(moves.staff(2, "2027-03-04T22:00"))
                .as("from there to a day of its own")
                .containsExactly(0, 1, 2, 3);
        assertThat(moves.staff(2, null)).containsExactly(3);
        assertThat(moves.staff(0, null)).as("its own night and the next").containsExactly(0, 1, 2);
        assertThat(moves.staff(1, null)).containsExactly(1, 2);
    }

    @Test
    void a_session_that_runs_over_the_end_of_the_plan_concerns_its_last_day_alone() {
        Problem nights = ProblemBuilder.of(squad().days(2)
                .window("22:00", "24:00")
                .window("00:00", "02:00")
                .staff("alder", "*")
                .aim("mobility", 0, 1, 1)
                .mainMinutes(90)
                .aim("heavy-lower-knee", 0, 1, 1)
                .scenario());

        assertThat(looked(nights, "mobility", LATE[1]))
                .containsExactlyInAnyOrder("DAY 0/1", "NIGHT 0/1", "NIGHT 0/2", "AIM 0/0", "STAFF 0/1");
    }

    @Test
    void a_room_is_looked_at_on_both_dates_of_a_session_that_runs_over_midnight() {
        Problem nights = nights();
        Moves moves = new Moves(nights);

        assertThat(moves.looked(0, LATE[1]))
                .contains("BOOKINGS 0/1", "BOOKINGS 0/2")
                .doesNotContain("BOOKINGS 0/3");
        assertThat(moves.looked(1, "2027-03-04T22:00")).contains("BOOKINGS 0/3").doesNotContain("BOOKINGS 0/4");
        assertThat(moves.looked(2, LATE[4]).stream()
                        .filter(part -> part.startsWith("BOOKINGS") || part.startsWith("STAFF")))
                .as("nothing is kept of the day after the plan")
                .containsExactlyInAnyOrder("BOOKINGS 0/4", "STAFF 0/4");
    }

    /** Ash belongs to the sprinters first, and misses the squad's lesson when they meet at the same time. */
    @ParameterizedTest
    @CsvSource({"true", "false"})
    void a_lesson_to_which_others_come_than_before_counts_anew_for_those_who_learn(boolean learning) {
        Squad two = squad().athlete("ash", "sprinters", Squad.ID).aim("technique", 0, 1, 1);
        if (learning) {
            two.learning();
        }
        Problem both = ProblemBuilder.of(
                two.group("sprinters").aim("mobility", 0, 1, 1).scenario());
        Moves moves = new Moves(both);
        moves.looked(0, "2027-03-03T10:00");

        assertThat(moves.looked(1, "2027-03-04T10:00")).contains("AIM 1/0").doesNotContain("AIM 0/0");
        List<String> together = moves.looked(1, "2027-03-03T10:00");
        assertThat(moves.attending(0)).isEqualTo(moves.meant(0) - 1);
        assertThat(together.contains("AIM 0/0")).isEqualTo(learning);
        assertThat(together).contains("AIM 1/0", "DAY 1/2");
    }

    /** Late mobility work leaves ash too short a night before the lesson of the others. */
    @Test
    void the_day_of_whoever_comes_no_longer_is_looked_at_though_nothing_was_moved_on_it() {
        Problem both = ProblemBuilder.of(squad().athlete("ash", "sprinters", Squad.ID)
                .aim("technique", 0, 1, 1)
                .group("sprinters")
                .aim("mobility", 0, 1, 1)
                .scenario());
        Moves moves = new Moves(both);
        moves.looked(0, "2027-03-03T06:00");

        List<String> late = moves.looked(1, "2027-03-02T22:00");
        assertThat(moves.attending(0)).isEqualTo(moves.meant(0) - 1);
        assertThat(late).contains("DAY 1/1", "DAY 1/2").doesNotContain("DAY 0/2");
    }

    /** Nobody learns well when tired. */
    @Test
    void tiring_work_concerns_the_lessons_of_its_week() {
        Problem lessons = ProblemBuilder.of(squad().days(14)
                .aim("technique", 0, 1, 1)
                .learning()
                .aim("mobility", 0, 1, 1)
                .aim("acceleration", 0, 1, 1)
                .group("sprinters")
                .aim("technique", 0, 1, 1)
                .learning()
                .scenario());

        assertThat(looked(lessons, "acceleration", "2027-03-10T10:00"))
                .contains("AIM 0/1", "AIM 2/1")
                .doesNotContain("AIM 0/0", "AIM 1/1", "AIM 3/1");
        assertThat(looked(lessons, "mobility", "2027-03-10T10:00")).doesNotContain("AIM 0/1");
    }

    @Test
    void a_session_between_two_others_of_its_quality_concerns_the_link_to_the_next_alone() {
        Moves moves = new Moves(ProblemBuilder.of(
                squad().days(21).aim("heavy-lower-knee", 0, 1, 1).scenario()));

        assertThat(moves.links(1, "2027-03-10T10:00")).containsExactly(9, 20);
        assertThat(moves.links(0, "2027-03-03T10:00")).containsExactly(2, 9);
        assertThat(moves.links(0, "2027-03-04T10:00")).containsExactly(2, 3, 9);
        assertThat(moves.links(2, "2027-03-21T10:00")).containsExactly(20);
    }

    /** Hours and loads cost the sprinters something; the squad is only told of them. */
    @Test
    void weeks_are_looked_at_for_hours_and_loads_only_where_these_cost_something() {
        Problem both = ProblemBuilder.of(squad().days(14)
                .aim("mobility", 0, 1, 1)
                .group("sprinters")
                .groupRule("youth", RuleLevel.WANT, null, Map.of())
                .groupRule("load-spread", RuleLevel.WANT, null, Map.of())
                .aim("tempo-run", 0, 1, 1)
                .scenario());
        Moves moves = new Moves(both);

        assertThat(moves.looked(0, "2027-03-03T10:00").stream()
                        .filter(part -> part.startsWith("WEEK") || part.startsWith("LOADS")))
                .isEmpty();
        assertThat(moves.looked(2, "2027-03-03T10:00"))
                .contains("WEEK 1/0", "LOADS 1/0", "LOADS 1/1")
                .doesNotContain("WEEK 0/0", "LOADS 0/0", "AIM 0/0");
        assertThat(moves.looked(2, "2027-03-03T11:00")).as("an hour later").doesNotContain("WEEK 1/0", "LOADS 1/0");
    }

    /** A run of up to eight days may begin seven days before; seven days running end with four where three are the most. */
    @Test
    void the_numbers_of_a_rule_say_how_far_a_day_reaches() {
        Problem longer = ProblemBuilder.of(twoWeeks()
                .number("four-high-days", "days", 8)
                .number("six-days-running", "days", 3)
                .scenario());

        List<String> looked = looked(longer, "heavy-lower-knee", "2027-03-03T10:00");
        assertThat(looked.stream().filter(part -> part.startsWith("RUN")))
                .isEqualTo(IntStream.rangeClosed(2, 9)
                        .mapToObj(first -> "RUN 0/" + first)
                        .toList());
        assertThat(looked.stream().filter(part -> part.startsWith("STRETCH")))
                .containsExactly("STRETCH 0/2", "STRETCH 0/3", "STRETCH 0/4", "STRETCH 0/5");
    }

    /** Moves of one plan, each kept. */
    private static final class Moves {
        private final Problem problem;
        private final Judge judge;

        Moves(Problem problem) {
            this.problem = problem;
            judge = new Judge(problem);
        }

        /** What is looked at again when a session goes somewhere, or is left out. */
        List<String> looked(int session, String at) {
            Session moved = problem.sessions.get(session);
            judge.move(moved, at == null ? null : option(problem, moved, at));
            return LookedAgainTest.looked(problem, judge);
        }

        List<Integer> staff(int session, String at) {
            return places(Kind.STAFF, looked(session, at));
        }

        List<Integer> links(int session, String at) {
            return places(Kind.LINK, looked(session, at));
        }

        private static List<Integer> places(Kind kind, List<String> parts) {
            return parts.stream()
                    .filter(part -> part.startsWith(kind + " "))
                    .map(part -> Integer.valueOf(part.substring(part.indexOf('/') + 1)))
                    .sorted()
                    .toList();
        }

        int attending(int session) {
            return Objects.requireNonNull(judge.attended(problem.sessions.get(session))).cohorts.length;
        }

        int meant(int session) {
            return Objects.requireNonNull(judge.at(problem.sessions.get(session))).cohorts.length;
        }
    }

    private static List<String> looked(Problem problem, String family, String at) {
        int week = problem.calendar.weekOf(problem.calendar.dayOf(minute(problem, at)));
        Session session = session(problem, family, week);
        Judge judge = new Judge(problem);
        judge.move(session, option(problem, session, at));
        return looked(problem, judge);
    }

    /** Kind, owner and place of each part that is looked at again. */
    private static List<String> looked(Problem problem, Judge judge) {
        judge.settle();
        Scopes scopes = new Scopes(problem);
        List<String> looked = Arrays.stream(judge.partsLookedAt())
                .mapToObj(scopes::scope)
                .map(scope -> scope.kind() + " " + scope.owner() + "/" + scope.at())
                .toList();
        judge.keep();
        return looked;
    }

    private static Session session(Problem problem, String family, int week) {
        return problem.sessions.stream()
                .filter(session -> session.family.family.id().equals(family) && session.week == week)
                .findFirst()
                .orElseThrow();
    }

    private static Stimulus option(Problem problem, Session session, String at) {
        int start = minute(problem, at);
        return Arrays.stream(session.options)
                .filter(option -> option.start == start)
                .findFirst()
                .orElseThrow();
    }

    private static int minute(Problem problem, String at) {
        return problem.calendar.minute(LocalDateTime.parse(at));
    }
}
