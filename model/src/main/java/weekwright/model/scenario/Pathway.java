package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** A quality of the body that a session trains. */
public enum Pathway {
    MAX_VELOCITY_SPRINT,
    ACCELERATION,
    KNEE_DOMINANT,
    HIP_DOMINANT,
    UPPER_PUSH,
    UPPER_PULL,
    JUMP_LANDING,
    CHANGE_OF_DIRECTION,
    AEROBIC;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
