package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** The sport of a group; decides which fixture hours and preferred spacings hold. */
public enum GroupKind {
    FIELD,
    COURT,
    SPRINT,
    STRENGTH,
    OTHER;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
