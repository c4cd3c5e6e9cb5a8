package weekwright.model.rulebook;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** How much a rule matters, dearest first; a told rule is a fact at no cost, an off one is not judged. */
public enum RuleLevel {
    MUST,
    KEY,
    MAIN,
    WANT,
    TOLD,
    OFF;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
