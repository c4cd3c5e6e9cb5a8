package weekwright.desk.export;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.InputFault;
import weekwright.engine.Engine;
import weekwright.engine.explain.Judged;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * Writes the calendar of a group or an athlete (iCalendar, RFC 5545).
 *
 * <p>Who subscribes to it or imports it again sees each change once: an entry keeps its UID, what has changed carries the
 * next SEQUENCE, and what is gone stays as cancelled. An unchanged calendar is the same bytes.
 */
public final class Calendars {
    private final ZoneId zone;
    private final Scenario scenario;
    private final String stamp;
    private final WrittenCalendar before;
    private final int least;
    private final List<Written> entries = new ArrayList<>();
    private int live;
    private int added;
    private int changed;
    private int cancelled;

    private Calendars(Scenario scenario, Writing writing) {
        this.scenario = scenario;
        this.zone = scenario.zone();
        this.stamp = writing.stamp();
        this.before = writing.before();
        this.least = writing.least();
    }

    /**
     * One of several writings of a calendar.
     *
     * @param stamp when it is written
     * @param before what was written the last time
     * @param least the least SEQUENCE of what is new in it
     */
    private record Writing(String stamp, WrittenCalendar before, int least) {}

    /**
     * A plan as it once was.
     *
     * @param number number of its revision, higher than those of all before it
     * @param at when it was saved
     */
    public record Edition(int number, Instant at, Scenario scenario, Plan plan, Whose whose) {}

    private record Written(String uid, Instant start, Instant end, int sequence, String stamp, List<String> content) {
        WrittenCalendar.Event event(ZoneId zone) {
            return new WrittenCalendar.Event(uid, sequence, stamp, start, LocalDate.ofInstant(start, zone), content);
        }

        List<String> lines() {
            List<String> lines = new ArrayList<>();
            lines.add("BEGIN:VEVENT");
            lines.add("UID:" + uid);
            lines.add("DTSTAMP:" + stamp);
            lines.add("SEQUENCE:" + sequence);
            lines.addAll(content);
            lines.add("END:VEVENT");
            return lines;
        }
    }

    /**
     * A calendar, ready to be written.
     *
     * @param text the file's text, in UTF-8
     * @param said what is in it and what has changed since it was last written, as a sentence
     */
    public record Made(String text, String said) {}

    /** The calendar that is there already: the name of its file for messages, and its text. */
    public record Before(String file, String text) {}

    /**
     * Makes a calendar.
     *
     * @param judged the plan, judged
     * @param now the time of writing
     * @param before what was written there the last time, or null
     * @throws InputFault when what is there is no calendar of this reader
     */
    public static Made of(Scenario scenario, Judged judged, Whose whose, Instant now, @Nullable Before before) {
        String of = Timetable.uid(scenario, whose, "calendar").toString();
        WrittenCalendar written =
                before == null ? WrittenCalendar.NONE : WrittenCalendar.read(before.file(), before.text(), of);
        return filled(scenario, judged.plan(), whose, new Writing(CalendarLines.utc(now), written, 0))
                .made(whose, before != null);
    }

    /**
     * Makes the calendar of a folder from all that its plan was, so that it follows every earlier one that was made of it,
     * though nobody has kept them: an entry bears the number of the revision that changed it last.
     *
     * @param before the calendar of all earlier plans, or null for the first
     * @return the calendar with this plan, to be followed in turn
     */
    public static Calendars follow(@Nullable Calendars before, Edition edition) {
        WrittenCalendar written = before == null ? WrittenCalendar.NONE : before.written();
        Writing writing = new Writing(CalendarLines.utc(edition.at()), written, edition.number());
        return filled(edition.scenario(), edition.plan(), edition.whose(), writing);
    }

    /** As it is to be written for whoever reads it. */
    public Made made(Whose whose) {
        return made(whose, true);
    }

    private static Calendars filled(Scenario scenario, Plan plan, Whose whose, Writing writing) {
        Calendars calendar = new Calendars(scenario, writing);
        Timetable.of(scenario, plan, whose).forEach(calendar::add);
        calendar.live = calendar.entries.size();
        calendar.keep();
        return calendar;
    }

    private Made made(Whose whose, boolean again) {
        return new Made(text(Timetable.uid(scenario, whose, "calendar").toString()), said(again));
    }

    private WrittenCalendar written() {
        Map<String, WrittenCalendar.Event> events = new LinkedHashMap<>();
        entries.forEach(entry -> events.put(entry.uid(), entry.event(zone)));
        return new WrittenCalendar(events, List.of());
    }

    private int next(WrittenCalendar.Event old) {
        return Math.max(old.sequence() + 1, least);
    }

    private void add(CalendarEntry entry) {
        String uid = entry.uid().toString();
        List<String> content = entry.content(zone);
        WrittenCalendar.Event old = before.events().get(uid);
        if (old == null) {
            added++;
            entries.add(new Written(uid, entry.start(), entry.end(), least, stamp, content));
        } else if (old.content().equals(content)) {
            entries.add(new Written(uid, entry.start(), entry.end(), old.sequence(), old.stamp(), content));
        } else {
            changed++;
            entries.add(new Written(uid, entry.start(), entry.end(), next(old), stamp, content));
        }
    }

    /** What was written before and is not wanted any more: the past stays, the rest is cancelled. */
    private void keep() {
        Map<String, WrittenCalendar.Event> rest = new LinkedHashMap<>(before.events());
        entries.forEach(entry -> rest.remove(entry.uid()));
        for (WrittenCalendar.Event old : rest.values()) {
            boolean stays = old.isCancelled() || old.day().isBefore(scenario.firstDay());
            cancelled += stays ? 0 : 1;
            entries.add(new Written(
                    old.uid(),
                    old.start(),
                    old.start(),
                    stays ? old.sequence() : next(old),
                    stays ? old.stamp() : stamp,
                    stays ? old.content() : cancelled(old.content())));
        }
        entries.sort(Comparator.comparing(Written::start).thenComparing(Written::uid));
    }

    private static List<String> cancelled(List<String> content) {
        return content.stream()
                .map(line -> line.startsWith("STATUS:") ? "STATUS:CANCELLED" : line)
                .toList();
    }

    private String text(String of) {
        List<String> lines = new ArrayList<>();
        lines.add("BEGIN:VCALENDAR");
        lines.add("VERSION:2.0");
        lines.add("PRODID:-//Weekwright//Weekwright " + Engine.VERSION + "//EN");
        lines.add("CALSCALE:GREGORIAN");
        lines.add(WrittenCalendar.OF + ":" + of);
        zones(lines);
        entries.forEach(entry -> lines.addAll(entry.lines()));
        lines.add("END:VCALENDAR");
        return CalendarLines.folded(lines);
    }

    private void zones(List<String> lines) {
        Instant firstDay = scenario.firstDay().atStartOfDay(zone).toInstant();
        Instant first = entries.stream().map(Written::start).findFirst().orElse(firstDay);
        Instant last = entries.stream()
                .map(Written::end)
                .max(Comparator.naturalOrder())
                .orElse(firstDay);
        lines.addAll(ZoneLines.of(zone, first, last));
        before.zones().stream()
                .filter(other -> !zone.getId().equals(other.value("TZID")))
                .forEach(other -> lines.addAll(other.raw()));
    }

    private String said(boolean again) {
        String entries = live == 1 ? "1 entry" : live + " entries";
        return again
                ? entries + ": " + added + " new, " + changed + " changed, " + cancelled + " cancelled."
                : entries + ".";
    }
}
