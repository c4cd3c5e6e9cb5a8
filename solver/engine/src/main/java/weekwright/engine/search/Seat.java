package weekwright.engine.search;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/** A session as Timefold sees it: it takes one of its options, or none. */
@PlanningEntity
public class Seat {
    private @Nullable Session session;

    @PlanningVariable(allowsUnassigned = true)
    private @Nullable Stimulus option;

    /** For Timefold, which fills it in. */
    public Seat() {}

    Seat(Session session, @Nullable Stimulus option) {
        this.session = session;
        this.option = option;
    }

    /** Those of some sessions, where a plan has them. */
    static List<Seat> of(List<Session> sessions, @Nullable Stimulus[] at) {
        return sessions.stream()
                .map(session -> new Seat(session, at[session.index]))
                .toList();
    }

    /** The session. */
    public Session session() {
        return java.util.Objects.requireNonNull(session);
    }

    /** All options of the session. */
    @ValueRangeProvider
    public List<Stimulus> getOptions() {
        return List.of(session().options);
    }

    /** Where it lies, or null. */
    public @Nullable Stimulus getOption() {
        return option;
    }

    /** Puts it somewhere, or nowhere. */
    public void setOption(@Nullable Stimulus option) {
        this.option = option;
    }
}
