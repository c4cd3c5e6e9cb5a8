package weekwright.desk.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import weekwright.desk.app.InputFault;
import weekwright.desk.export.OtherReader.Event;
import weekwright.desk.view.Names;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.JudgedWeek;
import weekwright.scenarios.Scenarios;

/** Calendars that others read: valid by RFC 5545, true to the plan, and quiet about names and reasons. */
class CalendarsTest {
    private static final Instant MONDAY = Instant.parse("2027-02-08T12:00:30Z");
    private static final Instant TUESDAY = Instant.parse("2027-02-09T07:15:00Z");

    private static final Scenario WEEK = Plans.week();
    private static final Judged PLAN = Plans.judged(WEEK, Plans.HEAVY, Plans.SPEED, Plans.UPPER);

    private static final String RUNS = new Names(WEEK).family("repeated-sprint");

    private static Whose squad(Scenario scenario) {
        return Whose.of(scenario, null, null);
    }

    private static Calendars.Made first(Scenario scenario, Judged judged, Whose whose) {
        return Calendars.of(scenario, judged, whose, MONDAY, null);
    }

    private static Calendars.Made again(Scenario scenario, Judged judged, Whose whose, Calendars.Made before) {
        return Calendars.of(scenario, judged, whose, TUESDAY, new Calendars.Before("week.ics", before.text()));
    }

    @Test
    void a_calendar_is_written_like_this() {
        String text = first(WEEK, Plans.judged(WEEK, Plans.HEAVY), squad(WEEK)).text();

        assertThat(text)
                .startsWith("""
                        BEGIN:VCALENDAR
                        VERSION:2.0
                        PRODID:-//Weekwright//Weekwright 0.1.0//EN
                        CALSCALE:GREGORIAN
                        X-WEEKWRIGHT-CALENDAR:%s
                        BEGIN:VTIMEZONE
                        TZID:Europe/Dublin
                        BEGIN:STANDARD
                        DTSTART:20261025T020000
                        TZOFFSETFROM:+0100
                        TZOFFSETTO:+0000
                        END:STANDARD
                        END:VTIMEZONE
                        """.replace("%s", "a50fc7ff-4740-3ae0-b419-7d4e907d08eb")
                        .replace("\n", "\r\n"))
                .contains("""
                        DTSTAMP:20270208T120030Z
                        SEQUENCE:0
                        DTSTART;TZID=Europe/Dublin:20270209T120000
                        DTEND;TZID=Europe/Dublin:20270209T130000
                        SUMMARY:Heavy lower\\, knee-dominant\\, Back squat
                        LOCATION:Weights room
                        DESCRIPTION:Led by H. Wrenlow\\, speed.
                        STATUS:CONFIRMED
                        TRANSP:OPAQUE
                        END:VEVENT
                        """.replace("\n", "\r\n"))
                .endsWith("END:VEVENT\r\nEND:VCALENDAR\r\n");
    }

    @Test
    void the_calendars_of_demo_weeks_are_valid_without_an_entry() {
        for (String demo : List.of("one-match", "two-matches", "two-evenings", "sprint-week", "clash", "academy")) {
            Scenario scenario = Scenarios.read(demo);
            Judged empty = Plans.judged(scenario);
            scenario.groups().forEach(group -> assertValid(scenario, empty, Whose.of(scenario, group.id(), null)));
            scenario.athletes().forEach(one -> assertValid(scenario, empty, Whose.of(scenario, null, one.id())));
        }
    }

    private static void assertValid(Scenario scenario, Judged judged, Whose whose) {
        assertThat(OtherReader.of(first(scenario, judged, whose).text())
                        .validation()
                        .getEntries())
                .isEmpty();
    }

    @Test
    void another_reader_finds_the_same_plan_in_it() {
        JudgedWeek good = Scenarios.week('A');
        Scenario scenario = good.scenario();
        Judged judged = weekwright.engine.Engine.judge(scenario, good.plan());
        OtherReader read =
                OtherReader.of(first(scenario, judged, squad(scenario)).text());

        assertThat(read.validation().getEntries()).isEmpty();
        List<Event> sessions = judged.plan().placements().stream()
                .map(placement -> read.events().stream()
                        .filter(event -> event.uid().equals(uid(scenario, placement)))
                        .findFirst()
                        .orElseThrow())
                .toList();
        assertThat(sessions)
                .extracting(Event::start)
                .containsExactlyElementsOf(judged.plan().placements().stream()
                        .map(placement -> placement.start().instant(scenario.zone()))
                        .toList());
        assertThat(sessions)
                .extracting(Event::end)
                .containsExactlyElementsOf(judged.plan().placements().stream()
                        .map(placement -> placement
                                .start()
                                .instant(scenario.zone())
                                .plusSeconds(60L * Objects.requireNonNull(placement.minutes())))
                        .toList());
        Names names = new Names(scenario);
        assertThat(sessions)
                .extracting(Event::place)
                .containsExactlyElementsOf(judged.plan().placements().stream()
                        .map(placement -> Objects.requireNonNullElse(names.facility(placement.facility()), ""))
                        .toList());
        assertThat(read.events()).hasSize(6 + 4 + 1);
    }

    private static String uid(Scenario scenario, Placement placement) {
        return Timetable.uid(scenario, squad(scenario), "session/" + placement.id())
                .toString();
    }

    @Test
    void an_unchanged_calendar_is_the_same_to_the_byte_a_day_later() {
        Calendars.Made before = first(WEEK, PLAN, squad(WEEK));
        Calendars.Made after = again(WEEK, PLAN, squad(WEEK), before);

        assertThat(after.text()).isEqualTo(before.text());
        assertThat(before.said()).isEqualTo("8 entries.");
        assertThat(after.said()).isEqualTo("8 entries: 0 new, 0 changed, 0 cancelled.");
    }

    @Test
    void a_moved_session_keeps_its_uid_and_gets_the_next_sequence() {
        Calendars.Made before = first(WEEK, PLAN, squad(WEEK));
        Judged moved =
                Plans.judged(WEEK, Plans.HEAVY, Plans.SPEED, Plans.place("upper-strength", "2027-02-11T14:00", "gym"));

        Calendars.Made after = again(WEEK, moved, squad(WEEK), before);

        Event old = OtherReader.of(before.text()).event("Upper push and pull");
        Event upper = OtherReader.of(after.text()).event("Upper push and pull");
        assertThat(upper.uid()).isEqualTo(old.uid());
        assertThat(upper.sequence()).isEqualTo(1);
        assertThat(upper.stamp()).isEqualTo("20270209T071500Z");
        assertThat(upper.start()).isEqualTo("2027-02-11T14:00:00Z");
        assertThat(OtherReader.of(after.text()).events())
                .filteredOn(event -> event.sequence() > 0)
                .hasSize(1);
        assertThat(after.said()).isEqualTo("8 entries: 0 new, 1 changed, 0 cancelled.");
    }

    @Test
    void a_session_that_is_gone_is_cancelled_once_and_comes_back_with_the_next_sequence() {
        Calendars.Made before = first(WEEK, PLAN, squad(WEEK));
        Judged without = Plans.judged(WEEK, Plans.HEAVY, Plans.SPEED);

        Calendars.Made gone = again(WEEK, without, squad(WEEK), before);
        Calendars.Made stillGone = again(WEEK, without, squad(WEEK), gone);
        Calendars.Made back = again(WEEK, PLAN, squad(WEEK), stillGone);

        Event cancelled = OtherReader.of(gone.text()).event("Upper push and pull");
        assertThat(cancelled.status()).isEqualTo("CANCELLED");
        assertThat(cancelled.sequence()).isEqualTo(1);
        assertThat(gone.said()).isEqualTo("7 entries: 0 new, 0 changed, 1 cancelled.");
        assertThat(OtherReader.of(gone.text()).validation().getEntries()).isEmpty();
        assertThat(stillGone.text()).isEqualTo(gone.text());
        Event again = OtherReader.of(back.text()).event("Upper push and pull");
        assertThat(again.status()).isEqualTo("CONFIRMED");
        assertThat(again.sequence()).isEqualTo(2);
    }

    private static Calendars.Edition edition(int number, Judged judged) {
        return new Calendars.Edition(number, MONDAY.plusSeconds(number), WEEK, judged.plan(), squad(WEEK));
    }

    private static OtherReader followed(Calendars.Edition... editions) {
        Calendars calendar = null;
        for (Calendars.Edition edition : editions) {
            calendar = Calendars.follow(calendar, edition);
        }
        return OtherReader.of(calendar.made(squad(WEEK)).text());
    }

    @Test
    void a_calendar_of_a_folder_follows_all_earlier_ones_though_nobody_kept_them() {
        Judged moved =
                Plans.judged(WEEK, Plans.HEAVY, Plans.SPEED, Plans.place("upper-strength", "2027-02-11T14:00", "gym"));
        Judged without = Plans.judged(WEEK, Plans.HEAVY, Plans.SPEED);
        String upper = new Names(WEEK).family("upper-strength");

        OtherReader second = followed(edition(2, PLAN));
        OtherReader fourth = followed(edition(2, PLAN), edition(4, moved));
        // Revision 2 is kept no longer: numbers only rise.
        OtherReader seventh = followed(edition(4, moved), edition(7, without));

        assertThat(second.event(upper).sequence()).isEqualTo(2);
        assertThat(fourth.event(upper).sequence()).as("moved").isEqualTo(4);
        assertThat(fourth.events())
                .as("all else as it was")
                .filteredOn(event -> event.sequence() == 2)
                .hasSize(fourth.events().size() - 1);
        assertThat(seventh.event(upper).sequence()).isEqualTo(7);
        assertThat(seventh.event(upper).status()).isEqualTo("CANCELLED");
        assertThat(seventh.event(upper).uid()).isEqualTo(second.event(upper).uid());
        assertThat(seventh.validation().hasErrors()).isFalse();
    }

    @Test
    void when_the_plan_goes_on_to_the_next_week_what_is_past_stays() {
        Calendars.Made before = first(WEEK, PLAN, squad(WEEK));
        Scenario next = Plans.week(text -> text.replace("\"firstDay\": \"2027-02-08\"", "\"firstDay\": \"2027-02-10\"")
                .replace("2027-02-09T10:30", "2027-02-16T10:30")
                .replace("2027-01-12T", "2027-01-13T"));
        Judged nothing = Plans.judged(next);

        List<Event> events =
                OtherReader.of(again(next, nothing, squad(next), before).text()).events();

        assertThat(events.stream()
                        .filter(event -> event.title().startsWith("Heavy"))
                        .findFirst()
                        .orElseThrow()
                        .status())
                .isEqualTo("CONFIRMED");
        assertThat(events.stream()
                        .filter(event -> event.title().startsWith("Maximal"))
                        .findFirst()
                        .orElseThrow()
                        .status())
                .isEqualTo("CANCELLED");
    }

    @Test
    void no_uid_shows_a_name_and_each_reader_has_uids_of_their_own() {
        String squad = first(WEEK, PLAN, squad(WEEK)).text();
        String athlete = first(WEEK, PLAN, Whose.of(WEEK, null, "a05")).text();

        List<String> uids =
                OtherReader.of(squad).events().stream().map(Event::uid).toList();
        assertThat(uids).doesNotHaveDuplicates().allMatch(uid -> uid.matches("[0-9a-f-]{36}"));
        assertThat(OtherReader.of(athlete).events()).extracting(Event::uid).doesNotContainAnyElementsOf(uids);
    }

    @Test
    void who_is_restricted_reads_that_they_sit_out_and_nobody_reads_why() {
        String text = first(WEEK, PLAN, Whose.of(WEEK, null, "a05")).text();

        Event speed = OtherReader.of(text).event("Sits out: Maximal velocity sprinting");
        assertThat(speed.start()).isEqualTo("2027-02-10T09:00:00Z");
        assertThat(text)
                .contains("SUMMARY:Sits out: Maximal velocity sprinting\r\n")
                .contains("TRANSP:TRANSPARENT")
                .doesNotContainIgnoringCase("clinician")
                .doesNotContain(WEEK.athletes().stream()
                        .map(weekwright.model.scenario.Athlete::name)
                        .toArray(String[]::new));
        assertThat(first(WEEK, PLAN, squad(WEEK)).text()).doesNotContain("Sits out");
    }

    @Test
    void a_session_for_those_who_did_not_play_is_only_in_their_calendars() {
        Scenario sunday = Scenarios.read("bench-sunday");
        Judged judged = weekwright.engine.Engine.judge(sunday, plan(sunday));
        List<String> withIt = sunday.athletes().stream()
                .map(weekwright.model.scenario.Athlete::id)
                .filter(id ->
                        first(sunday, judged, Whose.of(sunday, null, id)).text().contains("SUMMARY:" + RUNS))
                .toList();

        assertThat(withIt).isNotEmpty().hasSizeLessThan(sunday.athletes().size());
        assertThat(OtherReader.of(first(sunday, judged, squad(sunday)).text()).events())
                .filteredOn(event -> event.title().equals(RUNS))
                .extracting(Event::note)
                .containsExactly("For those who did not play.\nLed by W. Tandrell, performance.");
    }

    /** Repeated sprints on the day after the earliest fixture. */
    private static weekwright.model.plan.Plan plan(Scenario scenario) {
        var fixture = scenario.fixtures().stream()
                .min(Comparator.comparing(one -> one.start().local()))
                .orElseThrow();
        String group = scenario.groups().get(0).id();
        String json = """
                { "weekwright": 1, "scenario": "SCENARIO", "placements": [
                  { "id": "GROUP/repeated-sprint+not-played/WEEK/1", "group": "GROUP", "family": "repeated-sprint", "start": "DAYT11:00" } ] }
                """.replace("SCENARIO", scenario.id())
                .replace("GROUP", group)
                .replace("WEEK", scenario.firstDay().toString())
                .replace("DAY", fixture.start().date().plusDays(1).toString());
        try {
            return weekwright.model.document.Documents.readPlan(
                    "plan.json", json.getBytes(StandardCharsets.UTF_8), scenario);
        } catch (weekwright.model.document.DocumentException e) {
            throw new IllegalArgumentException(e);
        }
    }

    @Test
    void hostile_names_stay_text_and_no_line_is_longer_than_75_octets() {
        String name = "<script>alert(1)</script>;,\\n עברית 🏟🏟🏟 " + "ä".repeat(120);
        Scenario hostile = Plans.week(text -> text.replace("Weights room", name.replace("\\", "\\\\")));
        String text = first(hostile, Plans.judged(hostile, Plans.HEAVY), squad(hostile))
                .text();

        assertThat(text.split("\r\n", -1))
                .allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= CalendarLines.OCTETS);
        assertThat(text).doesNotContain("�");
        OtherReader read = OtherReader.of(text);
        assertThat(read.validation().getEntries()).isEmpty();
        assertThat(read.event("Heavy lower, knee-dominant, Back squat").place()).isEqualTo(name);
        assertThat(CalendarLines.text("SUMMARY", "a\nBEGIN:VEVENT\r\u0007b")).isEqualTo("SUMMARY:a\\nBEGIN:VEVENTb");
    }

    @Test
    void a_calendar_of_somebody_else_is_not_written_over() {
        String squad = first(WEEK, PLAN, squad(WEEK)).text();
        String foreign = "BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:x\nEND:VCALENDAR\n";

        assertThatThrownBy(() -> Calendars.of(
                        WEEK, PLAN, Whose.of(WEEK, null, "a05"), TUESDAY, new Calendars.Before("week.ics", squad)))
                .isInstanceOf(InputFault.class)
                .hasMessage("week.ics holds the calendar of somebody else, or of another scenario:"
                        + " give each a file of its own");
        assertThatThrownBy(
                        () -> Calendars.of(WEEK, PLAN, squad(WEEK), TUESDAY, new Calendars.Before("week.ics", foreign)))
                .hasMessage("week.ics is there already and was not written here, so it is not replaced:"
                        + " give the name of another file");
        assertThatThrownBy(() -> Calendars.of(
                        WEEK, PLAN, squad(WEEK), TUESDAY, new Calendars.Before("week.ics", squad.substring(0, 700))))
                .hasMessageStartingWith(
                        "week.ics is there already and cannot be read (the calendar breaks off inside the"
                                + " VEVENT that begins in line ")
                .hasMessageEndingWith("): delete it, or give the name of another file");
        assertThatThrownBy(() -> Calendars.of(
                        WEEK,
                        PLAN,
                        squad(WEEK),
                        TUESDAY,
                        new Calendars.Before("week.ics", squad.replace("SEQUENCE:0", "SEQUENCE:zero"))))
                .hasMessage("week.ics is damaged: delete it, or give the name of another file");
    }

    @Test
    void who_is_meant_must_be_known() {
        Scenario two = Scenarios.read("two-groups");

        assertThatThrownBy(() -> Whose.of(two, null, null))
                .hasMessage("the scenario has several groups: say for whom with --group, one of "
                        + two.groups().get(0).id() + ", " + two.groups().get(1).id() + ", or with --athlete");
        assertThatThrownBy(() -> Whose.of(WEEK, "first-sqaud", null))
                .hasMessage("no group is called \"first-sqaud\": did you mean first-squad?");
        assertThatThrownBy(() -> Whose.of(WEEK, null, "a99"))
                .hasMessageStartingWith("no athlete is called \"a99\": did you mean a0");
        assertThatThrownBy(() -> Whose.of(WEEK, "first-squad", "a05"))
                .hasMessage("give --group or --athlete, not both");
    }
}
