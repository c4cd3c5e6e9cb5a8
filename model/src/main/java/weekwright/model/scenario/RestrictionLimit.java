package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** The most that a restricted athlete may do on the pathways named: sits out sessions where one is high, takes part in micro doses at most, or nothing. */
public enum RestrictionLimit {
    LIGHT,
    MICRO,
    NONE;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
