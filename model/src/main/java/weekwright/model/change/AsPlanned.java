package weekwright.model.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.model.plan.Log;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Scenario;

/**
 * Something of a week as it would be written down if it went as planned.
 *
 * @param key {@code session:}, {@code fixture:} or {@code practice:} and what tells it from all others
 * @param label name of the fixture or commitment, or null for a session
 */
public record AsPlanned(String key, @Nullable String label, LogEntry entry) {
    /** Minutes of a session in a plan written by hand that gives none. */
    private static final int USUAL_MINUTES = 60;

    /** All that is planned for groups and trains something, in order of start. */
    public static List<AsPlanned> of(Scenario scenario, List<Placement> placements) {
        List<AsPlanned> all = new ArrayList<>();
        placements.forEach(one -> all.add(session(one)));
        for (Fixture one : scenario.fixtures()) {
            one.groups().forEach(group -> all.add(fixture(scenario, one, group)));
        }
        for (Commitment one : scenario.commitments()) {
            String family = one.family();
            if (family != null) {
                one.groups().forEach(group -> all.add(practice(one, group, family)));
            }
        }
        all.sort(Comparator.comparing(one -> one.entry().start().instant(scenario.zone())));
        return all;
    }

    /**
     * What was done: as it was written down, and the rest as it was planned.
     *
     * @param log what was written down, or null while nothing was
     */
    public static List<LogEntry> done(Scenario scenario, List<Placement> placements, @Nullable Log log) {
        List<LogEntry> written = log == null ? List.of() : log.entries();
        List<LogEntry> done = new ArrayList<>(written);
        for (AsPlanned one : of(scenario, placements)) {
            if (written.stream().noneMatch(one::isOf)) {
                done.add(one.entry());
            }
        }
        return done;
    }

    /** Whether an entry is of this: of the same session or fixture, or else of the same family and start. */
    public boolean isOf(LogEntry written) {
        if (!written.group().equals(entry.group())) {
            return false;
        }
        if (entry.placement() != null || entry.fixture() != null) {
            return Objects.equals(written.placement(), entry.placement())
                    && Objects.equals(written.fixture(), entry.fixture());
        }
        return written.family().equals(entry.family()) && written.start().equals(entry.start());
    }

    private static AsPlanned session(Placement one) {
        Integer minutes = one.minutes();
        int whole = minutes == null ? USUAL_MINUTES : minutes;
        LogEntry entry = new LogEntry(
                null,
                one.id(),
                null,
                one.group(),
                one.family(),
                one.start(),
                whole,
                one.dose(),
                one.variant(),
                null,
                true,
                List.of(),
                List.of(),
                null);
        return new AsPlanned("session:" + one.id(), null, entry);
    }

    private static AsPlanned fixture(Scenario scenario, Fixture one, String group) {
        List<Appearance> minutes = one.played().isEmpty() ? one.expected() : one.played();
        List<PersonEntry> people = minutes.stream()
                .filter(appearance -> isIn(scenario, appearance.athlete(), group))
                .map(appearance ->
                        new PersonEntry(appearance.athlete(), null, appearance.minutes(), List.of(), null, null, null))
                .toList();
        LogEntry entry = entry(one.id(), group, one.family(), one.start(), one.minutes(), people);
        return new AsPlanned("fixture:" + one.id() + ":" + group, one.label(), entry);
    }

    private static boolean isIn(Scenario scenario, String athlete, String group) {
        return scenario.athletes().stream()
                .anyMatch(one -> one.id().equals(athlete) && one.groups().contains(group));
    }

    private static AsPlanned practice(Commitment one, String group, String family) {
        LogEntry entry = entry(null, group, family, one.start(), one.minutes(), List.of());
        return new AsPlanned("practice:" + one.id() + ":" + group, one.label(), entry);
    }

    private static LogEntry entry(
            @Nullable String fixture,
            String group,
            String family,
            Moment start,
            int minutes,
            List<PersonEntry> people) {
        return new LogEntry(
                null, null, fixture, group, family, start, minutes, Dose.FULL, null, null, true, List.of(), people,
                null);
    }
}
