package weekwright.desk.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static weekwright.desk.intake.Takes.file;
import static weekwright.desk.intake.Takes.fixtures;
import static weekwright.desk.intake.Takes.march;
import static weekwright.desk.intake.Takes.rows;
import static weekwright.desk.intake.Takes.squad;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.desk.app.InputFault;
import weekwright.model.scenario.Scenario;

/** Each oddness of public calendars: the right result or the right message (RFC 5545 where it says what is right). */
class OddCalendarsTest {
    private static Preview spans(String file, Wanted wanted) {
        return Intake.preview(file(file), march(), wanted, Answers.NONE);
    }

    @Test
    void a_plain_calendar_is_understood_as_it_stands() {
        Preview preview = fixtures("plain.ics");

        assertThat(rows(preview))
                .containsExactly(
                        "new: Sat 2027-03-06 14:30 to 16:15 · League round 18",
                        "new: Sat 2027-03-13 15:00 to 16:45 · League round 19");
        assertThat(preview.how()).containsExactly("A calendar with 2 events.");
        assertThat(preview.open()).isEmpty();
    }

    @Test
    void a_time_without_a_zone_is_one_of_the_scenario_s_zone_and_that_is_said() {
        Preview preview = fixtures("floating.ics");

        assertThat(rows(preview)).containsExactly("new: Sat 2027-03-06 14:30 to 16:15 · Cup, first round");
        assertThat(preview.how())
                .contains("Times without a zone are read as times in Europe/Dublin (--zone says otherwise).");
        assertThat(rows(fixtures("floating.ics", march(), Answers.NONE.with(Answers.ZONE, "Europe/Athens"))))
                .containsExactly("new: Sat 2027-03-06 12:30 to 14:15 · Cup, first round");
    }

    @Test
    void an_event_without_an_end_is_asked_how_long_it_lasts() {
        assertThat(rows(fixtures("no-end.ics")))
                .containsExactly("asked: Sat 2027-03-06 14:30 · League round 18 | no end");
        assertThat(fixtures("no-end.ics").questions())
                .containsExactly(
                        "Some rows do not say how long they last: give --minutes 110, from the start to the end,"
                                + " intervals included.");
        assertThat(rows(fixtures("no-end.ics", march(), Answers.NONE.with(Answers.MINUTES, "110"))))
                .containsExactly("new: Sat 2027-03-06 14:30 to 16:20 · League round 18");
    }

    @Test
    void a_duration_stands_for_an_end_and_a_day_of_it_is_one_of_the_calendar() {
        assertThat(rows(fixtures("duration.ics")))
                .containsExactly(
                        "new: Sat 2027-03-06 14:30 to 16:15 · League round 18",
                        // 23 hours, as the clocks go forward (RFC 5545, 3.3.6)
                        "new: Sat 2027-03-27 23:30 to Sun 2027-03-28 23:30 · Night run of a day");
    }

    @Test
    void a_whole_day_has_no_time_as_a_fixture_and_ends_before_its_end_as_a_closure() {
        assertThat(rows(fixtures("all-day.ics")))
                .containsExactly(
                        "asked: Sat 2027-03-06 · Spring tournament | no time",
                        "asked: Wed 2027-03-10 · Hall closed | no time");
        Answers answers = Answers.NONE
                .with(Answers.TIME, "1=11:00")
                .with(Answers.MINUTES, "90")
                .with(Answers.LEAVE_OUT, "2");
        assertThat(rows(fixtures("all-day.ics", march(), answers)))
                .containsExactly(
                        "new: Sat 2027-03-06 11:00 to 12:30 · Spring tournament | the time is yours, the file has none",
                        "passed over: Wed 2027-03-10 · Hall closed | left out, as you said");
        assertThat(rows(spans("all-day.ics", Wanted.of(What.CLOSURES).facility("hall"))))
                .containsExactly(
                        "new: Sat 2027-03-06 00:00 to Mon 2027-03-08 00:00 · Spring tournament",
                        "new: Wed 2027-03-10 00:00 to Thu 2027-03-11 00:00 · Hall closed");
    }

    @Test
    void an_exception_in_universal_time_is_the_local_time_that_it_names() {
        // The 29th of March at 9:00 UTC is 10:00 in Dublin's summer; the times before and after stay at 10:00.
        assertThat(rows(spans("exdate-utc.ics", Wanted.of(What.CLOSURES).facility("hall"))))
                .containsExactly(
                        "new: Mon 2027-03-08 10:00 to 11:30 · Hall booked",
                        "new: Mon 2027-03-15 10:00 to 11:30 · Hall booked",
                        "new: Mon 2027-03-22 10:00 to 11:30 · Hall booked",
                        "passed over: Mon 2027-04-05 10:00 · Hall booked | outside the plan's days");
    }

    @Test
    void an_exception_may_stand_before_its_series() {
        assertThat(rows(fixtures("exception-first.ics")))
                .containsExactly(
                        "new: Sat 2027-03-06 15:00 to 16:45 · Saturday league",
                        "new: Sun 2027-03-14 13:00 to 14:45 · Saturday league",
                        "new: Sat 2027-03-20 15:00 to 16:45 · Saturday league");
    }

    @Test
    void a_time_of_a_series_that_was_moved_is_there_once_and_one_called_off_is_not() {
        assertThat(rows(fixtures("moved-instance.ics")))
                .containsExactly(
                        "new: Sat 2027-03-06 15:00 to 16:45 · Saturday league",
                        "new: Sat 2027-03-13 15:00 to 16:45 · Saturday league",
                        "new: Sun 2027-03-21 12:00 to 13:45 · Saturday league",
                        "passed over: Sat 2027-03-27 15:00 · Saturday league | cancelled; the scenario does not have it");
    }

    @Test
    void a_zone_behind_slashes_is_the_one_at_its_end() {
        Preview preview = fixtures("zone-slash.ics");

        assertThat(rows(preview)).containsExactly("new: Sat 2027-03-06 14:00 to 15:45 · Cup away");
        assertThat(preview.how())
                .contains("The zone \"/example.org/20270101_1/Europe/Madrid\" is read as Europe/Madrid.");
    }

    @Test
    void a_zone_in_words_that_is_described_after_its_use_is_taken_as_described() {
        Preview preview = fixtures("zone-in-words.ics");

        assertThat(rows(preview))
                .containsExactly(
                        "new: Sat 2027-03-06 15:00 to 16:45 · Before the clocks change",
                        "new: Sat 2027-04-03 15:00 to 16:45 · After the clocks change");
        assertThat(preview.how())
                .contains("The zone \"Greenwich Standard: Dublin, Lisbon, London\" is taken as the calendar itself"
                        + " describes it.");
        assertThat(Takes.starts(preview.take(false))).containsExactly("2027-03-06T15:00", "2027-04-03T15:00");
    }

    @Test
    void a_zone_that_nobody_knows_is_asked_about_and_never_the_machine_s() {
        Preview preview = fixtures("zone-never.ics");

        assertThat(rows(preview))
                .containsExactly("unreadable: no time · League round 18 | its zone \"Club Time\" is not known");
        assertThat(preview.questions())
                .containsExactly(
                        "The calendar uses a zone \"Club Time\", which it does not describe and which is none of"
                                + " the world's: say what it is with --zone-of \"Club Time=Europe/Dublin\".");
        assertThat(rows(fixtures(
                        "zone-never.ics", march(), Answers.NONE.with(Answers.ZONE_OF, "Club Time=Europe/Dublin"))))
                .containsExactly("new: Sat 2027-03-06 15:00 to 16:45 · League round 18");
    }

    @Test
    void blank_lines_a_mark_before_the_text_and_bare_line_feeds_do_not_matter() {
        assertThat(rows(fixtures("blank-bom-lf.ics")))
                .containsExactly("new: Sat 2027-03-06 14:30 to 16:15 · League round 18");
    }

    @Test
    void a_character_that_folding_has_cut_in_two_is_whole_again() {
        assertThat(rows(fixtures("folded.ics")))
                .containsExactly("new: Sat 2027-03-06 14:30 to 16:15 · Städtefreundschaft am Übungsfeld");
    }

    @Test
    void an_hour_that_never_happens_is_asked_about() {
        assertThat(rows(fixtures("never.ics")))
                .containsExactly("asked: Sun 2027-03-28 02:30 · Night match | 01:30 never happens that night in"
                        + " Europe/Dublin, as the clocks go forward; is it 02:30?");
        assertThat(rows(fixtures("never.ics", march(), Answers.NONE.with(Answers.ACCEPT, "1"))))
                .containsExactly("new: Sun 2027-03-28 02:30 to 04:00 · Night match");
    }

    @Test
    void an_hour_that_happens_twice_is_the_earlier_and_that_is_said() {
        Preview preview = fixtures("twice.ics", squad("2027-10-25", 7), Answers.NONE);

        assertThat(rows(preview))
                .containsExactly("new: Sun 2027-10-31 01:30 to 04:00 · Night match | 01:30 happens twice that night in"
                        + " Europe/Dublin; it is the earlier of the two");
        assertThat(preview.take(false).fixtures().get(0).minutes()).isEqualTo(210);
    }

    @Test
    void two_calendars_in_a_file_are_both_read() {
        Preview preview = fixtures("two-calendars.ics");

        assertThat(rows(preview))
                .containsExactly(
                        "new: Sat 2027-03-06 14:30 to 16:15 · League round 18",
                        "new: Wed 2027-03-17 19:30 to 21:15 · Cup round 2");
        assertThat(preview.how()).containsExactly("2 calendars in one file with 2 events.");
    }

    @Test
    void what_is_no_calendar_is_said_to_be_none() {
        assertThatThrownBy(() -> fixtures("no-calendar.ics"))
                .isInstanceOf(InputFault.class)
                .hasMessage(
                        "line 1: VEVENT stands outside of any calendar: BEGIN:VCALENDAR is missing; export it again");
        assertThatThrownBy(() -> fixtures("web-page.ics"))
                .hasMessage(
                        "this is a web page or another kind of file, not a calendar: fetch the address of the calendar"
                                + " itself, often ending in .ics");
        assertThatThrownBy(() -> fixtures("broken-off.ics"))
                .hasMessage("the calendar breaks off inside the VEVENT that begins in line 4: it did not arrive whole;"
                        + " fetch it again");
    }

    @Test
    void a_week_without_a_fixture_is_no_fixture_unless_a_coach_says_so() {
        assertThat(rows(fixtures("bye.ics")))
                .containsExactly(
                        "asked: Sat 2027-03-13 · Bye week | no time",
                        "asked: Sat 2027-03-20 12:00 · BYE | it reads like a week without a fixture; is one played?");
    }

    @Test
    void a_result_is_left_out_of_the_name_and_other_numbers_stay() {
        assertThat(rows(fixtures("results.ics")))
                .containsExactly(
                        "new: Sat 2027-03-06 14:30 to 16:15 · Harbour Rovers – Quayside | the result 2 - 1 is left out of the"
                                + " name",
                        "new: Sat 2027-03-13 14:30 to 16:15 · Quayside v Milltown | the result 0–3 is left out of the name",
                        "new: Sat 2027-03-20 14:30 to 16:15 · U12-14 cup 2026-27, Quayside v Fenwick");
    }

    @Test
    void a_match_after_midnight_lies_on_its_own_day_and_midnight_itself_is_asked_about() {
        assertThat(rows(fixtures("after-midnight.ics")))
                .containsExactly(
                        "new: Fri 2027-03-12 23:30 to Sat 2027-03-13 01:15 · Late match",
                        "new: Sat 2027-03-20 00:15 to 02:00 · Early match",
                        "asked: Thu 2027-03-25 00:00 · Midnight match | it starts at midnight, which often stands for a time"
                                + " that is not known");
    }

    @Test
    void a_daily_rule_without_end_gives_the_days_of_the_plan() {
        Preview preview = spans("daily-endless.ics", Wanted.of(What.CLOSURES).facility("hall"));

        assertThat(preview.count(Verdict.NEW)).isEqualTo(28);
        assertThat(preview.take(false).facilities().get(0).closed()).hasSize(28);
        assertThat(rows(preview)).contains("new: Mon 2027-03-01 18:00 to 19:00 · Hall booked");
    }

    @Test
    void a_rule_within_the_day_is_refused() {
        assertThat(rows(fixtures("secondly.ics")))
                .containsExactly(
                        "unreadable: Mon 2027-03-01 00:00 · Ticks | it repeats by the rule FREQ=SECONDLY, which is"
                                + " not once a day, week, month or year at most");
    }

    @Test
    void a_hundred_thousand_events_are_refused() {
        String event = "BEGIN:VEVENT\nDTSTART:20270306T143000Z\nEND:VEVENT\n";
        byte[] many =
                ("BEGIN:VCALENDAR\n" + event.repeat(100_000) + "END:VCALENDAR\n").getBytes(StandardCharsets.UTF_8);

        assertThatThrownBy(() -> Intake.preview(many, march(), Wanted.FIXTURES, Answers.NONE))
                .isInstanceOf(InputFault.class)
                .hasMessage("the calendar holds more than 10,000 events: a season has some hundreds; export the season"
                        + " only");
    }

    @Test
    void what_is_built_to_hurt_is_refused() {
        String deep = "BEGIN:VCALENDAR\n" + "BEGIN:VEVENT\n".repeat(100_000);
        String series = "BEGIN:VEVENT\nUID:%\nDTSTART:19700101T000000Z\nRRULE:FREQ=DAILY;COUNT=999999999\nEND:VEVENT\n";
        String line = "BEGIN:VCALENDAR\nX:" + "\u00e9".repeat(9_000_000);

        assertRefused(
                deep,
                "line 9: parts of the calendar lie more than 8 deep inside each other: this is no calendar that"
                        + " a program would write");
        assertRefused(
                calendar(series.repeat(201)),
                "the calendar holds 201 repeated events: more than 200 are not looked at; export the season only");
        assertRefused(
                line, "the calendar is larger than 16 MiB: a season needs a fraction of that; export the season only");
        assertRefused(
                "BEGIN:VCALENDAR\nEND:VEVENT\n",
                "line 2 ends VEVENT, but what was begun is VCALENDAR in line 1: the"
                        + " calendar is damaged; export it again");
        assertRefused(
                calendar("BEGIN:VEVENT\nUID:1\nDTSTART:20260101T000000Z\nRRULE:FREQ=DAILY\nEND:VEVENT\n"
                        .replace("UID:1", "UID:%")
                        .repeat(150)),
                "the calendar comes to more than 10,000 events with all repetitions: export the season only");
    }

    private static String calendar(String events) {
        StringBuilder numbered = new StringBuilder();
        int number = 0;
        for (String part : events.split("%", -1)) {
            numbered.append(numbered.isEmpty() ? "" : String.valueOf(number++)).append(part);
        }
        return "BEGIN:VCALENDAR\n" + numbered + "END:VCALENDAR\n";
    }

    private static void assertRefused(String calendar, String message) {
        assertThatThrownBy(() -> Intake.preview(
                        calendar.getBytes(StandardCharsets.UTF_8), march(), Wanted.FIXTURES, Answers.NONE))
                .isInstanceOf(InputFault.class)
                .hasMessage(message);
    }

    @Test
    void the_newest_version_of_an_event_counts() {
        assertThat(rows(fixtures("versions.ics")))
                .containsExactly("new: Sun 2027-03-07 14:30 to 16:15 · League round 18");
    }

    @Test
    void what_else_a_calendar_holds_is_counted_and_named() {
        Preview preview = fixtures("other-lines.ics");

        assertThat(rows(preview)).containsExactly("new: Sat 2027-03-06 14:30 to 16:15 · League: round 18");
        assertThat(preview.how())
                .containsExactly(
                        "A calendar with 1 event.",
                        "Not looked at: 1 VTODO.",
                        "Passed over: 1 lines that have no form of a calendar's, the first is line 8.");
    }

    @Test
    void why_an_athlete_is_away_stays_in_the_athlete_s_calendar() {
        Preview preview = spans("private.ics", Wanted.of(What.AWAY).athlete("a01"));

        assertThat(rows(preview))
                .containsExactly(
                        "new: Tue 2027-03-02 09:30 to 10:30",
                        "passed over: Wed 2027-03-03 09:30 | marked as free time");
        Scenario taken = preview.take(false);
        assertThat(taken.athletes().get(0).away()).hasSize(1).allMatch(away -> away.why() == null);
    }

    @Test
    void closures_that_the_file_has_no_more_stay_or_go_as_the_coach_says() {
        Wanted hall = Wanted.of(What.CLOSURES).facility("hall");
        Scenario closed =
                Intake.preview(file("all-day.ics"), march(), hall, Answers.NONE).take(false);

        Preview again = Intake.preview(file("all-day.ics"), closed, hall, Answers.NONE);
        assertThat(again.count(Verdict.SAME)).isEqualTo(2);
        assertThat(again.take(false)).isEqualTo(closed);
        Preview other = Intake.preview(file("plain.ics"), closed, hall, Answers.NONE);
        assertThat(other.notes())
                .containsExactly("In the scenario and not in the file, so they stay (--replace takes them out): Sat"
                        + " 2027-03-06 00:00 to Mon 2027-03-08 00:00, Wed 2027-03-10 00:00 to Thu 2027-03-11 00:00.");
        Scenario replaced = Intake.preview(file("plain.ics"), closed, hall, Answers.NONE.with(Answers.REPLACE))
                .take(false);
        assertThat(replaced.facilities().get(0).closed())
                .extracting(away -> away.from().toString())
                .isEqualTo(List.of("2027-03-06T14:30", "2027-03-13T15:00"));
    }
}
