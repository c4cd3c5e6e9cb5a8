package weekwright.engine.problem;

import java.util.List;
import weekwright.model.scenario.Away;
import weekwright.model.scenario.Window;

/** When somebody can train: the windows, less the times away. No window means always. */
public final class FreeTime {
    private final Spans windows;
    private final Spans away;

    FreeTime(Calendar calendar, List<Window> windows, List<Away> away) {
        this.windows = calendar.spans(windows);
        this.away = calendar.awaySpans(away);
    }

    /** The windows, times away left aside. */
    public Spans windows() {
        return windows;
    }

    /** Minutes of a span that lie outside the windows or in a time away. */
    public int outside(int from, int to) {
        int blocked = to - from - windows.inside(from, to);
        int gone = away.inside(from, to);
        return Math.min(to - from, blocked + gone);
    }

    /** Minutes by which the windows would have to be longer for a whole span; without end where it meets a time away. */
    public int longer(int from, int to) {
        return away.inside(from, to) > 0 ? Integer.MAX_VALUE : windows.missing(from, to);
    }
}
