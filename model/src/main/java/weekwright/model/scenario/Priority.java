package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** How dearly a coach pays for an aim that is not reached: key before main, spare weighs as a want. */
public enum Priority {
    KEY,
    MAIN,
    SPARE;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
