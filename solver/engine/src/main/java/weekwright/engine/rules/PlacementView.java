package weekwright.engine.rules;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/** A session and where it lies, or that it lies nowhere. */
public final class PlacementView extends View {
    private Session session;
    private final Attendance attendance;
    private @Nullable Stimulus at;

    PlacementView(Problem problem, Attendance attendance, Session any) {
        super(problem);
        this.attendance = attendance;
        session = any;
    }

    PlacementView of(Session of, @Nullable Stimulus where) {
        session = of;
        at = where;
        return this;
    }

    /** The session. */
    public Session session() {
        return session;
    }

    /** Where it lies, or null when it is not placed. */
    public @Nullable Stimulus at() {
        return at;
    }

    /** Why a cohort sits it out, or null. */
    @Nullable
    Absence absence(int cohort) {
        return attendance.absence(cohort, session.index);
    }

    @Override
    public GroupInfo group() {
        return session.group;
    }
}
