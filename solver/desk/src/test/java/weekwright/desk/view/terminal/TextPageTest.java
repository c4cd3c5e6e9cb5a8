package weekwright.desk.view.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weekwright.desk.view.Quayside;
import weekwright.desk.view.plan.PlanPage;
import weekwright.desk.view.plan.PlanPages;
import weekwright.engine.explain.Judged;
import weekwright.model.catalogue.DayClass;
import weekwright.model.plan.Blocker;
import weekwright.model.plan.Finding;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;

/** The week as a coach reads it on a terminal, line by line. All layout is an expert proposal. */
class TextPageTest {
    private static final String FOOT = """

            Found with seed 7 after 1,830,000 moves in 5 s.
            This is planning help, not medical advice. In return to play, pain, illness, minors, heat and
            maximal testing, clinicians, local rules and licensed practice come first.
            """;

    @Test
    void a_week_of_one_squad_reads_from_monday_to_sunday() {
        Judged judged = Quayside.clean(
                Quayside.week(),
                Quayside.session("tempo-run", "2027-03-03T17:00", 40, null, Dose.FULL),
                Quayside.withLift(
                        Quayside.session("heavy-lower-knee", "2027-03-02T19:30", 60, "gym", Dose.FULL), "back-squat"),
                Quayside.pinned(
                        Quayside.session("max-velocity", "2027-03-02T16:30", 50, "turf", Dose.MICRO),
                        "c1",
                        new Pin(true, false, true, false, false, false, false, List.of())));

        assertThat(text("Quayside hockey, one match on Saturday", judged)).isEqualTo("""
                        Quayside hockey, one match on Saturday
                        1 to 7 March 2027, times in Europe/Dublin

                        Match squad
                        Mon  1 Mar  MD−5  free
                        Tue  2 Mar  MD−4  high    █████████    8.6 points, load 655 AU
                             16:30–17:20  Maximal velocity sprinting, micro dose  Turf pitch    Speed coach · pinned: time,
                                                                                                place
                             18:15–19:30  Team practice                           Turf pitch    fixed, easy
                             19:30–20:30  Heavy lower, knee-dominant              Weights room  Back squat
                        Wed  3 Mar  MD−3  low     ░░░          3.3 points, load 210 AU
                             17:00–17:40  Tempo run
                        Thu  4 Mar  MD−2  middle  ▒▒▒▒▒▒       6.0 points, load 480 AU
                        Fri  5 Mar  MD−1  free
                        Sat  6 Mar  MD    high    █████████    9.0 points, load 1000 AU
                             14:30–16:15  ◆ League round 18                       key fixture · travel 75 min out, 90 back
                        Sun  7 Mar  MD+1  free

                        Nothing is broken that must hold; every wish is met.
                        Rules kept
                          place and time 0 of 9 · recovery 0 of 7 · fixtures 0 of 11 · week shape 1 of 9 · aims 0 of 5
                          preferences 0 of 6 · load 0 of 6 · learning 0 of 3
                        """ + FOOT);
    }

    @Test
    void what_is_broken_stands_by_level_with_its_cost_and_the_dearest_first() {
        Plan plan = Quayside.plan(
                new Totals(1, 0, 2, 13.4),
                List.of(),
                List.of(
                        Quayside.finding(
                                RuleLevel.WANT, 1.4, "Heavy lower lies 66 h before the fixture, 68 are counted.", null),
                        Quayside.finding(RuleLevel.TOLD, 0, "Two fixtures lie 69 h apart.", null),
                        Quayside.finding(RuleLevel.WANT, 12, "Tuesday is a middle day.", null),
                        Quayside.finding(RuleLevel.WANT, 0, "One of twenty-four waits 35 min.", null),
                        Quayside.finding(
                                RuleLevel.MUST,
                                1,
                                "There is no free day.",
                                "Hold the Monday practice on Tuesday; that costs nothing.")),
                List.of(new LeftOut(
                        "squad/max-velocity/2027-03-01/1",
                        "least",
                        RuleLevel.MAIN,
                        1,
                        null,
                        312,
                        List.of(new Blocker("facility-open", 96, 40)),
                        null,
                        "")));

        assertThat(text("Quayside", new Judged(plan, List.of(), List.of()))).isEqualTo("""
                        Quayside
                        1 to 7 March 2027, times in Europe/Dublin

                        Match squad

                        1 thing is broken that must hold; main work falls short by 2; 13.4 points of wishes unmet.
                        What must hold and does not
                          1  There is no free day.
                             What would help: hold the Monday practice on Tuesday; that costs nothing.
                        Wishes unmet
                            12  Tuesday is a middle day.
                           1.4  Heavy lower lies 66 h before the fixture, 68 are counted.
                          <0.1  One of twenty-four waits 35 min.
                        Left out
                          1 main  Maximal velocity sprinting of Match squad is not placed. What stands in the way: The place
                                  is open (96 of 312 ways).
                        Good to know
                          Two fixtures lie 69 h apart.
                        """ + FOOT);
    }

    @Test
    void weeks_follow_one_another_and_each_group_has_its_own_block() {
        Judged judged = Quayside.clean(
                List.of(Quayside.day(0, null, DayClass.FREE, 0, 0), Quayside.day(7, -6, DayClass.FREE, 0, 0)));

        String text = TextPage.of(
                PlanPages.of(
                        Quayside.scenario(
                                "Two weeks",
                                10,
                                List.of(Quayside.group("squad", "Match squad"), Quayside.group("youth", "Youth"))),
                        judged),
                Ink.PLAIN);

        assertThat(text).startsWith("""
                        Two weeks
                        1 to 10 March 2027, times in Europe/Dublin

                        Week 1 of 2, 1 to 7 March 2027

                        Match squad
                        Mon  1 Mar        free

                        Youth

                        Week 2 of 2, 8 to 10 March 2027

                        Match squad
                        Mon  8 Mar  MD−6  free

                        Youth
                        """);
    }

    @Test
    void a_name_cannot_steer_the_terminal_nor_turn_the_line_around() {
        String text = text("Night\u001b[2J\u202eerutan\n", Quayside.clean(List.of()));

        assertThat(text).startsWith("Night<U+001B>[2J<U+202E>erutan<U+000A>\n");
    }

    @Test
    void columns_stay_in_line_under_wide_names() {
        Judged judged = Quayside.clean(
                List.of(Quayside.day(2, null, DayClass.LOW, 2, 100)),
                Quayside.session("日本語の走り", "2027-03-03T09:00", 40, "gym", Dose.FULL),
                Quayside.session("plain", "2027-03-03T10:00", 40, "gym", Dose.FULL));

        assertThat(text("Wide", judged)).contains("""
                             09:00–09:40  日本語の走り  Weights room
                             10:00–10:40  plain         Weights room
                        """);
    }

    @Test
    void a_long_name_is_cut_and_its_dose_is_not() {
        Judged judged = Quayside.clean(
                List.of(Quayside.day(2, null, DayClass.LOW, 2, 100)),
                Quayside.session(
                        "a-name-that-goes-on-and-on-and-on-and-on", "2027-03-03T09:00", 40, "gym", Dose.MICRO));

        assertThat(text("Long", judged))
                .contains("  09:00–09:40  a-name-that-goes-on-and-on-…, micro dose  Weights room\n");
    }

    @Test
    void many_wishes_are_cut_with_a_word_and_what_must_hold_is_not() {
        List<Finding> findings = IntStream.range(0, 15)
                .boxed()
                .flatMap(i -> List.of(
                        Quayside.finding(RuleLevel.MUST, 1, "Must " + i, null),
                        Quayside.finding(RuleLevel.WANT, 1, "Wish " + i, null))
                        .stream())
                .toList();

        String text = text(
                "Many",
                new Judged(
                        Quayside.plan(new Totals(15, 0, 0, 15), List.of(), findings, List.of()), List.of(), List.of()));

        assertThat(text).contains("Must 14").contains("Wish 11").doesNotContain("Wish 12");
        assertThat(text).contains("\n  and 3 more; --json gives them all\n");
    }

    @Test
    void a_terminal_gets_strong_and_faint_letters_and_a_file_gets_none() {
        Judged judged = Quayside.clean(Quayside.week());

        assertThat(TextPage.of(page("Quayside", judged), Ink.TERMINAL))
                .startsWith("\u001b[1mQuayside\u001b[0m\n")
                .contains("\u001b[2mThis is planning help");
        assertThat(text("Quayside", judged)).doesNotContain("\u001b");
    }

    @Test
    void no_line_is_wider_than_a_hundred_columns_nor_ends_with_a_space() {
        Judged judged = Quayside.clean(
                Quayside.week(),
                Quayside.session("x".repeat(200), "2027-03-03T17:00", 40, "y".repeat(200), Dose.REDUCED));

        assertThat(text("z ".repeat(100), judged).lines()).allSatisfy(line -> {
            assertThat(Plain.columns(line)).isLessThanOrEqualTo(100);
            assertThat(line).doesNotEndWith(" ");
        });
    }

    private static String text(String title, Judged judged) {
        return TextPage.of(page(title, judged), Ink.PLAIN);
    }

    private static PlanPage page(String title, Judged judged) {
        return PlanPages.of(Quayside.scenario(title, 7, Quayside.oneSquad()), judged);
    }
}
