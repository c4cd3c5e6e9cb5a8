package weekwright.engine.explain;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.engine.explain.Longer.Whose;
import weekwright.engine.problem.FacilityInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.StaffInfo;
import weekwright.engine.problem.Stimulus;

/** Who would have to give how much more time for a session to lie somewhere. */
final class MoreTime {
    /** Rules that more time can mend. */
    static final Set<String> RULES = Set.of("inside-window", "facility-open", "lead-free");

    private final Problem problem;

    MoreTime(Problem problem) {
        this.problem = problem;
    }

    /** Ways to open one that only breaks a rule of hours. */
    List<Way> opened(Way way, String rule) {
        Session session = Objects.requireNonNull(way.session());
        Stimulus to = Objects.requireNonNull(way.to());
        return switch (rule) {
            case "inside-window" ->
                session.group.freeLonger(to.start, to.end) > Longer.MOST
                        ? List.of()
                        : given(way, Longer.of(Whose.GROUP, session.group.index, session.group.free.windows(), to));
            case "facility-open" -> openLonger(way, to);
            case "lead-free" ->
                problem.staff.stream()
                        .flatMap(member -> leadLonger(way, session, to, member))
                        .toList();
            default -> List.of();
        };
    }

    private List<Way> openLonger(Way way, Stimulus to) {
        FacilityInfo facility = problem.facilities.get(to.facility);
        return facility.openLonger(to.start, to.end) > Longer.MOST
                ? List.of()
                : given(way, Longer.of(Whose.FACILITY, facility.index, facility.open, to));
    }

    private Stream<Way> leadLonger(Way way, Session session, Stimulus to, StaffInfo member) {
        boolean away = member.worksLonger(to.start, to.end) > Longer.MOST;
        if (away || !problem.mayLead(member.index, session.index)) {
            return Stream.empty();
        }
        int held = to.lead >= 0 ? to.lead : session.heldLead;
        Way led = held == member.index ? way : Way.to(session, to.with(member.index, -1));
        return given(led, Longer.of(Whose.STAFF, member.index, member.free.windows(), to)).stream();
    }

    private static List<Way> given(Way way, @Nullable Longer longer) {
        return longer == null ? List.of() : List.of(way.with(longer));
    }
}
