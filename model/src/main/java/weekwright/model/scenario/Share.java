package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** Whom an aim is for: everybody, those who played the group's latest fixture, or those who did not. */
public enum Share {
    ALL,
    PLAYED,
    NOT_PLAYED;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
