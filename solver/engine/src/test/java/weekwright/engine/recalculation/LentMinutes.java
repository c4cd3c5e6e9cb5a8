package weekwright.engine.recalculation;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import weekwright.model.scenario.Lends;
import weekwright.model.scenario.LendsAt;

/** The minutes that a practice lends: the first after its own warm-up, or its last. */
final class LentMinutes {
    private LentMinutes() {}

    static Instant from(Thing practice) {
        Lends lends = Objects.requireNonNull(practice.lends());
        return lends.at() == LendsAt.START
                ? practice.start().plus(Duration.ofMinutes(practice.warmUp()))
                : practice.end().minus(Duration.ofMinutes(lends.minutes()));
    }

    static Instant to(Thing practice) {
        Lends lends = Objects.requireNonNull(practice.lends());
        return lends.at() == LendsAt.START ? from(practice).plus(Duration.ofMinutes(lends.minutes())) : practice.end();
    }

    /** Whether a session fits into them with the way there, and the way back where practice goes on after them. */
    static boolean hold(Thing practice, Thing session, int transferMinutes) {
        Duration way = Duration.ofMinutes(transferMinutes);
        boolean goesOn = Objects.requireNonNull(practice.lends()).at() == LendsAt.START;
        return !session.start().minus(way).isBefore(from(practice))
                && !(goesOn && session.end().plus(way).isAfter(to(practice)));
    }
}
