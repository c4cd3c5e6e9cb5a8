package weekwright.benchmarks.rivals;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.benchmarks.rivals.PairRules.Found;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/** A session that takes one of its options, or none: the same options as the engine's own search has. */
@PlanningEntity
public class StreamSeat {
    @PlanningId
    private int id;

    private @Nullable Session session;
    private Found[] alone = {};
    private @Nullable AimWeek aimWeek;
    private @Nullable Common common;

    @PlanningVariable(allowsUnassigned = true)
    private @Nullable Stimulus option;

    /** For Timefold. */
    public StreamSeat() {}

    StreamSeat(Session session, Found[] alone, Common common) {
        id = session.index;
        this.session = session;
        this.alone = alone;
        this.common = common;
        aimWeek = new AimWeek(Objects.requireNonNull(session.aim), session.week);
    }

    /** Place of the session in the problem's list. */
    public int getId() {
        return id;
    }

    /** All that it may take. */
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

    Session session() {
        return Objects.requireNonNull(session);
    }

    Common common() {
        return Objects.requireNonNull(common);
    }

    AimWeek aimWeek() {
        return Objects.requireNonNull(aimWeek);
    }

    /** Where it lies; only where it is placed. */
    Stimulus at() {
        return Objects.requireNonNull(option);
    }

    int day() {
        return at().day;
    }

    int facility() {
        return at().facility;
    }

    int group() {
        return at().group;
    }

    /** What it breaks together with another. */
    Found with(StreamSeat other) {
        return common().pair(at(), other.at());
    }

    /** What its place breaks whatever else is placed. */
    Found alone() {
        return alone[at().option];
    }
}
