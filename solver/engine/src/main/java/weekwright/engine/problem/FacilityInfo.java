package weekwright.engine.problem;

import java.util.List;
import weekwright.model.catalogue.Family;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Room;

/** A facility with its hours as spans. */
public final class FacilityInfo {
    /** Place in the problem's list. */
    public final int index;
    /** The facility as it stands in the scenario. */
    public final Facility facility;
    /** When it is open, closures taken out. */
    public final Spans open;

    private final Spans closed;
    /** Groups that it holds at once. */
    public final int groups;
    /** Athletes that it holds at once. */
    public final int athletes;

    FacilityInfo(int index, Facility facility, Calendar calendar) {
        this.index = index;
        this.facility = facility;
        open = calendar.spans(facility.open());
        closed = calendar.awaySpans(facility.closed());
        Room room = facility.room();
        groups = room == null || room.groups() == null ? Integer.MAX_VALUE : room.groups();
        athletes = room == null || room.athletes() == null ? Integer.MAX_VALUE : room.athletes();
    }

    /** Whether it holds only so many at once. */
    public boolean limited() {
        return groups != Integer.MAX_VALUE || athletes != Integer.MAX_VALUE;
    }

    /** Minutes of a span in which it is shut. */
    public int shut(int from, int to) {
        return Math.min(to - from, to - from - open.inside(from, to) + closed.inside(from, to));
    }

    /** Whether it is the kind of place that a family needs. */
    public boolean offers(Family family) {
        List<FacilityKind> needed = family.facility();
        return needed.isEmpty() || facility.offers().stream().anyMatch(needed::contains);
    }

    /** Whether its straight is long enough; an unknown one is. */
    public boolean straightEnough(Family family) {
        return family.straightMetres() == null
                || facility.straightMetres() == null
                || facility.straightMetres() >= family.straightMetres();
    }

    /** Minutes by which it would have to be open longer for a whole span; without end where it is closed then. */
    public int openLonger(int from, int to) {
        return closed.inside(from, to) > 0 ? Integer.MAX_VALUE : open.missing(from, to);
    }
}
