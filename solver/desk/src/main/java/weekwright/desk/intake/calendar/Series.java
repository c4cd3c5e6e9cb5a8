package weekwright.desk.intake.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import weekwright.desk.intake.Found;
import weekwright.desk.intake.Remarks;

/**
 * The events of one UID: a single one, or a series with its exceptions (RFC 5545, 3.8.4.4 and 3.8.5). Where the exceptions
 * stand does not matter.
 */
final class Series {
    private static final Comparator<Component> BY_VERSION =
            Comparator.comparingInt(Series::sequence).thenComparing(event -> event.text("DTSTAMP"));

    private final EventReader reader;
    private final List<Component> events;
    private final LocalDate first;
    private final LocalDate last;

    /** Looked at are the local dates from the first to the last. */
    Series(EventReader reader, List<Component> events, LocalDate first, LocalDate last) {
        this.reader = reader;
        this.events = events;
        this.first = first;
        this.last = last;
    }

    private static int sequence(Component event) {
        String text = event.text("SEQUENCE").strip();
        return text.matches("\\d{1,9}") ? Integer.parseInt(text) : 0;
    }

    /** Its entries: one, or one for each time in reach. */
    List<Found> entries() {
        List<Component> masters = events.stream()
                .filter(event -> event.property("RECURRENCE-ID").isEmpty())
                .sorted(BY_VERSION.reversed())
                .toList();
        List<Component> moved = events.stream()
                .filter(event -> event.property("RECURRENCE-ID").isPresent())
                .toList();
        List<Found> found = new ArrayList<>();
        Set<Object> taken = new HashSet<>();
        moved.forEach(event -> exception(event, found, taken));
        for (int i = 0; i < masters.size(); i++) {
            if (i == 0 || !isOlder(masters.get(i), masters.get(0))) {
                master(masters.get(i), i > 0, found, taken);
            }
        }
        return found;
    }

    private static boolean isOlder(Component one, Component newest) {
        return sequence(one) < sequence(newest)
                || one.raw().equals(newest.raw())
                || (one.text("DTSTAMP").compareTo(newest.text("DTSTAMP")) < 0
                        && newest.property("SEQUENCE").isPresent());
    }

    /** One time of a series that was moved or called off: it stands for the time that it names. */
    private void exception(Component event, List<Found> found, Set<Object> taken) {
        Remarks remarks = new Remarks();
        CalendarTime original = reader.time(event, "RECURRENCE-ID", remarks);
        Object names = original == null ? null : named(original, remarks);
        if (names != null && !taken.add(names)) {
            return;
        }
        boolean on = event.property("RECURRENCE-ID")
                .filter(line -> line.parameter("RANGE") != null)
                .isEmpty();
        if (!on) {
            remarks.doubt("it changes all later times of its series as well, which is not followed");
        }
        CalendarTime start = reader.time(event, "DTSTART", remarks);
        found.add(reader.entry(event, start, key(event, names), remarks));
    }

    private void master(Component event, boolean again, List<Found> found, Set<Object> taken) {
        Remarks remarks = new Remarks();
        if (again) {
            remarks.doubt("another event has the same UID");
        }
        CalendarTime start = reader.time(event, "DTSTART", remarks);
        boolean repeats =
                event.property("RRULE").isPresent() || event.property("RDATE").isPresent();
        if (start == null || !repeats) {
            found.add(reader.entry(event, start, again ? null : key(event, null), remarks));
            return;
        }
        try {
            repeated(event, start, found, taken);
        } catch (IllegalArgumentException e) {
            remarks.fault(String.valueOf(e.getMessage()));
            found.add(reader.entry(event, start, null, remarks));
        }
    }

    private void repeated(Component event, CalendarTime start, List<Found> found, Set<Object> taken) {
        Set<LocalDateTime> times = times(event, start);
        Set<Object> except = new HashSet<>(taken);
        event.all("EXDATE").forEach(line -> dates(line).forEach(date -> except.add(named(date, new Remarks()))));
        for (LocalDateTime local : times) {
            CalendarTime time = start.at(local);
            Remarks remarks = new Remarks();
            Object named = named(time, remarks);
            boolean inReach =
                    !local.toLocalDate().isBefore(first) && !local.toLocalDate().isAfter(last);
            // An exception may be written as a date where the series has times.
            if (inReach && named != null && !except.contains(named) && !except.contains(time.date())) {
                found.add(reader.entry(event, time, key(event, named), remarks));
            }
        }
    }

    private Set<LocalDateTime> times(Component event, CalendarTime start) {
        Set<LocalDateTime> times = new TreeSet<>();
        times.add(start.local());
        event.all("RRULE").forEach(line -> {
            Repetition rule = Repetition.of(line.value());
            Instant end = until(rule, start);
            rule.between(start.local(), first.atStartOfDay(), last.plusDays(1).atStartOfDay()).stream()
                    .filter(local -> end == null || !isAfter(start.at(local), end))
                    .forEach(times::add);
        });
        event.all("RDATE").forEach(line -> dates(line).forEach(date -> times.add(sameClock(date, start))));
        return times;
    }

    private boolean isAfter(CalendarTime time, Instant end) {
        Instant instant = reader.instant(time, new Remarks());
        return instant != null && instant.isAfter(end);
    }

    /** The last instant of a rule; a date means all of that day. */
    private @Nullable Instant until(Repetition rule, CalendarTime start) {
        String text = rule.until();
        if (text == null) {
            return null;
        }
        CalendarTime until = CalendarTime.of(text, start.zone());
        CalendarTime last = until.isDateOnly() && !start.isDateOnly()
                ? start.at(until.date().atTime(23, 59, 59))
                : until;
        return reader.instant(last, new Remarks());
    }

    /** A further date of a series, as its own clocks show it. */
    private LocalDateTime sameClock(CalendarTime date, CalendarTime start) {
        if (date.isDateOnly() || start.isDateOnly()) {
            return date.date().atTime(start.local().toLocalTime());
        }
        Instant there = reader.instant(date, new Remarks());
        Instant here = reader.instant(start.at(date.local()), new Remarks());
        return there == null || here == null
                ? date.local()
                : date.local().plus(java.time.Duration.between(here, there));
    }

    private static List<CalendarTime> dates(ContentLine line) {
        List<CalendarTime> dates = new ArrayList<>();
        for (String value : line.value().split(",", -1)) {
            dates.add(CalendarTime.of(value.replaceFirst("/.*", ""), line.parameter("TZID")));
        }
        return dates;
    }

    /** What tells one time of a series from the others: its instant, or its date. */
    private @Nullable Object named(CalendarTime time, Remarks remarks) {
        return time.isDateOnly() ? time.date() : reader.instant(time, remarks);
    }

    private static @Nullable String key(Component event, @Nullable Object named) {
        String uid = event.text("UID").strip();
        return uid.isEmpty() ? null : named == null ? uid : uid + "/" + named;
    }
}
