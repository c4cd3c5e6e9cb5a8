package weekwright.model.plan;

import java.util.List;
import weekwright.model.Ids;
import weekwright.model.scenario.LogEntry;

/** What was really done, entry by entry. */
public record Log(int weekwright, String scenario, List<LogEntry> entries) {
    public Log {
        entries = Ids.listed(entries);
    }
}
