package weekwright.desk.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static weekwright.desk.intake.Takes.file;
import static weekwright.desk.intake.Takes.fixture;
import static weekwright.desk.intake.Takes.fixtures;
import static weekwright.desk.intake.Takes.march;
import static weekwright.desk.intake.Takes.rows;
import static weekwright.desk.intake.Takes.squad;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.desk.app.InputFault;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.Scenario;

/** Tables as spreadsheets of several countries write them. */
class TablesTest {
    private static final Answers MINUTES = Answers.NONE.with(Answers.MINUTES, "105");

    private static Preview as(What what, String file, Answers answers) {
        return Intake.preview(file(file), march(), Wanted.of(what), answers);
    }

    private static Preview text(What what, String csv) {
        return Intake.preview(csv.getBytes(StandardCharsets.UTF_8), march(), Wanted.of(what), Answers.NONE);
    }

    @Test
    void one_season_written_in_three_countries_and_in_two_encodings_is_the_same() {
        List<String> british = rows(fixtures("season-british.csv", march(), MINUTES));

        assertThat(british)
                .containsExactly(
                        "new: Sat 2027-03-06 15:00 to 16:45 · Rovers, Harbour, home",
                        "new: Sat 2027-03-13 15:00 to 16:45 · Milltown, away",
                        "new: Wed 2027-03-17 19:45 to 21:30 · Fenwick, home");
        assertThat(rows(fixtures("season-american.csv", march(), MINUTES))).isEqualTo(british);
        assertThat(rows(fixtures("season-german.csv", march(), MINUTES))).isEqualTo(british);
        assertThat(rows(fixtures("season-wide.txt", march(), MINUTES))).isEqualTo(british);
        assertThat(fixtures("season-british.csv").how())
                .containsExactly(
                        "A table of 3 rows below line 1. Columns parted by commas.",
                        "Columns not looked at: \"Notes\"; what one of them holds is said with --column start=HEADING.",
                        "Times are read as times in Europe/Dublin (--zone says otherwise).",
                        "Dates are read with the day first.");
        assertThat(fixtures("season-american.csv").how()).contains("Dates are read with the month first.");
    }

    @Test
    void dates_that_can_be_read_in_two_ways_are_asked_about() {
        Preview preview = fixtures("ambiguous.csv");

        assertThat(rows(preview))
                .containsExactly(
                        "unreadable: no time · League round 18 | 03/04/2027 is Sat 2027-04-03 or Thu 2027-03-04",
                        "unreadable: no time · League round 19 | 05/03/2027 is Fri 2027-03-05 or Mon 2027-05-03");
        assertThat(preview.questions())
                .containsExactly("Dates such as 03/04/2027 can be read in two ways: say --day-first or --month-first.");
        assertThat(rows(fixtures("ambiguous.csv", march(), Answers.NONE.with(Answers.DAY_FIRST))))
                .containsExactly(
                        "new: Sat 2027-04-03 15:00 to 16:45 · League round 18",
                        "new: Fri 2027-03-05 15:00 to 16:45 · League round 19");
        assertThat(rows(fixtures("ambiguous.csv", march(), Answers.NONE.with(Answers.MONTH_FIRST))))
                .startsWith("new: Thu 2027-03-04 15:00 to 16:45 · League round 18");
    }

    @Test
    void dates_of_two_minds_are_asked_about() {
        Preview preview =
                text(What.FIXTURES, "date,time,event\n13/03/2027,15:00,A\n03/20/2027,15:00,B\n03/04/2027,15:00,C\n");

        assertThat(preview.questions())
                .containsExactly(
                        "Of the dates some can only have the day first and some only the month: dates such as 03/04/2027"
                                + " cannot be read. Write all of them in one way, or say --day-first or --month-first.",
                        "Some rows do not say how long they last: give --minutes 110, from the start to the end, intervals"
                                + " included.");
    }

    @Test
    void a_table_with_a_title_words_for_months_and_all_kinds_of_slips() {
        assertThat(rows(fixtures("odd.csv", march(), MINUTES)))
                .containsExactly(
                        "new: Sat 2027-03-06 15:00 to 16:45 · League round 18",
                        "asked: Sun 2027-03-14 15:00 · League round 19 | it is called Sat, and that day is Sun 2027-03-14",
                        "asked: Sat 2027-03-20 · League round 20 | no time",
                        "passed over: Sat 2027-03-27 15:00 · League round 21 | cancelled; the scenario does not have it",
                        "new: Sat 2027-04-03 14:00 to 15:45 · League round 22",
                        "asked: Sat 2027-04-10 15:00 · League round 18 again | line 4 has the same id",
                        "asked: Fri 2028-03-17 15:00 · League round 23 | it lies far from all the others; is the year 2027"
                                + " meant?",
                        "unreadable: no time · League round 24 | \"31/02/2027\" is no day of the calendar");
    }

    @Test
    void hours_of_the_week_become_the_plan_s_days() {
        Preview preview = as(What.WINDOWS, "week.tsv", Answers.NONE.with(Answers.LEAVE_OUT, "25"));

        assertThat(rows(preview).get(0)).isEqualTo("new: Mon 2027-03-01 16:00 to 21:00");
        assertThat(preview.count(Verdict.NEW)).isEqualTo(24);
        assertThat(preview.notes())
                .containsExactly("Until now First squad has no hours set, which means always; from now on only these.");
        Scenario taken = preview.take(false);
        assertThat(taken.groups().get(0).windows()).hasSize(24);
        assertThat(Intake.preview(file("week.tsv"), taken, Wanted.of(What.WINDOWS), Answers.NONE)
                        .count(Verdict.SAME))
                .isEqualTo(24);
        assertThat(rows(as(What.WINDOWS, "week.tsv", Answers.NONE)).get(24))
                .isEqualTo("unreadable: no time | \"2027\" is no weekday: write Mon, Tue or Mon-Fri");
    }

    @Test
    void athletes_are_added_once_and_known_by_name() {
        Preview preview = as(What.ATHLETES, "athletes.csv", Answers.NONE);

        assertThat(rows(preview))
                .containsExactly(
                        "changed: R. Ashlane (a01), squad, trained, born 2001-03-14 | was of the group's training age",
                        "changed: T. Brockweir (a02), squad, trained, born 1999-08-02",
                        "unreadable: X. Nobody | second team |  |  | no group is called \"second team\": known are squad",
                        "new: =HYPERLINK(\"x\") (hyperlink-x), squad");
        Scenario taken = preview.take(true);
        assertThat(taken.athletes()).extracting(Athlete::id).containsExactly("a01", "a02", "hyperlink-x");
        assertThat(taken.athletes().get(1).born()).isEqualTo("1999-08-02");
    }

    @Test
    void marks_with_a_comma_or_a_point_are_the_same() {
        Preview british = as(What.MARKS, "marks-british.csv", Answers.NONE);

        assertThat(rows(british))
                .containsExactly(
                        "new: R. Ashlane: 30 m in 4.12 s, standing start, electronic, 2027-01-18",
                        "asked: R. Ashlane: back-squat 1120.5 kg × 3, 2027-01-20 | 1120.5 kg is more than anybody lifts here;"
                                + " are they pounds?");
        assertThat(rows(as(What.MARKS, "marks-german.csv", Answers.NONE))).isEqualTo(rows(british));
        Scenario taken = british.take(true);
        assertThat(taken.athletes().get(0).marks()).extracting(Mark::seconds).containsExactly(4.12);
        assertThat(Intake.preview(file("marks-german.csv"), taken, Wanted.of(What.MARKS), Answers.NONE)
                        .count(Verdict.SAME))
                .isEqualTo(1);
    }

    @Test
    void a_number_that_can_be_two_is_asked_about() {
        String csv = "athlete,lift,kg,reps,date\nR. Ashlane,bench press,\"1,005\",1,2027-01-20\n";

        assertThat(rows(text(What.MARKS, csv)))
                .containsExactly("unreadable: R. Ashlane | bench press | 1,005 | 1 | 2… | 1,005 is 1005 or 1.005; say"
                        + " --decimal-comma or --decimal-point");
        assertThat(rows(Intake.preview(
                        csv.getBytes(StandardCharsets.UTF_8),
                        march(),
                        Wanted.of(What.MARKS),
                        Answers.NONE.with(Answers.DECIMAL_COMMA))))
                .containsExactly("new: R. Ashlane: bench-press 1.005 kg × 1, 2027-01-20");
    }

    @Test
    void marks_that_lack_something_say_what() {
        assertThat(rows(text(What.MARKS, """
                        athlete,metres,seconds,start,timing,metres per second,date
                        a01,30,4.12,standing,,,2027-01-20
                        a01,30,,standing,hand,,2027-01-20
                        a01,,,,,4.4,2027-01-20
                        a01,30,1.5,flying,hand,,2027-01-20
                        Nobody,30,4.1,standing,hand,,2027-01-20
                        a01,30,4.1,standing,sundial,,2027-01-20
                        a01,30,4.1,standing,hand,,
                        """)))
                .containsExactly(
                        "unreadable: a01 | 30 | 4.12 | standing |  |  | 2027-… | it has no timing: give one, such as"
                                + " electronic or hand",
                        "unreadable: a01 | 30 |  | standing | hand |  | 2027-… | it has no seconds: give one, such as 4.12",
                        "new: R. Ashlane: aerobic speed 4.4 m/s, 2027-01-20",
                        "asked: R. Ashlane: 30 m in 1.5 s, flying start, hand, 2027-01-20 | 30 m in 1.5 s is faster than"
                                + " anybody runs",
                        "unreadable: Nobody | 30 | 4.1 | standing | hand |  |… | no athlete is called \"Nobody\"",
                        "unreadable: a01 | 30 | 4.1 | standing | sundial |  |… | \"sundial\" is no timing: give electronic,"
                                + " hand",
                        "unreadable: a01 | 30 | 4.1 | standing | hand |  |  | it has no date");
    }

    @Test
    void minutes_find_their_fixture_by_its_day() {
        Scenario known = squad("2027-03-01", 28, fixture("r18", "Round 18", "2027-03-06T15:00"));
        Wanted played = Wanted.of(What.MINUTES);

        Preview preview = Intake.preview(file("minutes.csv"), known, played, Answers.NONE);

        assertThat(rows(preview))
                .containsExactly(
                        "new: R. Ashlane: 60 min in Round 18, Sat 2027-03-06",
                        "new: T. Brockweir: 0 min in Round 18, Sat 2027-03-06",
                        "unreadable: R. Ashlane | 60 | 2027-03-13 | no fixture of the plan is on 2027-03-13");
        Scenario taken = preview.take(true);
        assertThat(taken.fixtures().get(0).played()).hasSize(2);
        assertThat(Intake.preview(file("minutes.csv"), taken, played, Answers.NONE)
                        .count(Verdict.SAME))
                .isEqualTo(2);
        Scenario expected = Intake.preview(
                        file("minutes.csv"), known, Wanted.of(What.EXPECTED).fixture("r18"), Answers.NONE)
                .take(true);
        assertThat(expected.fixtures().get(0).expected()).hasSize(2);
    }

    @Test
    void a_table_that_cannot_be_read_says_why() {
        assertThatThrownBy(() -> text(What.FIXTURES, "Datum;Zeit;Gegner\n06.03.2027;15:00;Rovers\n"))
                .isInstanceOf(InputFault.class)
                .hasMessage(
                        "line 1 has no heading that is known; found are \"Datum\", \"Zeit\", \"Gegner\". Needed is date or"
                                + " start; known besides are time, end, end date, end time, minutes, all day, label, competition,"
                                + " home, away, opponent, venue, status, id, zone, date before, time before. Say what a column holds"
                                + " with --column date=HEADING");
        Answers said = MINUTES.with(Answers.COLUMN, "date=Datum")
                .with(Answers.COLUMN, "time=Zeit")
                .with(Answers.COLUMN, "opponent=Gegner");
        assertThat(rows(Intake.preview(
                        "Datum;Zeit;Gegner\n06.03.2027;15:00;Rovers\n".getBytes(StandardCharsets.UTF_8),
                        march(),
                        Wanted.FIXTURES,
                        said)))
                .containsExactly("new: Sat 2027-03-06 15:00 to 16:45 · Rovers");
        assertThatThrownBy(() -> text(What.FIXTURES, "Date,Day,Time\n"))
                .hasMessage("line 1: two columns can be the date,"
                        + " \"Date\" and \"Day\"; say which it is with --column date=\"Day\"");
        assertThatThrownBy(() -> text(What.FIXTURES, "")).hasMessage("the table is empty");
        assertThatThrownBy(() -> text(What.FIXTURES, "date,time\n2027-03-06,\"15:00\n"))
                .hasMessageContaining("a cell's quotes do not match; save the table again");
        assertThatThrownBy(() -> text(What.FIXTURES, "date\n\0\0"))
                .hasMessage("this is no table of text: save it from the" + " spreadsheet as CSV");
        assertThatThrownBy(() -> text(What.FIXTURES, "date,time\n" + "2027-03-06,15:00\n".repeat(10_001)))
                .hasMessage("the table has more than 10,000 rows: a season has some hundreds");
        byte[] old = "date;event\n06.03.2027;Städte\n".getBytes(java.nio.charset.Charset.forName("windows-1252"));
        assertThatThrownBy(() -> Intake.preview(old, march(), Wanted.FIXTURES, Answers.NONE))
                .hasMessage("the table is not text in UTF-8: save it as \"CSV UTF-8\", or say how its letters are"
                        + " written, such as windows-1252");
        assertThat(rows(Intake.preview(
                        old, march(), Wanted.FIXTURES, Answers.NONE.with(Answers.ENCODING, "windows-1252"))))
                .containsExactly("asked: Sat 2027-03-06 · Städte | no time");
    }
}
