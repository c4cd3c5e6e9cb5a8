package weekwright.desk.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static weekwright.desk.intake.Takes.file;
import static weekwright.desk.intake.Takes.fixture;
import static weekwright.desk.intake.Takes.fixtures;
import static weekwright.desk.intake.Takes.march;
import static weekwright.desk.intake.Takes.rows;
import static weekwright.desk.intake.Takes.squad;
import static weekwright.desk.intake.Takes.starts;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.desk.app.InputFault;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** What a file does to the fixtures that a scenario has. */
class FixtureIntakeTest {
    private static Preview table(String csv, Scenario scenario, Answers answers) {
        return Intake.preview(csv.getBytes(StandardCharsets.UTF_8), scenario, Wanted.FIXTURES, answers);
    }

    private static Preview table(String csv, Scenario scenario) {
        return table(csv, scenario, Answers.NONE);
    }

    @Test
    void a_file_that_is_taken_twice_adds_nothing() {
        for (String file :
                List.of("plain.ics", "exception-first.ics", "moved-instance.ics", "results.ics", "twice.ics")) {
            Scenario once = fixtures(file).take(true);

            Preview again = fixtures(file, once, Answers.NONE);

            assertThat(again.count(Verdict.NEW)).as(file).isZero();
            assertThat(again.take(true)).as(file).isEqualTo(once);
        }
    }

    @Test
    void a_fixture_that_has_moved_in_its_calendar_moves_here_and_keeps_all_else() {
        Scenario once = fixtures("plain.ics").take(false);
        String moved = new String(file("plain.ics"), StandardCharsets.UTF_8)
                .replace("20270306T143000", "20270307T120000")
                .replace("20270306T161500", "20270307T134500")
                .replace("League round 18", "League: Round 18!");

        Preview preview = Intake.preview(moved.getBytes(StandardCharsets.UTF_8), once, Wanted.FIXTURES, Answers.NONE);

        assertThat(rows(preview))
                .containsExactly(
                        "moved: Sun 2027-03-07 12:00 to 13:45 · League round 18 | moved from Sat 2027-03-06 14:30",
                        "as it was: Sat 2027-03-13 15:00 to 16:45 · League round 19");
        Scenario taken = preview.take(false);
        assertThat(starts(taken)).containsExactly("2027-03-07T12:00", "2027-03-13T15:00");
        assertThat(taken.fixtures().get(0).id())
                .isEqualTo(once.fixtures().get(0).id());
    }

    @Test
    void what_is_called_off_is_taken_out_and_what_is_put_off_is_asked_about() {
        Scenario once = fixtures("plain.ics").take(false);

        Preview preview = fixtures("cancelled.ics", once, Answers.NONE);

        assertThat(rows(preview))
                .containsExactly(
                        "taken out: Sat 2027-03-06 14:30 · League round 18 | cancelled",
                        "asked: Sat 2027-03-13 15:00 · Postponed: League round 19 | postponed, and no new day is given; is it"
                                + " to be taken out?");
        assertThat(starts(fixtures("cancelled.ics", once, Answers.NONE.with(Answers.ACCEPT, "2"))
                        .take(false)))
                .isEmpty();
    }

    @Test
    void a_fixture_that_a_coach_typed_is_known_by_its_name() {
        Scenario typed = squad("2027-03-01", 28, fixture("r18", "League Round 18", "2027-03-06T15:00"));

        Preview preview = table("date,time,event,minutes\n2027-03-06,14:30,League round 18,105\n", typed);

        assertThat(rows(preview))
                .containsExactly(
                        "moved: Sat 2027-03-06 14:30 to 16:15 · League Round 18 | moved from Sat 2027-03-06 15:00");
        assertThat(preview.take(false).fixtures()).extracting(Fixture::id).containsExactly("r18");
    }

    @Test
    void the_same_match_under_another_id_is_asked_about() {
        Scenario typed = squad("2027-03-01", 28, fixture("r18", "Home to Rovers", "2027-03-06T14:30"));

        Preview preview = fixtures("plain.ics", typed, Answers.NONE);

        assertThat(rows(preview).get(0))
                .isEqualTo("asked: Sat 2027-03-06 14:30 · League round 18 | the scenario has \"Home to Rovers\" on Sat"
                        + " 2027-03-06 14:30; if it is the same, say --same 1=r18");
        assertThat(rows(fixtures("plain.ics", typed, Answers.NONE.with(Answers.SAME, "1=r18")))
                        .get(0))
                .isEqualTo("changed: Sat 2027-03-06 14:30 to 16:15 · League round 18 | was called \"Home to Rovers\"");
    }

    @Test
    void two_rows_for_one_match_are_asked_about() {
        Preview preview = table("""
                id,date,time,event,minutes
                1,2027-03-06,14:30,League round 18,105
                2,2027-03-06,14:30,League round 18,105
                3,2027-03-06,15:30,Friendly,90
                1,2027-03-20,15:00,League round 20,105
                """, march());

        assertThat(rows(preview))
                .containsExactly(
                        "new: Sat 2027-03-06 14:30 to 16:15 · League round 18",
                        "asked: Sat 2027-03-06 14:30 · League round 18 | the same as row 1",
                        "asked: Sat 2027-03-06 15:30 · Friendly | at the same time as row 1; at the same time as row 2",
                        "asked: Sat 2027-03-20 15:00 · League round 20 | line 2 has the same id");
    }

    @Test
    void a_year_that_does_not_fit_the_season_is_asked_about_even_far_outside_the_plan() {
        StringBuilder season = new StringBuilder("date,time,event,minutes\n");
        for (int week = 0; week < 8; week++) {
            season.append(java.time.LocalDate.parse("2027-02-06").plusWeeks(week))
                    .append(",15:00,Round ")
                    .append(week)
                    .append(",105\n");
        }
        season.append("2028-03-10,19:30,Cup,105\n");

        Preview preview = table(season.toString(), march());

        assertThat(rows(preview).get(8))
                .isEqualTo(
                        "asked: Fri 2028-03-10 19:30 · Cup | it lies far from all the others; is the year 2027 meant?");
    }

    @Test
    void a_move_of_four_weeks_or_to_another_year_is_asked_about() {
        Scenario known = squad(
                "2027-03-01",
                28,
                fixture("r18", "Round 18", "2027-04-06T15:00"),
                fixture("r19", "Round 19", "2027-03-13T15:00"));
        String csv = """
                date,time,event
                2027-03-06,15:00,Round 18
                2026-03-13,15:00,Round 19
                """;

        assertThat(rows(table(csv, known)))
                .containsExactly(
                        "asked: Sat 2027-03-06 15:00 · Round 18 | it moves by 31 days to an earlier day: it was Tue 2027-04-06"
                                + " 15:00; is the month right?",
                        "asked: Fri 2026-03-13 15:00 · Round 19 | only the year differs: it was Sat 2027-03-13 15:00; which"
                                + " is right?");
        assertThat(starts(table(csv, known, Answers.NONE.with(Answers.ACCEPT, "1"))
                        .take(true)))
                .containsExactly("2027-03-06T15:00", "2027-03-13T15:00");
    }

    @Test
    void what_lies_outside_the_plan_is_passed_over_and_the_past_is_history_if_the_coach_wants() {
        String csv = """
                date,time,event,minutes
                2027-01-02,15:00,Round 9,105
                2027-02-13,15:00,Round 15,105
                2027-03-06,15:00,Round 18,105
                2027-04-25,15:00,Round 24,105
                2027-04-26,15:00,Round 25,105
                """;

        assertThat(rows(table(csv, march())))
                .containsExactly(
                        "passed over: Sat 2027-01-02 15:00 · Round 9 | before the plan",
                        "passed over: Sat 2027-02-13 15:00 · Round 15 | before the plan; --past takes it as played",
                        "new: Sat 2027-03-06 15:00 to 16:45 · Round 18",
                        "new: Sun 2027-04-25 15:00 to 16:45 · Round 24",
                        "passed over: Mon 2027-04-26 15:00 · Round 25 | more than 28 days after the plan");
        Preview past = table(csv, march(), Answers.NONE.with(Answers.PAST));
        assertThat(rows(past))
                .startsWith(
                        "passed over: Sat 2027-01-02 15:00 · Round 9 | before all that the history holds",
                        "new: Sat 2027-02-13 15:00 · Round 15 | into the history, as played by all");
        Scenario taken = past.take(false);
        assertThat(taken.history())
                .extracting(entry -> entry.start().toString())
                .containsExactly("2027-02-13T15:00");
        assertThat(table(csv, taken, Answers.NONE.with(Answers.PAST)).take(false))
                .isEqualTo(taken);
    }

    @Test
    void a_fixture_that_moves_out_of_the_plan_is_taken_out() {
        Scenario known = squad("2027-03-01", 7, fixture("r18", "Round 18", "2027-03-20T15:00"));

        assertThat(rows(table("date,time,event\n2027-04-10,15:00,Round 18\n", known)))
                .containsExactly(
                        "taken out: Sat 2027-04-10 15:00 · Round 18 | moved from Sat 2027-03-20 15:00 to more than 28"
                                + " days after the plan");
    }

    @Test
    void a_row_without_a_time_keeps_the_time_that_is_known() {
        Scenario known = squad("2027-03-01", 28, fixture("r18", "Round 18", "2027-03-06T15:00"));

        assertThat(rows(table("date,time,event\n2027-03-06,TBC,Round 18\n2027-03-13,tba,Round 19\n", known)))
                .containsExactly(
                        "as it was: Sat 2027-03-06 15:00 to 16:45 · Round 18 | the file has no time; that of the scenario"
                                + " stays",
                        "asked: Sat 2027-03-13 · Round 19 | no time");
    }

    @Test
    void a_table_of_changes_says_what_was_and_what_is() {
        String csv = """
                competition,home,away,date_before,time_before,date_after,time_after,listed_on
                league-1,club-04,club-02,2027-03-13,,2027-03-12,20:00,2027-01-04
                league-1,club-01,club-05,2027-03-20,,2027-03-20,17:30,2027-01-04
                league-1,club-03,club-01,2027-03-27,15:00,2027-03-27,20:00,2027-01-04
                """;

        Preview preview = table(csv, march(), Answers.NONE.with(Answers.MINUTES, "110"));

        assertThat(rows(preview))
                .containsExactly(
                        "new: Fri 2027-03-12 20:00 to 21:50 · league-1, club-04 – club-02 | its first time; it was Sat"
                                + " 2027-03-13",
                        "new: Sat 2027-03-20 17:30 to 19:20 · league-1, club-01 – club-05 | its first time; only the day was"
                                + " known",
                        "new: Sat 2027-03-27 20:00 to 21:50 · league-1, club-03 – club-01 | moved from Sat 2027-03-27 15:00");
        assertThat(preview.how())
                .containsExactly(
                        "A table of 3 rows below line 1. Columns parted by commas.",
                        "Columns not looked at: \"listed_on\"; what one of them holds is said with --column start=HEADING.",
                        "Times are read as times in Europe/Dublin (--zone says otherwise).");
        assertThat(rows(table(
                        csv, march(), Answers.NONE.with(Answers.MINUTES, "110").with(Answers.ONLY, "CLUB-05"))))
                .contains(
                        "passed over: Fri 2027-03-12 20:00 · league-1, club-04 – club-02 | does not hold \"CLUB-05\"",
                        "new: Sat 2027-03-20 17:30 to 19:20 · league-1, club-01 – club-05 | its first time; only the day was"
                                + " known");
    }

    @Test
    void what_is_open_is_not_taken_unless_the_coach_leaves_it_out() {
        Preview preview = fixtures("all-day.ics");

        assertThatThrownBy(() -> preview.take(false))
                .isInstanceOf(InputFault.class)
                .hasMessage(
                        "Some rows have no time: say when they start with --time 15:00, or for one row --time 4=15:00, or"
                                + " leave them out with --leave-out 4.\nrow 1 (line 4): no time\nrow 2 (line 11): no time");
        assertThat(preview.take(true)).isEqualTo(march());
    }

    @Test
    void for_whom_and_as_what_must_be_known() {
        Scenario two = Scenarios.read("two-groups");

        assertThatThrownBy(() -> fixtures("plain.ics", two, Answers.NONE))
                .hasMessage("the scenario has several groups: say for which with --group, one of "
                        + two.groups().get(0).id() + ", " + two.groups().get(1).id());
        assertThatThrownBy(() -> Intake.preview(
                        file("plain.ics"),
                        march(),
                        new Wanted(What.FIXTURES, null, null, null, null, "fixtures"),
                        Answers.NONE))
                .hasMessage("no fixture is of the family \"fixtures\": did you mean fixture?");
        assertThatThrownBy(() -> What.named("closure"))
                .hasMessage("nothing is taken as \"closure\": did you mean closures?");
        assertThatThrownBy(() -> Intake.preview(file("plain.ics"), march(), Wanted.of(What.MARKS), Answers.NONE))
                .hasMessage("marks are taken from a table (CSV), and this is a calendar");
        assertThatThrownBy(() -> Intake.preview(file("plain.ics"), march(), Wanted.of(What.CLOSURES), Answers.NONE))
                .hasMessage("say which facility is closed with --facility, one of hall");
    }

    @Test
    void files_of_other_programs_are_named_as_what_they_are() {
        assertThatThrownBy(() -> Intake.preview(
                        new byte[] {'P', 'K', 3, 4, 20}, march(), Wanted.of(What.FIXTURES), Answers.NONE))
                .hasMessage("this is a file of a spreadsheet, and no table of text: open it there and save it as"
                        + " \"CSV UTF-8\"");
        assertThatThrownBy(() -> Intake.preview(
                        "%PDF-1.7\n".getBytes(StandardCharsets.US_ASCII),
                        march(),
                        Wanted.of(What.ATHLETES),
                        Answers.NONE))
                .hasMessage("this is a PDF: ask for the calendar (.ics) or the table (.csv) that it was made from");
    }

    @Test
    void names_are_cleaned_and_cut_and_stay_text() {
        String name = "<script>\u202Eevil\u0007 🏟 " + "x".repeat(300);
        Preview preview = table("date;time;event;minutes\n2027-03-06;15:00;\"" + name + "\";105\n", march());

        Fixture taken = preview.take(false).fixtures().get(0);
        assertThat(taken.label()).startsWith("<script> evil 🏟 xxx").hasSizeLessThanOrEqualTo(201);
        assertThat(taken.label().codePointCount(0, taken.label().length())).isEqualTo(200);
        assertThat(taken.id()).matches("script-evil-x{20}-2027-03-06");
        assertThat(preview.rows().get(0).remarks()).containsExactly("the name is cut to 200 characters");
    }

    @Test
    void answers_that_cannot_be_understood_are_said() {
        assertAnswer(Answers.NONE.with(Answers.ZONE, "Europe/Dublni"), "floating.ics")
                .hasMessage("--zone is \"Europe/Dublni\", which is no zone: did you mean Europe/Dublin?");
        assertAnswer(Answers.NONE.with(Answers.TIME, "3pm"), "all-day.ics")
                .hasMessage("--time is \"3pm\": give a time such as 15:00, or of one row 4=15:00");
        assertAnswer(Answers.NONE.with(Answers.MINUTES, "two hours"), "no-end.ics")
                .hasMessage("--minutes is \"two hours\": give whole minutes, such as 110");
        assertAnswer(Answers.NONE.with(Answers.ACCEPT, "all"), "plain.ics")
                .hasMessage("--accept is \"all\": give rows such as 3,5-9");
        assertAnswer(Answers.NONE.with(Answers.SAME, "1"), "plain.ics")
                .hasMessage("--same is \"1\": give a row and an id of the scenario, such as 4=r18");
        assertAnswer(Answers.NONE.with(Answers.ENCODING, "klingon!"), "plain.ics")
                .hasMessage("--encoding is \"klingon!\", which is not known: give one such as windows-1252");
        assertAnswer(Answers.NONE.with(Answers.DAY_FIRST).with(Answers.MONTH_FIRST), "ambiguous.csv")
                .hasMessage("give --day-first or --month-first, not both");
    }

    private static org.assertj.core.api.AbstractThrowableAssert<?, ?> assertAnswer(Answers answers, String file) {
        return assertThatThrownBy(() -> fixtures(file, march(), answers)).isInstanceOf(InputFault.class);
    }
}
