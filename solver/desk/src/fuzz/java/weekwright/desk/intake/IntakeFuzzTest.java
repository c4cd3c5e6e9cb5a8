package weekwright.desk.intake;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import weekwright.desk.app.InputFault;
import weekwright.model.scenario.Scenario;

/**
 * Feeds the readers of files from outside with whatever a fuzzer comes up with: what comes of it is a preview that can be taken,
 * or a refusal. With JAZZER_FUZZ=1 in the environment it searches, else it only runs over what is known.
 */
class IntakeFuzzTest {
    private static final Scenario MARCH = Takes.march();
    private static final Answers MINUTES = Answers.NONE.with(Answers.MINUTES, "105");
    private static final String CALENDAR = "BEGIN:VCALENDAR\r\n%sEND:VCALENDAR\r\n";
    private static final String EVENT = "BEGIN:VEVENT\r\nUID:1\r\nDTSTART:20270306T143000Z\r\n%s\r\nEND:VEVENT\r\n";

    private static void take(byte[] file, Wanted wanted) {
        try {
            Intake.preview(file, MARCH, wanted, MINUTES).take(true);
        } catch (InputFault refused) {
            if (refused.getMessage() == null || refused.getMessage().contains("no longer be sound")) {
                throw refused;
            }
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @DictionaryEntries({
        "BEGIN:VCALENDAR",
        "END:VCALENDAR",
        "BEGIN:VEVENT",
        "END:VEVENT",
        "BEGIN:VTIMEZONE",
        "TZID:",
        "DTSTART:",
        "DTEND:",
        "DURATION:P",
        "RRULE:FREQ=",
        "DAILY",
        "WEEKLY",
        "UNTIL=",
        "COUNT=",
        "INTERVAL=",
        "BYDAY=",
        "EXDATE:",
        "RDATE:",
        "RECURRENCE-ID:",
        "SUMMARY:",
        "STATUS:CANCELLED",
        ";VALUE=DATE:",
        ";TZID=",
        "20270306T143000"
    })
    @FuzzTest(maxDuration = "60s")
    void calendars(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        take(bytes, Wanted.FIXTURES);
        take(bytes(CALENDAR.replace("%s", text)), Wanted.FIXTURES);
        take(bytes(CALENDAR.replace("%s", EVENT.replace("%s", text))), Wanted.of(What.AWAY));
        take(bytes(CALENDAR.replace("%s", EVENT.replace("%s", "RRULE:" + text))), Wanted.FIXTURES);
    }

    @DictionaryEntries({
        "date,time,event,minutes",
        "2027-03-06",
        "06/03/2027",
        "15:00",
        "3 PM",
        ",",
        ";",
        "\"",
        "sep=;",
        "TBC",
        "cancelled",
        "Mon-Fri",
        "athlete,metres,seconds,start,timing,date",
        "1.234,5",
        "Sat 6 March 2027"
    })
    @FuzzTest(maxDuration = "60s")
    void tables(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        take(bytes, Wanted.FIXTURES);
        take(bytes("date,time,event,minutes,end,zone,old date\n" + text), Wanted.FIXTURES);
        take(bytes("days;from;to\n" + text), Wanted.of(What.WINDOWS));
        take(bytes("athlete,metres,seconds,start,timing,lift,kg,reps,speed,date\na01," + text), Wanted.of(What.MARKS));
        take(bytes("name,group,level,born\n" + text), Wanted.of(What.ATHLETES));
    }
}
