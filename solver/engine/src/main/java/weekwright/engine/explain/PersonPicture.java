package weekwright.engine.explain;

import java.util.List;
import java.util.Set;

/**
 * What a plan means for one athlete.
 *
 * @param athlete the athlete's id
 * @param sessions ids of the sessions that the athlete takes part in
 * @param days the athlete's days in order; each names the athlete's main group
 */
public record PersonPicture(String athlete, Set<String> sessions, List<DayPicture> days) {
    public PersonPicture {
        sessions = Set.copyOf(sessions);
        days = List.copyOf(days);
    }
}
