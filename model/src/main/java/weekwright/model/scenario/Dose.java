package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** How much of a session is done: all of its main part, two thirds, or one third. The warm-up never shrinks. */
public enum Dose {
    FULL(3, 100, 10),
    REDUCED(2, 95, 10),
    MICRO(1, 50, 6);

    private final int thirds;
    private final int demandPercent;
    private final int hoursTenths;

    Dose(int thirds, int demandPercent, int hoursTenths) {
        this.thirds = thirds;
        this.demandPercent = demandPercent;
        this.hoursTenths = hoursTenths;
    }

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }

    /** Share of the main part, in thirds. */
    public int thirds() {
        return thirds;
    }

    /** Share of the session's demand, in per cent. */
    public int demandPercent() {
        return demandPercent;
    }

    /** Share of the hours that must pass before the like comes again, in tenths. */
    public int hoursTenths() {
        return hoursTenths;
    }
}
