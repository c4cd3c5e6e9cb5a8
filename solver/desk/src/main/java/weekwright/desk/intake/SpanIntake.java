package weekwright.desk.intake;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Window;

/** Holds the entries of a file against the hours, closures or absences of a group, an athlete or a facility. */
final class SpanIntake {
    private static final int MOST_LISTED = 10;

    private final Scenario scenario;
    private final ZoneId zone;
    private final Wanted wanted;
    private final Answers answers;
    private final SpanOwner owner;
    private final Set<Object> inFile = new HashSet<>();
    private final List<String> notes = new ArrayList<>();

    private SpanIntake(Scenario scenario, Wanted wanted, Answers answers) {
        this.scenario = scenario;
        this.zone = scenario.zone();
        this.wanted = wanted;
        this.answers = answers;
        this.owner = SpanOwner.of(scenario, wanted, answers);
    }

    /** The preview. */
    static Preview preview(Scenario scenario, Reading reading, Wanted wanted, Answers answers) {
        SpanIntake intake = new SpanIntake(scenario, wanted, answers);
        List<Row> rows =
                new ArrayList<>(reading.found().stream().map(intake::row).toList());
        intake.rest(rows);
        return new Preview(scenario, reading.how(), reading.questions(), rows, intake.notes);
    }

    private boolean windows() {
        return wanted.what() == What.WINDOWS;
    }

    private Row row(Found entry) {
        Remarks remarks = entry.remarks();
        String only = answers.only();
        if (answers.leavesOut(entry.row())) {
            return still(entry, Verdict.PASSED_OVER, "left out, as you said");
        }
        if (only != null && !entry.label().contains(only)) {
            return still(entry, Verdict.PASSED_OVER, "does not hold \"" + only + "\"");
        }
        if (remarks.fault() != null || entry.start() == null) {
            return still(entry, Verdict.UNREADABLE, Objects.requireNonNullElse(remarks.fault(), "it has no start"));
        }
        if (entry.state() != Found.State.HOLDS) {
            return still(entry, Verdict.PASSED_OVER, "cancelled");
        }
        if (entry.free() && !windows()) {
            return still(entry, Verdict.PASSED_OVER, "marked as free time");
        }
        return span(entry, entry.start());
    }

    private Row span(Found entry, When from) {
        Instant start = from.instant() == null ? midnight(from.date()) : from.instant();
        Instant end = end(entry, from, start);
        if (end == null) {
            return still(
                    entry,
                    Verdict.UNREADABLE,
                    "it has no end; " + answers.way(Answers.MINUTES) + " says how long such a row lasts");
        }
        if (!end.isAfter(start)) {
            return still(entry, Verdict.UNREADABLE, "it ends before it begins");
        }
        if (!end.isAfter(midnight(scenario.firstDay()))
                || !start.isBefore(midnight(scenario.lastDay().plusDays(1)))) {
            return still(entry, Verdict.PASSED_OVER, "outside the plan's days");
        }
        List<String> doubts = entry.remarks().doubts();
        if (!doubts.isEmpty() && !answers.accepts(entry.row())) {
            return Row.still(entry.row(), entry.place(), Verdict.ASKED, text(entry), doubts);
        }
        return windows() ? window(entry, start, end) : away(entry, start, end);
    }

    private Instant midnight(LocalDate date) {
        return date.atStartOfDay(zone).toInstant();
    }

    private @Nullable Instant end(Found entry, When from, Instant start) {
        When end = entry.end();
        if (end != null) {
            return end.instant() == null ? midnight(end.date()) : end.instant();
        }
        return from.instant() == null
                ? midnight(from.date().plusDays(1))
                : answers.minutes().isPresent()
                        ? start.plusSeconds(60L * answers.minutes().getAsInt())
                        : null;
    }

    private Row still(Found entry, Verdict verdict, String why) {
        return Row.still(entry.row(), entry.place(), verdict, text(entry), List.of(why));
    }

    private String text(Found entry) {
        String when = entry.start() == null ? "no time" : Times.day(entry.start(), zone);
        return reason(entry).isEmpty() ? when : when + " · " + reason(entry);
    }

    /** Why an athlete is away stays in the athlete's calendar. */
    private String reason(Found entry) {
        return owner.isPerson() ? "" : entry.label();
    }

    private Row away(Found entry, Instant start, Instant end) {
        String why = reason(entry).isEmpty() ? null : reason(entry);
        Away span = new Away(Moment.at(start, zone), Moment.at(end, zone), why);
        boolean known = owner.spans().stream().anyMatch(old -> sameTime(old, span)) || !inFile.add(times(span));
        inFile.add(times(span));
        return taken(
                entry,
                known,
                Times.span(start, end, zone) + (why == null ? "" : " · " + why),
                change -> owner.withSpans()
                        .apply(change, Revised.and(current(change).spans(), span)));
    }

    private static boolean sameTime(Away one, Away other) {
        return times(one).equals(times(other));
    }

    private static List<Moment> times(Away span) {
        return List.of(span.from(), span.to());
    }

    private Row taken(Found entry, boolean known, String text, UnaryOperator<Scenario> step) {
        return known
                ? Row.still(
                        entry.row(),
                        entry.place(),
                        Verdict.SAME,
                        text,
                        entry.remarks().notes())
                : new Row(
                        entry.row(),
                        entry.place(),
                        Verdict.NEW,
                        text,
                        entry.remarks().notes(),
                        step);
    }

    /** The owner as a scenario that is being changed has it. */
    private SpanOwner current(Scenario change) {
        return SpanOwner.of(change, wanted, answers);
    }

    private Row window(Found entry, Instant start, Instant end) {
        List<Window> parts = parts(LocalDateTime.ofInstant(start, zone), LocalDateTime.ofInstant(end, zone));
        List<Window> fresh = parts.stream()
                .filter(part -> inFile.add(part) && !owner.windows().contains(part))
                .toList();
        return taken(entry, fresh.isEmpty(), Times.span(start, end, zone), change -> {
            List<Window> windows = new ArrayList<>(current(change).windows());
            windows.addAll(fresh);
            return owner.withWindows().apply(change, windows);
        });
    }

    /** The hours of each day, split at midnight. */
    private static List<Window> parts(LocalDateTime from, LocalDateTime to) {
        List<Window> parts = new ArrayList<>();
        for (LocalDate day = from.toLocalDate(); day.atStartOfDay().isBefore(to); day = day.plusDays(1)) {
            int begin = day.equals(from.toLocalDate()) ? minutes(from) : 0;
            int end = day.equals(to.toLocalDate()) ? minutes(to) : 24 * 60;
            if (begin < end) {
                parts.add(new Window(List.of(), day, new ClockTime(begin), new ClockTime(end), null, null));
            }
        }
        return parts;
    }

    private static int minutes(LocalDateTime time) {
        return time.getHour() * 60 + time.getMinute();
    }

    /** What the scenario has of these days and the file does not. */
    private void rest(List<Row> rows) {
        if (windows()) {
            if (owner.windows().isEmpty() && rows.stream().anyMatch(row -> row.verdict() == Verdict.NEW)) {
                notes.add(
                        "Until now " + owner.name() + " has no hours set, which means always; from now on only these.");
            }
            return;
        }
        List<Away> others = owner.spans().stream()
                .filter(old -> !inFile.contains(times(old)))
                .toList();
        if (others.isEmpty()) {
            return;
        }
        if (answers.says(Answers.REPLACE)) {
            others.forEach(old -> rows.add(gone(rows.size() + 1, old)));
        } else {
            notes.add("In the scenario and not in the file, so they stay (" + answers.way(Answers.REPLACE)
                    + " takes them out): "
                    + String.join(
                            ", ",
                            others.stream().limit(MOST_LISTED).map(this::text).toList())
                    + (others.size() > MOST_LISTED ? " and " + (others.size() - MOST_LISTED) + " more." : "."));
        }
    }

    private String text(Away span) {
        return Times.span(span.from().instant(zone), span.to().instant(zone), zone);
    }

    private Row gone(int number, Away old) {
        return new Row(
                number,
                "scenario",
                Verdict.GONE,
                text(old),
                List.of("not in the file"),
                change -> owner.withSpans()
                        .apply(
                                change,
                                current(change).spans().stream()
                                        .filter(span -> !sameTime(span, old))
                                        .toList()));
    }
}
