package weekwright.model.scenario;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** How much a fixture matters: a minor one is trained through. */
public enum FixtureWeight {
    KEY,
    REGULAR,
    MINOR;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
