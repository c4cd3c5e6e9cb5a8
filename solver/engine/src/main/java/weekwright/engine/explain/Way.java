package weekwright.engine.explain;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/**
 * One change by which a finding might be cleared.
 *
 * @param session the session that changes, or null where an aim is dropped
 * @param to where it goes, or stays; null for nowhere
 * @param longer hours that somebody gives for it, or null
 * @param dropped the aim that is dropped with all its sessions, or null
 */
record Way(
        @Nullable Session session,
        @Nullable Stimulus to,
        @Nullable Longer longer,
        @Nullable AimInfo dropped) {
    /** A session goes somewhere, or nowhere. */
    static Way to(Session session, @Nullable Stimulus to) {
        return new Way(session, to, null, null);
    }

    /** An aim is dropped. */
    static Way without(AimInfo aim) {
        return new Way(null, null, null, aim);
    }

    /** The same, with somebody giving some time. */
    Way with(Longer given) {
        return new Way(session, to, given, dropped);
    }

    /** Whether it is something that only the coach can change, and no plan. */
    boolean ofCoach() {
        return longer != null || dropped != null;
    }
}
