package weekwright.model.scenario;

import java.util.List;
import weekwright.model.Ids;

/**
 * Somebody who can lead sessions.
 *
 * @param leads ids of the families led, or {@code *} for all
 * @param atOnce sessions led at one time
 */
public record StaffMember(
        String id, String name, List<String> leads, int atOnce, List<Window> windows, List<Away> away) {
    public StaffMember {
        name = name == null ? id : name;
        leads = Ids.listed(leads);
        atOnce = atOnce == 0 ? 1 : atOnce;
        windows = Ids.listed(windows);
        away = Ids.listed(away);
    }

    /** Whether this person may lead a family. */
    public boolean leads(String family) {
        return leads.contains("*") || leads.contains(family);
    }

    /** The same with other hours. */
    public StaffMember withWindows(List<Window> windows) {
        return new StaffMember(id, name, leads, atOnce, windows, away);
    }

    /** The same with other spans away. */
    public StaffMember withAway(List<Away> away) {
        return new StaffMember(id, name, leads, atOnce, windows, away);
    }
}
