package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** The part of the season that a group is in. */
public enum Phase {
    PRE_SEASON,
    IN_SEASON,
    OFF_SEASON,
    RETURN;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
