package weekwright.model.scenario;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * Something that was done, or missed: history before the plan and the log of the plan share it.
 *
 * @param placement id of the placement carried out, or null
 * @param fixture id of the fixture played, or null
 * @param minutes whole minutes, warm-up included; of a fixture the elapsed time
 * @param rpe rating of the group, 0 to 10, or null for the family's
 * @param done false: missed, no stimulus and no load
 * @param except athletes who did not take part
 * @param people what single athletes reported
 */
public record LogEntry(
        @Nullable String id,
        @Nullable String placement,
        @Nullable String fixture,
        String group,
        String family,
        Moment start,
        int minutes,
        Dose dose,
        @Nullable String variant,
        @Nullable Double rpe,
        boolean done,
        List<String> except,
        List<PersonEntry> people,
        @Nullable String note) {
    public LogEntry {
        dose = dose == null ? Dose.FULL : dose;
        except = Ids.listed(except);
        people = Ids.listed(people);
    }

    /** The same with other people left out and told of. */
    public LogEntry withPeople(List<String> except, List<PersonEntry> people) {
        return copy(id, placement, fixture, except, people);
    }

    /** The same for a scenario that does not know its session and its fixture. */
    public LogEntry elsewhere() {
        return copy(null, null, null, except, people);
    }

    private LogEntry copy(
            @Nullable String id,
            @Nullable String placement,
            @Nullable String fixture,
            List<String> except,
            List<PersonEntry> people) {
        return new LogEntry(
                id, placement, fixture, group, family, start, minutes, dose, variant, rpe, done, except, people, note);
    }
}
