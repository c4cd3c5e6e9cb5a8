package weekwright.model.document;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** The first and the last day of a plan, and what may lie before and behind. */
record Horizon(LocalDate first, LocalDate last) {

    /** A start that must lie on a day of the plan. */
    void inside(Node start, Faults faults) {
        start.moment()
                .map(Moment::date)
                .filter(day -> day.isBefore(first) || day.isAfter(last))
                .ifPresent(day -> faults.add(
                        start, day + " is no day of the plan", "Give a day from " + first + " to " + last + "."));
    }

    /** A start that must lie in the plan or up to 28 days past its end. */
    void ahead(Node start, Faults faults) {
        LocalDate latest = last.plusDays(Scenario.EDGE_DAYS);
        start.moment().map(Moment::date).ifPresent(day -> {
            if (day.isBefore(first)) {
                faults.add(start, day + " lies before the first day, " + first, "Write what is past into the history.");
            } else if (day.isAfter(latest)) {
                faults.add(
                        start,
                        day + " lies more than " + Scenario.EDGE_DAYS + " days past the last day, " + last,
                        "Give a day up to " + latest + ", or leave it out.");
            }
        });
    }

    /** A start that must lie in the 28 days before the plan. */
    void past(Node start, Faults faults) {
        LocalDate earliest = first.minusDays(Scenario.EDGE_DAYS);
        start.moment().map(Moment::date).ifPresent(day -> {
            if (!day.isBefore(first)) {
                faults.add(
                        start,
                        day + " is not before the first day, " + first,
                        "History ends the day before; what is done within the plan belongs into the log.");
            } else if (day.isBefore(earliest)) {
                faults.add(
                        start,
                        day + " lies " + ChronoUnit.DAYS.between(day, first) + " days before the first day, " + first,
                        "History reaches " + Scenario.EDGE_DAYS + " days back, to " + earliest
                                + ": leave older entries out.");
            }
        });
    }
}
