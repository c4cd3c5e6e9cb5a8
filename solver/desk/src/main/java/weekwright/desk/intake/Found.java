package weekwright.desk.intake;

import org.jspecify.annotations.Nullable;

/**
 * An entry of a file as it was read: when, what, and what is to be said of it.
 *
 * @param row its number in the preview, from 1
 * @param place where it stands in the file
 * @param key what names it in its source whatever else changes, or null
 * @param label its name, clean
 * @param start null where nothing of it could be read
 * @param end end, exclusive; null where none is given
 * @param state whether it holds
 * @param was when it was before, where the file says so, or null
 * @param free whether its owner marked the time as free
 */
public record Found(
        int row,
        String place,
        @Nullable String key,
        String label,
        @Nullable When start,
        @Nullable When end,
        State state,
        @Nullable When was,
        boolean free,
        Remarks remarks) {
    /** Whether something holds. */
    public enum State {
        HOLDS,
        CANCELLED,
        /** Not when it was to be, and no new time is known. */
        POSTPONED
    }

    /** The same under another number. */
    Found numbered(int number) {
        return new Found(number, place, key, label, start, end, state, was, free, remarks);
    }
}
