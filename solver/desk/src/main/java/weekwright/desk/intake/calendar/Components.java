package weekwright.desk.intake.calendar;

import java.nio.charset.Charset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.InputFault;
import weekwright.desk.intake.Limits;

/** Builds the components of a calendar file from its lines. */
public final class Components {
    private static final String CALENDAR = "VCALENDAR";
    private static final String EVENT = "VEVENT";

    private final Deque<Open> open = new ArrayDeque<>();
    private final List<Component> calendars = new ArrayList<>();
    private final List<Component> loose = new ArrayList<>();
    private int events;

    private Components() {}

    private record Open(String name, int line, List<ContentLine> properties, List<Component> parts) {
        Component closed() {
            return new Component(name, line, properties, parts);
        }
    }

    /**
     * What a file holds.
     *
     * @param calendars its calendars, one at least
     * @param unreadable numbers of lines that belong to no calendar's form
     */
    public record Found(List<Component> calendars, List<Integer> unreadable) {}

    /**
     * Reads the calendars of a file.
     *
     * @param named the encoding that the coach names, or null for UTF-8
     * @throws InputFault when it is no calendar, or too large, or broken off
     */
    public static Found read(byte[] bytes, @Nullable Charset named) {
        ContentLines.Found found = ContentLines.read(bytes, named);
        Components reading = new Components();
        found.lines().forEach(reading::take);
        reading.finish(bytes);
        return new Found(List.copyOf(reading.calendars), found.unreadable());
    }

    private void take(ContentLine line) {
        switch (line.name()) {
            case "BEGIN" -> begin(line);
            case "END" -> end(line);
            default -> {
                if (!open.isEmpty()) {
                    open.peek().properties().add(line);
                }
            }
        }
    }

    private void begin(ContentLine line) {
        String name = named(line);
        if (open.size() >= Limits.DEPTH) {
            throw new InputFault("line " + line.line() + ": parts of the calendar lie more than " + Limits.DEPTH
                    + " deep inside each other: this is no calendar that a program would write");
        }
        events += name.equals(EVENT) ? 1 : 0;
        if (events > Limits.ENTRIES) {
            throw new InputFault("the calendar holds more than 10,000 events: a season has some hundreds;"
                    + " export the season only");
        }
        open.push(new Open(name, line.line(), new ArrayList<>(), new ArrayList<>()));
    }

    private void end(ContentLine line) {
        Open last = open.poll();
        if (last == null || !last.name().equals(named(line))) {
            throw new InputFault("line " + line.line() + " ends " + shown(line)
                    + (last == null
                            ? ", which was never begun"
                            : ", but what was begun is " + last.name() + " in line " + last.line())
                    + ": the calendar is damaged; export it again");
        }
        Component closed = last.closed();
        if (!open.isEmpty()) {
            open.peek().parts().add(closed);
        } else {
            (closed.name().equals(CALENDAR) ? calendars : loose).add(closed);
        }
    }

    private static String named(ContentLine line) {
        return line.value().strip().toUpperCase(Locale.ROOT);
    }

    private static String shown(ContentLine line) {
        String name = named(line);
        return name.length() > 40 ? name.substring(0, 40) + "…" : name;
    }

    private void finish(byte[] bytes) {
        Open last = open.peek();
        if (last != null) {
            throw new InputFault("the calendar breaks off inside the " + last.name() + " that begins in line "
                    + last.line() + ": it did not arrive whole; fetch it again");
        }
        if (calendars.isEmpty()) {
            throw new InputFault(none(bytes));
        }
    }

    private String none(byte[] bytes) {
        if (!loose.isEmpty()) {
            return "line " + loose.get(0).line() + ": " + loose.get(0).name()
                    + " stands outside of any calendar: BEGIN:VCALENDAR is missing; export it again";
        }
        for (byte b : bytes) {
            if (b == '<') {
                return "this is a web page or another kind of file, not a calendar: fetch the address of the calendar"
                        + " itself, often ending in .ics";
            }
            if (b > ' ') {
                break;
            }
        }
        return "there is no calendar in the file: it must hold BEGIN:VCALENDAR";
    }
}
