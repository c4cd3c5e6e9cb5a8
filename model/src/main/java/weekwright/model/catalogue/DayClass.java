package weekwright.model.catalogue;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** How demanding a day or a family of sessions is, lightest first. */
public enum DayClass {
    FREE,
    LOW,
    MIDDLE,
    HIGH;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
