package weekwright.desk.view.search;

import org.jspecify.annotations.Nullable;
import weekwright.model.answer.TradeOffs;

/**
 * The search for what could go, as it is at one moment.
 *
 * @param state waiting, running or ended, as of a {@link Course}
 * @param before how many searches come first
 * @param tried how many things were tried so far
 * @param trying what is being tried
 * @param answer what was found, or null before the end or where it failed
 * @param message what went wrong
 * @param current whether it is of the plan that is shown
 */
public record Bargained(
        String state,
        int before,
        int tried,
        String trying,
        @Nullable TradeOffs answer,
        String message,
        boolean current) {
    /** Whether it is not over. */
    public boolean on() {
        return !state.equals(Course.ENDED);
    }
}
