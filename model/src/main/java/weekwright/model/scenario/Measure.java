package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** What a mark measures. */
public enum Measure {
    SPRINT,
    LIFT,
    AEROBIC_SPEED;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
