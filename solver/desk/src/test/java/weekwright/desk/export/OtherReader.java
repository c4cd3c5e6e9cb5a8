package weekwright.desk.export;

import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.TemporalAdapter;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DateProperty;
import net.fortuna.ical4j.validate.ValidationResult;

/** Reads our calendars with somebody else's eyes: those of the ical4j library. */
final class OtherReader {
    private final Calendar calendar;

    private OtherReader(Calendar calendar) {
        this.calendar = calendar;
    }

    static OtherReader of(String text) {
        try {
            return new OtherReader(new CalendarBuilder().build(new StringReader(text)));
        } catch (IOException | ParserException e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    /** What the library finds wrong by RFC 5545. */
    ValidationResult validation() {
        return calendar.validate();
    }

    List<Event> events() {
        return calendar.<VEvent>getComponents("VEVENT").stream()
                .map(OtherReader::event)
                .toList();
    }

    Event event(String title) {
        return events().stream()
                .filter(event -> event.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    private static Event event(VEvent event) {
        return new Event(
                value(event, "UID"),
                value(event, "SUMMARY"),
                value(event, "LOCATION"),
                value(event, "DESCRIPTION"),
                value(event, "STATUS"),
                Integer.parseInt(value(event, "SEQUENCE")),
                value(event, "DTSTAMP"),
                instant(event, "DTSTART"),
                instant(event, "DTEND"));
    }

    private static String value(VEvent event, String property) {
        return event.getProperty(property).map(found -> found.getValue()).orElse("");
    }

    private static Instant instant(VEvent event, String property) {
        DateProperty<?> date = event.<DateProperty<?>>getProperty(property).orElseThrow();
        return TemporalAdapter.toLocalTime(date.getDate(), java.time.ZoneOffset.UTC)
                .toInstant();
    }

    record Event(
            String uid,
            String title,
            String place,
            String note,
            String status,
            int sequence,
            String stamp,
            Instant start,
            Instant end) {}
}
