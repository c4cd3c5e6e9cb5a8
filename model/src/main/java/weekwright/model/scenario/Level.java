package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** Training age of a group or an athlete. */
public enum Level {
    NOVICE,
    TRAINED,
    ADVANCED;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
