package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** What a facility offers and what a session family needs. */
public enum FacilityKind {
    TRACK,
    FIELD,
    HILL,
    HALL,
    GYM,
    POOL;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
