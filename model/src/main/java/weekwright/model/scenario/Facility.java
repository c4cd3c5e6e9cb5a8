package weekwright.model.scenario;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * A place to train.
 *
 * @param straightMetres longest straight run, or null where none matters
 * @param open opening hours; empty means always
 * @param closed spans in which it is shut
 */
public record Facility(
        String id,
        String label,
        List<FacilityKind> offers,
        @Nullable Integer straightMetres,
        @Nullable Room room,
        List<Window> open,
        List<Away> closed) {
    public Facility {
        label = label == null ? id : label;
        offers = Ids.listed(offers);
        open = Ids.listed(open);
        closed = Ids.listed(closed);
    }

    /** The same with other opening hours. */
    public Facility withOpen(List<Window> open) {
        return new Facility(id, label, offers, straightMetres, room, open, closed);
    }

    /** The same with other spans in which it is shut. */
    public Facility withClosed(List<Away> closed) {
        return new Facility(id, label, offers, straightMetres, room, open, closed);
    }
}
