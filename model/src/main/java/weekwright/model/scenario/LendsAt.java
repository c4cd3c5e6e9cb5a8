package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** Where in a practice its lent minutes lie. */
public enum LendsAt {
    START,
    END;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
