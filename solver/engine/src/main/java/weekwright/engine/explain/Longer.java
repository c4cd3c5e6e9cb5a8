package weekwright.engine.explain;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Spans;
import weekwright.engine.problem.Spans.Span;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Window;

/**
 * Time that somebody gives beyond the usual on one day: half an hour or an hour more, at one end.
 *
 * @param index which group, place or member of staff
 * @param from the first minute given, an epoch minute
 * @param to the end of what is given
 * @param later whether it follows on the usual hours; else it comes before them
 */
record Longer(Whose whose, int index, int from, int to, boolean later) {
    /** Whose hours they are. */
    enum Whose {
        GROUP,
        FACILITY,
        STAFF
    }

    /** The most that is asked of anybody, in minutes. */
    static final int MOST = 60;

    private static final int STEP = 30;
    private static final int DAY = 24 * 60;

    /**
     * What must be given so that a session lies within somebody's hours; null where it does already, where more than
     * {@value #MOST} minutes are missing, or some at both ends.
     */
    static @Nullable Longer of(Whose whose, int index, Spans hours, Stimulus at) {
        Span usual = hours.nearest(at.start, at.end);
        if (usual == null) {
            return null;
        }
        int before = Math.max(0, usual.from() - at.start);
        int after = Math.max(0, at.end - usual.to());
        int given = Math.floorDiv(before + after + STEP - 1, STEP) * STEP;
        if (given == 0 || given > MOST || (before > 0 && after > 0)) {
            return null;
        }
        return after > 0
                ? new Longer(whose, index, usual.to(), usual.to() + given, true)
                : new Longer(whose, index, usual.from() - given, usual.from(), false);
    }

    int minutes() {
        return to - from;
    }

    /** The scenario with this time given; null where it does not lie on one day of the clock. */
    @Nullable
    Scenario given(Problem problem) {
        Scenario scenario = problem.scenario;
        return switch (whose) {
            case GROUP -> {
                Group group = problem.groups.get(index).group;
                List<Window> windows = added(group.windows(), problem);
                yield windows == null ? null : Amended.with(scenario, group.withWindows(windows));
            }
            case FACILITY -> {
                Facility facility = problem.facilities.get(index).facility;
                List<Window> open = added(facility.open(), problem);
                yield open == null ? null : Amended.with(scenario, facility.withOpen(open));
            }
            case STAFF -> {
                StaffMember member = problem.staff.get(index).member;
                List<Window> windows = added(member.windows(), problem);
                yield windows == null ? null : Amended.with(scenario, member.withWindows(windows));
            }
        };
    }

    /** What must be done for it, without a stop. */
    String said(Problem problem) {
        String name = switch (whose) {
            case GROUP -> "Free " + problem.groups.get(index).group.label();
            case FACILITY -> "Have " + problem.facilities.get(index).facility.label() + " open";
            case STAFF -> "Have " + problem.staff.get(index).member.name();
        };
        String edge = clock(problem.calendar.moment(later ? to : from).local().toLocalTime());
        return name + (later ? " until " : " from ") + edge + " on "
                + new Names(problem).day(problem.calendar.dayOf(from)) + ", " + Names.hours(minutes())
                + (later ? " longer" : " earlier");
    }

    /** The end of a day is 24:00. */
    private String clock(LocalTime time) {
        return later && time.equals(LocalTime.MIDNIGHT) ? "24:00" : time.toString();
    }

    /** The usual windows with this time; null where it does not lie on one day of the clock. */
    private @Nullable List<Window> added(List<Window> usual, Problem problem) {
        LocalDateTime first = problem.calendar.moment(from).local();
        LocalDateTime last = problem.calendar.moment(to).local();
        int start = first.toLocalTime().toSecondOfDay() / 60;
        int end = last.toLocalTime().toSecondOfDay() / 60;
        boolean midnight = end == 0;
        if (!last.minusMinutes(1).toLocalDate().equals(first.toLocalDate())
                || (midnight ? DAY : end) - start != minutes()) {
            return null;
        }
        Window more = new Window(
                List.of(), first.toLocalDate(), new ClockTime(start), new ClockTime(midnight ? DAY : end), null, null);
        return java.util.stream.Stream.concat(usual.stream(), java.util.stream.Stream.of(more))
                .toList();
    }
}
