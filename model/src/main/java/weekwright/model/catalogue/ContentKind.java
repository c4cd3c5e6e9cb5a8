package weekwright.model.catalogue;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/** What kind of work a line of a session is. */
public enum ContentKind {
    /** Part of the warm-up, in words. */
    WARM_UP,
    /** Sprints over a distance, against a best time. */
    SPRINT,
    /** A lift, against a one-repetition maximum. */
    LIFT,
    /** Jumps, counted as contacts with the ground. */
    JUMP,
    /** Runs over metres against top speed, or over seconds against aerobic speed. */
    RUN,
    /** Anything else, in words. */
    WORDS;

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }
}
