package weekwright.desk.export;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import weekwright.desk.app.InputFault;
import weekwright.desk.intake.calendar.Component;
import weekwright.desk.intake.calendar.Components;
import weekwright.desk.intake.calendar.ContentLine;

/**
 * A calendar that was written here earlier.
 *
 * @param events its events by UID, in order
 * @param zones the zones that it describes
 */
record WrittenCalendar(Map<String, Event> events, List<Component> zones) {
    /** Names the calendar of one reader, so that another's is not taken for it. */
    static final String OF = "X-WEEKWRIGHT-CALENDAR";

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);
    private static final List<String> OF_THE_WRITING = List.of("UID", "DTSTAMP", "SEQUENCE");
    private static final String DAMAGED = " is damaged: delete it, or give the name of another file";

    /** Nothing was written before. */
    static final WrittenCalendar NONE = new WrittenCalendar(Map.of(), List.of());

    /**
     * An event as it was written.
     *
     * @param content its lines but for those that say which writing of it this is
     */
    record Event(String uid, int sequence, String stamp, Instant start, LocalDate day, List<String> content) {
        boolean isCancelled() {
            return content.contains("STATUS:CANCELLED");
        }
    }

    /**
     * Reads it.
     *
     * @param of the reader whose calendar it must be
     * @throws InputFault when it is no calendar of this program, or another reader's
     */
    static WrittenCalendar read(String file, String text, String of) {
        List<Component> calendars;
        try {
            calendars =
                    Components.read(text.getBytes(StandardCharsets.UTF_8), null).calendars();
        } catch (InputFault e) {
            throw new InputFault(file + " is there already and cannot be read (" + e.getMessage()
                    + "): delete it, or give the name of another file");
        }
        String written = calendars.get(0).value(OF);
        if (calendars.size() != 1 || written == null) {
            throw new InputFault(file + " is there already and was not written here, so it is not replaced:"
                    + " give the name of another file");
        }
        if (!written.equals(of)) {
            throw new InputFault(file + " holds the calendar of somebody else, or of another scenario:"
                    + " give each a file of its own");
        }
        Component calendar = calendars.get(0);
        Map<String, Event> events = new LinkedHashMap<>();
        calendar.parts("VEVENT").map(event -> event(file, event)).forEach(event -> events.put(event.uid(), event));
        return new WrittenCalendar(events, calendar.parts("VTIMEZONE").toList());
    }

    private static Event event(String file, Component event) {
        try {
            ContentLine start = event.property("DTSTART").orElseThrow(() -> new InputFault(file + DAMAGED));
            ZoneId zone = start.value().endsWith("Z")
                    ? ZoneOffset.UTC
                    : ZoneId.of(start.parameters().get("TZID"));
            LocalDateTime local = LocalDateTime.parse(start.value().replace("Z", ""), TIME);
            return new Event(
                    event.text("UID"),
                    Integer.parseInt(event.text("SEQUENCE")),
                    event.text("DTSTAMP"),
                    local.atZone(zone).toInstant(),
                    local.toLocalDate(),
                    event.properties().stream()
                            .filter(line -> !OF_THE_WRITING.contains(line.name()))
                            .map(ContentLine::raw)
                            .toList());
        } catch (DateTimeParseException | NumberFormatException | NullPointerException e) {
            throw new InputFault(file + DAMAGED);
        }
    }
}
