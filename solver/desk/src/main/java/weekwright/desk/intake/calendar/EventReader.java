package weekwright.desk.intake.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Period;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import weekwright.desk.intake.Answers;
import weekwright.desk.intake.Found;
import weekwright.desk.intake.Labels;
import weekwright.desk.intake.Remarks;
import weekwright.desk.intake.When;
import weekwright.model.scenario.Scenario;

/** Reads single events of a calendar. */
final class EventReader {
    private static final Pattern DURATION = Pattern.compile(
            "\\+?P(?:(\\d{1,3})W)?(?:(\\d{1,4})D)?(?:T(?:(\\d{1,4})H)?(?:(\\d{1,5})M)?(?:(\\d{1,6})S)?)?");

    private final Scenario scenario;
    private final Answers answers;
    private final Zones zones;
    private final Set<String> how;
    private final boolean cancels;

    EventReader(Scenario scenario, Answers answers, Zones zones, Set<String> how, boolean cancels) {
        this.scenario = scenario;
        this.answers = answers;
        this.zones = zones;
        this.how = how;
        this.cancels = cancels;
    }

    /** The time that a property holds, or null where it is missing or cannot be read, which is remarked. */
    @Nullable
    CalendarTime time(Component event, String property, Remarks remarks) {
        Optional<ContentLine> line = event.property(property);
        if (line.isEmpty()) {
            return null;
        }
        try {
            CalendarTime time = CalendarTime.of(line.get().value(), line.get().parameter("TZID"));
            return isAllDay(event) ? new CalendarTime(time.date(), null, false, null) : time;
        } catch (IllegalArgumentException e) {
            remarks.fault("its " + property + " cannot be read: " + e.getMessage());
            return null;
        }
    }

    /** Some programs write a whole day as the times from midnight to midnight. */
    private static boolean isAllDay(Component event) {
        return "TRUE".equalsIgnoreCase(event.text("X-MICROSOFT-CDO-ALLDAYEVENT").strip());
    }

    /** The instant of a time, or null where its zone is not known, which is remarked; midnight here of a date. */
    @Nullable
    Instant instant(CalendarTime time, Remarks remarks) {
        return clock(time, remarks)
                .map(clock -> clock.instant(time.local(), remarks))
                .orElse(null);
    }

    private Optional<LocalClock> clock(CalendarTime time, Remarks remarks) {
        if (time.utc()) {
            return Optional.of(LocalClock.UTC);
        }
        if (time.isDateOnly()) {
            return Optional.of(LocalClock.of(scenario.zone()));
        }
        String name = time.zone();
        if (name == null) {
            ZoneId zone = answers.zone().orElse(scenario.zone());
            how.add("Times without a zone are read as times in " + zone + " (" + answers.way(Answers.ZONE)
                    + " says otherwise).");
            return Optional.of(LocalClock.of(zone));
        }
        Optional<LocalClock> clock = zones.clock(name);
        if (clock.isEmpty()) {
            remarks.fault("its zone \"" + Zones.shown(name) + "\" is not known");
        }
        return clock;
    }

    /** When a time is, on the scenario's calendar; null where that cannot be said. */
    @Nullable
    When when(@Nullable CalendarTime time, Remarks remarks) {
        if (time == null) {
            return null;
        }
        if (time.isDateOnly()) {
            return new When(time.date(), null);
        }
        Instant instant = instant(time, remarks);
        return instant == null ? null : new When(LocalDate.ofInstant(instant, scenario.zone()), instant);
    }

    /**
     * An entry of an event.
     *
     * @param start its start, which for a repeated event is not the one that is written
     * @param key what names it in its source, or null
     */
    Found entry(Component event, @Nullable CalendarTime start, @Nullable String key, Remarks remarks) {
        When begin = when(start, remarks);
        if (start == null) {
            remarks.fault("it has no start");
        }
        String label = Labels.clean(event.text("SUMMARY"), remarks);
        String status = event.text("STATUS");
        if (status.strip().equalsIgnoreCase("TENTATIVE")) {
            remarks.doubt("it is marked as tentative");
        }
        return new Found(
                0,
                "line " + event.line(),
                key,
                label,
                begin,
                begin == null || start == null ? null : end(event, start, begin, remarks),
                cancels ? Found.State.CANCELLED : state(status, label),
                null,
                event.text("TRANSP").strip().equalsIgnoreCase("TRANSPARENT"),
                remarks);
    }

    private static Found.State state(String status, String label) {
        Found.State said = Labels.state(status);
        return said == Found.State.HOLDS ? Labels.state(label) : said;
    }

    private @Nullable When end(Component event, CalendarTime start, When begin, Remarks remarks) {
        CalendarTime written = time(event, "DTEND", remarks);
        CalendarTime first = time(event, "DTSTART", new Remarks());
        if (written != null && first != null) {
            return shifted(written, first, start, begin, remarks);
        }
        String duration = event.value("DURATION");
        if (duration != null) {
            return lasting(duration.strip(), start, begin, remarks);
        }
        return start.isDateOnly() ? new When(start.date().plusDays(1), null) : null;
    }

    /** The written end, as far from this start as from the written one. */
    private @Nullable When shifted(
            CalendarTime end, CalendarTime first, CalendarTime start, When begin, Remarks remarks) {
        if (end.isDateOnly() != start.isDateOnly()) {
            remarks.fault("of its start and its end one is a date and one a time");
            return null;
        }
        if (end.isDateOnly()) {
            long days = java.time.temporal.ChronoUnit.DAYS.between(first.date(), end.date());
            return days < 0 ? backwards(remarks) : new When(start.date().plusDays(Math.max(1, days)), null);
        }
        Instant from = instant(first, new Remarks());
        Instant to = instant(end, remarks);
        Instant here = begin.instant();
        if (from == null || to == null || here == null) {
            return null;
        }
        return to.isBefore(from) ? backwards(remarks) : at(here.plus(java.time.Duration.between(from, to)));
    }

    private static @Nullable When backwards(Remarks remarks) {
        remarks.fault("it ends before it begins");
        return null;
    }

    private When at(Instant instant) {
        return new When(LocalDate.ofInstant(instant, scenario.zone()), instant);
    }

    /** Days are those of the calendar, hours are elapsed (RFC 5545, 3.3.6). */
    private @Nullable When lasting(String text, CalendarTime start, When begin, Remarks remarks) {
        Matcher duration = DURATION.matcher(text);
        if (!duration.matches() || text.length() < 3) {
            remarks.fault("its duration \"" + (text.length() > 30 ? text.substring(0, 30) + "…" : text)
                    + "\" cannot be read");
            return null;
        }
        Period days = Period.ofDays(7 * number(duration, 1) + number(duration, 2));
        if (start.isDateOnly()) {
            return new When(start.date().plus(days.isZero() ? Period.ofDays(1) : days), null);
        }
        long seconds = 3600L * number(duration, 3) + 60L * number(duration, 4) + number(duration, 5);
        LocalDateTime after = start.local().plus(days);
        Instant from = days.isZero() ? begin.instant() : instant(start.at(after), new Remarks());
        return from == null ? null : at(from.plusSeconds(seconds));
    }

    private static int number(Matcher duration, int group) {
        return duration.group(group) == null ? 0 : Integer.parseInt(duration.group(group));
    }
}
