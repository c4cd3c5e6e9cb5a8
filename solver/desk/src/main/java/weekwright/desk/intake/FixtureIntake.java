package weekwright.desk.intake;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Scenario;

/** Holds the entries of a file against the fixtures of a scenario. */
final class FixtureIntake {
    private static final int LONGEST = 24 * 60;
    private static final int MOST_LISTED = 10;

    private final Scenario scenario;
    private final ZoneId zone;
    private final Answers answers;
    private final FixtureRows rows;
    private final PastFixtures past;
    private final FixturePairs pairs;
    private final Map<LocalDate, Integer> wrongYears;
    private final List<Placed> placed = new ArrayList<>();
    private final Set<String> questions;
    /** Rows that a later row of the same table moves on, with the number of that row. */
    private final Map<Integer, Integer> movedOn = new HashMap<>();

    /** What stands when, so that two at a time are seen. */
    private record Placed(int row, String name, Instant start, Instant end) {}

    private FixtureIntake(Scenario scenario, Reading reading, Wanted wanted, Answers answers) {
        this.scenario = scenario;
        this.zone = scenario.zone();
        this.answers = answers;
        String group = wanted.group(scenario, answers).id();
        rows = new FixtureRows(scenario, wanted, group);
        past = new PastFixtures(scenario, wanted, answers, group);
        chains(reading.found());
        List<Found> entries = reading.found().stream()
                .filter(entry -> whyNot(entry) == null && entry.remarks().fault() == null)
                .toList();
        List<Fixture> known = scenario.fixtures().stream()
                .filter(fixture -> fixture.groups().contains(group))
                .toList();
        pairs = new FixturePairs(scenario, entries, known, answers, wanted);
        wrongYears = Years.slips(entries.stream()
                .map(Found::start)
                .filter(Objects::nonNull)
                .map(When::date)
                .toList());
        questions = new LinkedHashSet<>(reading.questions());
    }

    /** The preview. */
    static Preview preview(Scenario scenario, Reading reading, Wanted wanted, Answers answers) {
        FixtureIntake intake = new FixtureIntake(scenario, reading, wanted, answers);
        List<Row> rows = reading.found().stream().map(intake::row).toList();
        return new Preview(scenario, reading.how(), List.copyOf(intake.questions), rows, intake.notes());
    }

    /** A table of changes may move a fixture twice: what counts is where it goes last. */
    private void chains(List<Found> entries) {
        Map<List<Object>, Integer> movedFrom = new HashMap<>();
        for (Found entry : entries) {
            When was = entry.was();
            if (was != null && was.instant() != null) {
                movedFrom.put(List.of(Labels.plain(entry.label()), was.instant()), entry.row());
            }
        }
        for (Found entry : entries) {
            When start = entry.start();
            if (start != null && start.instant() != null && !movedFrom.isEmpty()) {
                int later = movedFrom.getOrDefault(List.of(Labels.plain(entry.label()), start.instant()), 0);
                if (later > entry.row()) {
                    movedOn.put(entry.row(), later);
                }
            }
        }
    }

    /** Why an entry is none of those that are wanted, or null. */
    private @Nullable String whyNot(Found entry) {
        String only = answers.only();
        if (answers.leavesOut(entry.row())) {
            return "left out, as you said";
        }
        Integer later = movedOn.get(entry.row());
        if (later != null) {
            return "row " + later + " moves it on";
        }
        return only == null || lower(entry.label()).contains(lower(only)) ? null : "does not hold \"" + only + "\"";
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    private Row row(Found entry) {
        String notWanted = whyNot(entry);
        String fault = entry.remarks().fault();
        if (notWanted != null) {
            return rows.passed(entry, notWanted);
        }
        if (fault != null || entry.start() == null) {
            return rows.unreadable(entry, Objects.requireNonNullElse(fault, "it has no start"));
        }
        Fixture known = pairs.of(entry);
        return entry.state() == Found.State.HOLDS ? held(entry, entry.start(), known) : off(entry, known);
    }

    /** Called off: what the scenario has of it goes. */
    private Row off(Found entry, @Nullable Fixture known) {
        boolean postponed = entry.state() == Found.State.POSTPONED;
        String what = postponed ? "postponed, and no new day is given" : "cancelled";
        if (known == null) {
            return rows.passed(entry, what + "; the scenario does not have it");
        }
        return postponed && !answers.accepts(entry.row())
                ? rows.asked(entry, List.of(what + "; is it to be taken out?"))
                : rows.gone(entry, known, what);
    }

    private Row held(Found entry, When when, @Nullable Fixture known) {
        boolean accepted = answers.accepts(entry.row());
        boolean slips = slips(entry, when, known) && !accepted;
        if (isPast(when) || isLater(when)) {
            return slips ? rows.asked(entry, entry.remarks().doubts()) : outside(entry, when, known);
        }
        Instant start = start(entry, when, known);
        if (start == null) {
            questions.add("Some rows have no time: say when they start with " + answers.way(Answers.TIME, "15:00")
                    + ", or for one row " + answers.wayOfRow(Answers.TIME, 4, "15:00") + ", or leave them out with "
                    + answers.wayOfRow(Answers.LEAVE_OUT, 4, "") + ".");
            return rows.asked(entry, and(entry.remarks().doubts(), List.of("no time")));
        }
        OptionalInt minutes = minutes(entry, known, start);
        if (minutes.isEmpty()) {
            questions.add("Some rows do not say how long they last: give " + answers.way(Answers.MINUTES, "110")
                    + ", from the start to the end, intervals included.");
            return rows.asked(entry, and(entry.remarks().doubts(), List.of("no end")));
        }
        doubts(entry, start);
        List<String> open = and(entry.remarks().doubts(), rivals(entry, known, start, minutes.getAsInt()));
        if (!accepted && !open.isEmpty()) {
            return rows.asked(entry, open);
        }
        return known == null
                ? rows.added(entry, start, minutes.getAsInt())
                : rows.kept(entry, known, start, minutes.getAsInt());
    }

    private static List<String> and(List<String> list, List<String> more) {
        List<String> all = new ArrayList<>(list);
        all.addAll(more);
        return all;
    }

    /** Whether its date looks like a slip; remarks why. */
    private boolean slips(Found entry, When when, @Nullable Fixture known) {
        Remarks remarks = entry.remarks();
        int before = remarks.doubts().size();
        Integer years = wrongYears.get(when.date());
        When was = entry.was();
        if (known != null) {
            Shifts.doubt(new When(known.start().date(), known.start().instant(zone)), when.date(), zone, remarks);
        } else if (was != null) {
            Shifts.doubt(was, when.date(), zone, remarks);
        } else if (years != null) {
            remarks.doubt("it lies far from all the others; is the year "
                    + (when.date().getYear() + years) + " meant?");
        }
        return remarks.doubts().size() > before;
    }

    private boolean isPast(When when) {
        return when.date().isBefore(scenario.firstDay());
    }

    private boolean isLater(When when) {
        return when.date().isAfter(scenario.lastDay().plusDays(Scenario.EDGE_DAYS));
    }

    private Row outside(Found entry, When when, @Nullable Fixture known) {
        String beyond = "more than " + Scenario.EDGE_DAYS + " days after the plan";
        if (known != null) {
            return rows.gone(
                    entry,
                    known,
                    "moved from " + Times.day(known.start().instant(zone), zone) + " to "
                            + (isPast(when) ? "before the plan" : beyond));
        }
        if (isLater(when)) {
            return rows.passed(entry, beyond);
        }
        return answers.says(Answers.PAST)
                ? past.row(entry, when)
                : rows.passed(
                        entry,
                        PastFixtures.isInReach(scenario, when.date())
                                ? "before the plan; " + answers.way(Answers.PAST) + " takes it as played"
                                : "before the plan");
    }

    /** The start: the file's, the scenario's on that day, or what the coach says; null where nobody knows. */
    private @Nullable Instant start(Found entry, When when, @Nullable Fixture known) {
        if (when.instant() != null) {
            return when.instant();
        }
        if (known != null && known.start().date().equals(when.date())) {
            entry.remarks().note("the file has no time; that of the scenario stays");
            return known.start().instant(zone);
        }
        return answers.time(entry.row())
                .map(time -> {
                    entry.remarks().note("the time is yours, the file has none");
                    return Times.instant(when.date().atTime(time), zone, entry.remarks());
                })
                .orElse(null);
    }

    private OptionalInt minutes(Found entry, @Nullable Fixture known, Instant start) {
        When end = entry.end();
        Instant to = end == null ? null : end.instant();
        if (to != null && to.isAfter(start)) {
            long minutes = Duration.between(start, to).toMinutes();
            if (minutes > LONGEST) {
                entry.remarks().doubt("it lasts " + Times.span(Duration.ofMinutes(minutes)));
            }
            return OptionalInt.of((int) Math.max(1, Math.min(LONGEST, minutes)));
        }
        return known != null ? OptionalInt.of(known.minutes()) : answers.minutes();
    }

    private void doubts(Found entry, Instant start) {
        if (Labels.saysNotHeld(entry.label())) {
            entry.remarks().doubt("it reads like a week without a fixture; is one played?");
        }
        LocalDate date = LocalDate.ofInstant(start, zone);
        if (date.atStartOfDay(zone).toInstant().equals(start)) {
            entry.remarks().doubt("it starts at midnight, which often stands for a time that is not known");
        }
    }

    /** What else is on at that time, or seems to be the same. */
    private List<String> rivals(Found entry, @Nullable Fixture known, Instant start, int minutes) {
        Instant end = start.plusSeconds(60L * minutes);
        String name = Labels.plain(entry.label());
        List<String> rivals = new ArrayList<>();
        placed.stream()
                .filter(other -> other.start().isBefore(end) && start.isBefore(other.end()))
                .forEach(other -> rivals.add(
                        other.name().equals(name) && other.start().equals(start)
                                ? "the same as row " + other.row()
                                : "at the same time as row " + other.row()));
        placed.add(new Placed(entry.row(), name, start, end));
        if (known == null) {
            pairs.rival(entry, start, end).ifPresent(rival -> rivals.add(rival(entry, rival)));
        }
        return rivals;
    }

    private String rival(Found entry, Fixture rival) {
        return "the scenario has \"" + rival.label() + "\" on "
                + Times.day(rival.start().instant(zone), zone) + "; if it is the same, say "
                + answers.wayOfRow(Answers.SAME, entry.row(), rival.id());
    }

    private List<String> notes() {
        List<Fixture> others = pairs.unmatched();
        if (others.isEmpty()) {
            return List.of();
        }
        String listed = others.stream()
                .limit(MOST_LISTED)
                .map(fixture ->
                        fixture.label() + " (" + Times.day(fixture.start().instant(zone), zone) + ")")
                .collect(Collectors.joining(", "));
        int more = others.size() - MOST_LISTED;
        return List.of("In the scenario and not in the file, so they stay: " + listed
                + (more > 0 ? " and " + more + " more." : "."));
    }
}
