package weekwright.desk.view.week;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.week.WeekPage.Choice;

/**
 * A session that a coach holds: what each start would do, and what is pinned of it.
 *
 * @param base address of the folder
 * @param query query of the address that shows the same part of the week
 * @param revision the revision that it is held in
 * @param lane id of the lane in which its starts are shown, or an empty text
 * @param elsewhere where its starts can be seen, where that is not here; else null
 * @param name what it is
 * @param now where it lies, in words
 * @param layers its places and doses
 * @param days the starts of the chosen layer, day by day
 * @param pins what can be pinned of it
 * @param changes what it can have instead
 */
public record HoldPage(
        String base,
        String query,
        int revision,
        String session,
        String lane,
        @Nullable Choice elsewhere,
        String name,
        String now,
        boolean placed,
        List<Layer> layers,
        List<DayCells> days,
        List<PinField> pins,
        List<ChangeField> changes) {
    public HoldPage {
        layers = List.copyOf(layers);
        days = List.copyOf(days);
        pins = List.copyOf(pins);
        changes = List.copyOf(changes);
    }

    /** The address where its starts can be seen; the page itself where they are seen here. */
    public String there() {
        return elsewhere == null
                ? base
                : base + "?" + elsewhere.query() + "&hold=" + URLEncoder.encode(session, StandardCharsets.UTF_8);
    }

    /** The layer whose starts are shown. */
    public Layer chosen() {
        return layers.stream().filter(Layer::chosen).findFirst().orElse(layers.get(0));
    }

    /**
     * A place and a dose.
     *
     * @param facility id of the place, or an empty text
     * @param best what its best start would do, in a few words
     */
    public record Layer(int number, String facility, String dose, String label, String best, boolean chosen) {}

    /** The starts of a day. */
    public record DayCells(String date, String name, List<Cell> cells) {
        public DayCells {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A start.
     *
     * @param start date and time
     * @param row row where it begins
     * @param rows rows to the next start
     * @param look here, better, same, worse or no
     * @param mark what it would do as short as can be
     * @param text the same in words
     */
    public record Cell(String start, int row, int rows, String look, String mark, String text) {}

    /**
     * Something that can be pinned as it is.
     *
     * @param kind its name in requests
     * @param label what is held, in words
     * @param held whether it is held now
     */
    public record PinField(String kind, String label, boolean held) {}

    /**
     * Something that a session can have instead, and then keeps.
     *
     * @param kind its name in requests
     * @param label what there is to choose
     * @param does what is done with what was chosen
     */
    public record ChangeField(String kind, String label, String does, List<Other> others) {
        public ChangeField {
            others = List.copyOf(others);
        }
    }

    /** Something to choose: its id or date, and its name. */
    public record Other(String value, String label) {}
}
