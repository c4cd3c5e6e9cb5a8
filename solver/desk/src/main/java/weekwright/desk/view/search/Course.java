package weekwright.desk.view.search;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.Judged;
import weekwright.model.answer.Comparison;

/**
 * A search as it is at one moment.
 *
 * @param state waiting, running or ended
 * @param seconds how long it may take
 * @param before how many searches of others come first
 * @param steps the better plans so far, in order
 * @param drawn the best plan so far, or null before there is one
 * @param message how it ended, or what it does
 * @param comparison what it changed, or null
 * @param number counts up with everything that happens to it
 */
public record Course(
        String state,
        double seconds,
        int before,
        List<SearchLine> steps,
        @Nullable Judged drawn,
        String message,
        @Nullable Comparison comparison,
        long number) {
    /** State of a search whose turn has not come. */
    public static final String WAITING = "waiting";
    /** State of a search that runs. */
    public static final String RUNNING = "running";
    /** State of a search that is over. */
    public static final String ENDED = "ended";

    public Course {
        steps = List.copyOf(steps);
    }

    /** Whether it is not over. */
    public boolean on() {
        return !state.equals(ENDED);
    }
}
