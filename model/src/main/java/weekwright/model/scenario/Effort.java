package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** How hard a commitment is meant to be: sets its RPE and its neural and tissue demand. */
public enum Effort {
    HARD(7, 7),
    USUAL(5, 4),
    EASY(3, 3);

    private final int rpe;
    private final int demand;

    Effort(int rpe, int demand) {
        this.rpe = rpe;
        this.demand = demand;
    }

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }

    /** Rating of perceived exertion, 0 to 10. */
    public int rpe() {
        return rpe;
    }

    /** Neural and tissue demand, 0 to 10. */
    public int demand() {
        return demand;
    }
}
