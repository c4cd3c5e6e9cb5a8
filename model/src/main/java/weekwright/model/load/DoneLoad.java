package weekwright.model.load;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import weekwright.model.catalogue.Demands;
import weekwright.model.catalogue.Family;
import weekwright.model.catalogue.Role;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.PersonEntry;

/**
 * Session load that was reported: rating of perceived exertion times whole minutes, warm-up and breaks included (Foster et
 * al. 2001, JSCR 15:109-115). An athlete's own rating and minutes go before the group's, the group's rating before the
 * family's.
 */
public final class DoneLoad {
    private DoneLoad() {}

    /**
     * Load of an entry in AU; 0 where it was missed.
     *
     * @param fixture the fixture that was played, or null
     * @param athlete id of an athlete, or null for somebody who did as the group did
     */
    public static double of(LogEntry entry, Family family, @Nullable Fixture fixture, @Nullable String athlete) {
        if (!took(entry, athlete)) {
            return 0;
        }
        Optional<PersonEntry> own = own(entry, athlete);
        double rpe = own.map(PersonEntry::rpe).orElse(entry.rpe() == null ? family.rpe() : entry.rpe());
        Integer minutes = own.map(PersonEntry::minutes).orElse(null);
        if (family.role() != Role.FIXTURE) {
            return Demands.loadTenths(rpe, minutes == null ? entry.minutes() : minutes) / 10.0;
        }
        int play = fixture == null || fixture.playMinutes() == null ? family.minutes() : fixture.playMinutes();
        int played = minutes == null ? play : Math.min(minutes, play);
        return Demands.fixtureLoadTenths(rpe, play, family.warmUpMinutes(), played) / 10.0;
    }

    /** Whether an athlete, or the group, did what an entry says. */
    public static boolean took(LogEntry entry, @Nullable String athlete) {
        return entry.done() && (athlete == null || !entry.except().contains(athlete));
    }

    /** What an athlete reported of it. */
    public static Optional<PersonEntry> own(LogEntry entry, @Nullable String athlete) {
        return entry.people().stream()
                .filter(person -> person.athlete().equals(athlete))
                .findFirst();
    }
}
