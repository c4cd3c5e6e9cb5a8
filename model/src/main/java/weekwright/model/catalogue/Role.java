package weekwright.model.catalogue;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** What a family is for, where a rule treats it apart from other sessions. */
public enum Role {
    SESSION,
    FIXTURE,
    PRACTICE,
    PRIMER,
    RECOVERY;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
