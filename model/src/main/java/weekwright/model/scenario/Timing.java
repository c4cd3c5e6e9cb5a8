package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** How a run was timed. Hand and electronic times are never mixed silently. */
public enum Timing {
    ELECTRONIC,
    HAND;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
