package weekwright.model.plan;

import org.jspecify.annotations.Nullable;

/**
 * How a plan was made.
 *
 * @param moves moves tried
 * @param seconds seconds allowed or spent, or null where moves were counted and no clock was read
 * @param threads searches that ran at one time, or null where moves were counted: then they change nothing
 * @param stoppedBy {@code time}, {@code moves}, {@code nothing to gain} or {@code hand}
 */
public record Solver(
        long seed,
        long moves,
        @Nullable Double seconds,
        @Nullable Integer threads,
        String stoppedBy,
        String version) {}
