package weekwright.desk.view.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.Dates;
import weekwright.desk.view.Names;
import weekwright.desk.view.load.LoadReports.Sources;
import weekwright.model.answer.LoadReport.Checked;
import weekwright.model.answer.LoadReport.What;
import weekwright.model.plan.Log;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/** Holds the log against the plan: what was done as planned, changed, missed, never planned. */
final class LogAgainstPlan {
    private final Scenario scenario;
    private final Names names;
    private final Log log;
    private final LocalDate until;
    private final Set<LogEntry> used = new HashSet<>();

    private LogAgainstPlan(Scenario scenario, Log log, LocalDate until) {
        this.scenario = scenario;
        this.names = new Names(scenario);
        this.log = log;
        this.until = until;
    }

    /** Each session up to the last day that is logged, then what nobody had planned; empty without a plan or a log. */
    static List<Checked> of(Sources sources) {
        Log log = sources.log();
        LocalDate until = sources.doneUntil();
        return log == null || until == null || sources.judged() == null
                ? List.of()
                : new LogAgainstPlan(sources.scenario(), log, until)
                        .all(sources.judged().plan().placements());
    }

    private List<Checked> all(List<Placement> placements) {
        List<Checked> all = new ArrayList<>();
        for (Placement placement : placements) {
            LogEntry entry = entry(placement);
            if (entry != null || !placement.start().date().isAfter(until)) {
                all.add(checked(placement, entry));
            }
        }
        log.entries().stream()
                .filter(entry -> entry.done() && !used.contains(entry) && !isFixed(entry))
                .forEach(entry -> all.add(new Checked(
                        What.EXTRA, null, entry.start(), names.family(entry.family()) + " was not planned.")));
        all.sort(Comparator.comparing(checked -> checked.start().local()));
        return all;
    }

    /** Fixtures and practices are no part of a plan. */
    private boolean isFixed(LogEntry entry) {
        LocalDate day = entry.start().date();
        return entry.fixture() != null
                || scenario.fixtures().stream()
                        .anyMatch(fixture -> fixture.groups().contains(entry.group())
                                && fixture.family().equals(entry.family())
                                && fixture.start().date().equals(day))
                || scenario.commitments().stream()
                        .anyMatch(practice -> practice.groups().contains(entry.group())
                                && entry.family().equals(practice.family())
                                && practice.start().date().equals(day));
    }

    /** The entry that names the session, else one of its group, family and day. */
    private @Nullable LogEntry entry(Placement placement) {
        LogEntry found = log.entries().stream()
                .filter(entry -> placement.id() != null && placement.id().equals(entry.placement()))
                .findFirst()
                .or(() -> log.entries().stream()
                        .filter(entry -> entry.placement() == null && !used.contains(entry))
                        .filter(entry -> entry.group().equals(placement.group())
                                && entry.family().equals(placement.family())
                                && entry.start().date().equals(placement.start().date()))
                        .findFirst())
                .orElse(null);
        if (found != null) {
            used.add(found);
        }
        return found;
    }

    private Checked checked(Placement placement, @Nullable LogEntry entry) {
        String label = names.family(placement.family());
        if (entry == null) {
            return new Checked(What.NOT_LOGGED, placement.id(), placement.start(), label + " is not in the log.");
        }
        if (!entry.done()) {
            return new Checked(What.MISSED, placement.id(), placement.start(), label + " was missed.");
        }
        List<String> changes = changes(placement, entry);
        return changes.isEmpty()
                ? new Checked(What.AS_PLANNED, placement.id(), entry.start(), label + " was done as planned.")
                : new Checked(
                        What.CHANGED, placement.id(), entry.start(), label + ": " + String.join("; ", changes) + ".");
    }

    private static List<String> changes(Placement placement, LogEntry entry) {
        List<String> changes = new ArrayList<>();
        if (!entry.start().equals(placement.start())) {
            changes.add("planned for " + Dates.day(placement.start().date()) + " " + Dates.clock(placement.start()));
        }
        if (placement.minutes() != null && placement.minutes() != entry.minutes()) {
            changes.add(entry.minutes() + " min, " + placement.minutes() + " were planned");
        }
        if (entry.dose() != placement.dose()) {
            changes.add(entry.dose().id() + " dose, " + placement.dose().id() + " was planned");
        }
        if (entry.variant() != null && !Objects.equals(entry.variant(), placement.variant())) {
            changes.add("another lift than planned");
        }
        return changes;
    }
}
