package weekwright.desk.intake;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Fixtures of the weeks before a plan, taken into its history as played. */
final class PastFixtures {
    private final Scenario scenario;
    private final Wanted wanted;
    private final Answers answers;
    private final String group;

    PastFixtures(Scenario scenario, Wanted wanted, Answers answers, String group) {
        this.scenario = scenario;
        this.wanted = wanted;
        this.answers = answers;
        this.group = group;
    }

    /** Whether the history reaches back to a date. */
    static boolean isInReach(Scenario scenario, LocalDate date) {
        return !date.isBefore(scenario.firstDay().minusDays(Scenario.EDGE_DAYS));
    }

    Row row(Found entry, When when) {
        String text = Times.day(when, scenario.zone()) + " · " + entry.label();
        if (!isInReach(scenario, when.date())) {
            return Row.still(
                    entry.row(),
                    entry.place(),
                    Verdict.PASSED_OVER,
                    text,
                    List.of("before all that the history holds"));
        }
        Instant start = when.instant();
        if (start == null) {
            return Row.still(
                    entry.row(), entry.place(), Verdict.PASSED_OVER, text, List.of("before the plan, no time"));
        }
        Moment moment = Moment.at(start, scenario.zone());
        String family = Objects.requireNonNullElse(wanted.family(), "fixture");
        if (isKnown(moment, family)) {
            return Row.still(entry.row(), entry.place(), Verdict.SAME, text, List.of("in the history"));
        }
        OptionalInt minutes = minutes(entry, start);
        return minutes.isEmpty()
                ? Row.still(
                        entry.row(),
                        entry.place(),
                        Verdict.ASKED,
                        text,
                        List.of("no end: give " + answers.way(Answers.MINUTES, "110")))
                : added(entry, entry(moment, family, minutes.getAsInt()), text);
    }

    private boolean isKnown(Moment start, String family) {
        return scenario.history().stream()
                .anyMatch(one -> one.group().equals(group)
                        && one.family().equals(family)
                        && one.start().equals(start));
    }

    private OptionalInt minutes(Found entry, Instant start) {
        When end = entry.end();
        Instant to = end == null ? null : end.instant();
        return to != null && to.isAfter(start)
                ? OptionalInt.of((int)
                        Math.min(24 * 60, java.time.Duration.between(start, to).toMinutes()))
                : answers.minutes();
    }

    private LogEntry entry(Moment start, String family, int minutes) {
        return new LogEntry(
                null, null, null, group, family, start, minutes, Dose.FULL, null, null, true, List.of(), List.of(),
                null);
    }

    private static Row added(Found entry, LogEntry played, String text) {
        return new Row(
                entry.row(),
                entry.place(),
                Verdict.NEW,
                text,
                List.of("into the history, as played by all"),
                taken -> taken.withHistory(Revised.and(taken.history(), played)));
    }
}
